// Tanks by name, kept in this browser between visits: what stands in the form's fields for each. A
// browser may refuse to keep anything: that comes back as data, and the program goes on without.

import { createStore, entries, promisifyRequest, type UseStore } from "idb-keyval";
import { isObject } from "../units/object.ts";
import { soon } from "./soon.ts";
import type { KeptTexts } from "./worksheet-store.ts";

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

export function tankStore(): TankStore {
  let opened: UseStore | null = null;
  // Opened at the first use, and inside a promise: `indexedDB` may be missing, or throw by its very name.
  const store = () => {
    opened ??= createStore("tankside-tanks", "kept");
    return opened;
  };

  /** Changes what is kept under a name, unless it is of another make. */
  async function change(label: string, act: (tanks: IDBObjectStore) => void): Promise<boolean> {
    try {
      return await soon(
        store()("readwrite", async (tanks) => {
          const was: unknown = await promisifyRequest(tanks.get(label));
          if (was !== undefined && !isTankOf(label, was)) return false;
          act(tanks);
          await promisifyRequest(tanks.transaction);
          return true;
        }),
      );
    } catch {
      return false;
    }
  }

  return {
    async load() {
      try {
        const kept: readonly [unknown, unknown][] = await soon(entries(store()));
        const tanks = kept.flatMap(([label, it]) => (isTankOf(label, it) ? [it] : []));
        return {
          kind: "found",
          tanks: tanks.toSorted((a, b) => byName.compare(a.label, b.label)),
        };
      } catch {
        return { kind: "refused" };
      }
    },
    keep: (tank) => change(tank.label, (tanks) => tanks.put(tank, tank.label)),
    remove: (label) => change(label, (tanks) => tanks.delete(label)),
  };
}

function isTankOf(label: unknown, kept: unknown): kept is KeptTank {
  return (
    isObject(kept) &&
    kept.label === label &&
    isObject(kept.texts) &&
    Object.values(kept.texts).every((text) => typeof text === "string")
  );
}
