// Two readings of the clocks in, what happened between them out. No browser tells a page that it froze, that
// its device slept or that its sound stood still; the three clocks do, each being fooled by other things.
import type { Clocks } from "./clocks.ts";

export type Gap =
  /** All went on; or the page was busy, and what lay ahead sounded all the same. */
  | { readonly kind: "none" }
  /** Sound stood still for so long, while the page lived. */
  | { readonly kind: "silent"; readonly lost: number }
  /** The page itself stood still, and its sound with it. */
  | { readonly kind: "frozen"; readonly lost: number }
  /** The device slept: the steady clock stood still too, and goes wrong by so much. */
  | { readonly kind: "asleep"; readonly lost: number }
  /** Someone, or a network, set the wall clock. Nothing is wrong. */
  | { readonly kind: "clock-set"; readonly by: number };

/** A wall clock is moved by less than this, seconds, now and then, and nobody need know. */
const STEP = 1.5;
/** Sound that lags by more than this, seconds, has stood still: the audio clock's own error is far less. */
const STILL = 0.25;
/** A device that wakes takes at least this long to sound again, seconds; a clock that is set costs nothing. */
const WAKING = 0.06;
/** A living page looks about every second, and seldom this late, seconds. */
const LATE_LOOK = 3;

/** Both readings are of a time at which sound was going on; whatever lies between them. */
export function gapBetween(before: Clocks, now: Clocks): Gap {
  const steady = now.steady - before.steady;
  const stepped = (now.wall - before.wall) / 1000 - steady;
  const still = steady - (now.audio - before.audio);
  if (stepped > STEP && still > WAKING) return { kind: "asleep", lost: stepped };
  if (still > STILL) return { kind: steady > LATE_LOOK ? "frozen" : "silent", lost: still };
  if (Math.abs(stepped) > STEP) return { kind: "clock-set", by: stepped };
  return { kind: "none" };
}
