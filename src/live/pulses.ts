// A signal in, how it is felt out: one family with the tones, told apart by rhythm alone, since a motor in a phone
// knows neither pitch nor strength. Pure.
import type { Cue } from "../timeline/score.ts";
import type { ToneName } from "../tones/designs.ts";

/** ms: on, off, on, … as a browser's vibration takes them. */
export type Pulses = readonly number[];

/**
 * Short is 60 ms, long 300 or more: the skin tells them apart at once. As in the tones, two steps up are short and
 * long, two steps down long and short, agitation one level blast, and pouring out three quick and a long one.
 */
const pulses: { readonly [tone in ToneName]: Pulses } = {
  press: [30],
  count: [60],
  "pour-in": [80, 100, 300],
  agitate: [500],
  over: [90],
  back: [40, 60, 40],
  rest: [300, 100, 80],
  "pour-out": [80, 70, 80, 70, 80, 120, 600],
  confirm: [30, 150, 30, 150, 30],
};

export const pulsesOf = (tone: ToneName): Pulses => pulses[tone];

/** Null for what is said: words are not felt. */
export function pulsesFor(cue: Cue): Pulses | null {
  return cue.channel === "tone" ? pulsesOf(cue.sounds[0] as ToneName) : null;
}

/** Seconds from the first pulse's beginning to the last one's end. */
export const pulsesLast = (of: Pulses): number => of.reduce((sum, ms) => sum + ms, 0) / 1000;
