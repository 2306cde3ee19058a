// A scene with knocks laid into it, and what the detector made of it: found, missed, and false.
import { type OwnSound, openKnockDetector } from "../../src/live/knocks.ts";
import { gain } from "../../src/tones/loudness.ts";
import { add } from "./knock-scenes.ts";
import { between, type Hand, knock, oneOf, type Random, rate, surfaces } from "./knock-sounds.ts";

/** A knock is found if it is told to have been within so many seconds of where it was. */
const NEAR = 0.02;
/** Samples that the detector gets at once: about as many as a browser's part. */
const BLOCK = 256;

export interface Outcome {
  readonly knocks: number;
  readonly found: number;
  /** Told, and never there. */
  readonly false: number;
  /** Seconds from each found contact until it was told. */
  readonly late: readonly number[];
  readonly seconds: number;
}

/** Knocks laid into samples every one to two seconds, their loudest 10 ms at a level. @returns their times. */
export function laidInto(
  samples: Float32Array,
  random: Random,
  hand: Hand,
  dBFS: number,
): readonly number[] {
  const times: number[] = [];
  for (let t = 1.5; t < samples.length / rate - 1; t += between(random, 1, 2)) {
    times.push(Math.round(t * rate) / rate);
    add(samples, knock(random, oneOf(random, surfaces), hand), Math.round(t * rate), gain(dBFS));
  }
  return times;
}

export function heardIn(
  samples: Float32Array,
  knocks: readonly number[] = [],
  own: readonly OwnSound[] = [],
): Outcome {
  const detector = openKnockDetector(rate, () => own);
  const told: { readonly at: number; readonly after: number }[] = [];
  for (let i = 0; i < samples.length; i += BLOCK) {
    const block = samples.subarray(i, i + BLOCK);
    for (const at of detector.hear(block, i / rate)) {
      told.push({ at, after: (i + block.length) / rate - at });
    }
  }
  const isKnock = ({ at }: { readonly at: number }) =>
    knocks.some((each) => Math.abs(each - at) < NEAR);
  const late = told.filter(isKnock).map(({ after }) => after);
  return {
    knocks: knocks.length,
    found: late.length,
    false: told.length - late.length,
    late,
    seconds: samples.length / rate,
  };
}

/** All of them taken together. */
export const together = (outcomes: readonly Outcome[]): Outcome =>
  outcomes.reduce((all, each) => ({
    knocks: all.knocks + each.knocks,
    found: all.found + each.found,
    false: all.false + each.false,
    late: [...all.late, ...each.late],
    seconds: all.seconds + each.seconds,
  }));
