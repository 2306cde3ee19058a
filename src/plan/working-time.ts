// How the development time came about, as lines to read aloud: rows, temperature, rating, drift, factors.
// Apart from the other working because each of its lines starts from the result of the one before.
import { usualPerStop } from "../trade/rating.ts";
import {
  pairFor,
  perDegreeBetween,
  sameTemperature,
  type TimePoint,
} from "../trade/time-temperature.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { inDegreesOf, writeDegrees, writeTemperature } from "../units/temperature.ts";
import { writeNumber } from "../units/written-number.ts";
import { effectiveRating } from "./base-time.ts";
import type { Development } from "./development.ts";
import type { WorkingLine } from "./line.ts";
import { measuredLines } from "./measured-lines.ts";
import type { Developer, Worksheet } from "./worksheet.ts";

export function timeLines(
  { developer, tank }: Worksheet,
  development: Development,
): readonly WorkingLine[] {
  return [
    rowsLine(development),
    temperatureLine(developer, development),
    ...ratingLines(developer, development),
    ...driftLines(developer, development),
    ...reuseLines(developer, development),
    ...methodLines(tank.method, development),
    ...measuredLines(developer.temperature, development),
    {
      label: "Development",
      expression: `${seconds(development.exact)} to the nearest second, half up`,
      result: writeClockTime(development.seconds),
    },
  ];
}

function rowsLine({ base, film }: Development): WorkingLine {
  const rows = base.rows.map(({ row }) => `${row.time} at ${writeTemperature(row.temperature)}`);
  const forRating = base.ownRows ? `given for ${effectiveRating(film)}: ` : "";
  return {
    label: "Leaflet",
    expression: `${forRating}${rows.join(", ")}`,
    result: rows.length === 1 ? "1 row" : `${rows.length} rows`,
  };
}

function temperatureLine(developer: Developer, development: Development): WorkingLine {
  const { base, celsius, curve, atTemperature } = development;
  const bath = writeTemperature(developer.temperature);
  const own = base.rows.some((it) => Math.abs(it.celsius - celsius) <= sameTemperature);
  const [from, to] = pairFor(curve, celsius);
  const expression = own
    ? `the bath is at ${bath}, as a row is: its time as it stands`
    : to && development.slope === "rows"
      ? betweenRows(developer, from, to, celsius)
      : alongSlope(developer, development);
  return { label: "Temperature", expression, result: writeClockTime(atTemperature) };
}

/** t = ta × (tb / ta)^(part of the way), with what that comes to for a degree. */
function betweenRows(
  developer: Developer,
  from: TimePoint,
  to: TimePoint,
  celsius: number,
): string {
  const like = developer.temperature;
  const at = (point: TimePoint) => writeTemperature(inDegreesOf(like, point.celsius));
  const apart = writeDegrees(like, to.celsius - from.celsius);
  const away = writeDegrees(like, celsius - from.celsius);
  const inCelsius = "f" in like ? ` (${writeDegrees({ c: 0 }, to.celsius - from.celsius)})` : "";
  const part = (celsius - from.celsius) / (to.celsius - from.celsius);
  const ratio = `${writeClockTime(to.seconds)} / ${writeClockTime(from.seconds)}`;
  const time = from.seconds * (to.seconds / from.seconds) ** part;
  return (
    `${at(from)} and ${at(to)} are ${apart}${inCelsius} apart, ${perCent(perDegreeBetween(from, to))}; ` +
    `${writeTemperature(like)} is ${away} from ${at(from)}: ` +
    `${seconds(from.seconds)} × (${ratio})^(${away} / ${apart}) = ${seconds(time)}`
  );
}

/** For a row alone: e^(−k × °C), or the ratio that the leaflet's other rows show. */
function alongSlope(developer: Developer, development: Development): string {
  const { base, celsius, slope, atTemperature, curve } = development;
  const [row] = base.rows;
  if (!row) throw new Error("a development starts from a row");
  const away = celsius - row.celsius;
  const start = `${writeTemperature(developer.temperature)} is ${writeDegrees({ c: 0 }, away)} from the row's ${writeTemperature(row.row.temperature)}`;
  if (slope === "other-rows") {
    const ratio = writeNumber(atTemperature / row.seconds, 4);
    return `${start}, over which the leaflet's other rows change by × ${ratio}: ${seconds(row.seconds)} × ${ratio} = ${seconds(atTemperature)}`;
  }
  const whose = slope === "per-degree" ? "as given" : "as usual";
  const exponent = writeNumber(-curve.perDegree * away, 4);
  return `${start}, ${perCent(curve.perDegree)} ${whose}: ${seconds(row.seconds)} × e^(−${writeNumber(curve.perDegree, 4)} × ${writeNumber(away)}) = ${seconds(row.seconds)} × e^(${exponent}) = ${seconds(atTemperature)}`;
}

function ratingLines(developer: Developer, development: Development): WorkingLine[] {
  const { base, film, atTemperature, rated, ratingFactor } = development;
  if (film.exposureIndex === undefined || film.exposureIndex === film.boxSpeed) return [];
  if (base.ownRows) {
    const expression = `metered at ${film.exposureIndex}, which the leaflet's rows are for: nothing to add`;
    return [{ label: "Rating", expression, result: writeClockTime(rated) }];
  }
  const { pull, push } = developer.perStop ?? usualPerStop;
  const over = base.stops > 0;
  const stops = writeNumber(Math.abs(base.stops));
  const factor = over ? `(1 − ${writeNumber(pull, 4)})` : `(1 + ${writeNumber(push, 4)})`;
  return [
    {
      label: "Rating",
      expression:
        `box speed ${film.boxSpeed}, metered at ${film.exposureIndex}: ` +
        `log2(${film.boxSpeed} / ${film.exposureIndex}) is ${stops} ${stops === "1" ? "stop" : "stops"} ${over ? "over" : "under"}; ` +
        `${seconds(atTemperature)} × ${factor}^${stops} = ${seconds(atTemperature)} × ${writeNumber(ratingFactor, 4)} = ${seconds(rated)}`,
      result: writeClockTime(rated),
    },
  ];
}

/** The integral in words, and Simpson's rule over it, which a pocket calculator can do. */
function driftLines(developer: Developer, { drifting }: Development): WorkingLine[] {
  if (!drifting) return [];
  const temperature = (celsius: number) =>
    writeTemperature(inDegreesOf(developer.temperature, celsius));
  const { drift, points } = drifting;
  const [start, middle, end] = points.map(
    (it) => `${writeClockTime(it.seconds)} (${temperature(it.celsius)})`,
  );
  const [a, b, c] = points.map((it) => writeNumber(it.seconds, 1));
  return [
    {
      label: "Drift",
      expression:
        `half-way to ${temperature(drift.room)} every ${writeNumber(drift.halfway, 1)} min. ` +
        `The time is ${start} at the start, ${middle} half-way through and ${end} at the end: ` +
        `6 / (1 / ${a} + 4 / ${b} + 1 / ${c}) = ${seconds(drifting.seconds)}`,
      result: writeClockTime(drifting.seconds),
    },
  ];
}

function reuseLines(developer: Developer, development: Development): WorkingLine[] {
  const { filmsBefore = 0, perFilmBefore = 0 } = developer;
  if (development.reuseFactor === 1) return [];
  const before = steady(development);
  const after = before * development.reuseFactor;
  return [
    {
      label: "Reuse",
      expression: `1 + ${writeNumber(perFilmBefore, 4)} × ${writeNumber(filmsBefore)} films before = ${writeNumber(development.reuseFactor, 4)}; ${seconds(before)} × ${writeNumber(development.reuseFactor, 4)} = ${seconds(after)}`,
      result: writeClockTime(after),
    },
  ];
}

function methodLines(method: string, development: Development): WorkingLine[] {
  if (development.methodFactor === 1) return [];
  const before = steady(development) * development.reuseFactor;
  const after = before * development.methodFactor;
  return [
    {
      label: "Method",
      expression: `${method}: ${seconds(before)} × ${writeNumber(development.methodFactor, 4)} = ${seconds(after)}`,
      result: writeClockTime(after),
    },
  ];
}

/** Seconds before reuse and method. */
function steady({ drifting, rated }: Development): number {
  return drifting?.seconds ?? rated;
}

/** `"569.2 s"`: a tenth more than the result is rounded to, so that the next line can be redone. */
function seconds(time: number): string {
  return `${writeNumber(time, 1)} s`;
}

/** What k per °C means, as a teacher says it. */
function perCent(perDegree: number): string {
  const change = Math.exp(-perDegree) - 1;
  return `${writeNumber(Math.abs(change) * 100, 1)} % ${change <= 0 ? "less" : "more"} for each °C warmer`;
}
