// A time on the audio clock in, the same time on the page's clock, by which presses are dated, out. Alone,
// because what browsers say of it has to be doubted.

/** As much of an audio context as tells the time. */
export type AudioTimes = Pick<AudioContext, "currentTime" | "getOutputTimestamp">;

/** By how much what leaves the device may lag behind what is being mixed, seconds; more is no true answer. */
const MOST_LAG = 1;
/** Rounding, and a stamp that is some blocks old, seconds. */
const ROUNDING = 0.05;

/**
 * When what is mixed at a time of the audio clock was, or is to be, heard; seconds on the clock of
 * `performance.now()`. A browser says so by a pair of times that go together; it knows of its own buffers and those
 * of the system, not of a wireless link. Before anything has sounded, after a pause, and in older browsers there is
 * no such pair or a wrong one: then it is heard as it is mixed.
 * @param now seconds on the clock of `performance.now()`.
 */
export function onPageClock(audio: AudioTimes, at: number, now: number): number {
  const mixed = now + at - audio.currentTime;
  const { contextTime = 0, performanceTime = 0 } = audio.getOutputTimestamp?.() ?? {};
  const heard = performanceTime / 1000 + at - contextTime;
  const lag = heard - mixed;
  return performanceTime > 0 && lag > -ROUNDING && lag < MOST_LAG ? heard : mixed;
}
