// Touches of a run's small controls in, whether each is one of its own out. Wet fingers bounce there as well, and
// a control that is touched twice in a row was meant once: the second touch may meet what the first has changed.
import { BOUNCE, IN_A_ROW } from "../live/grammar.ts";

/** Times are seconds, of any beginning; a control is told from others by being the same. */
export interface ToolTouches {
  down(control: unknown, at: number): void;
  up(control: unknown, at: number): void;
  /** @param steps whether it is one of those that are pressed as fast as fingers are, to step a number. */
  counts(at: number, steps: boolean): boolean;
}

export function openToolTouches(): ToolTouches {
  let lastUp: { readonly control: unknown; readonly at: number } | null = null;
  let lastClick = Number.NEGATIVE_INFINITY;
  let bounced = false;
  return {
    down(control, at) {
      bounced = lastUp !== null && lastUp.control === control && at - lastUp.at < BOUNCE;
    },
    up(control, at) {
      lastUp = { control, at };
    },
    counts(at, steps) {
      if (steps) return !bounced;
      const again = at - lastClick < IN_A_ROW;
      lastClick = at;
      return !bounced && !again;
    },
  };
}
