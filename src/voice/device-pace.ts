// How a voice of the device was heard to speak in, how long it may need for a sentence out. Such a voice
// cannot be measured beforehand, so what it may need is a bound: the longest delay, the slowest pace.

/** A sentence as it was spoken: how many letters, and in seconds how late it began and how long it took. */
export interface SpokenOnce {
  readonly letters: number;
  readonly delay: number;
  readonly lasts: number;
}

interface Spread {
  readonly least: number;
  readonly most: number;
}

export interface DevicePace {
  /** Seconds from being told to speak to the first sound. */
  readonly delay: Spread;
  /** Seconds a letter, signs and spaces counted. */
  readonly perLetter: Spread;
}

/** Upon the longest that was measured: a handful of sentences does not show the slowest. */
const margin = { delay: 0.1, pace: 1.1 };

/** @param spoken one at least. */
export function devicePace(spoken: readonly SpokenOnce[]): DevicePace {
  return {
    delay: spreadOf(spoken.map(({ delay }) => delay)),
    perLetter: spreadOf(spoken.map(({ letters, lasts }) => lasts / letters)),
  };
}

function spreadOf(values: readonly number[]): Spread {
  return { least: Math.min(...values), most: Math.max(...values) };
}

/** Seconds by which it has begun to speak, if it does as it was measured. */
export const begunWithin = ({ delay }: DevicePace): number => delay.most + margin.delay;

/** Seconds from being told to speak to its last sound; whole milliseconds. */
export function slotFor(text: string, pace: DevicePace): number {
  const seconds = begunWithin(pace) + text.length * pace.perLetter.most * margin.pace;
  return Math.ceil(seconds * 1000) / 1000;
}
