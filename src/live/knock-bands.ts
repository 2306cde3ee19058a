// Samples in, how much of each of seven bands there was in every millisecond out. A knock is judged by
// these alone: its bands rise together and die together, which no bubble, glass or voice does.

/**
 * Hz. Octaves or so, so that one sine fills one band. The lowest is there to know a door or a step by;
 * boards and trays answer a knuckle from about 100 Hz on, and above 9 kHz microphones differ.
 */
const edges = [40, 110, 220, 440, 900, 1900, 4200, 9000] as const;
export const bands = edges.length - 1;

export interface BandFilters {
  /** Samples in a frame: a millisecond, as near as whole samples come. */
  readonly frame: number;
  /** The mean square of each band over one frame, which is `frame` samples from `from` on. */
  through(samples: Float32Array, from: number): Float64Array;
}

/** Two equal second-order band-passes in a row: 12 dB an octave to either side. */
export function openBandFilters(sampleRate: number): BandFilters {
  const frame = Math.round(sampleRate / 1000);
  const filters = edges.slice(0, -1).map((low, band) => {
    // What a low rate cannot hold is left to the filters' skirts.
    const high = Math.min(edges[band + 1] ?? 0, 0.45 * sampleRate);
    return { ...bandPass(Math.min(low, 0.8 * high), high, sampleRate), past: new Float64Array(6) };
  });
  return {
    frame,
    through(samples, from) {
      const squares = new Float64Array(bands);
      for (let band = 0; band < bands; band += 1) {
        const filter = filters[band];
        if (filter !== undefined) squares[band] = run(filter, samples, from, frame) / frame;
      }
      return squares;
    },
  };
}

interface Filter {
  readonly b: number;
  readonly a1: number;
  readonly a2: number;
  /** The last two samples in, of the first band-pass, and of the second. */
  readonly past: Float64Array;
}

/** The sum of the squares of what comes through. Written out, as it runs for every sample of a run. */
function run({ b, a1, a2, past }: Filter, samples: Float32Array, from: number, many: number) {
  let x1 = past[0] ?? 0;
  let x2 = past[1] ?? 0;
  let y1 = past[2] ?? 0;
  let y2 = past[3] ?? 0;
  let z1 = past[4] ?? 0;
  let z2 = past[5] ?? 0;
  let squares = 0;
  for (let i = from; i < from + many; i += 1) {
    const x = samples[i] ?? 0;
    const y = b * (x - x2) - a1 * y1 - a2 * y2;
    const z = b * (y - y2) - a1 * z1 - a2 * z2;
    x2 = x1;
    x1 = x;
    y2 = y1;
    y1 = y;
    z2 = z1;
    z1 = z;
    squares += z * z;
  }
  past[0] = x1;
  past[1] = x2;
  past[2] = y1;
  past[3] = y2;
  past[4] = z1;
  past[5] = z2;
  return squares;
}

/** By the bilinear transform, 0 dB in the middle. */
function bandPass(low: number, high: number, rate: number) {
  const middle = Math.sqrt(low * high);
  const angle = (2 * Math.PI * middle) / rate;
  const alpha = (Math.sin(angle) * (high - low)) / (2 * middle);
  return {
    b: alpha / (1 + alpha),
    a1: (-2 * Math.cos(angle)) / (1 + alpha),
    a2: (1 - alpha) / (1 + alpha),
  };
}
