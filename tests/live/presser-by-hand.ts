// A presser with a clock that is moved by hand: what was answered, and what the contacts were taken to mean.
import type { Gesture } from "../../src/live/grammar.ts";
import { openPresser } from "../../src/live/presser.ts";

type Meant = Exclude<Gesture, { readonly kind: "felt" }>;

/** A presser whose timers come when they are due, or late where the page is blocked. */
export function presserByHand() {
  let now = 100;
  let due: { readonly at: number; readonly act: () => void } | null = null;
  const felt: number[] = [];
  const meant: Meant[] = [];
  /** Of each gesture, how many contacts had been answered when it came. */
  const answered: number[] = [];
  const presser = openPresser({
    felt: () => felt.push(now),
    does(gesture) {
      meant.push(gesture);
      answered.push(felt.length);
    },
    steady: () => now,
    after(seconds, act) {
      const entry = { at: now + seconds, act };
      due = entry;
      return () => {
        if (due === entry) due = null;
      };
    },
  });
  return {
    presser,
    felt,
    meant,
    answered,
    now: () => now,
    kinds: () => meant.map((each) => (each.kind === "hold" ? "hold" : each.nth)),
    pass(seconds: number, blocked = false) {
      const end = now + seconds;
      while (!blocked && due !== null && due.at <= end) {
        const { at, act } = due;
        due = null;
        now = Math.max(now, at);
        act();
      }
      now = end;
    },
    /** Down for so long, from some source. */
    touch(seconds: number, id = "finger") {
      presser.down(id, now);
      this.pass(seconds);
      presser.up(id, now);
    },
  };
}
