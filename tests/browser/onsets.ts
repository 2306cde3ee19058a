// Where a known sound begins in what was captured: the lag at which the two are most alike, to a fraction
// of a sample. Works under speech and noise, where a threshold on loudness would not.
import type { Captured } from "./capture.ts";

export interface Onset {
  /** Seconds on the audio clock. */
  readonly at: number;
  /** 1 where what was captured is the sound and nothing else; near 0 where it is not there. */
  readonly likeness: number;
}

/**
 * @param sound samples at 24 kHz.
 * @param near seconds on the audio clock; searched `within` seconds either side.
 */
export function onsetOf(
  captured: Captured,
  sound: Float32Array,
  near: number,
  within: number,
): Onset | null {
  const { sampleRate, firstFrame, samples } = captured;
  const known = resampled(sound, 24_000, sampleRate);
  const centre = Math.round(near * sampleRate) - firstFrame;
  const reach = Math.round(within * sampleRate);
  // Coarsely first, a few samples apart and of every second sample; then to the sample about the best of those,
  // of which there are several: a tone is much like itself a period later. Which of them it is, is told between samples,
  // where the sound may lie: half a sample off, it is less like itself than a period later, if that is nearer to one.
  const rough = Array.from({ length: Math.floor((2 * reach) / STEP) + 1 }, (_, i) => {
    const lag = centre - reach + i * STEP;
    return { lag, likeness: likenessAt(samples, known, lag, 2) };
  });
  const fine = rough
    .toSorted((one, other) => other.likeness - one.likeness)
    .slice(0, CANDIDATES)
    .flatMap(({ lag }) => Array.from({ length: 2 * STEP + 1 }, (_, i) => lag - STEP + i))
    .map((lag) => ({ lag, likeness: likenessAt(samples, known, lag, 1) }))
    .toSorted((one, other) => other.likeness - one.likeness)
    .slice(0, CANDIDATES);
  const peaks = fine.flatMap(({ lag, likeness }) => {
    const [before, after] = [lag - 1, lag + 1].map((each) => likenessAt(samples, known, each, 1));
    if (before === undefined || after === undefined) return [];
    if (!(likeness > 0) || before > likeness || after > likeness) return [];
    const bend = before - 2 * likeness + after;
    const fraction = bend === 0 ? 0 : (0.5 * (before - after)) / bend;
    const most = Math.min(1, likeness - 0.25 * (before - after) * fraction);
    return [{ at: (firstFrame + lag + fraction) / sampleRate, likeness: most }];
  });
  const [first, ...others] = peaks;
  if (first === undefined) return null;
  return others.reduce((best, each) => (each.likeness > best.likeness ? each : best), first);
}

/** Samples from one rough look to the next: a fraction of a period of the tones. */
const STEP = 4;
const CANDIDATES = 24;

/** Of a sound, the part that has to be captured to tell. */
const ENOUGH = 0.5;

function likenessAt(
  samples: Float32Array,
  known: Float32Array,
  lag: number,
  stride: number,
): number {
  if (lag < 0 || lag + known.length > samples.length) return 0;
  let product = 0;
  let heard = 0;
  let pure = 0;
  let captured = 0;
  for (let i = 0; i < known.length; i += stride) {
    const a = samples[lag + i] ?? 0;
    const b = known[i] ?? 0;
    // What the capture missed is neither like the sound nor unlike it.
    if (Number.isNaN(a)) continue;
    captured += stride;
    product += a * b;
    heard += a * a;
    pure += b * b;
  }
  if (captured < known.length * ENOUGH) return 0;
  return heard === 0 ? 0 : product / Math.sqrt(heard * pure);
}

function resampled(sound: Float32Array, from: number, to: number): Float32Array {
  const length = Math.floor((sound.length * to) / from);
  return Float32Array.from({ length }, (_, i) => {
    const at = (i * from) / to;
    const whole = Math.floor(at);
    const part = at - whole;
    return (sound[whole] ?? 0) * (1 - part) + (sound[whole + 1] ?? 0) * part;
  });
}
