// Who speaks on this device, and how its own voices were measured: kept in this browser, not in the
// worksheet, since another device has other voices. Small, and wanted at once: `localStorage`.
import { isObject } from "../units/object.ts";
import type { DevicePace } from "../voice/device-pace.ts";

export type SpeakerChoice =
  | { readonly kind: "bundled" }
  | { readonly kind: "own" }
  /** By the name that the device gives it, and the BCP 47 tag of what it speaks. */
  | { readonly kind: "device"; readonly voice: string; readonly language: string };

/** Never throws. What is kept in a shape of another make counts as nothing. */
export interface SpeakerStore {
  /** The bundled voice where nothing is kept. */
  load(): SpeakerChoice;
  /** False where the browser would not: it then holds until the page goes away. */
  keep(choice: SpeakerChoice): boolean;
  pace(voice: string): DevicePace | null;
  keepPace(voice: string, pace: DevicePace): boolean;
}

const CHOICE = "tankside-speaker";
const paceKey = (voice: string) => `tankside-pace-${voice}`;

/** @param storage asked for at each use, since a browser may throw by its very name. */
export function speakerStore(storage: () => Storage): SpeakerStore {
  const here = new Map<string, unknown>();

  function read(key: string): unknown {
    if (here.has(key)) return here.get(key);
    try {
      return JSON.parse(storage().getItem(key) ?? "null");
    } catch {
      return null;
    }
  }

  function write(key: string, value: unknown): boolean {
    here.set(key, value);
    try {
      storage().setItem(key, JSON.stringify(value));
      return true;
    } catch {
      return false;
    }
  }

  return {
    load() {
      const kept = read(CHOICE);
      return isChoice(kept) ? kept : { kind: "bundled" };
    },
    keep: (choice) => write(CHOICE, choice),
    pace(voice) {
      const kept = read(paceKey(voice));
      return isPace(kept) ? kept : null;
    },
    keepPace: (voice, pace) => write(paceKey(voice), pace),
  };
}

function isChoice(kept: unknown): kept is SpeakerChoice {
  if (!isObject(kept)) return false;
  if (kept.kind === "device")
    return typeof kept.voice === "string" && typeof kept.language === "string";
  return kept.kind === "bundled" || kept.kind === "own";
}

function isPace(kept: unknown): kept is DevicePace {
  return isObject(kept) && isSpread(kept.delay) && isSpread(kept.perLetter);
}

function isSpread(kept: unknown): boolean {
  if (!isObject(kept)) return false;
  const { least, most } = kept;
  return typeof least === "number" && typeof most === "number" && least >= 0 && most >= least;
}
