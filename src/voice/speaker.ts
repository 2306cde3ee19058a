// Who says a sentence: a person's own clips, or else the bundled pack. One place, since the lengths and
// the sounds must agree, and no sentence may change its speaker in the middle.
import type { DevicePace } from "./device-pace.ts";

/** Clips by the phrase's own text: 16 bits, 24 kHz, mono. */
export type OwnClips = ReadonlyMap<string, Int16Array>;

export const noClips: OwnClips = new Map();

/** Who was chosen to speak: clips on the bundled pack's behalf, or a voice of the device. */
export type Speaker =
  | { readonly kind: "clips"; readonly own: OwnClips }
  | { readonly kind: "device"; readonly voice: string; readonly pace: DevicePace };

export const bundled: Speaker = { kind: "clips", own: noClips };

/** Whether clips hold every phrase of a sentence. */
export function saysAll(clips: OwnClips, sentence: readonly string[]): boolean {
  return clips.size > 0 && sentence.every((phrase) => clips.has(phrase));
}

/** A person's own clip of a phrase, where it says it: only in a sentence that it says whole. */
export function ownClipOf(
  text: string,
  sentence: readonly string[],
  own: OwnClips,
): Int16Array | undefined {
  return saysAll(own, sentence) ? own.get(text) : undefined;
}

/**
 * A phrase of a sentence in the voice that says it, as recorded.
 * @param pack says it where the own voice does not say the sentence whole.
 */
export function phraseOf(
  text: string,
  sentence: readonly string[],
  own: OwnClips,
  pack: (text: string) => Float32Array,
): Float32Array {
  const clip = ownClipOf(text, sentence, own);
  return clip === undefined ? pack(text) : toSound(clip);
}

/** A clip as it is played, from −1 to 1. */
export const toSound = (samples: Int16Array): Float32Array =>
  Float32Array.from(samples, (sample) => sample / 32768);
