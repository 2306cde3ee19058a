// A worksheet as it was typed: each field's text by its path, never changed by being read.
// Pure and separate from the reading, so that nothing typed can be lost by a bad value elsewhere.
import { isOptional, type RowList, rowParts } from "./fields.ts";

/**
 * Text by path, `"films[0].label"`. Two keys hold no field's own text: `path@unit` is the unit lent
 * to a number typed without one, and `unit.temperature`, `unit.volume` the unit last typed.
 */
export type Draft = { readonly [path: string]: string };

/** Whether anything is typed into a field. */
export function isFilled(draft: Draft, path: string): boolean {
  return (draft[path] ?? "").trim() !== "";
}

export type Row = { readonly [part: string]: string };

export function blankRow(list: RowList): Row {
  return Object.fromEntries(rowParts[list].map((part) => [part, ""]));
}

/** How many rows a list has: one more than the highest index in use. */
export function rowCount(draft: Draft, list: RowList): number {
  let count = 0;
  for (const path of Object.keys(draft)) {
    const at = indexIn(path, list);
    if (at !== null && at >= count) count = at + 1;
  }
  return count;
}

/** Rows up to the last that holds anything, of a list that may be empty; of another, all. */
export function filledRows(draft: Draft, list: RowList): number {
  const count = rowCount(draft, list);
  if (!isOptional(list)) return count;
  const holds = (row: number) =>
    rowParts[list].some((part) => isFilled(draft, `${list}[${row}].${part}`));
  let filled = count;
  while (filled > 0 && !holds(filled - 1)) filled -= 1;
  return filled;
}

/** A change to the shape of the draft. Every one has its inverse, so that every one can be undone. */
export type Change =
  | { readonly kind: "insert"; readonly list: RowList; readonly at: number; readonly row: Row }
  | { readonly kind: "remove"; readonly list: RowList; readonly at: number }
  | { readonly kind: "replace"; readonly draft: Draft };

/** The draft after a change, and the change that takes it back with all that was typed since. */
export function changed(
  draft: Draft,
  change: Change,
): { readonly draft: Draft; readonly inverse: Change } {
  switch (change.kind) {
    case "replace":
      return { draft: change.draft, inverse: { kind: "replace", draft } };
    case "insert": {
      const { list, at, row } = change;
      const after = moved(draft, list, (index) => (index >= at ? index + 1 : index));
      for (const [part, text] of Object.entries(row)) after[`${list}[${at}].${part}`] = text;
      return { draft: after, inverse: { kind: "remove", list, at } };
    }
    case "remove": {
      const { list, at } = change;
      const start = `${list}[${at}].`;
      const row: Record<string, string> = {};
      for (const [path, text] of Object.entries(draft)) {
        if (path.startsWith(start)) row[path.slice(start.length)] = text;
      }
      const after = moved(draft, list, (index) =>
        index === at ? null : index > at ? index - 1 : index,
      );
      return { draft: after, inverse: { kind: "insert", list, at, row } };
    }
  }
}

function indexIn(path: string, list: RowList): number | null {
  if (!path.startsWith(`${list}[`)) return null;
  return Number.parseInt(path.slice(list.length + 1), 10);
}

/** Every row's texts under its new index; null drops the row. */
function moved(
  draft: Draft,
  list: RowList,
  to: (index: number) => number | null,
): Record<string, string> {
  const after: Record<string, string> = {};
  for (const [path, text] of Object.entries(draft)) {
    const from = indexIn(path, list);
    const index = from === null ? null : to(from);
    if (from === null) after[path] = text;
    else if (index !== null) after[path.replace(`${list}[${from}]`, `${list}[${index}]`)] = text;
  }
  return after;
}
