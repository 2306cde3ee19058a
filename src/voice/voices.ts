// Which synthesiser speaks which language, in which of its voices, and how fast. Build only.
import type { Language } from "../units/language.ts";
import type { Pains } from "./encode.ts";

export type Voice = {
  readonly name: string;
  /**
   * How hard the coder tries, 0 to 10; at 5 it takes half as long as at 10. Over running water a recogniser
   * picked 97.0 % of the English phrases at 5, and 97.4 % at 10.
   */
  readonly pains: Pains;
  /**
   * Silence kept before and after what is said, ms: a voice that begins abruptly rings in the coder. With
   * the little that the English one needs, the recogniser picked 98.6 %.
   */
  readonly room: { readonly before: number; readonly after: number };
  /** dB that coding takes off such bright speech, in the median of the phrases: a first guess at the level. */
  readonly codingLoss: number;
} & (
  | {
      readonly engine: "flite";
      /** How much longer each sound lasts than the voice's own. */
      readonly stretch: number;
    }
  | { readonly engine: "espeak"; readonly wordsAMinute: number }
);

/** The engine counts its words in its own way: at these all speak about 15 letters a second, as in English. */
const espeak = (name: string, wordsAMinute: number, codingLoss: number): Voice => ({
  engine: "espeak",
  name,
  wordsAMinute,
  pains: 5,
  room: { before: 12, after: 25 },
  codingLoss,
});

/**
 * English: of about 110 phrases with a number, clean and each to be picked out of the whole script, a
 * recogniser took twelve of the engine's `slt` for another ("forty", "fifty", "sixty" and "ninety
 * minutes" for the teens every time), ten of its `kal16`, and three of this one's. Its own pace
 * is about 170 words a minute. The other languages have the one voice that the engine has for them.
 */
export const voices: { readonly [language in Language]: Voice } = {
  en: {
    engine: "flite",
    name: "rms",
    stretch: 1,
    pains: 10,
    room: { before: 5, after: 12 },
    codingLoss: 1.3,
  },
  de: espeak("gmw/de", 145, 1.4),
  es: espeak("roa/es", 148, 1.2),
  fr: espeak("roa/fr", 122, 1),
  it: espeak("roa/it", 150, 1),
  pt: espeak("roa/pt", 152, 1.1),
  nl: espeak("gmw/nl", 150, 1.15),
};
