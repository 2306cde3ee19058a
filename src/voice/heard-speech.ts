// A recording in, where in it somebody speaks out. By frames of 10 ms, in two bands, each against its
// own noise floor: a soft "f" or "s" is lost among all sounds, but not among the high ones.

/** Samples in a frame: 10 ms at 24 kHz. */
export const frame = 240;

/** Which frames are spoken, `[from, to)`, and how much the recording holds besides noise. */
export interface Heard {
  readonly from: number;
  readonly to: number;
  /** Frames within them that are louder than the room. */
  readonly spoken: number;
  /** dB from the room's noise to the loud parts: below about 8, no one spoke. */
  readonly aboveNoise: number;
}

/** A frame is spoken where it is so many dB above the floor of either band. */
const ABOVE = 6;
/** Frames of silence that a word may hold, such as the one before a "t". */
const GAP = 20;
/** What is shorter than so many frames and stands apart is a knock or a key, and no word. */
const KNOCK = 6;
/** Words that begin or end so near the recording's own ends were cut by these: nothing more is. */
const EDGE = 20;
/** Below this no microphone hears anything, dBFS: digital silence has a floor too. */
const NOTHING = -90;

/** @param samples 24 kHz, cleared of rumble. */
export function heardSpeech(samples: Float32Array): Heard {
  const all = levels(samples);
  const high = levels(highBand(samples));
  const active = eitherAbove(all, high);
  const runs = runsOf(active);
  const words = runs.filter(
    ({ from, to }, i) => to - from >= KNOCK || (i > 0 && i < runs.length - 1),
  );
  const first = words[0]?.from ?? 0;
  const last = words.at(-1)?.to ?? 0;
  const from = first < EDGE && words[0] === runs[0] ? 0 : first;
  const to = last > all.length - EDGE && words.at(-1) === runs.at(-1) ? all.length : last;
  const spoken = active.slice(from, to).filter(Boolean).length;
  return { from, to, spoken, aboveNoise: loudPart(all) - floorOf(all) };
}

/** dBFS of each whole frame. */
function levels(samples: Float32Array): readonly number[] {
  return Array.from({ length: Math.floor(samples.length / frame) }, (_, i) => {
    const part = samples.subarray(i * frame, (i + 1) * frame);
    const square = part.reduce((sum, sample) => sum + sample * sample, 0) / frame;
    return Math.max(NOTHING, 10 * Math.log10(square));
  });
}

/** Two differences: 24 dB less at 750 Hz than at 6 kHz, where hisses lie. */
function highBand(samples: Float32Array): Float32Array {
  return samples.map((sample, i) => sample - 2 * (samples[i - 1] ?? 0) + (samples[i - 2] ?? 0));
}

function eitherAbove(all: readonly number[], high: readonly number[]): readonly boolean[] {
  const [allFrom, highFrom] = [floorOf(all) + ABOVE, floorOf(high) + ABOVE];
  return all.map((level, i) => level > allFrom || (high[i] ?? NOTHING) > highFrom);
}

/** The level below which the quietest tenth of the frames lies. */
const floorOf = (band: readonly number[]): number => part(band, 0.1);
/** The level above which the loudest twentieth lies. */
const loudPart = (band: readonly number[]): number => part(band, 0.95);

function part(band: readonly number[], below: number): number {
  const sorted = band.toSorted((a, b) => a - b);
  return sorted[Math.floor(below * (sorted.length - 1))] ?? NOTHING;
}

/** Stretches of active frames, those a short silence apart taken for one. */
function runsOf(active: readonly boolean[]): readonly { from: number; to: number }[] {
  const runs: { from: number; to: number }[] = [];
  for (const [i, is] of active.entries()) {
    if (!is) continue;
    const last = runs.at(-1);
    if (last !== undefined && i - last.to <= GAP) last.to = i + 1;
    else runs.push({ from: i, to: i + 1 });
  }
  return runs;
}
