// The questions beside the development, each with its lines and warnings: mixing, tempering, contrast.
// Apart from the plan of the development, which stands without them and is on the page before them.
import { contrastLines, contrastWarnings } from "./contrast-lines.ts";
import type { Development } from "./development.ts";
import type { Topic, Warning, WorkingLine } from "./line.ts";
import { mixingLines, mixingWarnings } from "./mixing.ts";
import { temperingLines, temperingWarnings } from "./tempering-lines.ts";
import type { Worksheet } from "./worksheet.ts";

/** Both empty where the worksheet does not ask. */
export interface Aside {
  readonly topic: Topic;
  readonly lines: (worksheet: Worksheet, development: Development) => readonly WorkingLine[];
  readonly warnings: (worksheet: Worksheet) => readonly Warning[];
}

/** In the order in which they are told. */
export const asides: readonly Aside[] = [
  { topic: "mixing", lines: mixingLines, warnings: mixingWarnings },
  { topic: "tempering", lines: temperingLines, warnings: temperingWarnings },
  { topic: "contrast", lines: contrastLines, warnings: contrastWarnings },
];
