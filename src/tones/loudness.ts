// How loud a sound is to ears, and how high its waveform really peaks: ITU-R BS.1770-5, mono,
// at any sample rate. Samples in, LUFS and dBTP out; it stands alone because both the voice and
// the tones are balanced by it.

/** One second-order section: y = b0 x + b1 x1 + b2 x2 − a1 y1 − a2 y2. */
interface Biquad {
  readonly b: readonly [number, number, number];
  readonly a: readonly [number, number];
}

/**
 * The two stages of K-weighting for a sample rate. The standard prints coefficients for 48 kHz;
 * these are its analogue prototypes (a shelf of +4 dB at 1.68 kHz for the head, a high-pass at
 * 38 Hz) through the bilinear transform, which gives the printed ones at 48 kHz to five places.
 */
export const kWeighting = (rate: number): readonly [Biquad, Biquad] => {
  const shelf = (() => {
    const k = Math.tan((Math.PI * 1681.974450955533) / rate);
    const q = 0.7071752369554196;
    const high = 10 ** (3.999843853973347 / 20);
    const band = high ** 0.4996667741545416;
    const a0 = 1 + k / q + k * k;
    return {
      b: [
        (high + (band * k) / q + k * k) / a0,
        (2 * (k * k - high)) / a0,
        (high - (band * k) / q + k * k) / a0,
      ],
      a: [(2 * (k * k - 1)) / a0, (1 - k / q + k * k) / a0],
    } as const;
  })();
  const highPass = (() => {
    const k = Math.tan((Math.PI * 38.13547087602444) / rate);
    const q = 0.5003270373238773;
    const a0 = 1 + k / q + k * k;
    return { b: [1, -2, 1], a: [(2 * (k * k - 1)) / a0, (1 - k / q + k * k) / a0] } as const;
  })();
  return [shelf, highPass];
};

/** In place. */
const filter = ({ b: [b0, b1, b2], a: [a1, a2] }: Biquad, samples: Float64Array): void => {
  let [x1, x2, y1, y2] = [0, 0, 0, 0];
  for (let i = 0; i < samples.length; i++) {
    const x = samples[i] ?? 0;
    const y = b0 * x + b1 * x1 + b2 * x2 - a1 * y1 - a2 * y2;
    x2 = x1;
    x1 = x;
    y2 = y1;
    y1 = y;
    samples[i] = y;
  }
};

const lufs = (power: number): number => -0.691 + 10 * Math.log10(power);
const power = (loudness: number): number => 10 ** ((loudness + 0.691) / 10);
const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/**
 * K-weighted mean square of every 400 ms block, three quarters overlapping. A sound shorter
 * than a block is one block of its own length: the standard does not say, and padding it with
 * silence would call a short beat quiet.
 */
const blocks = (samples: Float32Array, rate: number): readonly number[] => {
  const weighted = new Float64Array(samples);
  for (const stage of kWeighting(rate)) filter(stage, weighted);
  const sums = new Float64Array(weighted.length + 1);
  for (let i = 0; i < weighted.length; i++) sums[i + 1] = (sums[i] ?? 0) + (weighted[i] ?? 0) ** 2;
  const length = Math.min(Math.round(0.4 * rate), samples.length);
  const step = Math.round(0.1 * rate);
  const found: number[] = [];
  for (let from = 0; length > 0 && from + length <= samples.length; from += step)
    found.push(((sums[from + length] ?? 0) - (sums[from] ?? 0)) / length);
  return found;
};

/** Gated loudness of the whole in LUFS: −70 LUFS absolute gate, then −10 LU relative. */
export const loudness = (samples: Float32Array, rate: number): number => {
  const heard = blocks(samples, rate).filter((block) => block > power(-70));
  if (heard.length === 0) return Number.NEGATIVE_INFINITY;
  const gate = power(lufs(mean(heard)) - 10);
  return lufs(mean(heard.filter((block) => block > gate)));
};

/** Loudness of the loudest 400 ms in LUFS: what a tone is to an ear. */
export const momentary = (samples: Float32Array, rate: number): number =>
  lufs(Math.max(0, ...blocks(samples, rate)));

const oversampling = 4;
const halfTaps = 12;

/** Windowed sinc, the three phases between a sample and the next: what the waveform does there. */
const phases: readonly Float64Array[] = Array.from({ length: oversampling - 1 }, (_, phase) =>
  Float64Array.from({ length: 2 * halfTaps }, (_, tap) => {
    const x = tap - halfTaps + 1 - (phase + 1) / oversampling;
    const window = 0.5 + 0.5 * Math.cos((Math.PI * x) / halfTaps);
    return (window * Math.sin(Math.PI * x)) / (Math.PI * x);
  }),
);

/** Between samples that are all below this part of the highest, no waveform reaches a new height. */
const worthLooking = 0.5;

/** Highest true peak in dBTP (0 is full scale), oversampled four times as in Annex 2. */
export const truePeak = (samples: Float32Array): number => {
  let sampled = 0;
  for (const sample of samples) sampled = Math.max(sampled, Math.abs(sample));
  // Silence before and after it, for the taps that reach beyond.
  const around = new Float64Array(samples.length + 2 * halfTaps);
  around.set(samples, halfTaps - 1);
  let highest = sampled;
  let looked = -2;
  for (let i = 0; i < samples.length; i++) {
    if (Math.abs(samples[i] ?? 0) < worthLooking * sampled) continue;
    // Both sides of the sample: the peak may lie before it or after.
    for (let at = Math.max(i - 1, looked + 1); at <= i; at++) {
      looked = at;
      for (const taps of phases) {
        let sum = 0;
        for (let tap = 0; tap < taps.length; tap++)
          sum += (taps[tap] ?? 0) * (around[at + tap] ?? 0);
        highest = Math.max(highest, Math.abs(sum));
      }
    }
  }
  return 20 * Math.log10(highest);
};

/** The factor that a level in dB stands for. */
export const gain = (decibels: number): number => 10 ** (decibels / 20);
