import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planOf } from "../../src/plan/plan.ts";
import { scriptIn } from "../../src/script/scripts.ts";
import { lengthsOf } from "../../src/timeline/lengths.ts";
import { soundOf } from "../../src/timeline/sound.ts";
import { compile } from "../../src/timeline/timeline.ts";
import { sampleRate } from "../../src/tones/designs.ts";
import { languages } from "../../src/units/language.ts";
import { openPack } from "../../src/voice/pack.ts";
import { openStretch } from "../../src/voice/stretch.ts";
import { builtKit } from "../browser/built-kit.ts";
import { gullrock } from "../plan/worksheets.ts";
import { builtPack, packaged, packBytes, packIndex } from "../voice/built-pack.ts";
import { anyWorksheet } from "./any-worksheet.ts";
import { brokenLaws } from "./laws.ts";
import { english } from "./scene.ts";

const voices = await Promise.all(
  languages.map(async (language) => ({
    script: await scriptIn(language),
    index: builtPack(language).index,
  })),
);

describe("With the voice packs that are played", () => {
  test.each(voices)(
    "the laws hold for every worksheet, detail and rate in $index.language, and no words are missing",
    ({ script, index }) => {
      fc.assert(
        fc.property(anyWorksheet, (worksheet) => {
          const lengths = lengthsOf(index, worksheet.voice?.rate ?? 1);
          const timeline = compile(worksheet, planOf(worksheet), script, lengths);
          expect(brokenLaws(timeline)).toEqual([]);
          const reasons = timeline.sections.flatMap(({ left }) => left.map(({ why }) => why));
          expect(reasons).not.toContain(script.write("no-words"));
        }),
        { numRuns: 300 },
      );
    },
  );

  test.each([0.8, 1, 1.37, 1.6])(
    "a cue lasts as long as its very sound, to the sample, at rate %d",
    async (rate) => {
      const [pack, stretch] = await Promise.all([
        openPack(packIndex, packBytes),
        openStretch(packaged("@echogarden/sonic-wasm/sonic.wasm")),
      ]);
      const worksheet = { ...gullrock, voice: { rate } };
      const timeline = compile(worksheet, planOf(worksheet), english, lengthsOf(packIndex, rate));
      const sources = {
        phrase: (text: string) => stretch(pack.decode(text), rate),
        tone: builtKit.samples,
      };
      const cues = timeline.sections.flatMap((section) => section.cues);
      expect(cues.filter(({ says }) => says !== undefined).length).toBeGreaterThan(60);
      for (const cue of cues) {
        if (cue.says === undefined) continue;
        const phrases = cue.sounds.map((text) => sources.phrase(text).length);
        const breaths = 2880 * (phrases.length - 1);
        const sound = phrases.reduce((sum, length) => sum + length, breaths);
        expect(Math.abs((cue.until - cue.at) * sampleRate - sound), cue.says).toBeLessThan(0.1);
        expect(soundOf(cue, sources)).toHaveLength(sound);
      }
    },
  );
});
