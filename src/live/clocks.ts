// The clocks of a device, as read at one time. None of them can be trusted alone: the steady one may stop
// in sleep and ends with the page, the wall clock may be set, and the audio clock stands still when sound does.

/** A time by the clocks that outlive a sound. */
export interface Stamp {
  /** One for each life of a page: the steady clock starts anew with it. */
  readonly life: string;
  /** Seconds; never goes back within a life. */
  readonly steady: number;
  /** UTC, ms since 1970. */
  readonly wall: number;
}

export interface Clocks extends Stamp {
  /** Seconds on the audio clock. */
  readonly audio: number;
}

/** Of a reading, or of whatever else bears a stamp, the stamp alone. */
export const stampOf = ({ life, steady, wall }: Stamp): Stamp => ({ life, steady, wall });
