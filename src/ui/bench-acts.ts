// What a person does at the bench in (a reading stamped, hands timed, a tank taken, a leaflet pasted), the
// draft after it out. Pure, so that each act is one step that undo takes back.
import type { LeafletRow } from "../plan/worksheet.ts";
import { paceOf } from "../trade/hands.ts";
import {
  readTimeOfDay,
  readTypedTime,
  writeClockTime,
  writeTimeOfDay,
} from "../units/clock-time.ts";
import type { Temperature } from "../units/temperature.ts";
import { type Draft, filledRows } from "./draft.ts";
import type { RowList } from "./fields.ts";
import { typedFigure, writing } from "./language.ts";

const day = 86_400;

/**
 * A thermometer reading at a time of day, seconds since midnight, behind those that stand there. The
 * first starts the readings' clock. Readings typed without a time of day cannot be gone on from: `afresh`
 * says that they have made way.
 */
export function stamped(
  draft: Draft,
  temperature: Temperature,
  timeOfDay: number,
): { readonly draft: Draft; readonly afresh: boolean } {
  const list = "tempering.readings";
  const began = readTimeOfDay(draft["tempering.began"] ?? "");
  const rows = filledRows(draft, list);
  const goesOn = rows === 0 || began.kind === "read";
  const kept = goesOn ? draft : without(draft, list);
  const at = goesOn ? rows : 0;
  const zero = at > 0 && began.kind === "read" ? began.seconds : timeOfDay;
  const elapsed = (timeOfDay - zero + day) % day;
  return {
    draft: {
      ...kept,
      ...(at === 0 ? { "tempering.began": writeTimeOfDay(timeOfDay) } : {}),
      [`${list}[${at}].at`]: writeClockTime(elapsed),
      [`${list}[${at}].temperature`]: textOf(temperature),
      "unit.temperature": "c" in temperature ? "c" : "f",
    },
    afresh: !goesOn,
  };
}

/** The last reading that holds anything taken out; its clock with the last of all. */
export function takenBack(draft: Draft): Draft {
  const list = "tempering.readings";
  const rows = filledRows(draft, list);
  if (rows === 0) return draft;
  const start = `${list}[${rows - 1}].`;
  const rest = Object.entries(draft).filter(
    ([path]) => !path.startsWith(start) && !(rows === 1 && path === "tempering.began"),
  );
  return Object.fromEntries(rest);
}

/** The readings in the bath as they stand, for showing at the sink. */
export function readingTexts(
  draft: Draft,
): readonly { readonly at: number; readonly temperature: string }[] {
  return Array.from({ length: filledRows(draft, "tempering.readings") }, (_, row) => {
    const time = readTypedTime(draft[`tempering.readings[${row}].at`] ?? "");
    return {
      at: time.kind === "read" ? time.seconds : 0,
      temperature: draft[`tempering.readings[${row}].temperature`] ?? "",
    };
  });
}

export type Timed = "pourIn" | "pourOut" | "perInversion";

/** The field whose time is measured. */
export const timedField = {
  pourIn: "tank.pourIn",
  pourOut: "tank.pourOut",
  perInversion: "agitation.perInversion",
} as const;

/** Measured times kept beside the median, which the plan reckons with. */
export function withHands(draft: Draft, what: Timed, times: readonly number[]): Draft {
  const pace = paceOf(times);
  if (pace === null) return draft;
  return {
    ...draft,
    [`tank.measured.${what}`]: times.map((time) => writing.value.number(time, 1)).join(" "),
    [timedField[what]]: `${writing.value.number(pace.median, 1)} s`,
  };
}

/** What is kept of a tank under its name: its fields, and the pace of inversions that goes with it. */
export function tankTexts(draft: Draft): Draft {
  const own = ([path]: [string, string]) =>
    path.startsWith("tank.") || path === timedField.perInversion;
  return Object.fromEntries(Object.entries(draft).filter(own));
}

/** The draft with another tank in place of its own. */
export function withTank(draft: Draft, texts: Draft): Draft {
  const rest = Object.entries(draft).filter(([path]) => !path.startsWith("tank."));
  return { ...Object.fromEntries(rest), ...tankTexts(texts) };
}

/** Pasted rows in place of those that stand there. */
export function withLeaflet(draft: Draft, rows: readonly LeafletRow[]): Draft {
  const next: Record<string, string> = { ...without(draft, "developer.leaflet") };
  rows.forEach(({ temperature, time, exposureIndex }, at) => {
    const start = `developer.leaflet[${at}]`;
    next[`${start}.temperature`] = textOf(temperature);
    next[`${start}.time`] = time;
    next[`${start}.exposureIndex`] = exposureIndex === undefined ? "" : typedFigure(exposureIndex);
  });
  const last = rows.at(-1)?.temperature;
  return last ? { ...next, "unit.temperature": "c" in last ? "c" : "f" } : next;
}

/** As a person would type it, with every digit kept. */
function textOf(temperature: Temperature): string {
  return "c" in temperature
    ? `${typedFigure(temperature.c)} °C`
    : `${typedFigure(temperature.f)} °F`;
}

function without(draft: Draft, list: RowList): Draft {
  return Object.fromEntries(Object.entries(draft).filter(([path]) => !path.startsWith(`${list}[`)));
}
