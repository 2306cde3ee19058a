// The words of the questions beside the development where no others are given: English, with its figures.
// Apart from english.ts, so that they are fetched with those questions and not before.
import { writingIn } from "../../units/writing.ts";
import { asides } from "./en/asides.ts";
import { english } from "./english.ts";
import type { AllWords, AsideWords } from "./words.ts";

export const englishAsides: AsideWords = { ...asides, writes: writingIn("en") };

/** With the development's: all that a plan can say. */
export const allEnglish: AllWords = { ...englishAsides, ...english };
