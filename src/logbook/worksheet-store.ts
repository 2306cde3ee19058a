// The worksheet as typed, kept in this browser between visits. A browser may refuse to keep
// anything: that comes back as data, and the program goes on without.

import { createStore, get, set, type UseStore } from "idb-keyval";
import { isObject } from "../units/object.ts";
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

const KEY = "worksheet";

export function worksheetStore(): WorksheetStore {
  let opened: UseStore | null = null;
  let refused = false;
  // Opened at the first use, and inside the promise: `indexedDB` may be missing, or throw by its very name.
  const store = () => {
    opened ??= createStore("tankside-worksheet", "kept");
    return opened;
  };
  return {
    async load() {
      try {
        const kept: unknown = await soon(get(KEY, store()));
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
        await set(KEY, texts, store());
        return true;
      } catch {
        return false;
      }
    },
  };
}

function isTexts(kept: unknown): kept is KeptTexts {
  return isObject(kept) && Object.values(kept).every((text) => typeof text === "string");
}
