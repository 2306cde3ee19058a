// The audio clock and the steady clock read together now and then, in; where on the audio clock a time lies, out.
// A sound card's clock may be off by 100 parts in a million, half a second in a run of ninety minutes, so
// the run goes by the steady clock and every sound is placed by what the two were last seen to differ.
import { linearRegression, median } from "simple-statistics";

/** Both at one time, seconds. */
export interface Pair {
  readonly steady: number;
  readonly audio: number;
}

/** Readings of the last minutes, in order of time. */
export type Pairing = readonly Pair[];

/** Readings older than this are forgotten, seconds: a clock's pace changes as the device warms. */
const MEMORY = 180;
/** Over less than this, seconds, what the readings scatter by would outweigh what the clocks differ by. */
const WORTH = 30;
/** Until then so many of the newest are gone by. */
const NEWEST = 5;
/** No two clocks that work differ by more, parts of one. */
const WORST = 5e-4;

/** Sound that stood still for less than anyone need be told of, seconds: what was read before no longer holds. */
const JUMP = 0.04;

export function paired(pairing: Pairing, pair: Pair): Pairing {
  const last = pairing.at(-1);
  const before = pairing.slice(0, -1);
  const stray = ({ steady, audio }: Pair) => audio - audioAt(before, steady);
  // One reading may be wrong; two in a row that stray the same way are right.
  if (last !== undefined && before.length > 0) {
    const by = stray(pair);
    if (Math.abs(by) > JUMP && stray(last) * Math.sign(by) > JUMP) return [last, pair];
  }
  return [...pairing.filter(({ steady }) => steady > pair.steady - MEMORY), pair];
}

/** Readings of the two clocks agree to less than this, seconds; more, and one of them stood still. */
const SCATTER = 0.004;

/** What is known of the two clocks, and a reading that is not believed until the next one says the same. */
export interface Known {
  readonly pairing: Pairing;
  readonly doubted: Pair | null;
}

export const nothingKnown: Known = { pairing: [], doubted: null };

/**
 * What is known once another reading came. A busy machine mixes a block late now and then: that one reading
 * shows the audio clock behind, the next does not. Where it stays behind, sound stood still.
 */
export function knownWith({ pairing, doubted }: Known, pair: Pair): Known {
  const behind = pairing.length === 0 ? 0 : audioAt(pairing, pair.steady) - pair.audio;
  if (Math.abs(behind) <= SCATTER) return { pairing: paired(pairing, pair), doubted: null };
  if (behind > 0 && doubted === null) return { pairing, doubted: pair };
  const behindBefore = doubted === null ? behind : audioAt(pairing, doubted.steady) - doubted.audio;
  const truer = doubted !== null && behindBefore < behind ? doubted : pair;
  return { pairing: paired([], truer), doubted: null };
}

/** Seconds on the audio clock at a time on the steady one; the readings' own scatter is evened out. */
export function audioAt(pairing: Pairing, steady: number): number {
  const first = pairing[0];
  const last = pairing.at(-1);
  if (first === undefined || last === undefined) return 0;
  // Counted from the last reading, so that no digit is lost.
  const points = pairing.map((pair) => [pair.steady - last.steady, pair.audio - pair.steady]);
  const later = steady - last.steady;
  // The first readings, of sound that has only begun, are the worst.
  if (last.steady - first.steady < WORTH) {
    return steady + median(points.slice(-NEWEST).map(([, off = 0]) => off));
  }
  const { m, b } = linearRegression(points);
  return steady + b + Math.max(-WORST, Math.min(WORST, m)) * later;
}
