// What the compiler may know of sounds: how long each truly lasts. Whole samples underneath, so
// that the length in a timeline is the length of the very sound that will be played.
import { sampleRate } from "../tones/designs.ts";
import { type PackIndex, samplesAtRate } from "../voice/pack.ts";

/** Samples of silence between two phrases of one sentence: the voice takes a breath. */
export const breathSamples = 2880;

export interface Lengths {
  /** Seconds of phrases spoken in a row, breaths included; null where the pack lacks one of them. */
  spoken(phrases: readonly string[]): number | null;
}

/** @param rate pace of speech, 1 as recorded. */
export function lengthsOf(index: PackIndex, rate: number): Lengths {
  return {
    spoken(phrases) {
      let samples = breathSamples * (phrases.length - 1);
      for (const phrase of phrases) {
        const place = index.phrases[phrase];
        if (place === undefined) return null;
        samples += samplesAtRate(place.samples, rate);
      }
      return samples / sampleRate;
    },
  };
}
