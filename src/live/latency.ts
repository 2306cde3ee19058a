// Beats as they were meant to sound and taps to them in, by how much the headphones play late out.
// Alone, and without a clock, so that every tapper can be tried on it.
import { median, medianAbsoluteDeviation } from "simple-statistics";

type WhyNoDelay =
  /** Too few taps to go by. */
  | "few"
  /** Too far from one another, each taken from its beat. */
  | "uneven"
  /** They fit the rhythm begun on another beat as well, or nearly. */
  | "unclear"
  /** Later than a run could be sent ahead. */
  | "far";

export type MeasuredDelay =
  /** `spread`: the median absolute deviation; both in seconds. A delay of 0 is not worth mending. */
  | { readonly kind: "measured"; readonly delay: number; readonly spread: number }
  | { readonly kind: "refused"; readonly why: WhyNoDelay };

/** Between the beats, seconds. Slower, taps scatter more; faster, wet hands do not follow. From memory. */
const PULSE = 0.75;
const GROUPS = 7;

/**
 * The beats to be tapped along to, seconds from the first: three and a rest, over and over. An even beat would
 * leave it open whether a tap is late for its beat or early for the next; here the rest tells them apart,
 * for delays up to a whole group of 3 s.
 */
export const rhythm: readonly number[] = Array.from({ length: GROUPS }, (_, group) =>
  [0, 1, 2].map((beat) => (4 * group + beat) * PULSE),
).flat();

/** The longest delay that is taken, seconds. Wireless links are about 0.1 to 0.5 s late. From memory. */
export const mostDelay = 1;

/** What is less is taken for none, seconds: see `delayOf`. */
const WORTH_MENDING = 0.06;

/** A touch within so many seconds of the last is its bounce: no two beats are so near. */
const BOUNCE = 0.25;
/** The first taps, by which one finds the beat. */
const FINDING = 2;
const LEAST_TAPS = 6;
/** The most that taps may differ by, as their median absolute deviation, seconds. */
const MOST_SPREAD = 0.06;

/** Delays that are looked at, seconds: from a tap ahead of its beat to well beyond what is taken. */
const EARLIEST = -0.15;
const LATEST = 2.5;
/** A tap meets a beat at a delay if it comes within so many seconds of it. */
const MEETS = 0.15;
/** Once the delay is roughly known, every tap counts that has a beat within so many seconds, less than half a pulse. */
const REACH = 0.35;
/** Another delay that is met by such a part of the taps that meet the best leaves it open which one it is. */
const RIVAL = 0.85;

/**
 * The median of the taps' delays, each from its own beat; it stands on every second tap being a slip.
 *
 * People tap some hundredths of a second ahead of a beat that they hear, and a touch screen hears of a finger
 * some hundredths late (both common knowledge, from memory). They work against each other and differ from hand
 * to hand and screen to screen, so neither is taken off; instead what is no more than they are, below 0.06 s,
 * is no delay.
 *
 * @param beats seconds on the clock that the taps are on, as they were meant to sound, in a rhythm like `rhythm`.
 */
export function delayOf(beats: readonly number[], taps: readonly number[]): MeasuredDelay {
  const counted = withoutBounces(taps).slice(FINDING);
  if (counted.length < LEAST_TAPS) return { kind: "refused", why: "few" };

  const tried = counted
    .flatMap((tap) => beats.map((beat) => tap - beat))
    .filter((delay) => delay >= EARLIEST && delay <= LATEST)
    .map((delay) => ({ delay, met: delaysAbout(delay, beats, counted, MEETS).length }));
  const best = mostMet(tried);
  const rival = mostMet(tried.filter(({ delay }) => Math.abs(delay - best.delay) > REACH));
  if (best.met < LEAST_TAPS) return { kind: "refused", why: "uneven" };
  if (rival.met > RIVAL * best.met) return { kind: "refused", why: "unclear" };

  const rough = median(delaysAbout(best.delay, beats, counted, MEETS));
  const delays = delaysAbout(rough, beats, counted, REACH);
  const spread = medianAbsoluteDeviation(delays);
  if (spread > MOST_SPREAD) return { kind: "refused", why: "uneven" };
  const delay = median(delays);
  if (delay > mostDelay) return { kind: "refused", why: "far" };
  return { kind: "measured", delay: delay < WORTH_MENDING ? 0 : delay, spread };
}

function withoutBounces(taps: readonly number[]): readonly number[] {
  const single: number[] = [];
  for (const tap of taps.toSorted((a, b) => a - b)) {
    if (tap - (single.at(-1) ?? Number.NEGATIVE_INFINITY) >= BOUNCE) single.push(tap);
  }
  return single;
}

/** Each tap's delay from the beat that it is nearest to if all is late by `about`; none where that is out of reach. */
function delaysAbout(
  about: number,
  beats: readonly number[],
  taps: readonly number[],
  reach: number,
): number[] {
  return taps.flatMap((tap) => {
    const off = Math.min(...beats.map((beat) => Math.abs(tap - beat - about)));
    if (off > reach) return [];
    return [tap - (beats.find((beat) => Math.abs(tap - beat - about) === off) ?? tap)];
  });
}

interface Tried {
  readonly delay: number;
  readonly met: number;
}

function mostMet(tried: readonly Tried[]): Tried {
  return tried.reduce((best, each) => (each.met > best.met ? each : best), { delay: 0, met: 0 });
}
