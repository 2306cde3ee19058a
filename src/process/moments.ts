// What the hands do, and exactly when: types shared by the process stage and all after it.

export type Deed =
  | "pour-in"
  | "full"
  | "agitate"
  | "invert"
  | "rest"
  | "tap"
  | "pour-out"
  | "empty";

export interface Moment {
  /** Seconds from the press that starts the section. */
  readonly at: number;
  readonly do: Deed;
  readonly bath: string | null;
  /** Which inversion of the bout, from 1; how many taps. */
  readonly count?: number;
}
