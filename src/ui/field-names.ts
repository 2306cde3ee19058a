// A path in, what a person calls that field out. Alone because the page, the list of faults and the
// faults themselves all speak of fields, and none of them should speak in paths.

import { processBaths } from "../trade/baths.ts";
import { benchFieldWords } from "./bench-words.ts";
import { isRowList, patternOf, rowOf } from "./fields.ts";
import { type FieldWords, fieldWords, rowWords } from "./words.ts";

export function wordsOf(path: string): FieldWords {
  const pattern = patternOf(path);
  return (pattern && (fieldWords[pattern] ?? benchFieldWords[pattern])) ?? { label: path };
}

const bathLabels = new Map(
  Object.values(processBaths).flatMap((baths) => baths.map(({ id, label }) => [id, label])),
);

/** `"Film 2: Size"`, `"Fixer: Time"`. */
export function nameOf(path: string): string {
  if (isRowList(path)) return rowWords[path].all;
  const row = rowOf(path);
  const { label } = wordsOf(path);
  if (row) return `${rowWords[row.list].one(row.at + 1)}: ${label}`;
  const bath = bathLabels.get(/^baths\.([^.]+)/.exec(path)?.[1] ?? "");
  return bath ? `${bath}: ${label}` : label;
}

/**
 * A sentence of the checker's with its paths turned into names, and what only a file may hold into
 * what may be typed: `tank.room` into “The room”, `{ "c": 20 }` into 20 °C.
 */
export function withNames(sentence: string): string {
  return sentence
    .replace(/\{ "c": (\d+) \}/g, "$1 °C")
    .replaceAll('"exposureIndex"', `“${wordsOf("developer.leaflet[0].exposureIndex").label}”`)
    .replace(/\b[a-z]+(?:\.[\w-]+|\[\d+\])+/gi, (path) => {
      if (patternOf(path) !== null) return `“${nameOf(path)}”`;
      const row = rowOf(path);
      return row ? `“${rowWords[row.list].one(row.at + 1)}”` : path;
    });
}
