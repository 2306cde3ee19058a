// How long tracks took to be made in, how far ahead of its time an answer must be given to the pocket out, so that
// it is in the track before it is due. Apart, because only what was measured here tells a slow phone from a fast one.

/** A change of source is expected to take this long, seconds: so much silence is looked for. */
export const CHANGE = 0.25;
/** What making one is taken to last before any answer was made, seconds. */
const FIRST = 0.3;
/** One that was made sooner than those before brings down what is expected to this part of it. */
const SOONER = 0.7;
/** To spare, seconds: a beat may sound where the source would be changed. */
const SPARE = 0.2;

export interface Making {
  /** @param seconds that one took. */
  took(seconds: number): void;
  /** Seconds from giving an answer to where it may begin in the track. */
  ahead(): number;
}

export function openMaking(): Making {
  let expected = FIRST;
  return {
    took(seconds) {
      expected = Math.max(seconds, expected * SOONER);
    },
    ahead: () => expected + CHANGE + SPARE,
  };
}
