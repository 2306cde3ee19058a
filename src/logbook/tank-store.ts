// Tanks by name, kept in this browser between visits: what stands in the form's fields for each. A
// browser may refuse to keep anything: that comes back as data, and the program goes on without.

import type { IDBPObjectStore } from "idb";
import { isObject } from "../units/object.ts";
import type { OpenBase, Shelf, Shelves } from "./base.ts";
import { inTime } from "./in-time.ts";
import { soon } from "./soon.ts";
import { isTexts, type KeptTexts } from "./worksheet-store.ts";

export interface KeptTank {
  /** What its owner calls it: one tank a name. */
  readonly label: string;
  readonly texts: KeptTexts;
}

type FoundTanks =
  | { readonly kind: "found"; readonly tanks: readonly KeptTank[] }
  | { readonly kind: "refused" };

/** Never rejects. False means that the browser would not, and all is as it was. */
export interface TankStore {
  /** By name, as people count: 2 before 10. What is kept in a shape of another make is passed over. */
  load(): Promise<FoundTanks>;
  /** Replaces one of the same name; false also where that is of another make, which is left as it is. */
  keep(tank: KeptTank): Promise<boolean>;
  /** True also where there is none of that name. */
  remove(label: string): Promise<boolean>;
}

const byName = new Intl.Collator("en", { numeric: true });

type Tanks = IDBPObjectStore<Shelves, Shelf[], "tanks", "readwrite">;

/** @param now ms since 1970, by the device's clock. */
export function tankStore(open: OpenBase, now: () => number = Date.now): TankStore {
  /** Changes what is kept under a name, unless it is of another make. */
  async function change(label: string, act: (tanks: Tanks) => Promise<unknown>): Promise<boolean> {
    try {
      return await inTime(open, ["tanks"], async (writing) => {
        const tanks = writing.objectStore("tanks");
        const was: unknown = await tanks.get(label);
        if (was !== undefined && !isTankOf(label, was)) return false;
        await act(tanks);
        return true;
      });
    } catch {
      return false;
    }
  }

  return {
    async load() {
      try {
        const reading = (await soon(open())).transaction("tanks");
        const [labels, kept] = await soon(
          Promise.all([reading.store.getAllKeys(), reading.store.getAll()]),
        );
        const tanks = kept.flatMap((it, i): readonly KeptTank[] =>
          isTankOf(labels[i], it) ? [{ label: it.label, texts: it.texts }] : [],
        );
        return {
          kind: "found",
          tanks: tanks.toSorted((a, b) => byName.compare(a.label, b.label)),
        };
      } catch {
        return { kind: "refused" };
      }
    },
    keep: (tank) =>
      change(tank.label, (tanks) => tanks.put({ ...tank, keptAt: now() }, tank.label)),
    remove: (label) => change(label, (tanks) => tanks.delete(label)),
  };
}

/** What is kept under a name; when it was is not there in those of the first versions, ms since 1970. */
export function isTankOf(
  label: unknown,
  kept: unknown,
): kept is KeptTank & { readonly keptAt?: number } {
  return (
    isObject(kept) &&
    kept.label === label &&
    isTexts(kept.texts) &&
    (kept.keptAt === undefined || typeof kept.keptAt === "number")
  );
}
