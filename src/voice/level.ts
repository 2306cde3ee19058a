// Samples in, the same sounds at a loudness and below a ceiling out. Where the loudness alone would
// push a peak through the ceiling, the peak is turned down, and a few milliseconds either side of it.
import { gain, loudness, truePeak } from "../tones/loudness.ts";

const SAMPLE_RATE = 24_000;
/** Samples over which a peak is turned down, either side of it: 4 ms. */
const LOOK = 96;
/** LU within which the loudness is met. */
const NEAR = 0.1;
/** Turning peaks down makes the whole softer: so often it is raised again. */
const ROUNDS = 6;

/**
 * Within 0.5 LU of `target.loudness` (LUFS) for any speech; never above `target.ceiling` (dBTP).
 * @param samples 24 kHz, not silent.
 */
export function levelled(
  samples: Float32Array,
  target: { readonly loudness: number; readonly ceiling: number },
): Float32Array {
  let level = target.loudness - loudness(samples, SAMPLE_RATE);
  let limit = target.ceiling;
  for (let round = 0; ; round += 1) {
    const raised = samples.map((sample) => sample * gain(level));
    const held = limited(raised, gain(limit));
    const over = truePeak(held) - target.ceiling;
    const missing = target.loudness - loudness(held, SAMPLE_RATE);
    if (round === ROUNDS || (over <= 0 && Math.abs(missing) < NEAR)) {
      return over <= 0 ? held : held.map((sample) => sample * gain(-over));
    }
    // Between two samples the waveform may rise past both: so much lower they must stay.
    if (over > 0) limit -= over + 0.01;
    level += missing;
  }
}

/** No sample above `most`: the least gain of the stretch around each, smoothed over that stretch. */
function limited(samples: Float32Array, most: number): Float32Array {
  const wanted = samples.map((sample) => Math.min(1, most / Math.max(Math.abs(sample), most)));
  const least = wanted.map((_, i) => {
    let lowest = 1;
    for (let at = Math.max(0, i - LOOK); at <= i + LOOK && at < wanted.length; at += 1)
      lowest = Math.min(lowest, wanted[at] ?? 1);
    return lowest;
  });
  const sums = new Float64Array(least.length + 1);
  for (let i = 0; i < least.length; i += 1) sums[i + 1] = (sums[i] ?? 0) + (least[i] ?? 1);
  return samples.map((sample, i) => {
    const from = Math.max(0, i - LOOK);
    const to = Math.min(least.length, i + LOOK + 1);
    return sample * (((sums[to] ?? 0) - (sums[from] ?? 0)) / (to - from));
  });
}
