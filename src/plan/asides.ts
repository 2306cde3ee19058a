// The questions beside the development, each with its lines and warnings: mixing, tempering, contrast.
// Apart from the plan of the development, which stands without them and is on the page before them.
import { contrastLines, contrastWarnings } from "./contrast-lines.ts";
import type { Development } from "./development.ts";
import type { Topic, Warning, WorkingLine } from "./line.ts";
import { mixingLines, mixingWarnings } from "./mixing.ts";
import { temperingOf } from "./tempering.ts";
import { temperingLines, temperingWarnings } from "./tempering-lines.ts";
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

/** In the order in which they are told. */
export const asides: readonly Aside[] = [
  {
    topic: "mixing",
    told: (worksheet) => ({
      lines: mixingLines(worksheet),
      warnings: mixingWarnings(worksheet),
    }),
  },
  {
    topic: "tempering",
    told({ tempering }, development) {
      if (tempering === undefined) return { lines: [], warnings: [] };
      // Fitted once: the fit is the most that a plan has to work out.
      const plan = temperingOf(tempering);
      return { lines: temperingLines(plan, development), warnings: temperingWarnings(plan) };
    },
  },
  {
    topic: "contrast",
    told: (worksheet) => ({
      lines: contrastLines(worksheet),
      warnings: contrastWarnings(worksheet),
    }),
  },
];
