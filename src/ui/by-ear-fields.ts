// The numbers of a worksheet that can be asked by ear, each with its sentences; and a value in, what is spoken
// of it out: sentences of the script by key, a number by its digits, since it can be any.
import type { Draft } from "./draft.ts";
import { kindOf } from "./fields.ts";
import { readField, units } from "./read-field.ts";

/** A sentence of the script, with its slots. */
export interface Saying {
  readonly key: string;
  readonly slots?: { readonly [slot: string]: string };
}

export interface EarField {
  readonly path: string;
  readonly name: string;
  readonly sets: "time" | "mix" | "hands";
  /** Both ends are taken; null: any number above 0. Where units differ, by unit. */
  readonly range: { readonly [unit: string]: readonly [number, number] } | null;
}

const warm = { c: [0, 110], f: [32, 230] } as const;
const pour = { seconds: [1, 600] } as const;
const upToAnHour = { seconds: [0, 3600] } as const;

/** In the order of the page. */
export const earFields: readonly EarField[] = [
  { path: "films[0].count", name: "count", sets: "mix", range: { films: [1, 100] } },
  { path: "films[0].boxSpeed", name: "box-speed", sets: "time", range: null },
  { path: "films[0].exposureIndex", name: "rating", sets: "time", range: null },
  {
    path: "developer.leaflet[0].temperature",
    name: "row-temperature",
    sets: "time",
    range: warm,
  },
  { path: "developer.leaflet[0].time", name: "row-time", sets: "time", range: null },
  { path: "developer.temperature", name: "temperature", sets: "time", range: warm },
  {
    path: "tank.volume",
    name: "volume",
    sets: "mix",
    range: { ml: [1, 100_000], flOz: [1, 3000] },
  },
  { path: "tank.pourIn", name: "pour-in", sets: "hands", range: pour },
  { path: "tank.pourOut", name: "pour-out", sets: "hands", range: pour },
  { path: "agitation.first", name: "first", sets: "hands", range: upToAnHour },
  { path: "agitation.every", name: "every", sets: "hands", range: upToAnHour },
  { path: "agitation.for", name: "for", sets: "hands", range: upToAnHour },
];

const unit = (name: string): Saying => ({ key: "ear.unit", slots: { unit: name } });
const digit = (name: string): Saying => ({ key: "ear.digit", slots: { digit: name } });

/** As it is typed, so it is echoed: `":"` parts minutes from seconds, `"."` the whole from its parts. */
export function echoOf(typed: string): readonly Saying[] {
  return [...typed].map((sign) => {
    if (sign === ":") return unit("minutes");
    return digit(sign === "." ? "point" : sign);
  });
}

const numberSaid = (value: number): readonly Saying[] =>
  echoOf(String(Math.round(value * 100) / 100));

/** A time by its minutes and seconds. */
export function timeSaid(seconds: number): readonly Saying[] {
  const [minutes, rest] = [Math.floor(seconds / 60), Math.round(seconds % 60)];
  return [
    ...(minutes === 0 ? [] : [...numberSaid(minutes), unit("minutes")]),
    ...(rest === 0 && minutes > 0 ? [] : [...numberSaid(rest), unit("seconds")]),
  ];
}

/** The unit that a number typed alone into a field has, by the name of its words; null where it has none. */
function unitOf({ path, range }: EarField, draft: Draft): string | null {
  const kind = kindOf(path);
  if (kind === "temperature" || kind === "volume") {
    return draft[`${path}@unit`] ?? draft[`unit.${kind}`] ?? Object.keys(units[kind])[0] ?? null;
  }
  return isInSeconds(range) ? "seconds" : null;
}

const isInSeconds = (range: EarField["range"]): boolean => range !== null && "seconds" in range;

/** What a field holds, as it is spoken. */
export function valueSaid(field: EarField, draft: Draft): readonly Saying[] {
  const text = (draft[field.path] ?? "").trim();
  const kind = kindOf(field.path);
  if (text === "" || kind === null) return [{ key: "ear.empty" }];
  const reading = readField(kind, text, unitOf(field, draft) ?? "");
  if (reading.kind === "unread") return [{ key: "ear.refused" }];
  return [{ key: "ear.holds" }, ...said(reading.value, field)];
}

function said(value: unknown, { range }: EarField): readonly Saying[] {
  if (typeof value === "number") {
    return [...numberSaid(value), ...(isInSeconds(range) ? [unit("seconds")] : [])];
  }
  if (typeof value === "string") {
    const parts = value.split(":").map(Number);
    return timeSaid(parts.reduce((sum, part) => sum * 60 + part, 0));
  }
  const [[name, size] = ["", 0]] = Object.entries(value as { readonly [unit: string]: number });
  return [...numberSaid(size), unit(name)];
}

/** What a field may hold, as it is spoken. */
export function rangeSaid(field: EarField, draft: Draft): readonly Saying[] {
  const { range } = field;
  const named = unitOf(field, draft);
  const ends = range === null ? undefined : (range[named ?? ""] ?? Object.values(range)[0]);
  if (ends === undefined) return [{ key: "ear.any" }];
  const measure = named === null ? [] : [unit(named)];
  return [
    { key: "ear.range" },
    ...numberSaid(ends[0]),
    { key: "ear.range.to" },
    ...numberSaid(ends[1]),
    ...measure,
  ];
}
