// A language in, its script out, with the words of its numbers: fetched when it is asked for.
import type { Language } from "../units/language.ts";
import { openScript, type Script, type ScriptSource } from "./script.ts";

interface Words {
  readonly source: Promise<{ readonly default: ScriptSource }>;
  readonly numbers: Promise<{ readonly toCardinal: (n: number) => string }>;
}

/** Written out, since a bundler follows only the imports that it can read. */
const words: { readonly [language in Language]: () => Words } = {
  en: () => ({
    source: import("../../audio-scripts/en.json"),
    numbers: import("n2words/en-US"),
  }),
  de: () => ({
    source: import("../../audio-scripts/de.json"),
    numbers: import("n2words/de-DE"),
  }),
  es: () => ({
    source: import("../../audio-scripts/es.json"),
    numbers: import("n2words/es-ES"),
  }),
  fr: () => ({
    source: import("../../audio-scripts/fr.json"),
    numbers: import("n2words/fr-FR"),
  }),
  it: () => ({
    source: import("../../audio-scripts/it.json"),
    numbers: import("n2words/it-IT"),
  }),
  pt: () => ({
    source: import("../../audio-scripts/pt.json"),
    numbers: import("n2words/pt-PT"),
  }),
  nl: () => ({
    source: import("../../audio-scripts/nl.json"),
    numbers: import("n2words/nl-NL"),
  }),
};

export async function scriptIn(language: Language): Promise<Script> {
  const { source, numbers } = words[language]();
  return openScript((await source).default, (await numbers).toCardinal);
}
