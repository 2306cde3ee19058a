// A made-up language in which every sentence is its key in ‹›, with what its slots hold written behind.
// Whatever else of letters a plan holds in it stands hard-wired in the plan and belongs to no catalogue.

import { allEnglish } from "../../src/plan/words/english-asides.ts";
import type { AllWords } from "../../src/plan/words/words.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import type { Writing } from "../../src/units/writing.ts";
import { mayTexts } from "./may-texts.ts";

export type Slots = { readonly [slot: string]: unknown };

/** A catalogue, or a part of it: sentences, functions of slots, and tables of both. */
export interface Catalogue {
  readonly [key: string]: Catalogue | string | ((slots: Slots) => string);
}

/** All the sentences of a language, without its figures and without the checker's table. */
export function sentencesOf({ writes: _, mays: __, ...sentences }: AllWords): Catalogue {
  return sentences as unknown as Catalogue;
}

/** Every sentence by its key, as `warnings.extrapolated`. */
export function sentencesByKey(
  catalogue: Catalogue,
  start = "",
): readonly (readonly [string, string | ((slots: Slots) => string)])[] {
  return Object.entries(catalogue).flatMap(([name, part]) =>
    typeof part === "object" ? sentencesByKey(part, `${start}${name}.`) : [[start + name, part]],
  );
}

/** @param said is told each key as it is spoken. */
export function madeUp(writes: Writing, said: (key: string) => void = () => {}): AllWords {
  const sentences = marked(sentencesOf(allEnglish), "", said) as unknown as AllWords;
  const mays = Object.fromEntries(mayTexts.map((text) => [text, `‹may› ${gapsOf(text)}`]));
  return { ...sentences, mays, writes };
}

function marked(catalogue: Catalogue, start: string, said: (key: string) => void): Catalogue {
  const part = {};
  for (const [name, text] of Object.entries(catalogue)) {
    const key = start + name;
    const get = () => {
      if (typeof text === "object") return marked(text, `${key}.`, said);
      said(key);
      return typeof text === "string" ? `‹${key}›` : (slots: Slots) => `‹${key}› ${heldIn(slots)}`;
    };
    Object.defineProperty(part, name, { enumerable: true, get });
  }
  return part;
}

function heldIn(slots: Slots): string {
  return Object.values(slots)
    .filter((slot) => typeof slot === "string")
    .join(" ");
}

function gapsOf(text: string): string {
  return (text.match(/\{\w+\}/g) ?? []).join(" ");
}

const units = /(?<!\p{L})(?:ml|fl oz|min|log2|log|ln|e|s|g|l|°C|°F|m²|cm²|g\/m²)(?!\p{L})/gu;

/** What is left of a text without the made-up words, the person's own, and units: letters are English. */
export function leftOf(text: string, worksheet: Worksheet): string {
  const { developer, films, language = "" } = worksheet;
  const own = [developer.label, language, ...films.flatMap(({ label, size }) => [label, size])];
  let left = text.replace(/‹[^‹›]*›/g, " ");
  for (const each of own.filter((it) => it.length > 3).sort((a, b) => b.length - a.length))
    left = left.replaceAll(each, " ");
  return left.replace(units, " ").replace(/\s+/g, " ");
}
