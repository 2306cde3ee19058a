// A language in, the way to fetch all its words out: the screens' and the plan's, a chunk of script for
// each kind.
import { english } from "../../plan/words/english.ts";
import { asideWordsIn, planWordsIn } from "../../plan/words/languages.ts";
import type { AsideWords, PlanWords } from "../../plan/words/words.ts";
import type { Language } from "../../units/language.ts";
import { first } from "./en/first.ts";
import type { FirstWords, LateWords } from "./words.ts";

/** What the first screen needs. */
export interface FirstOfAll {
  readonly screens: FirstWords;
  readonly plan: PlanWords;
}

/** What comes behind it. */
export interface LateOfAll {
  readonly screens: LateWords;
  readonly asides: AsideWords;
}

/** Both reject where the words cannot be fetched. */
export interface Catalogue {
  readonly first: () => Promise<FirstOfAll>;
  readonly late: () => Promise<LateOfAll>;
}

interface Screens {
  readonly first: () => Promise<FirstWords>;
  readonly late: () => Promise<LateWords>;
}

const inEnglish: Screens = {
  first: async () => first,
  late: async () => (await import("./en/late.ts")).late,
};

const screensIn: { readonly [language in Language]: Screens } = {
  en: inEnglish,
  de: {
    first: async () => (await import("./de/first.ts")).first,
    late: async () => (await import("./de/late.ts")).late,
  },
  es: {
    first: async () => (await import("./es/first.ts")).first,
    late: async () => (await import("./es/late.ts")).late,
  },
  fr: {
    first: async () => (await import("./fr/first.ts")).first,
    late: async () => (await import("./fr/late.ts")).late,
  },
  it: {
    first: async () => (await import("./it/first.ts")).first,
    late: async () => (await import("./it/late.ts")).late,
  },
  pt: {
    first: async () => (await import("./pt/first.ts")).first,
    late: async () => (await import("./pt/late.ts")).late,
  },
  nl: {
    first: async () => (await import("./nl/first.ts")).first,
    late: async () => (await import("./nl/late.ts")).late,
  },
};

/** Comes with the page. */
export const usualFirst: FirstOfAll = { screens: first, plan: english };

export function catalogueOf(language: Language): Catalogue {
  const screens = screensIn[language];
  return {
    async first() {
      const [ours, plan] = await Promise.all([screens.first(), planWordsIn(language)]);
      return { screens: ours, plan };
    },
    async late() {
      const [ours, asides] = await Promise.all([screens.late(), asideWordsIn(language)]);
      return { screens: ours, asides };
    },
  };
}
