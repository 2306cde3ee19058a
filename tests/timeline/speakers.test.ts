import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planOf } from "../../src/plan/plan.ts";
import { phraseLimits } from "../../src/script/script.ts";
import { breathSamples, lengthsOf, rateWithin } from "../../src/timeline/lengths.ts";
import type { Cue, Timeline } from "../../src/timeline/score.ts";
import { soundOf } from "../../src/timeline/sound.ts";
import { compile } from "../../src/timeline/timeline.ts";
import { sampleRate } from "../../src/tones/designs.ts";
import { samplesAtRate } from "../../src/voice/pack.ts";
import { phraseOf, saysAll } from "../../src/voice/speaker.ts";
import { builtKit } from "../browser/built-kit.ts";
import { gullrock } from "../plan/worksheets.ts";
import { packIndex, phrases } from "../voice/built-pack.ts";
import { anyWorksheet } from "./any-worksheet.ts";
import { brokenLaws } from "./laws.ts";
import { english } from "./scene.ts";

/** Samples that tell who spoke: the own voice is all 1, the bundled one all 0.5. */
const OWN = 32767;
const bundled = (text: string) => new Float32Array(packIndex.phrases[text]?.samples ?? 0).fill(0.5);
const limits = phraseLimits(english);

/** Some of the phrases recorded, up to as slowly as a recording is let pass. */
const anyClips = fc
  .tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.integer({ min: 1, max: 1000 }))
  .map(([share, seed]) => {
    const chance = (i: number) => (((i + 1) * seed * 7919) % 1009) / 1009;
    const recorded = phrases.filter((_, i) => chance(i) < share);
    return new Map(
      recorded.map((text, i) => {
        const most = Math.min(1.6 * (limits.get(text) ?? 1), 8) * 100;
        const hundredths = Math.floor(20 + chance(i + 500) * (most - 20));
        return [text, new Int16Array(hundredths * 240).fill(OWN)];
      }),
    );
  });

/** Each sentence once. */
function cuesOf(timeline: Timeline): readonly Cue[] {
  const voices = timeline.sections
    .flatMap((section) => section.cues)
    .filter((cue) => cue.channel === "voice");
  return [...new Map(voices.map((cue) => [cue.says, cue])).values()];
}

/** Fits a clip to its length at a rate, as the stretcher does. */
const atRate = (samples: Float32Array, rate: number) =>
  new Float32Array(samplesAtRate(samples.length, rate)).fill(samples[0] ?? 0);

describe("A voice of one's own and the bundled one", () => {
  test("each say whole sentences, as long as the timeline states to the sample, for any clips and rate", {
    timeout: 120_000,
  }, () => {
    fc.assert(
      fc.property(anyWorksheet, anyClips, (worksheet, own) => {
        const rate = worksheet.voice?.rate ?? 1;
        const timeline = compile(
          worksheet,
          planOf(worksheet),
          english,
          lengthsOf(packIndex, rate, own),
        );
        const sources = {
          phrase: (text: string, sentence: readonly string[]) =>
            atRate(phraseOf(text, sentence, own, bundled), rate),
          tone: builtKit.samples,
        };
        for (const cue of cuesOf(timeline)) {
          const spoken = cue.sounds.map((text) => sources.phrase(text, cue.sounds));
          const begins = spoken.map((_, i) =>
            spoken.slice(0, i).reduce((at, { length }) => at + length + breathSamples, 0),
          );
          const samples = (begins.at(-1) ?? 0) + (spoken.at(-1)?.length ?? 0);
          expect(Math.abs((cue.until - cue.at) * sampleRate - samples)).toBeLessThan(0.1);
          const sound = soundOf(cue, sources);
          expect(sound).toHaveLength(samples);
          const speakers = new Set(
            begins.map((at) => ((sound[at] ?? 0) > 0.9 ? "own" : "bundled")),
          );
          expect([...speakers], cue.says).toEqual([saysAll(own, cue.sounds) ? "own" : "bundled"]);
        }
      }),
      { numRuns: 10 },
    );
  });

  test("leave every law of a timeline standing, however slowly the clips were spoken", () => {
    fc.assert(
      fc.property(anyWorksheet, anyClips, (worksheet, own) => {
        const lengths = lengthsOf(packIndex, worksheet.voice?.rate ?? 1, own);
        const timeline = compile(worksheet, planOf(worksheet), english, lengths);
        expect(brokenLaws(timeline)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  test("are one and the same where nothing is recorded: the timeline keeps its very bytes", () => {
    const made = (own?: ReadonlyMap<string, Int16Array>) =>
      JSON.stringify(compile(gullrock, planOf(gullrock), english, lengthsOf(packIndex, 1, own)));
    expect(made(new Map())).toBe(made());
    expect(made(new Map([["Quite another phrase.", new Int16Array(240)]]))).toBe(made());
  });

  test("share no sentence: with one phrase of it missing, the bundled voice says all of it", () => {
    const sentence = ["First half,", "second half."];
    const own = new Map([["First half,", new Int16Array(240)]]);
    expect(saysAll(own, sentence)).toBe(false);
    const said: string[] = [];
    phraseOf("First half,", sentence, own, (text) => {
      said.push(text);
      return new Float32Array(1);
    });
    expect(said).toEqual(["First half,"]);
  });

  test("the bundled one fits any slot that was made for another, no sooner said than it must be", () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...phrases), { minLength: 1, maxLength: 4 }),
        fc.double({ min: 0.8, max: 1.6, noNaN: true }),
        fc.double({ min: 0.5, max: 1.5, noNaN: true }),
        (sentence, rate, share) => {
          const natural = lengthsOf(packIndex, rate).spoken(sentence) ?? 0;
          const breaths = (breathSamples * (sentence.length - 1)) / sampleRate;
          const slot = breaths + share * (natural - breaths);
          const faster = rateWithin(slot, sentence, packIndex, rate);
          expect(lengthsOf(packIndex, faster).spoken(sentence)).toBeLessThanOrEqual(slot + 1e-5);
          if (share >= 1) expect(faster).toBe(rate);
          else expect(faster).toBeLessThan((rate / share) * 1.01);
        },
      ),
    );
  });
});
