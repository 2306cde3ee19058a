// A timeline in, one run of samples out: every cue's sound added at its place.
// Mixed by hand into one array: it is the fastest way measured, and the same everywhere.
import type { Timeline } from "../timeline/score.ts";
import { type Sources, soundOf } from "../timeline/sound.ts";
import { sampleRate } from "../tones/designs.ts";
import { layOut } from "./layout.ts";

/** Seconds of silence after the last sound. */
const LAST = 1;

/** Mono at 24 kHz, from −1 to 1. */
export function mix(timeline: Timeline, gap: number, sources: Sources): Float32Array {
  const { starts, seconds } = layOut(timeline, gap);
  const track = new Float32Array(Math.ceil((seconds + LAST) * sampleRate));
  for (const [i, section] of timeline.sections.entries()) {
    const start = starts[i]?.at ?? 0;
    for (const cue of section.cues) {
      add(track, soundOf(cue, sources), Math.round((start + cue.at) * sampleRate));
    }
  }
  return track;
}

function add(track: Float32Array, sound: Float32Array, at: number): void {
  for (let i = 0; i < sound.length; i += 1) {
    const sum = (track[at + i] ?? 0) + (sound[i] ?? 0);
    track[at + i] = Math.max(-1, Math.min(1, sum));
  }
}
