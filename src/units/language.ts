// A language tag in, one of the languages that Tankside speaks and writes out, or none. Alone, because
// the plan's words, the script, the voice and the screens must all take the same one for it.

/** In the order in which they are offered. */
export const languages = ["en", "de", "es", "fr", "it", "pt", "nl"] as const;
export type Language = (typeof languages)[number];

/** What their speakers call them. */
export const languageNames: { readonly [language in Language]: string } = {
  en: "English",
  de: "Deutsch",
  es: "Español",
  fr: "Français",
  it: "Italiano",
  pt: "Português",
  nl: "Nederlands",
};

/** `"de"` of `"de-AT"` (BCP 47), whatever its capitals; null where it is none of them. */
export function languageOf(tag: string): Language | null {
  const primary = tag.split("-")[0]?.toLowerCase();
  return languages.find((language) => language === primary) ?? null;
}

/** The language that is meant where none is named, or one that is not spoken here. */
export const usualLanguage: Language = "en";

/** What a worksheet is spoken and written in. */
export function spokenIn(tag: string = usualLanguage): Language {
  return languageOf(tag) ?? usualLanguage;
}
