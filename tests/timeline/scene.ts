// What the compiler's tests stand on: the English script, and lengths of speech that were never
// spoken but are as long as speech is, so that the laws are proved without a voice pack.
import { toCardinal } from "n2words/en-US";
import en from "../../audio-scripts/en.json" with { type: "json" };
import { planOf } from "../../src/plan/plan.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { openScript } from "../../src/script/script.ts";
import type { Lengths } from "../../src/timeline/lengths.ts";
import type { Timeline } from "../../src/timeline/score.ts";
import { compile } from "../../src/timeline/timeline.ts";

export const english = openScript(en, toCardinal);

/** @param pace seconds a letter; 0.065 is about 160 words a minute. */
export function estimatedLengths(rate: number, pace = 0.065): Lengths {
  return {
    spoken(phrases) {
      const letters = phrases.join(" ").length;
      return Math.round((letters * pace * 1000) / rate) / 1000;
    },
  };
}

export function compiled(worksheet: Worksheet, pace?: number): Timeline {
  const lengths = estimatedLengths(worksheet.voice?.rate ?? 1, pace);
  return compile(worksheet, planOf(worksheet), english, lengths);
}
