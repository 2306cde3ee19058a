// What a field asked by ear is: what it takes, what it changes; and the makers of the usual kinds.
// Apart from which fields there are (by-ear-fields.ts, by-ear-more.ts, by-ear-beside.ts), since all are made of these.

import { type Draft, rowCount } from "./draft.ts";
import type { RowList } from "./fields.ts";

/** A sentence of the script, with its slots. */
export interface Saying {
  readonly key: string;
  readonly slots?: { readonly [slot: string]: string };
}

/** Both ends are taken; null: any number above 0. Where units differ, by unit. */
export type Range = { readonly [unit: string]: readonly [number, number] } | null;

/** A value as the page's own field writes it, and as the script names it. */
interface Offer {
  readonly value: string;
  readonly choice: string;
}

export type Takes =
  | {
      readonly kind: "number";
      readonly range: Range;
      readonly usual?: Usual;
      /** It may be left empty, and then nothing is made of it. */
      readonly optional?: true;
    }
  /** Whole numbers in a row, one for each fill of water; or any, a wedge's step by step. It may be left empty. */
  | { readonly kind: "counts"; readonly range: Range; readonly decimals?: true }
  /** A name, by its letters. */
  | { readonly kind: "text"; readonly optional?: true }
  /** A time of day; it may be left empty. */
  | { readonly kind: "clock" }
  /** Parts of water to one of stock; none: as it is. */
  | { readonly kind: "parts"; readonly range: Range }
  /** How many rows there are of a list. */
  | {
      readonly kind: "rows";
      readonly list: RowList;
      readonly range: { readonly rows: readonly [number, number] };
    }
  | { readonly kind: "sizes"; readonly values: readonly string[] }
  | { readonly kind: "choice"; readonly offers: readonly Offer[] };

/** A number that may be left empty, and is then as it usually is: how many seconds it comes to, if it is a time. */
interface Usual {
  readonly seconds?: number;
}

export interface EarField {
  readonly path: string;
  /** Behind `ear.`; null where its bath's name says it all. */
  readonly name: string | null;
  readonly sets: readonly ("time" | "mix" | "hands" | "warning" | "run" | "records" | "answer")[];
  readonly takes: Takes;
  /** The bath's id that it belongs to. */
  readonly bath?: string;
  /** The gate that it lies behind. */
  readonly behind?: string;
  /** Its row, from 1, where there are several. */
  readonly row?: number;
}

/** Behind it lies what few fill in, passed by unless it is wanted or something of it is filled in. */
export interface Gate {
  /** A bath's id, or the question beside the development. */
  readonly gate: string;
  readonly says: Saying;
}

/** Of a bath; below 0 nothing is given by keys. */
export const warm = { c: [0, 110], f: [32, 230] } as const;
export const upToAnHour = { seconds: [0, 3600] } as const;
export const measured = { ml: [1, 100_000], flOz: [1, 3000] } as const;

export const number = (
  path: string,
  name: string,
  sets: EarField["sets"][number],
  range: Range = null,
  usual?: Usual,
): EarField => ({
  path,
  name,
  sets: [sets],
  takes: { kind: "number", range, ...(usual === undefined ? {} : { usual }) },
});

export const choice = (
  path: string,
  name: string | null,
  sets: EarField["sets"],
  offers: { readonly [value: string]: string },
): EarField => ({
  path,
  name,
  sets,
  takes: {
    kind: "choice",
    offers: Object.entries(offers).map(([value, called]) => ({ value, choice: called })),
  },
});

export const same = (values: readonly string[]) =>
  Object.fromEntries(values.map((value) => [value, value]));

/** A number of which nothing is made where it is left empty. */
export const optional = (
  path: string,
  name: string,
  sets: EarField["sets"][number],
  range: Range = null,
): EarField => ({ path, name, sets: [sets], takes: { kind: "number", range, optional: true } });

/** A name; where it may be left empty, nothing is made of it. */
export const text = (path: string, name: string, mayBeEmpty?: "optional"): EarField => ({
  path,
  name,
  sets: ["records"],
  takes: { kind: "text", ...(mayBeEmpty === undefined ? {} : { optional: true }) },
});

export const rows = (
  list: RowList,
  name: string,
  sets: EarField["sets"][number],
  range: readonly [number, number],
): EarField => ({
  path: list,
  name: `rows.${name}`,
  sets: [sets],
  takes: { kind: "rows", list, range: { rows: range } },
});

/** Of each row of a list, in order. */
export function inRows(
  draft: Draft,
  list: RowList,
  fields: (start: string) => readonly EarField[],
): readonly EarField[] {
  const count = rowCount(draft, list);
  return Array.from({ length: count }, (_, at) =>
    fields(`${list}[${at}]`).map((field) => (count > 1 ? { ...field, row: at + 1 } : field)),
  ).flat();
}

/** A gate, and what lies behind it. */
export const gated = (gate: Gate, fields: readonly EarField[]): readonly (EarField | Gate)[] => [
  gate,
  ...fields.map((field) => ({ ...field, behind: gate.gate })),
];
