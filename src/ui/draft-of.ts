// A worksheet in, the draft that a person would have typed for it out. The way back from the model,
// alone because opening a file and starting from a demo need it, and reading does not.
import type { Worksheet } from "../plan/worksheet.ts";
import { blankRow, type Draft } from "./draft.ts";
import { type FieldKind, kindOf, type RowList, rowLists } from "./fields.ts";
import { typedFigure, writing } from "./language.ts";
import { units } from "./read-field.ts";

/** A worksheet as a person would have typed it: reading the draft gives the same worksheet back. */
export function draftOf(worksheet: Worksheet): Draft {
  const draft: Record<string, string> = {};
  const rows: { readonly [list in RowList]: readonly unknown[] | undefined } = {
    films: worksheet.films,
    "developer.leaflet": worksheet.developer.leaflet,
    "developer.readings": worksheet.developer.readings,
    "tempering.readings": worksheet.tempering?.readings,
    "contrast.tests": worksheet.contrast?.tests,
  };
  for (const list of rowLists) {
    rows[list]?.forEach((_, at) => {
      Object.assign(draft, blankRowAt(list, at));
    });
  }
  for (const [id, bath] of Object.entries(worksheet.baths ?? {})) {
    draft[`baths.${id}.use`] = bath.skip ? "no" : "yes";
  }
  write(worksheet, "", draft);
  return draft;
}

/** A page with nothing on it but one film, one row of the leaflet, and the usual ways of counting. */
export function emptyDraft(): Draft {
  return {
    process: "bw-negative",
    "tank.method": "inversion",
    "clock.starts": "pour-in",
    "clock.ends": "pour-out",
    ...blankRowAt("films", 0),
    ...blankRowAt("developer.leaflet", 0),
  };
}

function blankRowAt(list: RowList, at: number): Draft {
  return Object.fromEntries(
    Object.entries(blankRow(list)).map(([part, text]) => [`${list}[${at}].${part}`, text]),
  );
}

function write(value: unknown, path: string, draft: Record<string, string>): void {
  const kind = kindOf(path);
  if (kind !== null) {
    draft[path] = textOf(kind, value);
    if (kind === "temperature" || kind === "volume") {
      draft[`unit.${kind}`] = Object.keys(value as object)[0] ?? "";
    }
  } else if (Array.isArray(value)) {
    value.forEach((item, at) => {
      write(item, `${path}[${at}]`, draft);
    });
  } else if (typeof value === "object" && value !== null) {
    for (const [key, part] of Object.entries(value)) {
      write(part, path === "" ? key : `${path}.${key}`, draft);
    }
  }
}

/** Digits are kept, of per cent to a millionth: rounding here would change the worksheet by opening it. */
function textOf(kind: FieldKind, value: unknown): string {
  switch (kind) {
    case "temperature":
    case "volume": {
      const signs: { readonly [unit: string]: string } = units[kind];
      const [[unit, size] = ["", ""]] = Object.entries(value as object);
      return `${typedFigure(Number(size))} ${signs[unit] ?? ""}`;
    }
    case "seconds":
      return `${typedFigure(Number(value))} s`;
    case "minutes":
      return `${typedFigure(Number(value))} min`;
    case "per-cent":
      return `${writing.value.number(Number(value) * 100, 6)} %`;
    case "numbers":
      return (value as readonly number[]).map(typedFigure).join(" ");
    case "counts":
      return (value as readonly number[]).join(", ");
    case "number":
    case "signed":
      return typedFigure(Number(value));
    default:
      return String(value);
  }
}
