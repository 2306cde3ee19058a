// The fields of a worksheet that are asked by ear, in the order in which they are, each with what it takes and
// what it changes. Data that follows from the draft alone: its rows and its baths are what they are.

import { darkWaitSeconds } from "../plan/dark-wait.ts";
import { type BathFacts, processBaths } from "../trade/baths.ts";
import { methods } from "../trade/method.ts";
import { readFilmSize } from "../units/film-size.ts";
import { bathInUse } from "./candidate.ts";
import { type Draft, rowCount } from "./draft.ts";
import { commonSizes } from "./fields.ts";

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
  | { readonly kind: "number"; readonly range: Range; readonly usual?: Usual }
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

/** A number that may be left empty: how many seconds it comes to, if it is a time. */
interface Usual {
  readonly seconds?: number;
}

export interface EarField {
  readonly path: string;
  /** Behind `ear.`; null where its bath's name says it all. */
  readonly name: string | null;
  readonly sets: readonly ("time" | "mix" | "hands" | "run")[];
  readonly takes: Takes;
  /** The bath's id that it belongs to. */
  readonly bath?: string;
  /** Its row, from 1, where there are several. */
  readonly row?: number;
}

const warm = { c: [0, 110], f: [32, 230] } as const;
const pour = { seconds: [1, 600] } as const;
const upToAnHour = { seconds: [0, 3600] } as const;

const number = (
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

const choice = (
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

const same = (values: readonly string[]) =>
  Object.fromEntries(values.map((value) => [value, value]));

/** Of each row of a list, in order. */
function inRows(
  draft: Draft,
  list: "films" | "developer.leaflet",
  fields: (start: string) => readonly EarField[],
): readonly EarField[] {
  const count = rowCount(draft, list);
  return Array.from({ length: count }, (_, at) =>
    fields(`${list}[${at}]`).map((field) => (count > 1 ? { ...field, row: at + 1 } : field)),
  ).flat();
}

/** The sizes that are offered for every film, and its own where that is another. */
function sizesFor(draft: Draft, path: string): readonly string[] {
  const own = readFilmSize(draft[path] ?? "");
  const isOther = own.kind === "read" && !commonSizes.includes(own.size);
  return isOther ? [...commonSizes, own.size] : commonSizes;
}

/** What any session is worked out from, in the order of the page. */
export function firstFields(draft: Draft): readonly EarField[] {
  return [
    ...inRows(draft, "films", (film) => [
      {
        path: `${film}.size`,
        name: "size",
        sets: ["mix"],
        takes: { kind: "sizes", values: sizesFor(draft, `${film}.size`) },
      },
      number(`${film}.count`, "count", "mix", { films: [1, 100] }),
      number(`${film}.boxSpeed`, "box-speed", "time"),
      number(`${film}.exposureIndex`, "rating", "time", null, {}),
    ]),
    {
      path: "developer.dilution",
      name: "dilution",
      sets: ["mix"],
      takes: { kind: "parts", range: { parts: [0, 10_000] } },
    },
    ...inRows(draft, "developer.leaflet", (row) => [
      number(`${row}.temperature`, "row-temperature", "time", warm),
      number(`${row}.time`, "row-time", "time"),
    ]),
    number("developer.temperature", "temperature", "time", warm),
    choice("tank.method", "method", ["time", "hands"], same(methods)),
    number("tank.volume", "volume", "mix", { ml: [1, 100_000], flOz: [1, 3000] }),
    number("tank.pourIn", "pour-in", "hands", pour),
    number("tank.pourOut", "pour-out", "hands", pour),
    number("agitation.first", "first", "hands", upToAnHour),
    number("agitation.every", "every", "hands", upToAnHour),
    number("agitation.for", "for", "hands", upToAnHour),
  ];
}

/** What most leave as it stands: told for those who ask for it. */
export function restOfFields(draft: Draft): readonly EarField[] {
  const baths = processBaths[draft.process ?? ""] ?? [];
  return [
    {
      path: "films",
      name: "rows.films",
      sets: ["mix"],
      takes: { kind: "rows", list: "films", range: { rows: [1, 50] } },
    },
    {
      path: "developer.leaflet",
      name: "rows.leaflet",
      sets: ["time"],
      takes: { kind: "rows", list: "developer.leaflet", range: { rows: [1, 200] } },
    },
    number("agitation.perInversion", "per-inversion", "hands", { seconds: [0.5, 60] }),
    number("agitation.taps", "taps", "hands", { taps: [0, 20] }),
    choice("clock.starts", "starts", ["hands"], same(["pour-in", "full"])),
    choice("clock.ends", "ends", ["hands"], same(["pour-out", "empty"])),
    ...baths.flatMap((bath) => ofBath(draft, bath)),
    number("darkWait", "wait", "run", { minutes: [0, 30] }, { seconds: darkWaitSeconds({}) }),
    choice("loading", "loading", ["run"], { "": "to-load", done: "loaded" }),
    choice("voice.detail", "detail", ["run"], {
      "": "usual",
      full: "sentences",
      brief: "words",
      tones: "tones",
    }),
    number("voice.rate", "rate", "run", { rate: [0.8, 1.6] }, {}),
  ];
}

function ofBath(draft: Draft, { id, seconds }: BathFacts): readonly EarField[] {
  const start = `baths.${id}`;
  const afterwards = choice(`${start}.afterwards`, "afterwards", ["run"], {
    "": "usual",
    ...same(["drain", "waste", "return"]),
  });
  const own = [
    // The developer is always there, and how long is worked out.
    ...(seconds === null
      ? []
      : [
          choice(`${start}.use`, null, ["hands"], { yes: "used", no: "unused" }),
          number(`${start}.time`, "bath-time", "hands", null, { seconds }),
        ]),
    afterwards,
  ];
  const told = seconds === null || bathInUse(draft, id) ? own : own.slice(0, 1);
  return told.map((field) => ({ ...field, bath: id }));
}
