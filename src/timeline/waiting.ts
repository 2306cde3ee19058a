// What is heard when a section is over and the next press has not come: a soft tone now and then, which says
// that the run lives. A rule of its own, since whatever makes a run heard keeps to it.
import type { Cue, Section } from "./score.ts";
import { confirmCue } from "./signals.ts";

/** Seconds between two such tones. */
export const WAITING_CONFIRM = 30;

/** It belongs to no section. */
export const alive: Cue = confirmCue(0);

/** Seconds into a section from which on it waits: its clock, or its last sound where that comes later. */
export const waitsFrom = (section: Section): number =>
  section.cues.reduce((end, cue) => Math.max(end, cue.until), section.seconds);
