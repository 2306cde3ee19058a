// What really happened in a section of a run, where it did not go by plan. Times are seconds from the
// section's press, as everywhere in this stage; a stay is named by its place among the section's stays.
import type { Worksheet } from "../plan/worksheet.ts";
import type { Pour } from "./pour.ts";

export interface Happened {
  /** When a stay's pour-in really began. */
  readonly pouredIn: { readonly [stay: number]: number };
  /** When the tank was really empty after a stay. */
  readonly emptied: { readonly [stay: number]: number };
  /** When either was told of, as late as that may be. */
  readonly told: { readonly [stay: number]: number };
  /** When something was last learnt that moves a stay's end: it is not moved into the past. */
  readonly learnt: { readonly [stay: number]: number };
  /** When the stay's pour-out was to begin before that: only the sum itself ends it later. */
  readonly stood: { readonly [stay: number]: number };
}

/** By section. */
export type HappenedIn = { readonly [section: string]: Happened };

export const nothingHappened: Happened = {
  pouredIn: {},
  emptied: {},
  told: {},
  learnt: {},
  stood: {},
};

/** From an empty tank that was told of to the next pour-in, seconds: a word, and three beats to land on. */
const CATCH_UP = 5;
/** An end that is moved sooner comes no sooner than this after it was learnt, seconds: to be told, and to be ready. */
const SOONEST = 7;

/** Seconds from the empty tank to the next pour-in; where it is told of only then, the hands need a count-in. */
export function handoverAfter(
  stay: number,
  { emptied, told }: Happened,
  { tank }: Worksheet,
): number {
  const handover = tank.handover ?? 0;
  const at = emptied[stay];
  if (at === undefined) return handover;
  return Math.max(handover, (told[stay] ?? at) - at + CATCH_UP);
}

/** A pour-in that was told of stands, unless the tank is said to have been emptied only after it. */
export function pourInOf(
  stay: number,
  planned: number,
  emptyBefore: number,
  { pouredIn }: Happened,
): number {
  const at = pouredIn[stay];
  return at === undefined || at < emptyBefore ? planned : at;
}

/** An end that was learnt of late is not in the past, and a tank that is empty is empty. */
export function asItHappened(
  pour: Pour,
  stay: number,
  happened: Happened,
  { tank }: Worksheet,
): Pour {
  const learnt = happened.learnt[stay];
  const stood = happened.stood[stay] ?? Number.POSITIVE_INFINITY;
  const soonest =
    learnt === undefined ? pour.pourOut : Math.max(pour.pourOut, Math.min(stood, learnt + SOONEST));
  const emptied = happened.emptied[stay];
  if (emptied === undefined) return { ...pour, pourOut: soonest, empty: soonest + tank.pourOut };
  // Emptied before its time: the pour-out began as much earlier as the hands take for it.
  const pourOut = Math.max(pour.pourIn, Math.min(soonest, emptied - tank.pourOut));
  return { ...pour, pourOut, empty: Math.max(emptied, pourOut) };
}

/** When something was last learnt, seconds; 0 where all went by plan. */
export function pastOf({ pouredIn, emptied, told, learnt }: Happened): number {
  return Math.max(0, ...[pouredIn, emptied, told, learnt].flatMap((times) => Object.values(times)));
}
