import { spawnSync } from "node:child_process";
import { describe, expect, test } from "vitest";
import { gain, kWeighting, loudness, momentary, truePeak } from "../../src/tones/loudness.ts";

/** A sine in stretches of [peak in dBFS, seconds]. */
function sine(hertz: number, rate: number, stretches: readonly (readonly [number, number])[]) {
  const samples: number[] = [];
  for (const [level, seconds] of stretches) {
    for (let i = 0; i < seconds * rate; i += 1)
      samples.push(gain(level) * Math.sin((2 * Math.PI * hertz * samples.length) / rate));
  }
  return Float32Array.from(samples);
}

const rates = [16_000, 24_000, 48_000];

describe("Loudness", () => {
  test("weighs by the coefficients that BS.1770 prints for 48 kHz", () => {
    const [shelf, highPass] = kWeighting(48_000);
    const printed = [
      [shelf.b, [1.53512485958697, -2.69169618940638, 1.19839281085285]],
      [shelf.a, [-1.69065929318241, 0.73248077421585]],
      [highPass.b, [1, -2, 1]],
      [highPass.a, [-1.99004745483398, 0.99007225036621]],
    ] as const;
    for (const [found, given] of printed)
      for (const [i, value] of given.entries()) expect(found[i]).toBeCloseTo(value, 8);
  });

  // BS.1770: a sine of 997 Hz at full scale in one channel reads −3.01 LKFS.
  test.each(rates)("of a sine of 997 Hz lies 3.01 below its peak, at %i Hz", (rate) => {
    for (const peak of [0, -20, -40]) {
      const samples = sine(997, rate, [[peak, 3]]);
      expect(loudness(samples, rate)).toBeGreaterThan(peak - 3.01 - 0.05);
      expect(loudness(samples, rate)).toBeLessThan(peak - 3.01 + 0.05);
      expect(momentary(samples, rate)).toBeCloseTo(loudness(samples, rate), 1);
    }
  });

  // EBU Tech 3341, cases 3 and 4, in one channel instead of two: 3.01 lower.
  test("leaves out what is far below the rest, and silence", () => {
    const third = [
      [-36, 10],
      [-23, 60],
      [-36, 10],
    ] as const;
    const fourth = [[-72, 10], ...third, [-72, 10]] as const;
    for (const stretches of [third, fourth])
      expect(Math.abs(loudness(sine(1000, 24_000, stretches), 24_000) + 26.01)).toBeLessThan(0.1);
    expect(loudness(new Float32Array(24_000), 24_000)).toBe(Number.NEGATIVE_INFINITY);
  });

  test("of a sound shorter than 400 ms is that of its own length", () => {
    const long = sine(997, 24_000, [[-20, 2]]);
    expect(Math.abs(loudness(long.subarray(0, 4800), 24_000) + 23.01)).toBeLessThan(0.3);
  });
});

describe("The true peak", () => {
  // EBU Tech 3341 allows +0.2 and −0.4 dB.
  test("is found between samples that straddle it", () => {
    const straddling = Float32Array.from({ length: 4800 }, (_, i) => {
      const fade = Math.min(1, i / 480, (4799 - i) / 480);
      return 0.5 * fade * Math.sin((Math.PI * i) / 2 + Math.PI / 4);
    });
    const sampled = 20 * Math.log10(Math.max(...straddling.map(Math.abs)));
    expect(sampled).toBeCloseTo(-9.03, 1);
    expect(truePeak(straddling)).toBeGreaterThan(-6.02 - 0.4);
    expect(truePeak(straddling)).toBeLessThan(-6.02 + 0.2);
  });
});

const meter = spawnSync("ffmpeg", ["-version"]).status === 0;

describe.skipIf(!meter)("ffmpeg's meter agrees", () => {
  test.each(rates)("on a swelling sawtooth at %i Hz, within 0.1 LU and 0.3 dB", (rate) => {
    const samples = Float32Array.from({ length: 5 * rate }, (_, i) => {
      const swell = 0.3 + 0.2 * Math.sin((2 * Math.PI * i) / rate);
      const fade = Math.min(1, i / 800, (5 * rate - 1 - i) / 800);
      return swell * fade * (2 * ((i * 173) / rate - Math.floor((i * 173) / rate + 0.5)));
    });
    const input = ["-f", "f32le", "-ar", String(rate), "-ac", "1", "-i", "pipe:0"];
    const { stderr } = spawnSync(
      "ffmpeg",
      ["-hide_banner", ...input, "-af", "ebur128=peak=true", "-f", "null", "-"],
      { input: new Uint8Array(samples.buffer), encoding: "utf8" },
    );
    const summary = stderr.slice(stderr.lastIndexOf("Summary:"));
    const read = (pattern: RegExp) => Number(pattern.exec(summary)?.[1]);
    expect(Math.abs(loudness(samples, rate) - read(/I:\s+(\S+) LUFS/))).toBeLessThan(0.1);
    expect(Math.abs(truePeak(samples) - read(/Peak:\s+(\S+) dBFS/))).toBeLessThan(0.3);
  });
});
