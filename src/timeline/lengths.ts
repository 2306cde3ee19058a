// What the compiler may know of sounds: how long each truly lasts. Whole samples underneath, so
// that the length in a timeline is the length of the very sound that will be played.
import { sampleRate } from "../tones/designs.ts";
import { slotFor } from "../voice/device-pace.ts";
import { type PackIndex, samplesAtRate } from "../voice/pack.ts";
import { noClips, type OwnClips, type Speaker, saysAll } from "../voice/speaker.ts";

/** Samples of silence between two phrases of one sentence: the voice takes a breath. */
export const breathSamples = 2880;

export interface Lengths {
  /** Seconds of phrases spoken in a row, breaths included; null where the pack lacks one of them. */
  spoken(phrases: readonly string[]): number | null;
}

/**
 * @param rate pace of speech, 1 as recorded.
 * @param own clips that a person has recorded: they say the sentences that they can say whole.
 */
export function lengthsOf(index: PackIndex, rate: number, own: OwnClips = noClips): Lengths {
  return {
    spoken(phrases) {
      const isOwn = saysAll(own, phrases);
      let samples = breathSamples * (phrases.length - 1);
      for (const phrase of phrases) {
        const recorded = isOwn ? own.get(phrase)?.length : index.phrases[phrase]?.samples;
        if (recorded === undefined) return null;
        samples += samplesAtRate(recorded, rate);
      }
      return samples / sampleRate;
    },
  };
}

/** Of whoever was chosen. A voice of the device has bounds for lengths, and a pace of its own. */
export function lengthsFor(speaker: Speaker, index: PackIndex, rate: number): Lengths {
  switch (speaker.kind) {
    case "clips":
      return lengthsOf(index, rate, speaker.own);
    case "device":
      return { spoken: (phrases) => slotFor(phrases.join(" "), speaker.pace) };
  }
}

/**
 * The rate at which the bundled voice says a sentence within a slot that was made for another: `rate`
 * itself where there is room for it.
 * @param slot seconds; longer than the breaths between the phrases.
 */
export function rateWithin(
  slot: number,
  phrases: readonly string[],
  index: PackIndex,
  rate: number,
): number {
  const natural = lengthsOf(index, rate).spoken(phrases) ?? 0;
  // Times in a timeline are rounded to the microsecond.
  if (natural <= slot + 1e-5) return rate;
  const breaths = (breathSamples * (phrases.length - 1)) / sampleRate;
  // Each phrase is rounded to a whole sample.
  const room = slot - breaths - phrases.length / sampleRate;
  return (rate * (natural - breaths)) / room;
}
