// Work out by ear, as a talk: where it stands and what was done in, where it stands then and what becomes of the
// worksheet out. Said line by line (by-ear-lines.ts); a press takes the offer being told, as in a run, and a key
// does the same. Pure: the sheet over it (by-ear.tsx) speaks the lines and waits between them.
import { echoOf } from "./by-ear-echo.ts";
import type { EarField, Saying } from "./by-ear-field.ts";
import {
  type Act,
  fieldOf,
  isField,
  neighbour,
  restAt,
  stopsOf,
  type Talk,
} from "./by-ear-lines.ts";
import { choosable, chosenOf, rangeSaid } from "./by-ear-said.ts";
import { echoed, signFor } from "./by-ear-signs.ts";
import { blankRow, changed, type Draft, rowCount } from "./draft.ts";
import { isOptional, kindOf, type RowList } from "./fields.ts";
import { units } from "./read-field.ts";
import { readDraft, typedInto } from "./work-out-model.ts";

export const startOfTalk: Talk = { at: 0, typed: null, from: null, answer: [] };

/** What goes on by itself once the lines are over; null where it waits. */
export function thenOf(talk: Talk, draft: Draft): Act | null {
  if (talk.typed !== null || talk.from !== null) return { kind: "change" };
  return stopsOf(draft)[talk.at] === "end" ? null : { kind: "next" };
}

export interface Acted {
  readonly talk: Talk;
  /** The worksheet as it becomes; null where it stays. */
  readonly draft: Draft | null;
}

export function acted(talk: Talk, act: Act, draft: Draft): Acted {
  const field = fieldOf(talk, draft);
  const stay = (changes: Partial<Talk>): Acted => ({
    talk: { ...talk, answer: [], ...changes },
    draft: null,
  });
  const go = (to: number): Acted => {
    const at = Math.max(0, Math.min(stopsOf(draft).length - 1, to));
    return stay({ at, typed: null, from: null });
  };
  switch (act.kind) {
    case "next":
      return go(neighbour(talk.at, 1, draft));
    case "previous":
      return go(neighbour(talk.at, -1, draft));
    case "more":
      return go(talk.at + 1);
    case "rest":
      return go(restAt(draft));
    case "again":
      return stay(startOfTalk);
    case "change":
      return field === null ? stay({}) : stay(opened(talk, field, draft));
    case "go": {
      const there = { ...startOfTalk, at: act.to };
      const wanted = fieldOf(there, draft);
      return wanted === null ? stay({}) : stay({ ...there, ...opened(there, wanted, draft) });
    }
    case "leave":
      return stay({ typed: null, from: null });
    case "step": {
      const values = field === null ? 0 : choosable(field).length;
      if (field === null || values === 0) return go(neighbour(talk.at, act.by, draft));
      const { told, by } = act;
      // Before one of them is told, the first of them is.
      const near = talk.from === null ? chosenOf(field, draft) + by : talk.from;
      const from = talk.from === null || told === null ? near : told + by;
      return stay({ from: (from + 2 * values) % values });
    }
    case "take":
      return field === null ? stay({}) : chosen(talk, field, act.value, draft);
    case "empty":
      // Where another field needs it after all, the end says so: either may be emptied first.
      return field === null ? stay({}) : taken(field, typedInto(draft, field.path, ""), draft);
    case "type": {
      const before = talk.typed ?? "";
      if (field === null || choosable(field).length > 0) return stay({});
      const sign = signFor(field, before, act.sign);
      if (sign === null) return stay({});
      const typed = before + sign;
      return stay({ typed, answer: echoOf(echoed(field, typed), field.takes) });
    }
    case "delete": {
      const typed = (talk.typed ?? "").slice(0, -1);
      return stay({ typed, answer: [{ key: "ear.deleted" }, ...echoOf(typed, field?.takes)] });
    }
    case "set":
      return field === null || !talk.typed
        ? stay({})
        : written(talk, field, withNumber(field, talk.typed, act.unit, draft), draft);
    case "run":
      return stay({});
  }
}

/** A number's digits, or the values of a choice from the one behind its own. */
function opened(talk: Talk, field: EarField, draft: Draft): Partial<Talk> {
  const values = choosable(field).length;
  if (values === 0) return { typed: talk.typed ?? "" };
  const from = talk.from ?? (chosenOf(field, draft) + 1) % values;
  return { from, answer: [{ key: "ear.choose" }] };
}

function chosen(talk: Talk, field: EarField, value: number, draft: Draft): Acted {
  const offer = choosable(field)[value];
  if (offer === undefined) return { talk, draft: null };
  return written(talk, field, typedInto(draft, field.path, offer.value), draft);
}

/** The draft as the page would have it with a number typed; null where it is none for this field. */
function withNumber(
  { path, takes }: EarField,
  typed: string,
  unit: string | undefined,
  draft: Draft,
): Draft | null {
  switch (takes.kind) {
    case "rows":
      return withRows(draft, takes.list, Number(typed), takes.range.rows);
    case "parts":
      return typedInto(draft, path, Number(typed) === 0 ? "stock" : `1+${typed}`);
    case "counts":
      return typedInto(
        draft,
        path,
        typed.replace(/,$/, "").replaceAll(",", takes.decimals ? " " : ","),
      );
    case "number":
    case "sizes":
    case "choice":
    case "text":
    case "clock":
      return typedInto(draft, path, typedText(path, typed, unit));
  }
}

/** A time of bare digits is in minutes; a measure may bring the unit that it was given in. */
function typedText(path: string, typed: string, unit: string | undefined): string {
  const kind = kindOf(path);
  if (kind === "time" && !typed.includes(":")) return `${typed} min`;
  if (unit === undefined || (kind !== "temperature" && kind !== "volume")) return typed;
  const signs: { readonly [unit: string]: string } = units[kind];
  return `${typed} ${signs[unit] ?? ""}`;
}

/** Rows are added at the end, and taken away there; null where a list cannot have so many. */
function withRows(
  draft: Draft,
  list: RowList,
  count: number,
  [least, most]: readonly [number, number],
): Draft | null {
  if (!Number.isInteger(count) || count < least || count > most) return null;
  let next = draft;
  for (let at = rowCount(next, list); at < count; at += 1)
    next = changed(next, { kind: "insert", list, at, row: blankRow(list) }).draft;
  for (let at = rowCount(next, list) - 1; at >= count; at -= 1)
    next = changed(next, { kind: "remove", list, at }).draft;
  return next;
}

/** As the page would read it, or a refusal that leaves the field as it was. */
function written(talk: Talk, field: EarField, next: Draft | null, draft: Draft): Acted {
  const { path, takes } = field;
  // Rows that came in blank are still to be filled, and a list that may be empty says nothing until they are.
  const isBlank = takes.kind === "rows" && isOptional(takes.list);
  const reading = next === null || isBlank ? null : readDraft(next);
  if (
    next === null ||
    (reading !== null && (path in reading.faults || reading.wanting.includes(path)))
  ) {
    const range: readonly Saying[] = choosable(field).length > 0 ? [] : rangeSaid(field, draft);
    const typed = talk.typed === null ? null : "";
    return { talk: { ...talk, typed, answer: [{ key: "ear.refused" }, ...range] }, draft: null };
  }
  return taken(field, next, draft);
}

/** The draft as it becomes, and the field again, or the first of the rows that were added. */
function taken({ path, takes }: EarField, next: Draft, draft: Draft): Acted {
  const before = takes.kind === "rows" ? rowCount(draft, takes.list) : Number.POSITIVE_INFINITY;
  const placeOf = (is: (path: string) => boolean) =>
    stopsOf(next).findIndex((stop) => isField(stop) && is(stop.path));
  const added = placeOf((of) => takes.kind === "rows" && of.startsWith(`${takes.list}[${before}]`));
  const at = added >= 0 ? added : placeOf((of) => of === path);
  return { talk: { at, typed: null, from: null, answer: [{ key: "ear.taken" }] }, draft: next };
}
