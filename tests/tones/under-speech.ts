// Whether a tone is heard while the voice speaks over it: both as they are played, compared in the bands
// in which an ear hears. A tone is heard in noise once it has about as much power as the noise within its
// own critical band (Fletcher 1940; his critical ratio is some dB kinder). Speech is no steady noise,
// so it is looked at frame by frame, and a tone that shows only for an instant does not count.
import FFT from "fft.js";
import { sampleRate } from "../../src/tones/designs.ts";

/** 43 ms, every 11 ms. */
const frame = 1024;
const hop = 256;

/** Frames in which the tone must stand out, of those in its first `window` seconds: about 50 ms. */
const enough = 5;
const window = 0.2;

/** Hz; from memory. */
const lowest = 450;

/** Width of the ear's filter at a frequency, Hz (Glasberg and Moore 1990). */
const earWidth = (hertz: number) => 24.7 * (0.00437 * hertz + 1);

/** Bins of each band, one ear's width after another, from where a telephone's loudspeaker begins to 5 kHz. */
const bands: readonly (readonly [number, number])[] = (() => {
  const edges = [lowest];
  for (let at = lowest; at < 5000; at += earWidth(at)) edges.push(at + earWidth(at));
  const bin = (hertz: number) => Math.round((hertz * frame) / sampleRate);
  return edges.slice(1).map((to, i) => [bin(edges[i] ?? 0), bin(to)] as const);
})();

const fft = new FFT(frame);
const hann = Float64Array.from(
  { length: frame },
  (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * i) / frame),
);

/** Power in each band around `at`, samples. */
function heardAt(samples: Float32Array, at: number): readonly number[] {
  const spectrum = fft.createComplexArray();
  const framed = Array.from(hann, (weight, i) => weight * (samples[at - frame / 2 + i] ?? 0));
  fft.realTransform(spectrum, framed);
  return bands.map(([from, to]) => {
    let power = 0;
    for (let bin = from; bin < to; bin++)
      power += (spectrum[2 * bin] ?? 0) ** 2 + (spectrum[2 * bin + 1] ?? 0) ** 2;
    return power;
  });
}

/** The bands of a sound, frame by frame, from its start. */
export const bandsOf = (samples: Float32Array): readonly (readonly number[])[] =>
  Array.from({ length: Math.ceil(samples.length / hop) }, (_, i) => heardAt(samples, i * hop));

/**
 * How far a tone that begins `after` frames into speech stands above it in its best band, dB: what it
 * reaches in `enough` of its first frames.
 */
export function standsOut(
  tone: readonly (readonly number[])[],
  speech: readonly (readonly number[])[],
  after: number,
): number {
  const frames = tone.slice(0, Math.round((window * sampleRate) / hop));
  const above = frames.map((powers, i) => {
    const beside = speech[after + i] ?? [];
    const best = Math.max(...powers.map((power, band) => power / ((beside[band] ?? 0) + 1e-9)));
    return 10 * Math.log10(best);
  });
  return above.toSorted((a, b) => b - a)[enough - 1] ?? Number.NEGATIVE_INFINITY;
}
