import { describe, expect, test } from "vitest";
import { sampleRate, type ToneName, toneNames, toneSamples } from "../../src/tones/designs.ts";
import { builtKit as kit } from "../browser/built-kit.ts";

/** Level of one frequency in a stretch of samples, dB, by Goertzel's recurrence. */
function level(samples: Float32Array, hertz: number): number {
  const turn = 2 * Math.cos((2 * Math.PI * hertz) / sampleRate);
  let [last, before] = [0, 0];
  for (const [i, sample] of samples.entries()) {
    const hann = 0.5 - 0.5 * Math.cos((2 * Math.PI * i) / (samples.length - 1));
    [last, before] = [sample * hann + turn * last - before, last];
  }
  const power = last * last + before * before - turn * last * before;
  return 10 * Math.log10(power / samples.length ** 2 + 1e-20);
}

/** The fundamental of each note, and when it sounds steadily, seconds. */
const notes: {
  readonly [name in ToneName]: readonly { pitch: number; from: number; to: number }[];
} = {
  press: [{ pitch: 698, from: 0.002, to: 0.04 }],
  count: [{ pitch: 587, from: 0.01, to: 0.1 }],
  "pour-in": [
    { pitch: 220, from: 0.02, to: 0.2 },
    { pitch: 330, from: 0.25, to: 0.45 },
  ],
  "pour-out": [
    { pitch: 392, from: 0.01, to: 0.1 },
    { pitch: 165, from: 0.5, to: 1 },
  ],
  agitate: [{ pitch: 294, from: 0.02, to: 0.4 }],
  over: [{ pitch: 494, from: 0.01, to: 0.15 }],
  back: [{ pitch: 370, from: 0.01, to: 0.15 }],
  rest: [
    { pitch: 262, from: 0.01, to: 0.13 },
    { pitch: 175, from: 0.18, to: 0.44 },
  ],
  confirm: [{ pitch: 196, from: 0.1, to: 0.32 }],
};

/** Energy by 25 ms and by third of an octave over the first half second: what an ear has to go by. */
function sketch(name: ToneName): readonly number[] {
  const half = new Float32Array(sampleRate / 2);
  half.set(kit.samples(name).subarray(0, half.length));
  const step = sampleRate / 40;
  return Array.from({ length: 20 }, (_, i) => half.subarray(i * step, (i + 1) * step)).flatMap(
    (part) =>
      Array.from({ length: 13 }, (_, band) => 10 ** (level(part, 150 * 2 ** (band / 3)) / 20)),
  );
}

function alikeness(a: readonly number[], b: readonly number[]): number {
  const dot = (x: readonly number[], y: readonly number[]) =>
    x.reduce((sum, value, i) => sum + value * (y[i] ?? 0), 0);
  return dot(a, b) / Math.sqrt(dot(a, a) * dot(b, b));
}

describe("Every tone", () => {
  test.each(toneNames)(
    "%s is as long as designs.ts states, starts at once and ends in silence",
    (name) => {
      const samples = kit.samples(name);
      expect(samples).toHaveLength(toneSamples(name));
      const onset = samples.findIndex((sample) => Math.abs(sample) > 0.01);
      // A sign of life swells; all others are to be landed on.
      expect(onset / sampleRate).toBeLessThan(name === "confirm" ? 0.02 : 0.0015);
      for (const sample of samples.subarray(-24)) expect(Math.abs(sample)).toBeLessThan(0.01);
      const mean = samples.reduce((sum, sample) => sum + sample, 0) / samples.length;
      expect(Math.abs(mean)).toBeLessThan(0.002);
    },
  );

  // Fundamentals at or below 2,500 Hz: JIS S 0014:2013. Fundamental 150–1000 Hz with four or more
  // harmonics in 300–4000 Hz within 15 dB of each other: a summary of IEC 60601-1-8.
  test.each(toneNames)("%s has a low fundamental and four harmonics that carry", (name) => {
    for (const { pitch, from, to } of notes[name]) {
      expect(pitch).toBeGreaterThanOrEqual(150);
      expect(pitch).toBeLessThanOrEqual(1000);
      const part = kit.samples(name).subarray(from * sampleRate, to * sampleRate);
      const harmonics = Array.from({ length: 26 }, (_, i) => pitch * (i + 1))
        .filter((hertz) => hertz >= 300 && hertz <= 4000)
        .map((hertz) => level(part, hertz));
      const strongest = Math.max(...harmonics);
      expect(
        harmonics.filter((harmonic) => harmonic > strongest - 15).length,
      ).toBeGreaterThanOrEqual(4);
      // And the pitch is the one designed: between two harmonics there is next to nothing.
      expect(level(part, pitch)).toBeGreaterThan(level(part, pitch * 1.5) + 10);
    }
  });

  test("the signals differ within their first half second", () => {
    const signals = ["pour-in", "pour-out", "agitate", "rest", "count"] as const;
    for (const a of signals) {
      for (const b of signals) {
        // 1 is the same sound; 0.8 is proposed here as a bound, no source gives one.
        if (a < b) expect(alikeness(sketch(a), sketch(b)), `${a} and ${b}`).toBeLessThan(0.8);
      }
    }
    expect(alikeness(sketch("rest"), sketch("rest"))).toBeCloseTo(1, 9);
  });

  test("the pour-out is the longest, and like nothing else", () => {
    const others = toneNames.filter((name) => name !== "pour-out");
    for (const other of others) {
      expect(toneSamples("pour-out")).toBeGreaterThan(2 * toneSamples(other));
      expect(alikeness(sketch("pour-out"), sketch(other)), other).toBeLessThan(0.7);
    }
  });
});
