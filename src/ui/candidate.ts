// A draft in, what it says in a worksheet's shape out: read field by field, and by no means sure to be one.
// Alone, because what was typed is gathered here and judged elsewhere.
import { processBaths } from "../trade/baths.ts";
import { type Draft, filledRows } from "./draft.ts";
import { mayOf } from "./field-names.ts";
import { isOptional, kindOf, rowLists } from "./fields.ts";
import { words } from "./language.ts";
import { readField } from "./read-field.ts";

/** Whether the draft has a bath in use: as ticked, else as its process has it. */
export function bathInUse(draft: Draft, id: string): boolean {
  const facts = (processBaths[draft.process ?? ""] ?? []).find((bath) => bath.id === id);
  const ticked = draft[`baths.${id}.use`];
  return ticked === undefined ? facts?.onlyIfNamed === false : ticked === "yes";
}

interface Gathered {
  /** What the draft says, in the worksheet's shape and by no means sure to be one. */
  readonly candidate: Record<string, unknown>;
  readonly faults: Record<string, string>;
  readonly meanings: Record<string, string>;
}

export function gathered(draft: Draft): Gathered {
  const candidate: Record<string, unknown> = {
    tankside: 1,
    developer: {},
    tank: {},
    agitation: {},
    clock: {},
  };
  for (const list of rowLists) {
    const rows = filledRows(draft, list);
    if (rows === 0 && isOptional(list)) continue;
    setAt(candidate, list, []);
    for (let row = 0; row < rows; row++) setAt(candidate, `${list}[${row}]`, {});
  }
  const faults: Record<string, string> = {};
  const meanings: Record<string, string> = {};
  for (const [path, text] of Object.entries(draft)) {
    const kind = kindOf(path);
    if (kind === null || kind === "use" || text.trim() === "") continue;
    const reading = readField(kind, text, draft[`${path}@unit`] ?? "");
    if (reading.kind === "unread") {
      if (matters(draft, path))
        faults[path] = words.value.faults.holds(text.trim(), mayOf(reading.may));
      continue;
    }
    setAt(candidate, path, reading.value);
    if (reading.lent) meanings[path] = words.value.faults.lent(reading.meaning);
    else if (!sameText(text, reading.meaning))
      meanings[path] = words.value.faults.readAs(reading.meaning);
  }
  completeStops(candidate);
  completeBaths(candidate, draft);
  return { candidate, faults, meanings };
}

/** A fault in a bath that is not used stands in nobody's way. */
function matters(draft: Draft, path: string): boolean {
  const bath = /^baths\.([^.]+)/.exec(path)?.[1];
  return bath === undefined || bathInUse(draft, bath);
}

function sameText(typed: string, meaning: string): boolean {
  const bare = (text: string) => text.replace(/[\s°]/g, "").replace(/[−–]/g, "-").toLowerCase();
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
