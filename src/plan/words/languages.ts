// A language in, the plan's words in it out, fetched when asked for.
// Alone, because a bundler follows only the imports that stand written out.
import type { Language } from "../../units/language.ts";
import { writingIn } from "../../units/writing.ts";
import { english } from "./english.ts";
import type { AllWords, AsideSentences, AsideWords, FirstSentences, PlanWords } from "./words.ts";

/** English comes with the program. */
type Fetched<Sentences> = {
  readonly [language in Exclude<Language, "en">]: () => Promise<Sentences>;
};

const firstIn: Fetched<FirstSentences> = {
  de: async () => (await import("./de/first.ts")).first,
  es: async () => (await import("./es/first.ts")).first,
  fr: async () => (await import("./fr/first.ts")).first,
  it: async () => (await import("./it/first.ts")).first,
  pt: async () => (await import("./pt/first.ts")).first,
  nl: async () => (await import("./nl/first.ts")).first,
};

const asidesIn: Fetched<AsideSentences> = {
  de: async () => (await import("./de/asides.ts")).asides,
  es: async () => (await import("./es/asides.ts")).asides,
  fr: async () => (await import("./fr/asides.ts")).asides,
  it: async () => (await import("./it/asides.ts")).asides,
  pt: async () => (await import("./pt/asides.ts")).asides,
  nl: async () => (await import("./nl/asides.ts")).asides,
};

/** Rejects where the words cannot be fetched. */
export async function planWordsIn(language: Language): Promise<PlanWords> {
  if (language === "en") return english;
  return { ...(await firstIn[language]()), writes: writingIn(language) };
}

export async function asideWordsIn(language: Language): Promise<AsideWords> {
  if (language === "en") return (await import("./english-asides.ts")).englishAsides;
  return { ...(await asidesIn[language]()), writes: writingIn(language) };
}

export async function wordsIn(language: Language): Promise<AllWords> {
  const [first, asides] = await Promise.all([planWordsIn(language), asideWordsIn(language)]);
  return { ...asides, ...first };
}
