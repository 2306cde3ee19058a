// A draft in; out come the worksheet and its plan, or what stands in their way, field by field.
// Pure: the screen only shows what this returns, and the stages below never see what was typed.

import { type Plan, planOf } from "../plan/plan.ts";
import { readWorksheet } from "../plan/read-worksheet.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import { processBaths } from "../trade/baths.ts";
import { type Draft, rowCount } from "./draft.ts";
import { withNames } from "./field-names.ts";
import { fieldKinds, kindOf, patternOf, rowLists, wantedByOthers } from "./fields.ts";
import { readField, units, unitTyped } from "./read-field.ts";
import { faultWords } from "./words.ts";

export interface DraftReading {
  /** Null while anything is at fault or wanting. */
  readonly worksheet: Worksheet | null;
  readonly plan: Plan | null;
  /** By path: the sentence that stands beside the field. */
  readonly faults: { readonly [path: string]: string };
  /** Paths of fields that are empty and may not be, in the page's order. */
  readonly wanting: readonly string[];
  /** By path: how the text was understood, where it is not plain from the text itself. */
  readonly meanings: { readonly [path: string]: string };
}

/** Whether the draft has a bath in use: as ticked, else as its process has it. */
export function bathInUse(draft: Draft, id: string): boolean {
  const facts = (processBaths[draft.process ?? ""] ?? []).find((bath) => bath.id === id);
  const ticked = draft[`baths.${id}.use`];
  return ticked === undefined ? facts?.onlyIfNamed === false : ticked === "yes";
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

export function readDraft(draft: Draft): DraftReading {
  const { candidate, faults, meanings } = gathered(draft);
  const result = readWorksheet(candidate);
  const wanting: string[] = [];
  for (const fault of result.kind === "faults" ? result.faults : []) {
    const path = fieldOf(fault.path);
    const pattern = patternOf(path);
    const text = (draft[path] ?? "").trim();
    if (path in faults || wanting.includes(path)) continue;
    if (text !== "") faults[path] = faultWords.holds(text, withNames(fault.may));
    else if (pattern === null) faults[path] = faultWords.list(withNames(fault.may));
    else {
      wanting.push(path);
      if (wantedByOthers.includes(pattern))
        meanings[path] = faultWords.needed(withNames(fault.may));
    }
  }
  const whole = result.kind === "worksheet" && Object.keys(faults).length === 0;
  const worksheet = whole ? result.worksheet : null;
  return {
    worksheet,
    plan: worksheet && planOf(worksheet),
    faults,
    wanting: wanting.sort(inPageOrder),
    meanings,
  };
}

interface Gathered {
  /** What the draft says, in the worksheet's shape and by no means sure to be one. */
  readonly candidate: Record<string, unknown>;
  readonly faults: Record<string, string>;
  readonly meanings: Record<string, string>;
}

function gathered(draft: Draft): Gathered {
  const candidate: Record<string, unknown> = {
    tankside: 1,
    developer: {},
    tank: {},
    agitation: {},
    clock: {},
  };
  for (const list of rowLists) {
    setAt(candidate, list, []);
    for (let row = 0; row < rowCount(draft, list); row++) setAt(candidate, `${list}[${row}]`, {});
  }
  const faults: Record<string, string> = {};
  const meanings: Record<string, string> = {};
  for (const [path, text] of Object.entries(draft)) {
    const kind = kindOf(path);
    if (kind === null || kind === "use" || text.trim() === "") continue;
    const reading = readField(kind, text, draft[`${path}@unit`] ?? "");
    if (reading.kind === "unread") {
      if (matters(draft, path)) faults[path] = faultWords.holds(text.trim(), reading.may);
      continue;
    }
    setAt(candidate, path, reading.value);
    if (reading.lent) meanings[path] = faultWords.lent(reading.meaning);
    else if (!sameText(text, reading.meaning)) meanings[path] = faultWords.readAs(reading.meaning);
  }
  completeStops(candidate);
  completeBaths(candidate, draft);
  return { candidate, faults, meanings };
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

/** A fault in a bath that is not used stands in nobody's way. */
function matters(draft: Draft, path: string): boolean {
  const bath = /^baths\.([^.]+)/.exec(path)?.[1];
  return bath === undefined || bathInUse(draft, bath);
}

/** The field that a path inside a value belongs to: `tank.room.c` is `tank.room`'s. */
function fieldOf(path: string): string {
  for (let inner = path; inner !== ""; inner = inner.replace(/(?:^|\.)[^.]*$/, "")) {
    if (patternOf(inner) !== null) return inner;
  }
  return path;
}

function sameText(typed: string, meaning: string): boolean {
  const bare = (text: string) => text.replace(/[\s°]/g, "").toLowerCase();
  return bare(typed) === bare(meaning);
}

/** Both fractions are wanted where one is given; the other is then the arithmetic's own default. */
function completeStops(candidate: Record<string, unknown>): void {
  const developer = candidate.developer as Record<string, unknown>;
  if (typeof developer.perStop !== "object") return;
  developer.perStop = { pull: 0.1, push: 0.4, ...developer.perStop };
}

function completeBaths(candidate: Record<string, unknown>, draft: Draft): void {
  const baths = { ...(candidate.baths as Record<string, Record<string, unknown>> | undefined) };
  for (const { id, onlyIfNamed } of processBaths[draft.process ?? ""] ?? []) {
    const inUse = bathInUse(draft, id);
    const bath: Record<string, unknown> = { ...baths[id] };
    if (bath.agitation) bath.agitation = { ...(candidate.agitation as object), ...bath.agitation };
    if (!inUse && (!onlyIfNamed || id in baths)) bath.skip = true;
    if (Object.keys(bath).length > 0 || (inUse && onlyIfNamed)) baths[id] = bath;
  }
  if (Object.keys(baths).length > 0) candidate.baths = baths;
}

/** Sets a value by its path, making what is missing on the way. */
function setAt(root: Record<string, unknown>, path: string, value: unknown): void {
  const steps = path
    .split(/\.|(?=\[)/)
    .map((step) => (step.startsWith("[") ? Number.parseInt(step.slice(1), 10) : step));
  let inside = root;
  steps.forEach((step, depth) => {
    if (depth === steps.length - 1) inside[step] = value;
    else {
      inside[step] ??= typeof steps[depth + 1] === "number" ? [] : {};
      inside = inside[step] as Record<string, unknown>;
    }
  });
}
