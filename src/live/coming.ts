// A section and a window of time in, the cues that start in it out: `[from, to)`, so that windows laid
// end to end sound each cue once. After the section's end a soft tone goes on saying that the run lives.

import type { Cue, Section } from "../timeline/score.ts";
import { alive, WAITING_CONFIRM, waitsFrom } from "../timeline/waiting.ts";

export interface Coming {
  readonly cue: Cue;
  /** Seconds on the audio clock. */
  readonly at: number;
}

export function comingCues(
  section: Section,
  pressedAt: number,
  from: number,
  to: number,
): readonly Coming[] {
  const timed = section.cues.map((cue) => ({ cue, at: pressedAt + cue.at }));
  const end = pressedAt + waitsFrom(section);
  const waiting: Coming[] = [];
  const first = Math.max(1, Math.ceil((from - end) / WAITING_CONFIRM));
  for (let n = first; end + n * WAITING_CONFIRM < to; n += 1) {
    waiting.push({ cue: alive, at: end + n * WAITING_CONFIRM });
  }
  return [...timed, ...waiting].filter(({ at }) => at >= from && at < to);
}
