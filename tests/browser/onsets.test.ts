// How a known sound is found in what was captured, wherever between two samples it begins.
import { expect, test } from "vitest";
import { toneNames } from "../../src/tones/designs.ts";
import { builtKit as kit } from "./built-kit.ts";
import { onsetOf } from "./onsets.ts";

test.each(toneNames)(
  "%s is found where it begins, and not a period later, wherever between two samples that is",
  (name) => {
    const tone = kit.samples(name);
    for (const sampleRate of [44_100, 48_000]) {
      for (let fraction = 0; fraction < 1; fraction += 0.1) {
        const begins = sampleRate + fraction;
        const samples = Float32Array.from({ length: 3 * sampleRate }, (_, i) => {
          const at = ((i - begins) * 24_000) / sampleRate;
          const whole = Math.floor(at);
          return (tone[whole] ?? 0) * (1 - at + whole) + (tone[whole + 1] ?? 0) * (at - whole);
        });
        const onset = onsetOf({ samples, sampleRate, firstFrame: 0, pairs: [] }, tone, 1, 0.02);
        // The curve through three samples is not quite the sound's own.
        expect(Math.abs((onset?.at ?? 0) - begins / sampleRate)).toBeLessThan(0.000_005);
        expect(onset?.likeness).toBeGreaterThan(0.995);
      }
    }
  },
);
