// The questions beside the development, each with its lines and warnings: mixing, tempering, contrast.
// Apart from the plan of the development, which stands without them and is on the page before them.
import { contrastOf } from "./contrast.ts";
import { contrastLines, contrastWarnings } from "./contrast-lines.ts";
import type { Development } from "./development.ts";
import type { Topic, Warning, WorkingLine } from "./line.ts";
import { mixingLines, mixingOf, mixingWarnings } from "./mixing.ts";
import { temperingOf } from "./tempering.ts";
import { temperingLines, temperingWarnings } from "./tempering-lines.ts";
import { nothingToMix } from "./warmth-messages.ts";
import { englishAsides } from "./words/english-asides.ts";
import type { AsideWords } from "./words/words.ts";
import type { Worksheet } from "./worksheet.ts";

/** Both empty where the worksheet does not ask. */
export interface Told {
  readonly lines: readonly WorkingLine[];
  readonly warnings: readonly Warning[];
}

export interface Aside {
  readonly topic: Topic;
  readonly told: (worksheet: Worksheet, development: Development) => Told;
}

const nothing: Told = { lines: [], warnings: [] };

/** In the order in which they are told. Each is worked out once, for its lines and its warnings. */
export function asidesIn(words: AsideWords): readonly Aside[] {
  return [
    {
      topic: "mixing",
      told(worksheet) {
        if (worksheet.mixing === undefined) return nothing;
        const plan = mixingOf(worksheet);
        if (plan === null) return { lines: [], warnings: [nothingToMix(words)] };
        return { lines: mixingLines(words, plan), warnings: mixingWarnings(words, plan) };
      },
    },
    {
      topic: "tempering",
      told({ tempering }, development) {
        if (tempering === undefined) return nothing;
        const plan = temperingOf(tempering);
        return {
          lines: temperingLines(words, plan, development),
          warnings: temperingWarnings(plan, words),
        };
      },
    },
    {
      topic: "contrast",
      told({ contrast }) {
        if (contrast === undefined) return nothing;
        const plan = contrastOf(contrast);
        return { lines: contrastLines(words, plan), warnings: contrastWarnings(words, plan) };
      },
    },
  ];
}

/** In English. */
export const asides: readonly Aside[] = asidesIn(englishAsides);
