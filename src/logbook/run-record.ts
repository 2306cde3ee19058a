// What is kept of a run: begun when, with which worksheet, each press, how it ended, what came of it.
// With the check that something read back is one, since another version may have kept it.

import { readWorksheet } from "../plan/read-worksheet.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import { type Wrong, wrongs } from "../process/wrongs.ts";
import { densities, edges, marks, type Negatives } from "../trade/negatives.ts";
import { isObject } from "../units/object.ts";
import type { Temperature } from "../units/temperature.ts";

export interface RunRecord {
  readonly id: string;
  /** UTC, ms since 1970. */
  readonly begunAt: number;
  readonly worksheet: Worksheet;
  readonly developmentSeconds: number;
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
  /** null while it is on, or where the page went away in the midst of it. */
  readonly ended: "done" | "left" | null;
  readonly note: string;
  /** What was seen on the negatives, if anyone said. */
  readonly negatives?: Negatives;
}

/** What a person adds to a run afterwards. */
export type Judgement = Partial<Pick<RunRecord, "note" | "negatives">>;

export const judgementOf = ({ note, negatives }: RunRecord): Judgement => ({
  note,
  ...(negatives === undefined ? {} : { negatives }),
});

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

/** Whether something is a record that can be shown and begun again. */
export function isRunRecord(kept: unknown): kept is RunRecord {
  return (
    isObject(kept) &&
    typeof kept.id === "string" &&
    isTime(kept.begunAt) &&
    typeof kept.developmentSeconds === "number" &&
    Array.isArray(kept.presses) &&
    kept.presses.every(
      (press) => isObject(press) && typeof press.section === "string" && isTime(press.at),
    ) &&
    (kept.otherwise === undefined ||
      (Array.isArray(kept.otherwise) && kept.otherwise.every(isOtherwise))) &&
    (kept.developedSeconds === undefined || typeof kept.developedSeconds === "number") &&
    (kept.ended === "done" || kept.ended === "left" || kept.ended === null) &&
    typeof kept.note === "string" &&
    (kept.negatives === undefined || isNegatives(kept.negatives)) &&
    readWorksheet(kept.worksheet).kind === "worksheet"
  );
}

function isOtherwise(kept: unknown): boolean {
  if (!isObject(kept) || !isTime(kept.at)) return false;
  switch (kept.kind) {
    case "poured":
    case "emptied":
      return typeof kept.bath === "string" && typeof kept.by === "number";
    case "read":
      return isObject(kept.temperature) && typeof kept.after === "number";
    case "lost":
      return typeof kept.how === "string" && typeof kept.lost === "number";
    case "clock-set":
      return typeof kept.by === "number";
    case "wrong":
      return wrongs.some((wrong) => wrong === kept.wrong);
    default:
      return false;
  }
}

/** What a date can be made of. */
function isTime(kept: unknown): kept is number {
  return typeof kept === "number" && Math.abs(kept) <= 8.64e15;
}

function isNegatives(kept: unknown): kept is Negatives {
  const isOne = (all: readonly string[], one: unknown) => all.some((each) => each === one);
  return (
    isObject(kept) &&
    (kept.density === null || isOne(densities, kept.density)) &&
    (kept.edges === null || isOne(edges, kept.edges)) &&
    Array.isArray(kept.marks) &&
    kept.marks.every((mark) => isOne(marks, mark))
  );
}
