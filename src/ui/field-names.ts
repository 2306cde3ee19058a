// A path in, what a person calls that field out. Alone because the page, the list of faults and the
// faults themselves all speak of fields, and none of them should speak in paths.

import type { Fault } from "../plan/faults.ts";
import { mayIn } from "../plan/words/fault-words.ts";
import { type FieldPattern, isRowList, patternOf, rowOf } from "./fields.ts";
import { planWords, words } from "./language.ts";
import { units } from "./read-field.ts";

interface FieldWords {
  readonly label: string;
  /** One press away: why it is asked, or what it does. */
  readonly why?: string;
}

export function wordsOf(path: string): FieldWords {
  const pattern = patternOf(path);
  const all: { readonly [pattern in FieldPattern]?: FieldWords } = words.value.fields;
  return (pattern && all[pattern]) ?? { label: path };
}

/** By its id, which is also its name where a process has baths that nobody named. */
export function bathName(id: string): string {
  const all: { readonly [id: string]: { readonly name: string } } = words.value.baths;
  return all[id]?.name ?? id;
}

/** `"Film 2: Size"`, `"Fixer: Time"`. */
export function nameOf(path: string): string {
  const { rows, names } = words.value;
  if (isRowList(path)) return rows[path].all;
  const row = rowOf(path);
  const { label } = wordsOf(path);
  if (row) return names.within(rows[row.list].one(row.at + 1), label);
  const bath = /^baths\.([^.]+)/.exec(path)?.[1];
  return bath === undefined ? label : names.within(bathName(bath), label);
}

/** The checker's English for what a field may hold, in the language in force where that has it. */
export function mayOf(english: string): string {
  return mayIn(planWords.value, { may: english });
}

/** Of the measures that a file writes as `{ "c": 20 }`. */
const signs = { ...units.temperature, ...units.volume };

/**
 * A sentence of the checker's with its paths turned into names, and what only a file may hold into
 * what may be typed: `tank.room` into “The room”, `{ "c": 20 }` into 20 °C.
 */
export function withNames(sentence: string): string {
  const { rows, names } = words.value;
  return sentence
    .replace(
      /\{ "(c|f|ml|flOz)": (\d+) \}/g,
      (_, unit: keyof typeof signs, size) => `${size} ${signs[unit]}`,
    )
    .replaceAll(
      '"exposureIndex"',
      names.quoted(wordsOf("developer.leaflet[0].exposureIndex").label),
    )
    .replace(/\b[a-z]+(?:\.[\w-]+|\[\d+\])+/gi, (path) => {
      if (patternOf(path) !== null) return names.quoted(nameOf(path));
      const row = rowOf(path);
      return row ? names.quoted(rows[row.list].one(row.at + 1)) : path;
    });
}

/** `developer.leaflet[1].time holds "9.30"; it may hold a clock time such as "9:30" or "1:02:00"` */
export function faultInFile({ path, holds, may }: Fault): string {
  const { inFile, nothing } = words.value.faults;
  return inFile(path, holds === "nothing" ? nothing : holds, mayOf(may));
}
