// By which senses a run reaches the person who uses this device: asked once, kept in this browser and not in the
// worksheet, which may be another person's. Small, and wanted at once: `localStorage`.
import { isObject } from "../units/object.ts";
import { type Senses, usualSenses, whoSpeaksIds } from "../voice/senses.ts";

/** Never throws. What is kept in a shape of another make counts as nothing. */
export interface SensesStore {
  load(): Senses;
  /** False where the browser would not: it then holds until the page goes away. */
  keep(senses: Senses): boolean;
}

const SENSES = "tankside-senses";

/** @param storage asked for at each use, since a browser may throw by its very name. */
export function sensesStore(storage: () => Storage): SensesStore {
  return {
    load() {
      try {
        return sensesIn(JSON.parse(storage().getItem(SENSES) ?? "null"));
      } catch {
        return usualSenses;
      }
    },
    keep(senses) {
      try {
        storage().setItem(SENSES, JSON.stringify(senses));
        return true;
      } catch {
        return false;
      }
    },
  };
}

function sensesIn(kept: unknown): Senses {
  if (!isObject(kept)) return usualSenses;
  return {
    speaks: whoSpeaksIds.find((id) => id === kept.speaks) ?? null,
    vibrates: kept.vibrates === true,
    captions: kept.captions === true,
  };
}
