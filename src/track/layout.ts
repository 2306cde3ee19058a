// Where each section starts when a session is laid out as one track, with a wait where a press would be.
import type { Section, Timeline } from "../timeline/score.ts";

export interface SectionStart {
  readonly id: string;
  /** Seconds from the start of the track. */
  readonly at: number;
}

/** How long a section needs: its clock, or its last word where that comes later. */
const lasts = (section: Section): number =>
  section.cues.reduce((end, cue) => Math.max(end, cue.until), section.seconds);

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
    seconds = at + lasts(section);
    at = Math.ceil((seconds + gap) * 1000) / 1000;
  }
  return { starts, seconds };
}
