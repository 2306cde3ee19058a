// A clip's ends, so that it begins and ends in silence and no click is heard: one shape for the pack and
// for a person's own clips.

/** Raises the first samples from nothing and lowers the last to it, along a squared sine, in place. */
export function fadeEnds(samples: Float32Array, rising: number, falling: number): void {
  const fade = (length: number, at: (i: number) => number) => {
    for (let i = 0; i < length; i++)
      samples[at(i)] = (samples[at(i)] ?? 0) * Math.sin((Math.PI * i) / (2 * length)) ** 2;
  };
  fade(rising, (i) => i);
  fade(falling, (i) => samples.length - 1 - i);
}
