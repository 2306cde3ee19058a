// A cue in, the very samples that are heard for it out: one place for page, track and tests, so
// that what the compiler measured is what is played.
import { sampleRate, type ToneName } from "../tones/designs.ts";
import { breathSamples } from "./lengths.ts";
import type { Cue } from "./score.ts";

/** Where the samples come from, 24 kHz mono; phrases already at the timeline's rate of speech. */
export interface Sources {
  /** @param sentence all the phrases of the cue that this one is of: one voice says them all. */
  phrase(text: string, sentence: readonly string[]): Float32Array;
  tone(name: ToneName): Float32Array;
}

/** A tone that the next moment cuts off is faded over this many samples (5 ms). */
const FADE = 120;

/** Exactly `until − at` seconds of samples at 24 kHz. */
export function soundOf(cue: Cue, sources: Sources): Float32Array {
  const samples = Math.round((cue.until - cue.at) * sampleRate);
  if (cue.channel === "tone") return cut(sources.tone(cue.sounds[0] as ToneName), samples);
  const sound = new Float32Array(samples);
  let at = 0;
  for (const text of cue.sounds) {
    const phrase = sources.phrase(text, cue.sounds);
    if (at < samples) sound.set(phrase.subarray(0, samples - at), at);
    at += phrase.length + breathSamples;
  }
  return sound;
}

function cut(tone: Float32Array, samples: number): Float32Array {
  if (tone.length <= samples) return tone;
  const sound = tone.slice(0, samples);
  for (let i = 0; i < FADE && i < samples; i += 1) {
    const last = samples - 1 - i;
    sound[last] = (sound[last] ?? 0) * (i / FADE);
  }
  return sound;
}
