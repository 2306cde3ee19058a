// A track's samples in, a WAV file out, piece by piece. Most of a track is silence, and that is made once: every silent
// piece is a part of the same bytes.
import { sampleRate } from "../tones/designs.ts";
import { pcmOf, wavHeader } from "../tones/wav.ts";

/** Samples that are looked at together. */
const BLOCK = sampleRate;
/** A minute of it, as it lies in a file. */
const silence = new Uint8Array(2 * 60 * sampleRate);

/** @param marks chunks behind the samples. */
export function* wavPieces(
  samples: number,
  pieces: Iterable<Float32Array>,
  marks: Uint8Array,
): Generator<Uint8Array> {
  yield wavHeader(samples, sampleRate, marks.length);
  for (const piece of pieces) {
    for (let from = 0; from < piece.length; ) {
      const silent = isSilent(piece, from);
      let to = from;
      do to += BLOCK;
      while (to < piece.length && isSilent(piece, to) === silent);
      const part = piece.subarray(from, to);
      yield silent ? silence.subarray(0, 2 * part.length) : pcmOf(part);
      from = to;
    }
  }
  yield marks;
}

/** The bytes of it all. */
export const wavBytes = (samples: number, marks: Uint8Array): number =>
  44 + 2 * samples + marks.length;

function isSilent(piece: Float32Array, from: number): boolean {
  const to = Math.min(from + BLOCK, piece.length);
  for (let i = from; i < to; i += 1) if (piece[i] !== 0) return false;
  return true;
}
