// A draft in; out come the worksheet and its plan, or what stands in their way, field by field.
// Pure: the screen only shows what this returns, and the stages below never see what was typed.

import type { Aside } from "../plan/asides.ts";
import type { Plan } from "../plan/plan.ts";
import { planWith } from "../plan/plan-with.ts";
import { readWorksheet } from "../plan/read-worksheet.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import { gathered } from "./candidate.ts";
import type { Draft } from "./draft.ts";
import { mayOf, withNames } from "./field-names.ts";
import { asideOf, fieldKinds, kindOf, patternOf, wantedByOthers } from "./fields.ts";
import { planWords, words } from "./language.ts";
import { units, unitTyped } from "./read-field.ts";

export interface DraftReading {
  /** Null while anything that the development needs is at fault or wanting. */
  readonly worksheet: Worksheet | null;
  readonly plan: Plan | null;
  /** By path: the sentence that stands beside the field. */
  readonly faults: { readonly [path: string]: string };
  /** Paths of fields that are empty and may not be, in the page's order. */
  readonly wanting: readonly string[];
  /** By path: how the text was understood, where it is not plain from the text itself. */
  readonly meanings: { readonly [path: string]: string };
}

/** The draft once a text has been typed into a field, with the unit remembered or lent. */
export function typedInto(draft: Draft, path: string, text: string): Draft {
  const kind = kindOf(path);
  if (kind !== "temperature" && kind !== "volume") return { ...draft, [path]: text };
  const own = unitTyped(kind, text);
  const last = draft[`unit.${kind}`] ?? Object.keys(units[kind])[0] ?? "";
  // The loan is fixed as it is made: what another field says later must not re-mean this one.
  const { [`${path}@unit`]: loan, ...rest } = draft;
  if (own !== null) return { ...rest, [path]: text, [`unit.${kind}`]: own };
  return { ...rest, [path]: text, [`${path}@unit`]: text.trim() === "" ? last : (loan ?? last) };
}

/** `asides`: the questions beside the development that have been fetched. */
export function readDraft(draft: Draft, asides: readonly Aside[] = []): DraftReading {
  const { candidate, faults, meanings } = gathered(draft);
  const result = readWorksheet(candidate);
  const wanting: string[] = [];
  for (const fault of result.kind === "faults" ? result.faults : []) {
    const path = fieldOf(fault.path);
    const pattern = patternOf(path);
    const text = (draft[path] ?? "").trim();
    if (path in faults || wanting.includes(path)) continue;
    if (text !== "") faults[path] = words.value.faults.holds(text, withNames(mayOf(fault.may)));
    else if (pattern === null) faults[path] = words.value.faults.list(withNames(mayOf(fault.may)));
    else {
      wanting.push(path);
      if (wantedByOthers.includes(pattern))
        meanings[path] = words.value.faults.needed(withNames(mayOf(fault.may)));
    }
  }
  const hindered = [...Object.keys(faults), ...wanting];
  const whole = result.kind === "worksheet" && hindered.length === 0;
  const worksheet = whole ? result.worksheet : usable(candidate, hindered);
  return {
    worksheet,
    plan: worksheet && planWith(asides, worksheet, planWords.value),
    faults,
    wanting: wanting.sort(inPageOrder),
    meanings,
  };
}

/** The worksheet without the asides that something stands in the way of; null where it is not only those. */
function usable(candidate: Record<string, unknown>, hindered: readonly string[]): Worksheet | null {
  const hinderedAsides = hindered.map(asideOf);
  if (hinderedAsides.includes(null)) return null;
  const kept = Object.entries(candidate).filter(
    ([part]) => !hinderedAsides.some((aside) => aside === part),
  );
  const result = readWorksheet(Object.fromEntries(kept));
  return result.kind === "worksheet" ? result.worksheet : null;
}

/** Paths in the order in which their fields stand on the page. */
export function inPageOrder(a: string, b: string): number {
  const [listA, rowA, partA] = placeOf(a);
  const [listB, rowB, partB] = placeOf(b);
  return listA - listB || rowA - rowB || partA - partB || a.localeCompare(b);
}

function placeOf(path: string): readonly [number, number, number] {
  const patterns = Object.keys(fieldKinds);
  const part = patterns.indexOf(patternOf(path) ?? "");
  const row = /\[(\d+)\]/.exec(path);
  const list = row
    ? patterns.findIndex((pattern) => pattern.startsWith(path.slice(0, row.index)))
    : part;
  return [list, Number(row?.[1] ?? 0), part];
}

/** The field that a path inside a value belongs to: `tank.room.c` is `tank.room`'s, `baths.wash.fills[1]` the list's. */
function fieldOf(path: string): string {
  for (let inner = path; inner !== ""; inner = inner.replace(/(?:\[\d+\]|(?:^|\.)[^.[]*)$/, "")) {
    if (patternOf(inner) !== null) return inner;
  }
  return path;
}
