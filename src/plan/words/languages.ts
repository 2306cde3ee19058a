// A language in, the plan's words in it out, fetched when asked for.
// Alone, because this table is all that the program knows of which languages have been written.
import type { Language } from "../../units/language.ts";
import { writingIn } from "../../units/writing.ts";
import { english } from "./english.ts";
import type { AllWords, AsideSentences, AsideWords, FirstSentences, PlanWords } from "./words.ts";

type Fetched<Sentences> = { readonly [language in Language]?: () => Promise<Sentences> };

/** One line a language: `de: async () => (await import("./de/first.ts")).first`. */
const firstIn: Fetched<FirstSentences> = {
  de: async () => (await import("./de/first.ts")).first,
  es: async () => (await import("./es/first.ts")).first,
  fr: async () => (await import("./fr/first.ts")).first,
  it: async () => (await import("./it/first.ts")).first,
  pt: async () => (await import("./pt/first.ts")).first,
};

/** The same of `asides.ts`. */
const asidesIn: Fetched<AsideSentences> = {
  de: async () => (await import("./de/asides.ts")).asides,
  es: async () => (await import("./es/asides.ts")).asides,
  fr: async () => (await import("./fr/asides.ts")).asides,
  it: async () => (await import("./it/asides.ts")).asides,
  pt: async () => (await import("./pt/asides.ts")).asides,
};

/** Languages whose sentences are there, English the first of them. */
export const writtenLanguages: readonly Language[] = [
  "en",
  ...(Object.keys(firstIn) as Language[]),
];

/** English where a language has not been written yet. Rejects where the words cannot be fetched. */
export async function planWordsIn(language: Language): Promise<PlanWords> {
  const fetched = await firstIn[language]?.();
  return fetched ? { ...fetched, writes: writingIn(language) } : english;
}

export async function asideWordsIn(language: Language): Promise<AsideWords> {
  const fetched = await asidesIn[language]?.();
  if (fetched) return { ...fetched, writes: writingIn(language) };
  return (await import("./english-asides.ts")).englishAsides;
}

export async function wordsIn(language: Language): Promise<AllWords> {
  const [first, asides] = await Promise.all([planWordsIn(language), asideWordsIn(language)]);
  return { ...asides, ...first };
}
