import { beforeAll, describe, expect, test } from "vitest";
import { loudness } from "../../src/tones/loudness.ts";
import { openPack, samplesAtRate } from "../../src/voice/pack.ts";
import { openStretch, type Stretch } from "../../src/voice/stretch.ts";
import { packaged, packBytes, packIndex, peak, phrases } from "./built-pack.ts";

const pack = await openPack(packIndex, packBytes);
const some = phrases.filter((_, i) => i % 8 === 0);
const rates = [0.8, 0.9, 1.1, 1.25, 1.6];

let stretch: Stretch;
beforeAll(async () => {
  stretch = await openStretch(packaged("@echogarden/sonic-wasm/sonic.wasm"));
});

/** How often the sign turns upward, a second: half of it is the pitch of a sine. */
const hertz = (samples: Float32Array): number => {
  const turns = samples.filter((sample, i) => sample >= 0 && (samples[i - 1] ?? 0) < 0).length;
  return (24_000 * turns) / samples.length;
};

describe("Stretched speech", () => {
  test("is untouched at its own rate", () => {
    const samples = pack.decode(some[0] ?? "");
    expect(stretch(samples, 1)).toBe(samples);
  });

  test.each(rates)("is exactly as long as the compiler reckoned, at %d", (rate) => {
    for (const text of some) {
      const samples = pack.decode(text);
      expect(stretch(samples, rate).length, text).toBe(samplesAtRate(samples.length, rate));
    }
  });

  test.each(rates)("ends in silence, with nothing that was said cut off, at %d", (rate) => {
    for (const text of some) {
      const samples = pack.decode(text);
      const stretched = stretch(samples, rate);
      // Had words been cut, the last 5 ms would still be loud; had too much been added, the last
      // 150 ms would hold none.
      expect(peak(stretched.subarray(-120)), text).toBeLessThan(-30);
      expect(peak(stretched.subarray(-3600)), text).toBeGreaterThan(-36);
      expect(Math.abs(loudness(stretched, 24_000) - loudness(samples, 24_000)), text).toBeLessThan(
        1.5,
      );
    }
  });

  test.each(rates)("keeps its pitch within one part in a hundred, at %d", (rate) => {
    const sine = Float32Array.from({ length: 72_000 }, (_, i) =>
      Math.sin((2 * Math.PI * 200 * i) / 24_000),
    );
    const inner = stretch(sine, rate).slice(2400, -2400);
    expect(Math.abs(hertz(inner) / 200 - 1)).toBeLessThan(0.01);
  });

  test("gives the same samples every time, whatever was stretched before", async () => {
    const afresh = await openStretch(packaged("@echogarden/sonic-wasm/sonic.wasm"));
    for (const text of some.slice(0, 6))
      expect(stretch(pack.decode(text), 1.3)).toEqual(afresh(pack.decode(text), 1.3));
  });
});
