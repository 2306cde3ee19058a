// The words of a plan, in one language: what every part of the plan is given to speak with. Types alone.
// A language is a folder beside this file, in which `first.ts` and `asides.ts` gather its sentences.
import type { Writing } from "../../units/writing.ts";
import type { BathWords, CapacityWords, FixerWords, HandsWords, WashWords } from "./bath-words.ts";
import type { ContrastWords } from "./contrast-words.ts";
import type { MixWords, TimeWords } from "./time-words.ts";
import type { MixingWords, TemperingWords } from "./warmth-words.ts";
import type { WarningWords } from "./warning-words.ts";

/** What a translator writes for the first screen. */
export interface FirstSentences {
  readonly time: TimeWords;
  readonly mix: MixWords;
  readonly hands: HandsWords;
  readonly baths: BathWords;
  readonly fixer: FixerWords;
  readonly wash: WashWords;
  readonly capacity: CapacityWords;
  readonly warnings: WarningWords;
  readonly mays: Mays;
}

/** What a translator writes for the questions beside the development, which are fetched after it. */
export interface AsideSentences {
  readonly mixing: MixingWords;
  readonly tempering: TemperingWords;
  readonly contrast: ContrastWords;
}

/** By the checker's English text of what a field may hold: the same in the language. */
export interface Mays {
  readonly [english: string]: string;
}

/** With the figures of the language. */
export interface PlanWords extends FirstSentences {
  readonly writes: Writing;
}

export interface AsideWords extends AsideSentences {
  readonly writes: Writing;
}

/** Both: all that a plan can say. */
export type AllWords = PlanWords & AsideWords;
