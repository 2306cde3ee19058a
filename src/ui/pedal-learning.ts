// Keys in, what they teach out: a pedal is learnt, tried, forgotten. Screens call these acts and show the
// signal. Apart from them, so that it ends by itself whatever is shown: nobody is to be caught in it.
import { type ReadonlySignal, signal } from "@preact/signals";
import {
  isLearnt,
  type KeyMoment,
  type Learning,
  learningFrom,
  learnt,
  type Pedal,
  pedalsIn,
  pressedByPedal,
  type WhyNotPedal,
  whyNot,
} from "../live/pedal.ts";
import { openPresser, type Presser } from "../live/presser.ts";
import type { Clock } from "../live/synthesiser.ts";
import type { Pedals } from "./pedals.ts";

/** What a press would have meant in a run. */
type Meaning = "once" | "twice" | "thrice" | "held";

/** What came of the last act; why what was pressed last could not be learnt, where that ended it. */
export type ToldOfPedal =
  | "calledOff"
  | "nothing"
  | "learnt"
  | "notKept"
  | "tried"
  | "forgotten"
  | WhyNotPedal
  | null;

export type PedalLearning =
  | { readonly kind: "resting"; readonly told: ToldOfPedal }
  | {
      readonly kind: "capturing";
      readonly heard: number;
      readonly refused: WhyNotPedal | null;
    }
  | { readonly kind: "trying"; readonly meaning: Meaning | null };

export interface PedalLearner {
  readonly state: ReadonlySignal<PedalLearning>;
  capture(): void;
  try(): void;
  /** Ends either; what was pressed so far is dropped. */
  stop(): void;
  forget(pedal: Pedal): void;
  /** True where the key was meant for this and is nothing else. */
  key(moment: KeyMoment): boolean;
}

/** It ends by itself when nothing has been pressed for so long, seconds. */
const PATIENCE = 15;
/** How often is looked whether the pressing is over, seconds. */
const LOOK = 0.2;

const meanings: { readonly [nth in 1 | 2 | 3]: Meaning } = { 1: "once", 2: "twice", 3: "thrice" };

export function openPedalLearner(pedals: Pedals, clock: Clock): PedalLearner {
  const state = signal<PedalLearning>({ kind: "resting", told: null });
  let learning: Learning = learningFrom(0);
  let presser: Presser | null = null;
  /** When a key that meant something last came. */
  let last = 0;
  let callOff = () => {};

  function rest(told: ToldOfPedal): void {
    callOff();
    presser = null;
    state.value = { kind: "resting", told };
  }

  function begin(as: PedalLearning): void {
    callOff();
    last = clock.now();
    learning = learningFrom(last);
    state.value = as;
    callOff = clock.after(LOOK, look);
  }

  function look(): void {
    const now = clock.now();
    const isOver = now - last >= PATIENCE;
    if (state.value.kind === "capturing") {
      if (isLearnt(learning, now) || (isOver && learning.presses.length > 0)) {
        rest(pedals.learn(pedalsIn(learning)) ? "learnt" : "notKept");
        return;
      }
      if (isOver) {
        rest("nothing");
        return;
      }
    } else if (isOver) {
      rest("tried");
      return;
    }
    callOff = clock.after(LOOK, look);
  }

  function stop(): void {
    // A key that moves the focus away has ended it by that.
    if (state.value.kind === "capturing") rest(state.value.refused ?? "calledOff");
    else if (state.value.kind === "trying") rest("tried");
  }

  function captured(moment: KeyMoment): boolean {
    learning = learnt(learning, moment);
    const { presses, refused } = learning;
    state.value = { kind: "capturing", heard: presses.length, refused };
    if (whyNot(moment) !== null) return false;
    last = moment.at;
    return true;
  }

  return {
    state,
    capture: () => begin({ kind: "capturing", heard: 0, refused: null }),
    try() {
      begin({ kind: "trying", meaning: null });
      presser = openPresser({
        felt() {},
        does(gesture) {
          if (state.value.kind !== "trying") return;
          const meaning = gesture.kind === "hold" ? "held" : meanings[gesture.nth];
          state.value = { kind: "trying", meaning };
        },
        steady: clock.now,
        after: clock.after,
      });
    },
    stop,
    forget(pedal) {
      rest(pedals.forget(pedal) ? "forgotten" : "notKept");
    },
    key(moment) {
      if (state.value.kind === "resting") return false;
      if (moment.key === "Escape") {
        if (moment.kind === "down") rest(state.value.kind === "capturing" ? "calledOff" : "tried");
        return true;
      }
      if (state.value.kind === "capturing") return captured(moment);
      if (presser === null || !pressedByPedal(pedals.all.value, presser, moment)) return false;
      last = moment.at;
      return true;
    },
  };
}
