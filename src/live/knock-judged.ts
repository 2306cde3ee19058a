// The milliseconds about a sudden noise in, the knock that it was or none out: by how it rose, how soon it died,
// how broad it was and where in the scale it lay. All levels are in dB; each limit was chosen by the
// scenes of tests/live/knock-scenes.ts, between what knocks do and what the rest does.
import { bands } from "./knock-bands.ts";

/** Milliseconds looked at before the noise was noticed, and after. */
export const BEFORE = 250;
export const AFTER = 50;
/** It is noticed at most so many milliseconds after the contact, or so. */
const NOTICED = 12;

/** The bands of each millisecond, `BEFORE` of them before the noise was noticed and `AFTER` after. */
export interface Noise {
  readonly frames: readonly Float64Array[];
  /** How loud each band had been of late. */
  readonly lately: Float64Array;
  /** Whether a frame belongs to a knock that was heard already. */
  readonly known: (frame: number) => boolean;
}

/** Power in all bands together, each in units of what it had been of late. */
const STRONG = 16;
/** ms from a tenth of the power to near the peak: what swells is a voice or a splash. */
const RISES_WITHIN = 7;
/** Within 50 ms it has died by so much: a vowel, a tone or a door goes on. */
const DIES = 9;
/** From here on it may be seen to have died, ms. */
const QUIET_FROM = 20;
/** And at the end of the 50 ms by so much: what comes back as strong was a consonant before its vowel. */
const DIES_FOR_GOOD = 6;
/** Where it stands out in fewer bands than three, as over water, it must have died by more. */
const BROAD = 3;
const DIES_IF_NARROW = 13;
/** Each band that stands out must have died by so much: glass rings on in one. */
const EACH_DIES = 5;
const STANDS_OUT = 6;
const STANDS_OUT_LONG = 9;
/** So much more below 1.9 kHz than above: drops, hisses and glass lie higher. */
const LOW = 3;
/** Strongest above 440 Hz, it must be within this of its strongest in three bands: a bubble is one sine. */
const NEAR_STRONGEST = 15;
/** So much less below 110 Hz than above: doors and steps lie lower. */
const RUMBLE = 5;

const dB = (ratio: number): number => 10 * Math.log10(ratio + 1e-30);
const audible = Array.from({ length: bands - 1 }, (_, i) => i + 1);

export interface Knock {
  /** The frame of first contact. */
  readonly contact: number;
  /** dB above the loudest of the quarter of a second before it, knocks left out. */
  readonly above: number;
}

/** @returns null for no knock. */
export function knockIn({ frames, lately, known }: Noise): Knock | null {
  const band = (which: number, from: number, to: number) => {
    let sum = 0;
    for (let i = from; i < to; i += 1) sum += frames[i]?.[which] ?? 0;
    return sum / (to - from);
  };
  const most = (which: number) => {
    let found = 0;
    for (let i = BEFORE - 5; i < BEFORE + 15; i += 1)
      found = Math.max(found, frames[i]?.[which] ?? 0);
    return found;
  };
  /** Each frame's power, every band in units of what it had been of late: what is masked counts little. */
  const power = frames.map((frame) =>
    audible.reduce((sum, each) => sum + (frame[each] ?? 0) / (lately[each] ?? 1), 0),
  );
  const first = BEFORE - NOTICED;
  const after = power.slice(first);
  const peak = Math.max(...after);
  const contact = first + after.findIndex((each) => each >= peak / 12);
  if (dB(peak) < STRONG || risesIn(power, contact) > RISES_WITHIN) return null;

  const died = dB(peak / quietest(power.slice(BEFORE + QUIET_FROM)));
  if (dB(peak / mean(power.slice(-9))) < DIES_FOR_GOOD) return null;
  const standing = audible.filter((each) => dB(most(each) / (lately[each] ?? 1)) > STANDS_OUT);
  if (standing.length < 2) return null;
  if (died < (standing.length < BROAD ? DIES_IF_NARROW : DIES)) return null;
  for (const each of standing) {
    if (dB(most(each) / (lately[each] ?? 1)) < STANDS_OUT_LONG) continue;
    const after = frames.slice(BEFORE + QUIET_FROM).map((frame) => frame[each] ?? 0);
    if (dB(most(each) / quietest(after)) < EACH_DIES) return null;
  }

  const came = (which: number, until: number) =>
    Math.max(0, band(which, BEFORE - 5, BEFORE + until) - band(which, BEFORE - 40, BEFORE - 8));
  const soon = Array.from({ length: bands }, (_, each) => came(each, 20));
  const sum = (from: number, to: number) => soon.slice(from, to).reduce((a, b) => a + b, 0);
  if (dB(sum(1, 5) / (sum(5, 7) + 1e-12)) < LOW) return null;
  const strongest = Math.max(...soon.slice(1));
  const near = soon.slice(1).filter((each) => dB(each / strongest) > -NEAR_STRONGEST);
  if (soon.indexOf(strongest, 1) >= 3 && near.length < BROAD) return null;
  const long = Array.from({ length: bands }, (_, each) => came(each, 40));
  const above = long.slice(1).reduce((a, b) => a + b, 0);
  if (dB((long[0] ?? 0) / above) > RUMBLE) return null;

  let loudest = 0;
  for (let i = 0; i < first; i += 1) if (!known(i)) loudest = Math.max(loudest, power[i] ?? 0);
  return { contact, above: dB(peak / (loudest + 1e-30)) };
}

/** Frames from the contact until three together are within 4 dB of the strongest three. */
function risesIn(power: readonly number[], contact: number): number {
  const threes = power
    .slice(contact)
    .map((_, i) => mean(power.slice(contact + i - 1, contact + i + 2)));
  const strong = Math.max(...threes) / 10 ** 0.4;
  return threes.findIndex((each) => each >= strong);
}

/** The mean of the quietest 9 ms: fingers bounce, and a second contact is not to hide that the first died. */
function quietest(power: readonly number[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i + 9 <= power.length; i += 1)
    least = Math.min(least, mean(power.slice(i, i + 9)));
  return least;
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
