// The page's language, kept in this browser between visits. A browser may refuse to keep anything: that
// comes back as data, and the page goes on in the language chosen.
import { type Language, languageOf, usualLanguage } from "../units/language.ts";

export interface LanguageStore {
  /** null where nothing was chosen, or nothing can be read. */
  load(): Language | null;
  /** False where the browser would not keep it. */
  keep(language: Language): boolean;
}

const KEY = "tankside-language";

/** @param storage asked for at each use: a browser that refuses throws by its very name. */
export function languageStore(storage: () => Storage = () => localStorage): LanguageStore {
  return {
    load() {
      try {
        return languageOf(storage().getItem(KEY) ?? "");
      } catch {
        return null;
      }
    },
    keep(language) {
      try {
        storage().setItem(KEY, language);
        return true;
      } catch {
        return false;
      }
    },
  };
}

/** What was chosen; on a first visit the first of the person's own languages that is one of ours. */
export function languageOfVisit(store: LanguageStore, preferred: readonly string[]): Language {
  const own = preferred.map(languageOf).find((language) => language !== null);
  return store.load() ?? own ?? usualLanguage;
}
