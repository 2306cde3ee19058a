// Which wishes are spoken, at which length, and when: one optimisation, solved exactly.
//
//   maximise   the sum of the values of the wordings spoken
//   such that  each is spoken within its wish's window, clear of the quiet stretches,
//              a pause after the one before it, and in the order of the wishes.
//
// Wishes come ordered by the end of their windows. For a fixed choice of wordings the earliest
// placement of each is best for all that follow, so the only state is (when the last word ended,
// value so far), and a state that ends later with no more value can be dropped. What survives is a
// handful, since states from before the next window opens collapse into one: linear in practice.
// The order is part of the problem: words out of it are not considered. Where the best is reached in
// several ways, the value says nothing of which; `settled` then moves cues to where they are liked.
import type { Quiet } from "./quiet.ts";

export interface Wording {
  readonly seconds: number;
  readonly value: number;
}

export interface Window {
  /** Earliest start and latest end, seconds. */
  readonly earliest: number;
  readonly latestEnd: number;
  /** The start the listener would like best, given the length. */
  readonly prefer: (seconds: number) => number;
  readonly wordings: readonly Wording[];
}

/** Index of the wording chosen, and its start. */
export interface Placed {
  readonly wording: number;
  readonly at: number;
}

/** Silence that parts one voice cue from the next, seconds: the promised half, and a margin for rounding. */
export const PAUSE = 0.55;
const FUZZ = 1e-9;

interface State {
  readonly ended: number;
  readonly value: number;
  readonly placed: (Placed & { readonly wish: number }) | null;
  readonly before: State | null;
}

/** One entry a wish, in order: where it is spoken, or null where it found no room. */
export function choose(wishes: readonly Window[], quiet: Quiet): readonly (Placed | null)[] {
  let states: readonly State[] = [{ ended: -PAUSE, value: 0, placed: null, before: null }];
  for (const [wish, window] of wishes.entries()) {
    const reached: State[] = [...states];
    for (const state of collapsed(states, window.earliest)) {
      for (const [wording, { seconds, value }] of window.wordings.entries()) {
        const at = quiet.nextFree(Math.max(window.earliest, state.ended + PAUSE), seconds);
        if (at + seconds > window.latestEnd + FUZZ) continue;
        const placed = { wish, wording, at };
        reached.push({ ended: at + seconds, value: state.value + value, placed, before: state });
      }
    }
    states = undominated(reached);
  }
  return settled(wishes, quiet, states.at(-1));
}

/** Of all states that leave the window wholly open, only the most valuable can matter. */
function collapsed(states: readonly State[], opens: number): readonly State[] {
  const open = states.findLastIndex((state) => state.ended + PAUSE <= opens);
  return states.slice(Math.max(open, 0));
}

/** By end, each worth strictly more than all that end before it. */
function undominated(states: State[]): readonly State[] {
  states.sort((a, b) => a.ended - b.ended || b.value - a.value);
  const kept: State[] = [];
  for (const state of states) {
    if (state.value > (kept.at(-1)?.value ?? Number.NEGATIVE_INFINITY)) kept.push(state);
  }
  return kept;
}

/** Walks back from the best end, letting each cue drift from its earliest start to where it is liked best. */
function settled(wishes: readonly Window[], quiet: Quiet, best: State | undefined) {
  const placed: (Placed | null)[] = wishes.map(() => null);
  let nextStart = Number.POSITIVE_INFINITY;
  for (let state = best; state?.placed; state = state.before ?? undefined) {
    const { wish, wording, at } = state.placed;
    const window = wishes[wish];
    const seconds = window?.wordings[wording]?.seconds ?? 0;
    const latest = Math.min(window?.latestEnd ?? 0, nextStart - PAUSE) - seconds;
    const liked = Math.min(Math.max(window?.prefer(seconds) ?? at, at), latest);
    const start = liked > at ? Math.max(at, quiet.previousFree(liked, seconds)) : at;
    placed[wish] = { wording, at: start };
    nextStart = start;
  }
  return placed;
}
