// Pedals and other buttons that were learnt, kept in this browser: they belong to the device, not to a
// worksheet. Small, and wanted at once: `localStorage`.
import { isObject } from "../units/object.ts";

/** As a run knows it (live/pedal.ts): the key it sends, and whether it can be held. */
export interface KeptPedal {
  readonly code: string;
  readonly key: string;
  readonly holds: boolean;
}

/** Never throws. What is kept in a shape of another make is passed over. */
export interface PedalStore {
  load(): readonly KeptPedal[];
  /** False where the browser would not: they then hold until the page goes away. */
  keep(pedals: readonly KeptPedal[]): boolean;
}

const KEY = "tankside-pedals";
/** More of them nobody has feet for; nor are browsers' names of keys any longer. */
const MOST = 8;
const LONGEST = 40;

/** @param storage asked for at each use: a browser that refuses throws by its very name. */
export function pedalStore(storage: () => Storage): PedalStore {
  return {
    load() {
      try {
        const kept: unknown = JSON.parse(storage().getItem(KEY) ?? "[]");
        return Array.isArray(kept) ? kept.filter(isPedal).slice(0, MOST) : [];
      } catch {
        return [];
      }
    },
    keep(pedals) {
      try {
        storage().setItem(KEY, JSON.stringify(pedals));
        return true;
      } catch {
        return false;
      }
    },
  };
}

function isPedal(kept: unknown): kept is KeptPedal {
  if (!isObject(kept) || typeof kept.holds !== "boolean") return false;
  const { code, key } = kept;
  if (typeof code !== "string" || typeof key !== "string") return false;
  return code.length <= LONGEST && key.length <= LONGEST && code + key !== "";
}
