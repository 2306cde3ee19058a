// What is known of a track's MP3 frames before they are made: 24 kHz, mono, at one bit rate, so that where a frame
// lies is known. Apart from the encoder, since the pure stages name its port alone.
import { sampleRate } from "./designs.ts";

/** Bits a second: speech and tones lose nothing that is heard at it. */
export const bitRate = 64_000;
/** Samples that a frame holds at 24 kHz, by the format. */
export const frameSamples = 576;
/** Bytes of a frame, its header included. */
export const frameBytes = (frameSamples / 8) * (bitRate / sampleRate);
/** Samples by which the encoder's output begins before its input. */
export const encoderDelay = 576;

export interface Mp3Encoder {
  /** Whole frames, as they come. @param samples a minute of them at most. */
  encode(samples: Float32Array): Uint8Array;
  /** What is left, once all was handed over. */
  flush(): Uint8Array;
}

/** Of a track of so many samples, what comes out of the encoder: the last frames hold what it looks ahead. */
export function framesOf(samples: number): number {
  const over = (samples + encoderDelay) % frameSamples;
  const padding = frameSamples - over + (over === 0 ? 0 : frameSamples);
  return (samples + encoderDelay + padding) / frameSamples;
}
