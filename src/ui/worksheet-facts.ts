// A worksheet in, every fact of it that a run depends on out, each with its name as the form has it and its text as a
// person would have typed it: what two runs are held against each other by. What is asked beside the run is left out.
import type { Worksheet } from "../plan/worksheet.ts";
import { draftOf } from "./draft-of.ts";
import { bathName, nameOf } from "./field-names.ts";
import { asideOf, kindOf, patternOf, type RowList, rowOf, rowParts } from "./fields.ts";
import { lateWords, words } from "./language.ts";

export interface Fact {
  /** The same of either run. */
  readonly id: string;
  readonly name: string;
  readonly text: string;
}

/** Told of a run in other words: its films, what was developed in and how, and each bath with its time. */
const toldElsewhere = new Set<string>([
  "title",
  "process",
  "developer.label",
  "developer.dilution",
  "developer.temperature",
  "developer.soughtTime",
  "tank.label",
  "tank.method",
  "agitation.first",
  "agitation.every",
  "agitation.for",
  "baths.*.use",
  "baths.*.time",
  "language",
]);

export function worksheetFacts(worksheet: Worksheet): readonly Fact[] {
  const draft = draftOf(worksheet);
  const single = Object.entries(draft).flatMap(([path, text]): Fact[] =>
    isTold(path) ? [{ id: path, name: factName(path), text: chosen(path, text) }] : [],
  );
  const rows = (["developer.leaflet", "developer.readings"] as const).map((list) => ({
    id: list,
    name: words.value.rows[list].all,
    text: rowLines(draft, list).join("\n"),
  }));
  return [...rows, ...single];
}

function isTold(path: string): boolean {
  const pattern = patternOf(path);
  if (pattern === null || rowOf(path) !== null || asideOf(path) !== null) return false;
  // Tries at a time, which then stands in its own field; and the voice, which moves nothing.
  return !toldElsewhere.has(pattern) && !/^(?:tank\.measured|voice)\./.test(path);
}

/** With what it is of in front, since no question stands above it here. */
function factName(path: string): string {
  const { within } = words.value.names;
  const name = nameOf(path);
  if (path.startsWith("developer.")) return within(bathName("developer"), name);
  if (path.startsWith("tank.")) return within(lateWords.value.beside.tank, name);
  return path.startsWith("agitation.") ? within(lateWords.value.beside.agitated, name) : name;
}

function chosen(path: string, text: string): string {
  const kind = kindOf(path);
  if (kind !== "choice" && kind !== "number-choice") return text;
  const all: { readonly [pattern: string]: { readonly [value: string]: string } } =
    words.value.choices;
  return all[patternOf(path) ?? ""]?.[text] ?? text;
}

/** `"20 °C, 9:30"`, a row a line. */
function rowLines(draft: { readonly [path: string]: string }, list: RowList): readonly string[] {
  const rows = Object.keys(draft).map((path) => (path.startsWith(list) ? rowOf(path) : null));
  const places = new Set(rows.flatMap((row) => (row === null ? [] : [row.at])));
  return [...places].map((at) =>
    rowParts[list].flatMap((part) => draft[`${list}[${at}].${part}`] || []).join(", "),
  );
}
