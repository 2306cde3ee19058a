// What a field asked by ear is: what it takes, what it changes; and the makers of the usual kinds.
// Apart from which fields there are (by-ear-fields.ts, by-ear-more.ts), since both lists are made of these.

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

type Takes =
  | {
      readonly kind: "number";
      readonly range: Range;
      readonly usual?: Usual;
      /** It may be left empty, and then nothing is made of it. */
      readonly optional?: true;
    }
  /** Whole numbers in a row, one for each fill of water; it may be left empty. */
  | { readonly kind: "counts"; readonly range: Range }
  /** Parts of water to one of stock; none: as it is. */
  | { readonly kind: "parts"; readonly range: Range }
  /** How many rows there are of a list. */
  | {
      readonly kind: "rows";
      readonly list: "films" | "developer.leaflet";
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
  readonly sets: readonly ("time" | "mix" | "hands" | "warning" | "run")[];
  readonly takes: Takes;
  /** The bath's id that it belongs to. */
  readonly bath?: string;
  /** The bath's id of the gate that it lies behind. */
  readonly behind?: string;
  /** Its row, from 1, where there are several. */
  readonly row?: number;
}

/** By a bath's id: behind it lies more about the bath, passed by unless it is wanted or something of it is filled in. */
export interface Gate {
  readonly gate: string;
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
