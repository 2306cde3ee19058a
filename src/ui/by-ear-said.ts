// A field asked by ear and the draft in, what is spoken of it out: its name, what it holds, what it may hold.
// Sentences of the script by key; a number by its digits, since it can be any.

import { readTimeOfDay } from "../units/clock-time.ts";
import { readFilmSize } from "../units/film-size.ts";
import { readDilution } from "../units/parts.ts";
import { echoOf, fine, numberSaid, sizeSaid, timeSaid, unitSaid } from "./by-ear-echo.ts";
import type { EarField, Range, Saying } from "./by-ear-field.ts";
import { bathInUse } from "./candidate.ts";
import { type Draft, rowCount } from "./draft.ts";
import { kindOf } from "./fields.ts";
import { readField, units } from "./read-field.ts";
import { languageText, sheetLanguage } from "./sheet-language.ts";

export const choiceSaid = (choice: string): Saying => ({ key: "ear.choice", slots: { choice } });

/** Which field it is: its row where there are several, its bath, its name. */
export function nameSaid({ row, bath, name }: EarField): readonly Saying[] {
  return [
    ...(row === undefined ? [] : numberSaid(row)),
    ...(bath === undefined ? [] : [{ key: "ear.bath", slots: { bath } }]),
    ...(name === null ? [] : [{ key: `ear.${name}` }]),
  ];
}

/** A value to be chosen: as the page's own field writes it, and as it is spoken. */
export interface Choosable {
  readonly value: string;
  readonly says: readonly Saying[];
}

/** What a press can choose among; none where a number is given. */
export function choosable({ takes }: EarField): readonly Choosable[] {
  switch (takes.kind) {
    case "sizes":
      return takes.values.map((value) => ({ value, says: sizeSaid(value) }));
    case "choice":
      return takes.offers.map(({ value, choice }) => ({ value, says: [choiceSaid(choice)] }));
    case "number":
    case "parts":
    case "counts":
    case "rows":
    case "text":
    case "clock":
      return [];
  }
}

/** Which of them the draft has; −1 where none. */
export function chosenOf(field: EarField, draft: Draft): number {
  return choosable(field).findIndex(({ value }) => value === textOf(field, draft));
}

function textOf({ path, bath }: EarField, draft: Draft): string {
  if (bath !== undefined && path.endsWith(".use")) return bathInUse(draft, bath) ? "yes" : "no";
  if (path === "language") return languageText(sheetLanguage(draft));
  const text = (draft[path] ?? "").trim();
  if (kindOf(path) !== "size") return text;
  const reading = readFilmSize(text);
  return reading.kind === "read" ? reading.size : text;
}

/** What a field holds, as it is spoken. */
export function valueSaid(field: EarField, draft: Draft): readonly Saying[] {
  const { takes, path } = field;
  const text = textOf(field, draft);
  switch (takes.kind) {
    case "sizes":
    case "choice": {
      const chosen = choosable(field)[chosenOf(field, draft)];
      return chosen === undefined ? notSaid(text) : [{ key: "ear.holds" }, ...chosen.says];
    }
    case "rows":
      return [{ key: "ear.holds" }, ...numberSaid(rowCount(draft, takes.list))];
    case "parts": {
      const reading = readDilution(text === "" ? "stock" : text);
      if (reading.kind === "unread") return notSaid(text);
      const { stock, water } = reading.dilution;
      return [{ key: "ear.holds" }, ...numberSaid(Math.round((water / stock) * 100) / 100)];
    }
    case "counts": {
      const reading = readField(takes.decimals ? "numbers" : "counts", text, "");
      if (text === "" || reading.kind === "unread") return notSaid(text);
      const counts = reading.value as readonly number[];
      return [{ key: "ear.holds" }, ...echoOf(counts.map(fine).join(","), takes)];
    }
    case "text":
      return text === "" ? notSaid(text) : [{ key: "ear.holds" }, ...echoOf(text, takes)];
    case "clock": {
      if (readTimeOfDay(text).kind === "unread") return notSaid(text);
      const last = unitSaid(text.split(":").length === 3 ? "seconds" : "minutes");
      return [{ key: "ear.holds" }, ...echoOf(text, takes), last];
    }
    case "number": {
      if (text === "" && takes.usual !== undefined) {
        const { seconds } = takes.usual;
        const time = seconds === undefined ? [] : timeSaid(seconds);
        return [{ key: "ear.holds" }, choiceSaid("usual"), ...time];
      }
      const kind = kindOf(path);
      if (text === "" || kind === null) return notSaid(text);
      const reading = readField(kind, text, unitOf(field, draft) ?? "");
      if (reading.kind === "unread") return notSaid(text);
      const value = kind === "per-cent" ? Number(reading.value) * 100 : reading.value;
      return [{ key: "ear.holds" }, ...said(value, takes.range)];
    }
  }
}

const notSaid = (text: string): readonly Saying[] => [
  { key: text === "" ? "ear.empty" : "ear.refused" },
];

function said(value: unknown, range: Range): readonly Saying[] {
  if (typeof value === "number") {
    const measure = countedIn(range);
    return [...numberSaid(value), ...(measure === null ? [] : [unitSaid(measure)])];
  }
  if (typeof value === "string") {
    const parts = value.split(":").map(Number);
    return timeSaid(parts.reduce((sum, part) => sum * 60 + part, 0));
  }
  const [[name, size] = ["", 0]] = Object.entries(value as { readonly [unit: string]: number });
  return [...numberSaid(size), unitSaid(name)];
}

/** What a number of it counts, where that must be said. */
const countedIn = (range: Range): string | null =>
  ["seconds", "minutes", "gramsPerLitre"].find((name) => range !== null && name in range) ?? null;

const rangeOf = ({ takes }: EarField): Range => ("range" in takes ? takes.range : null);

/** The unit that a number typed alone into a field has, by the name of its words; null where it has none. */
function unitOf(field: EarField, draft: Draft): string | null {
  const { path } = field;
  const kind = kindOf(path);
  if (kind === "temperature" || kind === "volume") {
    return draft[`${path}@unit`] ?? draft[`unit.${kind}`] ?? Object.keys(units[kind])[0] ?? null;
  }
  return countedIn(rangeOf(field));
}

/** The units that a number can be given in, in place of the one that it has alone. */
export function otherUnits(field: EarField, draft: Draft): readonly string[] {
  const kind = kindOf(field.path);
  if (kind !== "temperature" && kind !== "volume") return [];
  return Object.keys(units[kind]).filter((name) => name !== unitOf(field, draft));
}

/** What a field may hold, as it is spoken. */
export function rangeSaid(field: EarField, draft: Draft): readonly Saying[] {
  if (field.takes.kind === "text") return [{ key: "ear.any.name" }];
  if (field.takes.kind === "clock") return [{ key: "ear.any.clock" }];
  const range = rangeOf(field);
  const named = unitOf(field, draft);
  const ends = range === null ? undefined : (range[named ?? ""] ?? Object.values(range)[0]);
  if (ends === undefined) return [{ key: "ear.any" }];
  const measure = named === null ? [] : [unitSaid(named)];
  return [
    { key: "ear.range" },
    ...numberSaid(ends[0]),
    { key: "ear.range.to" },
    ...numberSaid(ends[1]),
    ...measure,
  ];
}
