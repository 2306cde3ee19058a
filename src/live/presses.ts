// Presses in, meanings out. There is one control, and it is pressed blind: once goes on where the
// run waits; while the clock rules there is nothing to go on to, so once tells where we are.
// Twice always tells where we are, and takes back a start that its first press had made.
import type { Begun } from "./position.ts";

export interface Pressing {
  readonly begun: Begun;
  /** When the last press came, and what stood before it if it began a section. */
  readonly last: { readonly at: number; readonly startedFrom: Begun | null } | null;
}

export type Meaning = "started" | "where" | "nothing";

/** Wet fingers bounce: a second contact within this many seconds is the same press. */
const BOUNCE = 0.08;
/** Two presses within this many seconds are a pair. */
const TWICE = 0.45;

/** @param waiting whether the run waits for a press at this time. */
export function pressed(
  pressing: Pressing,
  at: number,
  waiting: boolean,
): { readonly pressing: Pressing; readonly meaning: Meaning } {
  const { begun, last } = pressing;
  const since = at - (last?.at ?? Number.NEGATIVE_INFINITY);
  if (since < BOUNCE) return { pressing, meaning: "nothing" };
  if (since < TWICE) {
    const back = last?.startedFrom ?? null;
    // The first press of a pair in a timed bath has been answered already.
    return {
      pressing: { begun: back ?? begun, last: { at, startedFrom: null } },
      meaning: back === null ? "nothing" : "where",
    };
  }
  if (!waiting) {
    return { pressing: { begun, last: { at, startedFrom: null } }, meaning: "where" };
  }
  return {
    pressing: {
      begun: { index: begun.index + 1, pressedAt: at },
      last: { at, startedFrom: begun },
    },
    meaning: "started",
  };
}
