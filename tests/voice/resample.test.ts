import { describe, expect, test } from "vitest";
import { resampled } from "../../src/voice/resample.ts";

const tone = (hertz: number, rate: number, seconds = 0.5) =>
  Float32Array.from({ length: rate * seconds }, (_, i) =>
    Math.sin((2 * Math.PI * hertz * i) / rate),
  );

/** Root of the mean square away from the ends, dB, 0 for a full sine. */
function level(samples: Float32Array): number {
  const middle = samples.subarray(1200, -1200);
  const square = middle.reduce((sum, sample) => sum + sample * sample, 0) / middle.length;
  return 10 * Math.log10(2 * square + 1e-20);
}

describe("A sound brought to 24 kHz", () => {
  // Tolerances: 0.1 dB and a hundredth of full scale where voices lie, up to 9 kHz.
  test.each([44_100, 48_000, 96_000, 16_000])("from %d Hz is the same sound", (rate) => {
    for (const hertz of [100, 1000, 3000, 6000, 9000].filter((each) => each < 0.4 * rate)) {
      const brought = resampled(tone(hertz, rate), rate);
      expect(brought).toHaveLength(12_000);
      expect(Math.abs(level(brought)), `${hertz} Hz`).toBeLessThan(0.1);
      const wanted = tone(hertz, 24_000);
      const apart = brought.subarray(1200, -1200).map((it, i) => it - (wanted[i + 1200] ?? 0));
      expect(Math.max(...apart.map(Math.abs)), `${hertz} Hz`).toBeLessThan(0.01);
    }
  });

  test.each([44_100, 48_000])(
    "from %d Hz has nothing of what lies above 12 kHz, to −60 dB",
    (rate) => {
      for (const hertz of [13_500, 16_000, 20_000])
        expect(level(resampled(tone(hertz, rate), rate)), `${hertz} Hz`).toBeLessThan(-60);
    },
  );

  test("is left alone where it has that rate already", () => {
    const samples = tone(440, 24_000);
    expect(resampled(samples, 24_000)).toBe(samples);
  });
});
