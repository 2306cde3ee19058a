// The shape of a language's words, taken from the English: whoever writes another is told what is missing.
import type { first } from "./en/first.ts";
import type { late } from "./en/late.ts";

/** Any text in place of the English one; what fills a slot, and which there are, stays the same. */
type Translated<Words> = Words extends string
  ? string
  : Words extends (...slots: infer Slots) => string
    ? (...slots: Slots) => string
    : { readonly [Key in keyof Words]: Translated<Words[Key]> };

/** What the first screen needs: the frame and Work out. */
export type FirstWords = Translated<typeof first>;
/** The other places, the sheets for wet hands, the drawings. */
export type LateWords = Translated<typeof late>;
