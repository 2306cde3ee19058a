// The worksheet as typed, kept in this browser between visits. A browser may refuse to keep
// anything: that comes back as data, and the program goes on without.

import { isObject } from "../units/object.ts";
import type { OpenBase } from "./base.ts";
import { soon } from "./soon.ts";

/** Texts by path, as the screen holds them. */
export type KeptTexts = { readonly [path: string]: string };

export type Found =
  | { readonly kind: "found"; readonly texts: KeptTexts }
  | { readonly kind: "nothing" }
  | { readonly kind: "refused" };

export interface WorksheetStore {
  /** Never rejects. What is kept in a shape of another make counts as nothing. */
  load(): Promise<Found>;
  /** Never rejects; false where the browser would not keep it. */
  keep(texts: KeptTexts): Promise<boolean>;
}

/** The one that stands in Work out. */
export const WORKSHEET = "worksheet";

export function worksheetStore(open: OpenBase): WorksheetStore {
  let refused = false;
  return {
    async load() {
      try {
        const kept: unknown = await soon(open().then((base) => base.get("worksheets", WORKSHEET)));
        return isTexts(kept) ? { kind: "found", texts: kept } : { kind: "nothing" };
      } catch {
        refused = true;
        return { kind: "refused" };
      }
    },
    async keep(texts) {
      // What could not be read may still be there, and is not to be written over.
      if (refused) return false;
      try {
        await (await open()).put("worksheets", texts, WORKSHEET);
        return true;
      } catch {
        return false;
      }
    },
  };
}

export function isTexts(kept: unknown): kept is KeptTexts {
  return isObject(kept) && Object.values(kept).every((text) => typeof text === "string");
}
