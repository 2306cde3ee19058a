// A draft in, the language that its voice speaks out, and the other way round. Alone, because the page's
// language is another matter: a worksheet keeps its own.
import { type Language, spokenIn, usualLanguage } from "../units/language.ts";
import type { Draft } from "./draft.ts";

/** The usual one where the worksheet names none, or one that is not spoken here. */
export function sheetLanguage(draft: Draft): Language {
  return spokenIn(draft.language?.trim());
}

/** What a draft has for a language: the usual one is not written down. */
export function languageText(language: Language): string {
  return language === usualLanguage ? "" : language;
}

export function inLanguage(draft: Draft, language: Language): Draft {
  const { language: _, ...rest } = draft;
  const text = languageText(language);
  return text === "" ? rest : { ...rest, language: text };
}
