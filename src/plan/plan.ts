// Worksheet in, plan out: the numbers, the arithmetic shown, the warnings.
import { asidesIn } from "./asides.ts";
import type { About, Warning, WorkingLine } from "./line.ts";
import { planWith } from "./plan-with.ts";
import { allEnglish } from "./words/english-asides.ts";
import type { AllWords } from "./words/words.ts";
import type { Agitation, Worksheet } from "./worksheet.ts";

export interface PlannedBath {
  readonly id: string;
  readonly label: string;
  /** Seconds on the bath's own clock. */
  readonly seconds: number;
  /** °C; null where nobody said. */
  readonly temperature: number | null;
  /** null: the bath is left alone (running water, or a bath that must not foam). */
  readonly agitation: Agitation | null;
}

export interface Plan {
  /** Whole seconds, half up. */
  readonly developmentSeconds: number;
  /** ml, unrounded. */
  readonly mix: { readonly stock: number; readonly water: number; readonly total: number };
  readonly baths: readonly PlannedBath[];
  readonly working: readonly About<WorkingLine>[];
  readonly warnings: readonly About<Warning>[];
}

/**
 * The numbers, the arithmetic shown and the warnings for a worksheet that has been read.
 * Rounded once, at the end; whatever the worksheet, every number is finite and no bath is longer than
 * the worksheet allows. In English unless other words are given, as `wordsIn` fetches them.
 */
export function planOf(worksheet: Worksheet, words: AllWords = allEnglish): Plan {
  return planWith(asidesIn(words), worksheet, words);
}
