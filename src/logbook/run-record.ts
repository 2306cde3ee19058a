// What is kept of a run: begun when, with which worksheet, each press, how it ended, what came of it.
// With the check that something read back is one, since another version may have kept it.

import { readWorksheet } from "../plan/read-worksheet.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import { isObject } from "../units/object.ts";

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
  /** null while it is on, or where the page went away in the midst of it. */
  readonly ended: "done" | "left" | null;
  readonly note: string;
}

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
    (kept.ended === "done" || kept.ended === "left" || kept.ended === null) &&
    typeof kept.note === "string" &&
    readWorksheet(kept.worksheet).kind === "worksheet"
  );
}

/** What a date can be made of. */
function isTime(kept: unknown): kept is number {
  return typeof kept === "number" && Math.abs(kept) <= 8.64e15;
}
