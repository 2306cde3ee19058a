// A track in, its sound out, minute by minute: every cue's sound added at its place.
// Mixed by hand into arrays: it is the fastest way measured, and the same everywhere. In pieces,
// so that a day-long track takes no more memory than a short one.
import { type Sources, soundOf } from "../timeline/sound.ts";
import { sampleRate } from "../tones/designs.ts";
import type { Track } from "./track.ts";

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
export const trackSamples = ({ seconds }: Pick<Track, "seconds">): number =>
  Math.ceil((seconds + LAST) * sampleRate);

/**
 * Mono at 24 kHz, from −1 to 1, in pieces of a minute; the last may be shorter. Each is to be done with before the next
 * is asked for: they are one array, since getting memory for each takes as long as mixing it.
 */
export function* mix(track: Track, sources: Sources): Generator<Float32Array> {
  const length = trackSamples(track);
  const minute = new Float32Array(Math.min(PIECE, length));
  let next = 0;
  let sounding: readonly Sounding[] = [];
  for (let from = 0; from < length; from += PIECE) {
    const piece = minute.subarray(0, length - from);
    piece.fill(0);
    const begun: Sounding[] = [];
    for (let cue = track.cues[next]; cue !== undefined; cue = track.cues[next]) {
      const at = Math.round(cue.at * sampleRate);
      if (at >= from + piece.length) break;
      begun.push({ sound: soundOf(cue.cue, sources), at });
      next += 1;
    }
    sounding = [...sounding, ...begun].filter(({ sound, at }) => at + sound.length > from);
    for (const { sound, at } of sounding) add(piece, sound, at - from);
    yield piece;
  }
}

/** Adds what falls within the piece; `at` is negative for a sound that began before it. */
function add(piece: Float32Array, sound: Float32Array, at: number): void {
  const end = Math.min(sound.length, piece.length - at);
  for (let i = Math.max(0, -at); i < end; i += 1) {
    const sum = (piece[at + i] ?? 0) + (sound[i] ?? 0);
    piece[at + i] = Math.max(-1, Math.min(1, sum));
  }
}
