// What a run gives to whatever makes it heard: its sections as they are to sound, and since when one is on.
// Two things do: sounds placed one by one on the audio clock (placer.ts), and one track (pocket.ts).
import type { Cue, Section } from "../timeline/score.ts";

export interface Heard {
  /** Every section, the cues of the one that is on as they are to be heard from now on. */
  readonly sections: readonly Section[];
  /** Which one is on; −1 before the first press. */
  readonly index: number;
  /** When it was pressed for, seconds on the steady clock. */
  readonly pressedAt: number;
  /** Called with words that began before they could be heard, and were not. */
  readonly late?: (cues: readonly Cue[]) => void;
}

export interface Outlet {
  /** From now on this is to be heard, whatever was before. */
  update(heard: Heard): void;
  /** Seconds ahead of its time at which something must be given to it, to be heard. */
  ahead(): number;
  /** Comes about every second, and a late one costs nothing. */
  look(): void;
  /**
   * What was laid ahead lies wrong, and is taken away: a little, where only what has not begun is to be laid
   * anew; all of it, where sound stood still or time jumped. An update or a look follows.
   */
  resettle(how: "a little" | "all"): void;
  close(): void;
}
