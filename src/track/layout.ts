// Where each section starts when a session is laid out as one track, with a wait where a press would be.
import type { Timeline } from "../timeline/score.ts";
import { waitsFrom } from "../timeline/waiting.ts";

export interface SectionStart {
  readonly id: string;
  /** Seconds from the start of the track. */
  readonly at: number;
}

/**
 * @param gap seconds of waiting between the end of a section and the start of the next.
 * @returns the start of each section, on whole milliseconds, and the length of the whole.
 */
export function layOut(
  timeline: Timeline,
  gap: number,
): { starts: readonly SectionStart[]; seconds: number } {
  const starts: SectionStart[] = [];
  let at = 0;
  let seconds = 0;
  for (const section of timeline.sections) {
    starts.push({ id: section.id, at });
    seconds = at + waitsFrom(section);
    at = Math.ceil((seconds + gap) * 1000) / 1000;
  }
  return { starts, seconds };
}
