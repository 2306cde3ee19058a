// The bed under everything that is played: noise too soft to notice, so that wireless links stay awake, and
// a page in a pocket counts as sounding. From a fixed seed, so that what is played can be told to the sample.
import { sampleRate } from "./designs.ts";

/** −60 dB under full scale. */
const LEVEL = 0.001;
/** After so many samples, 4 s, it begins anew. */
export const bedSamples = 4 * sampleRate;

export function bedNoise(): Float32Array {
  const noise = new Float32Array(bedSamples);
  let seed = 1;
  for (let i = 0; i < noise.length; i += 1) {
    seed = (seed * 48271) % 2147483647;
    noise[i] = LEVEL * ((2 * seed) / 2147483647 - 1);
  }
  return noise;
}
