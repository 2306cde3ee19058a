// Whatever a file, a form or a program hands over in; a worksheet to rely on, or every fault of it, out.
// The one door: no other stage checks a worksheet again.
import { safeParse } from "valibot";
import { filled } from "../units/may.ts";
import { crossFaults } from "./cross-faults.ts";
import { type Fault, faultOf, faultsIn } from "./faults.ts";
import { fileMay } from "./mays.ts";
import type { Worksheet } from "./worksheet.ts";
import { worksheetSchema } from "./worksheet-schema.ts";

export type WorksheetReading =
  | { readonly kind: "worksheet"; readonly worksheet: Worksheet }
  | { readonly kind: "faults"; readonly faults: readonly Fault[] };

/** A worksheet with nothing in it but the fields that are described. Never throws. */
export function readWorksheet(value: unknown): WorksheetReading {
  if (typeof value !== "object" || value === null || Array.isArray(value)) {
    return refused(value);
  }
  const own = faultsIn(worksheetSchema, value);
  const isSound = (part: keyof Worksheet) =>
    own.every(
      ({ path }) => path !== part && !path.startsWith(`${part}.`) && !path.startsWith(`${part}[`),
    );
  // The rules between fields read only parts that are sound, so the rest may be anything.
  const faults = [...own, ...crossFaults(value as Worksheet, isSound)];
  if (faults.length > 0) return { kind: "faults", faults };
  const parsed = safeParse(worksheetSchema, value);
  // Reached only by an object that inherits fields, which no file does.
  return parsed.success ? { kind: "worksheet", worksheet: parsed.output } : refused(value);
}

/** The same from the text of a file. */
export function readWorksheetText(text: string): WorksheetReading {
  const json = text.replace(/^\ufeff/, "");
  if (json.trim() === "") return refused(undefined);
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch (error) {
    const may = whereJsonBreaks(json, String(error));
    return { kind: "faults", faults: [faultOf([], json.trim(), may)] };
  }
  return readWorksheet(value);
}

function refused(value: unknown): WorksheetReading {
  return { kind: "faults", faults: [faultOf([], value, fileMay.worksheet)] };
}

/** Engines tell the place in words of their own, some not at all: where they do, the line is named. */
function whereJsonBreaks(json: string, message: string): string {
  const [, line] = /line (\d+)/.exec(message) ?? [];
  const [, position] = /position (\d+)/.exec(message) ?? [];
  const named = line ?? (position && json.slice(0, Number(position)).split("\n").length);
  const may = fileMay.worksheet;
  return named ? filled(fileMay.jsonBreaks, { may, line: named }) : filled(fileMay.noJson, { may });
}
