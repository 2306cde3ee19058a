// What is kept of a run: begun when, with which worksheet, each press, how it ended, what came of it.
// With the check that something read back is one, since another version may have kept it: where it is not, the
// place in it is named. Fields that are not known here are a newer version's, and stay.
import {
  array,
  type GenericSchema,
  integer,
  literal,
  looseObject,
  maxValue,
  minValue,
  nullable,
  number,
  optional,
  picklist,
  pipe,
  safeParse,
  string,
  union,
  unknown,
  variant,
} from "valibot";
import { readWorksheet } from "../plan/read-worksheet.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import { type Wrong, wrongs } from "../process/wrongs.ts";
import { densities, edges, marks, type Negatives } from "../trade/negatives.ts";
import { isObject } from "../units/object.ts";
import type { Temperature } from "../units/temperature.ts";
import { pathText } from "./path-text.ts";

export interface RunRecord {
  readonly id: string;
  /** UTC, ms since 1970. */
  readonly begunAt: number;
  readonly worksheet: Worksheet;
  readonly developmentSeconds: number;
  /** Every bath as it was planned, in order; not there in records of the first versions. */
  readonly planned?: readonly {
    readonly bath: string;
    /** Id of the section that it is poured in. */
    readonly section: string;
    /** On the bath's own clock. */
    readonly seconds: number;
  }[];
  readonly presses: readonly {
    /** Id of the section that it began. */
    readonly section: string;
    /** UTC, ms since 1970. */
    readonly at: number;
  }[];
  /** What went otherwise than planned, and what was not heard. */
  readonly otherwise?: readonly Otherwise[];
  /** What the development came to be by what was read in it; not there where it went by plan. */
  readonly developedSeconds?: number;
  /** Baths that had been poured in when it was left, in order; not there in records of older versions. */
  readonly pouredIn?: readonly string[];
  /** null while it is on, or where the page went away in the midst of it. */
  readonly ended: "done" | "left" | null;
  readonly note: string;
  /** What was seen on the negatives, if anyone said. */
  readonly negatives?: Negatives;
  /** How good they are, if anyone said; 0: said, and taken back. */
  readonly stars?: Stars | 0;
  /** When it was last kept or judged, UTC, ms since 1970; not there in records of the first versions. */
  readonly changedAt?: number;
}

export const allStars = [1, 2, 3, 4, 5] as const;
export type Stars = (typeof allStars)[number];

/** What a person adds to a run afterwards. */
export type Judgement = Partial<Pick<RunRecord, "note" | "negatives" | "stars">>;

export const judgementOf = ({ note, negatives, stars }: RunRecord): Judgement => ({
  note,
  ...(negatives === undefined ? {} : { negatives }),
  ...(stars === undefined ? {} : { stars }),
});

/** When a record was last changed, as well as it is known. */
export const changedAt = (record: RunRecord): number =>
  record.changedAt ?? record.presses.at(-1)?.at ?? record.begunAt;

/** Seconds, and UTC in ms since 1970. */
export type Otherwise = { readonly at: number } & (
  | { readonly kind: "poured" | "emptied"; readonly bath: string; readonly by: number }
  | { readonly kind: "read"; readonly temperature: Temperature; readonly after: number }
  | {
      readonly kind: "lost";
      readonly how: "closed" | "frozen" | "asleep" | "silent";
      readonly lost: number;
    }
  | { readonly kind: "clock-set"; readonly by: number }
  | { readonly kind: "wrong"; readonly wrong: Wrong }
);

/** What a date can be made of. */
const LAST = 8.64e15;
const time = pipe(number(), minValue(-LAST), maxValue(LAST));

const temperature = union([looseObject({ c: number() }), looseObject({ f: number() })]);

const otherwise = variant("kind", [
  looseObject({ at: time, kind: literal("poured"), bath: string(), by: number() }),
  looseObject({ at: time, kind: literal("emptied"), bath: string(), by: number() }),
  looseObject({ at: time, kind: literal("read"), temperature, after: number() }),
  looseObject({
    at: time,
    kind: literal("lost"),
    how: picklist(["closed", "frozen", "asleep", "silent"]),
    lost: number(),
  }),
  looseObject({ at: time, kind: literal("clock-set"), by: number() }),
  looseObject({ at: time, kind: literal("wrong"), wrong: picklist(wrongs) }),
]);

/** All but the worksheet, which the plan's own door checks. */
const schema: GenericSchema = looseObject({
  id: string(),
  begunAt: time,
  worksheet: unknown(),
  developmentSeconds: number(),
  planned: optional(array(looseObject({ bath: string(), section: string(), seconds: number() }))),
  presses: array(looseObject({ section: string(), at: time })),
  otherwise: optional(array(otherwise)),
  developedSeconds: optional(number()),
  pouredIn: optional(array(string())),
  ended: nullable(picklist(["done", "left"])),
  note: string(),
  negatives: optional(
    looseObject({
      density: nullable(picklist(densities)),
      edges: nullable(picklist(edges)),
      marks: array(picklist(marks)),
    }),
  ),
  stars: optional(pipe(number(), integer(), minValue(0), maxValue(5))),
  changedAt: optional(time),
});

/** The place of the first thing that no record has there, as `presses[1].at`; null: it is one. */
export function faultInRun(kept: unknown): string | null {
  const parsed = safeParse(schema, kept, { abortEarly: true });
  if (!parsed.success) return pathText(parsed.issues[0]);
  if (!isObject(kept)) return "";
  const read = readWorksheet(kept.worksheet);
  if (read.kind === "worksheet") return null;
  const inside = read.faults[0]?.path ?? "";
  return inside === "" ? "worksheet" : `worksheet.${inside}`;
}

/** Whether something is a record that can be shown and begun again. */
export const isRunRecord = (kept: unknown): kept is RunRecord => faultInRun(kept) === null;
