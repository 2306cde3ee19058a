// A timeline in, its track out, minute by minute: every cue's sound added at its place.
// Mixed by hand into arrays: it is the fastest way measured, and the same everywhere. In pieces,
// so that a day-long track takes no more memory than a short one.
import type { Timeline } from "../timeline/score.ts";
import { type Sources, soundOf } from "../timeline/sound.ts";
import { sampleRate } from "../tones/designs.ts";
import { layOut } from "./layout.ts";

/** Seconds of silence after the last sound. */
const LAST = 1;
/** Samples in a piece: a minute. */
const PIECE = 60 * sampleRate;

interface Sounding {
  readonly sound: Float32Array;
  /** Sample of the track at which it begins. */
  readonly at: number;
}

/** Samples of the whole track at 24 kHz. */
export const trackSamples = (timeline: Timeline, gap: number): number =>
  Math.ceil((layOut(timeline, gap).seconds + LAST) * sampleRate);

/** Mono at 24 kHz, from −1 to 1, in pieces of a minute; the last may be shorter. */
export function* mix(timeline: Timeline, gap: number, sources: Sources): Generator<Float32Array> {
  const cues = placedCues(timeline, gap);
  const length = trackSamples(timeline, gap);
  let next = 0;
  let sounding: readonly Sounding[] = [];
  for (let from = 0; from < length; from += PIECE) {
    const piece = new Float32Array(Math.min(PIECE, length - from));
    const begun: Sounding[] = [];
    for (
      let cue = cues[next];
      cue !== undefined && cue.at < from + piece.length;
      cue = cues[next]
    ) {
      begun.push({ sound: soundOf(cue.cue, sources), at: cue.at });
      next += 1;
    }
    sounding = [...sounding, ...begun].filter(({ sound, at }) => at + sound.length > from);
    for (const { sound, at } of sounding) add(piece, sound, at - from);
    yield piece;
  }
}

function placedCues(timeline: Timeline, gap: number) {
  const { starts } = layOut(timeline, gap);
  return timeline.sections
    .flatMap((section, i) =>
      section.cues.map((cue) => ({
        cue,
        at: Math.round(((starts[i]?.at ?? 0) + cue.at) * sampleRate),
      })),
    )
    .toSorted((a, b) => a.at - b.at);
}

/** Adds what falls within the piece; `at` is negative for a sound that began before it. */
function add(piece: Float32Array, sound: Float32Array, at: number): void {
  const end = Math.min(sound.length, piece.length - at);
  for (let i = Math.max(0, -at); i < end; i += 1) {
    const sum = (piece[at + i] ?? 0) + (sound[i] ?? 0);
    piece[at + i] = Math.max(-1, Math.min(1, sum));
  }
}
