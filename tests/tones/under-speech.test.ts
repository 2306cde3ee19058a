import { describe, expect, test } from "vitest";
import { languages } from "../../src/units/language.ts";
import { openPack } from "../../src/voice/pack.ts";
import { builtKit } from "../browser/built-kit.ts";
import { builtPack } from "../voice/built-pack.ts";
import { bandsOf, standsOut } from "./under-speech.ts";

/** The tones that may sound while something is said: the voice keeps clear of all others. */
const beats = (["over", "back"] as const).map((name) => ({
  name,
  tone: bandsOf(builtKit.samples(name)),
}));

describe.each(languages)("Under the voice in %s", (language) => {
  // Heard from about 0 dB (Fletcher 1940); twice as loud again is a margin for the ears of some.
  test.each(beats)("the beat “$name” stands out by 6 dB wherever it falls", async ({ tone }) => {
    const { index, bytes } = builtPack(language);
    const pack = await openPack(index, bytes);
    const some = Object.keys(index.phrases).filter((_, i) => i % 24 === 0);
    for (const phrase of some) {
      const speech = bandsOf(pack.decode(phrase));
      for (let after = 0; after < speech.length - 10; after += 8)
        expect(standsOut(tone, speech, after), `${phrase} ${after}`).toBeGreaterThan(6);
    }
  });
});

test("a tone much softer than the voice does not stand out", async () => {
  const { index, bytes } = builtPack("en");
  const pack = await openPack(index, bytes);
  const soft = bandsOf(builtKit.samples("over").map((sample) => sample / 100));
  const speech = bandsOf(pack.decode("Lay everything out by touch, left to right."));
  expect(standsOut(soft, speech, 40)).toBeLessThan(0);
});
