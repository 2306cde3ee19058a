// Running water, made up: what the voice and the tones must carry over. And how much of a sound there is.

/** Noise whose middle and treble swell and fade slowly, as of a tap into a steel sink; the same each time. */
export function water(length: number, rate: number): Float32Array {
  let seed = 7;
  const random = () => {
    seed = (seed * 48_271) % 2_147_483_647;
    return (2 * seed) / 2_147_483_647 - 1;
  };
  let [low, high] = [0, 0];
  return Float32Array.from({ length }, (_, i) => {
    const white = random();
    low += 0.25 * (white - low);
    high = white - low;
    const swell = 1 + 0.3 * Math.sin((2 * Math.PI * 3.1 * i) / rate);
    return swell * (low + 0.4 * high);
  });
}

/** Root of the mean square. */
export function level(samples: Float32Array): number {
  return Math.sqrt(samples.reduce((sum, sample) => sum + sample * sample, 0) / samples.length);
}
