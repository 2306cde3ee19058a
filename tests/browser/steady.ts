// Times of what was captured, from the audio clock to the page's steady clock and back: a run goes by the
// steady clock, and a busy machine's sound stands still now and then.
import type { Captured, ClockPair } from "./capture.ts";
import { type Onset, onsetOf } from "./onsets.ts";

/** The pair that goes for a time: the last one before it, or the first there is. */
function pairBefore(pairs: readonly ClockPair[], clock: keyof ClockPair, at: number): ClockPair {
  const pair = pairs.findLast((each) => each[clock] <= at) ?? pairs[0];
  if (pair === undefined) throw new Error("no clocks were read");
  return pair;
}

/** Searched so far either side, seconds, and as much farther as sound stood still. */
const WITHIN = 0.03;
/** A run knows of sound that stood still within so many seconds. */
const MENDED = 2;

/** @param since so many seconds before a time, what was placed there was placed by what was known then. */
export const searched = (captured: Captured, near: number, since = MENDED): number =>
  WITHIN + stoodStill(captured, near, since);

/** As `onsetOf`, near and found on the steady clock. */
export function steadyOnset(
  captured: Captured,
  sound: Float32Array,
  near: number,
  within = searched(captured, near),
): Onset | null {
  const onset = onsetOf(captured, sound, audioOf(captured, near), within);
  return onset === null ? null : { ...onset, at: steadyOf(captured, onset.at) };
}

/**
 * How far off a sound may be, seconds: a millisecond, and what the machine's own sound stood still by just
 * before, since a run can only know of it a look later.
 */
export function allowed(captured: Captured, at: number, since = MENDED): number {
  return 0.001 + stoodStill(captured, at, since);
}

/** Seconds on the audio clock at a time on the steady clock. */
export function audioOf({ pairs }: Captured, steady: number): number {
  const pair = pairBefore(pairs, "steady", steady);
  return pair.audio + steady - pair.steady;
}

/** Seconds on the steady clock at a time on the audio clock. */
export function steadyOf({ pairs }: Captured, audio: number): number {
  const pair = pairBefore(pairs, "audio", audio);
  return pair.steady + audio - pair.audio;
}

/** By how much sound stood still in the seconds before a time on the steady clock, and until it was next looked at. */
function stoodStill({ pairs }: Captured, steady: number, seconds: number): number {
  const next = pairs.find((pair) => pair.steady >= steady + 0.2)?.steady ?? steady + 0.2;
  const within = pairs.filter((pair) => pair.steady > steady - seconds && pair.steady <= next);
  const behind = within.map((pair) => pair.steady - pair.audio);
  return within.length === 0 ? 0 : Math.max(...behind) - Math.min(...behind);
}
