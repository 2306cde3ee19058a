// Readings of the clocks in, one after another, what happened between them out. No browser tells a page that it
// froze, that its device slept or that its sound stood still; the three clocks do, each being fooled by other things.
import type { Clocks } from "./clocks.ts";
import type { Happening } from "./journal.ts";

/** As it is written into the journal. */
export type Gap = Extract<Happening, { readonly kind: "woke" | "clock-set" }>;

/** What the readings so far have shown. */
export interface Watch {
  /** The last reading at which sound went on; its wall clock put right by what was found since. */
  readonly heard: Clocks;
  readonly read: Clocks;
  /** Sound stands still since. */
  readonly silent: boolean;
  /** The first reading with a wall clock that is ahead, where nobody can say yet why. */
  readonly ahead: Clocks | null;
  /** Whether no reading came for so long that the page itself stood still. */
  readonly froze: boolean;
  /** What is to be told once it can be heard. */
  readonly owed: Lost | null;
}

export interface Lost {
  /** Seconds in which nothing was heard, as far as the clocks say. */
  readonly seconds: number;
  /** No clock can tell for how long it was. */
  readonly unsure: boolean;
}

interface Found {
  readonly watch: Watch;
  readonly gaps: readonly Gap[];
  /** What is to be told of now: it is heard again. */
  readonly lost: Lost | null;
}

/** A wall clock is moved by less than this, seconds, now and then, and nobody need know. */
const STEP = 1.5;
/** Sound that lags by more than this, seconds, has stood still: the audio clock's own error is far less. */
const STILL = 0.25;
/** Beside what is told anyway, silence is noted from this on, seconds. */
const STILL_TOO = 2;
/** A device that wakes takes at least this long to sound again, seconds; a clock that is set costs nothing. */
const WAKING = 0.06;
/** It is looked at before that is over, often as not. Sound that went on for so long, seconds, had not been asleep. */
const SURE = 1.5;
/** What has to be known at once is believed after so much of it, seconds. */
const LIKELY = 0.5;
/** A living page looks about every second, and seldom this late, seconds. */
const LATE_LOOK = 3;
/** A device that falls asleep lets go of its sound a little before, seconds. */
const FALLING = 10;

export const watchFrom = (here: Clocks): Watch => ({
  heard: here,
  read: here,
  silent: false,
  ahead: null,
  froze: false,
  owed: null,
});

/** A reading at which sound goes on. */
export function heardAt(before: Watch, here: Clocks): Found {
  const still = stillAt(before, here);
  if (!before.silent && steppedAt(before, here) > STEP && still <= WAKING) {
    const ahead = before.ahead ?? here;
    const isSure = here.audio - ahead.audio >= SURE;
    if (!isSure) return { watch: { ...read(before, here), ahead }, gaps: [], lost: null };
  }
  const { watch, gaps } = explained(before, here, still > WAKING);
  const { owed, froze } = watch;
  const stood: readonly Gap[] =
    still > (owed === null ? STILL : STILL_TOO)
      ? [{ kind: "woke", from: froze ? "frozen" : "silent", lost: still }]
      : [];
  const isTold = owed !== null || stood.length > 0;
  return {
    watch: watchFrom(here),
    gaps: [...gaps, ...stood],
    lost: isTold ? { seconds: (owed?.seconds ?? 0) + still, unsure: owed?.unsure ?? false } : null,
  };
}

/** A reading at which sound stands still: told of when it goes on, but time that jumped is known at once. */
export function silentAt(before: Watch, here: Clocks): Found {
  const { watch, gaps } = explained(before, here, true);
  return { watch: { ...watch, silent: true }, gaps, lost: null };
}

/** A reading at which something is to be written down: time that jumped cannot be left open any longer. */
export function writtenAt(before: Watch, here: Clocks): Found {
  const wentOn = before.ahead !== null && here.audio - before.ahead.audio > LIKELY;
  return { ...explained(before, here, !wentOn || stillAt(before, here) > WAKING), lost: null };
}

const steppedAt = ({ heard }: Watch, here: Clocks): number =>
  (here.wall - heard.wall) / 1000 - (here.steady - heard.steady);

const stillAt = ({ heard }: Watch, here: Clocks): number =>
  here.steady - heard.steady - (here.audio - heard.audio);

const read = (watch: Watch, here: Clocks): Watch => ({
  ...watch,
  read: here,
  froze: watch.froze || here.steady - watch.read.steady > LATE_LOOK,
});

/**
 * Why the wall clock stepped, if it did. Ahead with sound that stood still, the device was asleep. Where sound had
 * stood still for long before, while the page lived, it may as well have been set: then no time is counted.
 */
function explained(before: Watch, here: Clocks, stood: boolean): Pick<Found, "watch" | "gaps"> {
  const by = steppedAt(before, here);
  const watch = { ...read(before, here), ahead: null };
  if (Math.abs(by) <= STEP) return { watch, gaps: [] };
  const { heard, silent, owed } = before;
  const right = { ...watch, heard: { ...heard, wall: heard.wall + by * 1000 } };
  const isOpen = silent && before.read.steady - heard.steady > FALLING;
  const [seconds, unsure] = [owed?.seconds ?? 0, owed?.unsure ?? false];
  if (by > 0 && stood && !isOpen) {
    const gaps: readonly Gap[] = [{ kind: "woke", from: "asleep", lost: by }];
    return { watch: { ...right, owed: { seconds: seconds + by, unsure } }, gaps };
  }
  const gaps: readonly Gap[] = [{ kind: "clock-set", by }];
  const open = by > 0 && isOpen ? { seconds, unsure: true } : owed;
  return { watch: { ...right, owed: open }, gaps };
}
