// Samples at any rate in, the same sound at 24 kHz out. By hand and not by the browser, because some
// browsers interpolate in straight lines there, which folds hisses down into the words.

const TO = 24_000;
/** Zero crossings of the sinc either side. */
const REACH = 16;

/** @param from samples a second of what comes in, 8000 or more. */
export function resampled(samples: Float32Array, from: number): Float32Array {
  if (from === TO) return samples;
  const length = Math.floor((samples.length * TO) / from);
  // Below the half of the lower rate, with a little room for the filter to fall.
  const cut = Math.min(1, (0.92 * TO) / from);
  const reach = Math.ceil(REACH / cut);
  const out = new Float32Array(length);
  for (let i = 0; i < length; i += 1) {
    const centre = (i * from) / TO;
    const first = Math.floor(centre) - reach + 1;
    let [sum, weights] = [0, 0];
    for (let at = first; at < first + 2 * reach; at += 1) {
      const weight = windowedSinc((at - centre) * cut, (at - centre) / reach);
      weights += weight;
      sum += weight * (samples[at] ?? 0);
    }
    out[i] = sum / weights;
  }
  return out;
}

/** @param within −1 to 1 over the window, which is Blackman's. */
function windowedSinc(x: number, within: number): number {
  if (Math.abs(within) >= 1) return 0;
  const window = 0.42 + 0.5 * Math.cos(Math.PI * within) + 0.08 * Math.cos(2 * Math.PI * within);
  return x === 0 ? window : (window * Math.sin(Math.PI * x)) / (Math.PI * x);
}
