// How the development time came about, as lines to read aloud: rows, temperature, rating, drift, factors.
// Apart from the other working because each of its lines starts from the result of the one before.
// Past 200 lines because each line has figures of its own.
import type { Method } from "../trade/method.ts";
import { usualPerStop } from "../trade/rating.ts";
import {
  pairFor,
  perDegreeBetween,
  sameTemperature,
  type TimePoint,
} from "../trade/time-temperature.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { inDegreesOf } from "../units/temperature.ts";
import type { Writing } from "../units/writing.ts";
import { effectiveRating } from "./base-time.ts";
import type { Development } from "./development.ts";
import type { WorkingLine } from "./line.ts";
import { measuredLines } from "./measured-lines.ts";
import type { PlanWords } from "./words/words.ts";
import type { Developer, Worksheet } from "./worksheet.ts";

export function timeLines(
  words: PlanWords,
  { developer, tank }: Worksheet,
  development: Development,
): readonly WorkingLine[] {
  const says = words.time.development;
  return [
    rowsLine(words, development),
    temperatureLine(words, developer, development),
    ...ratingLines(words, developer, development),
    ...driftLines(words, developer, development),
    ...reuseLines(words, developer, development),
    ...methodLines(words, tank.method, development),
    ...measuredLines(words, developer.temperature, development),
    {
      label: says.label,
      expression: says.rounded({ seconds: seconds(words.writes, development.exact) }),
      result: writeClockTime(development.seconds),
    },
  ];
}

function rowsLine({ time, writes }: PlanWords, { base, film }: Development): WorkingLine {
  const says = time.leaflet;
  const each = base.rows.map(({ row }) =>
    says.row({ time: row.time, temperature: writes.temperature(row.temperature) }),
  );
  const rows = writes.list(each);
  const rating = effectiveRating(film);
  return {
    label: says.label,
    expression:
      base.ownRows && rating !== undefined
        ? says.forRating({ rating: writes.typed(rating), rows })
        : rows,
    result: says.count({ count: base.rows.length }),
  };
}

function temperatureLine(
  words: PlanWords,
  developer: Developer,
  development: Development,
): WorkingLine {
  const says = words.time.temperature;
  const { base, celsius, curve, atTemperature } = development;
  const own = base.rows.some((it) => Math.abs(it.celsius - celsius) <= sameTemperature);
  const [from, to] = pairFor(curve, celsius);
  const expression = own
    ? says.asRow({ bath: words.writes.temperature(developer.temperature) })
    : to && development.slope === "rows"
      ? betweenRows(words, developer, from, to, celsius)
      : alongSlope(words, developer, development);
  return { label: says.label, expression, result: writeClockTime(atTemperature) };
}

/** t = ta × (tb / ta)^(part of the way), with what that comes to for a degree. */
function betweenRows(
  words: PlanWords,
  developer: Developer,
  from: TimePoint,
  to: TimePoint,
  celsius: number,
): string {
  const { time, writes } = words;
  const like = developer.temperature;
  const at = (point: TimePoint) => writes.temperature(inDegreesOf(like, point.celsius));
  const apart = writes.degrees(like, to.celsius - from.celsius);
  const away = writes.degrees(like, celsius - from.celsius);
  const inCelsius = "f" in like ? ` (${writes.degrees({ c: 0 }, to.celsius - from.celsius)})` : "";
  const part = (celsius - from.celsius) / (to.celsius - from.celsius);
  const ratio = `${writeClockTime(to.seconds)} / ${writeClockTime(from.seconds)}`;
  const comes = from.seconds * (to.seconds / from.seconds) ** part;
  return time.temperature.between({
    from: at(from),
    to: at(to),
    apart: `${apart}${inCelsius}`,
    change: perCent(words, perDegreeBetween(from, to)),
    bath: writes.temperature(like),
    away,
    sum: `${seconds(writes, from.seconds)} × (${ratio})^(${away} / ${apart}) = ${seconds(writes, comes)}`,
  });
}

/** For a row alone: e^(−k × °C), or the ratio that the leaflet's other rows show. */
function alongSlope(words: PlanWords, developer: Developer, development: Development): string {
  const { time, writes } = words;
  const { base, celsius, slope, atTemperature, curve } = development;
  const [row] = base.rows;
  if (!row) throw new Error("a development starts from a row");
  const away = celsius - row.celsius;
  const start = {
    bath: writes.temperature(developer.temperature),
    away: writes.degrees({ c: 0 }, away),
    row: writes.temperature(row.row.temperature),
  };
  const [from, comes] = [seconds(writes, row.seconds), seconds(writes, atTemperature)];
  if (slope === "other-rows") {
    const ratio = writes.number(atTemperature / row.seconds, 4);
    return time.temperature.otherRows({ ...start, ratio, sum: `${from} × ${ratio} = ${comes}` });
  }
  const exponent = writes.number(-curve.perDegree * away, 4);
  const power = `e^(−${writes.number(curve.perDegree, 4)} × ${writes.number(away)})`;
  return time.temperature.slope({
    ...start,
    change: perCent(words, curve.perDegree),
    given: slope === "per-degree",
    sum: `${from} × ${power} = ${from} × e^(${exponent}) = ${comes}`,
  });
}

function ratingLines(
  { time, writes }: PlanWords,
  developer: Developer,
  development: Development,
): WorkingLine[] {
  const { base, film, atTemperature, rated, ratingFactor } = development;
  if (film.exposureIndex === undefined || film.exposureIndex === film.boxSpeed) return [];
  const { label, ownRows, stops: says } = time.rating;
  const rating = writes.typed(film.exposureIndex);
  const result = writeClockTime(rated);
  if (base.ownRows) return [{ label, expression: ownRows({ rating }), result }];
  const { pull, push } = developer.perStop ?? usualPerStop;
  const over = base.stops > 0;
  const stops = writes.number(Math.abs(base.stops));
  const factor = over ? `(1 − ${writes.number(pull, 4)})` : `(1 + ${writes.number(push, 4)})`;
  // Without a box speed a film has rows of its own; the reader sees to that.
  const box = writes.typed(film.boxSpeed ?? film.exposureIndex);
  const from = seconds(writes, atTemperature);
  const expression = says({
    box,
    rating,
    log: `log2(${box} / ${rating})`,
    stops,
    count: Math.round(Math.abs(base.stops) * 100) / 100,
    over,
    sum: `${from} × ${factor}^${stops} = ${from} × ${writes.number(ratingFactor, 4)} = ${seconds(writes, rated)}`,
  });
  return [{ label, expression, result }];
}

/** The integral in words, and Simpson's rule over it, which a pocket calculator can do. */
function driftLines(
  { time, writes }: PlanWords,
  developer: Developer,
  { drifting }: Development,
): WorkingLine[] {
  if (!drifting) return [];
  const temperature = (celsius: number) =>
    writes.temperature(inDegreesOf(developer.temperature, celsius));
  const { drift, points } = drifting;
  const told = (point: TimePoint) =>
    `${writeClockTime(point.seconds)} (${temperature(point.celsius)})`;
  const [a, b, c] = points.map((it) => writes.number(it.seconds, 1));
  return [
    {
      label: time.drift.label,
      expression: time.drift.sum({
        room: temperature(drift.room),
        halfway: writes.number(drift.halfway, 1),
        start: told(points[0]),
        middle: told(points[1]),
        end: told(points[2]),
        sum: `6 / (1 / ${a} + 4 / ${b} + 1 / ${c}) = ${seconds(writes, drifting.seconds)}`,
      }),
      result: writeClockTime(drifting.seconds),
    },
  ];
}

function reuseLines(
  { time, writes }: PlanWords,
  developer: Developer,
  development: Development,
): WorkingLine[] {
  const { filmsBefore = 0, perFilmBefore = 0 } = developer;
  if (development.reuseFactor === 1) return [];
  const before = steady(development);
  const after = before * development.reuseFactor;
  const factor = writes.number(development.reuseFactor, 4);
  return [
    {
      label: time.reuse.label,
      expression: time.reuse.sum({
        perFilm: writes.number(perFilmBefore, 4),
        films: writes.number(filmsBefore),
        count: Math.round(filmsBefore * 100) / 100,
        factor,
        sum: `${seconds(writes, before)} × ${factor} = ${seconds(writes, after)}`,
      }),
      result: writeClockTime(after),
    },
  ];
}

function methodLines(
  { time, writes }: PlanWords,
  method: Method,
  development: Development,
): WorkingLine[] {
  if (development.methodFactor === 1) return [];
  const before = steady(development) * development.reuseFactor;
  const after = before * development.methodFactor;
  const factor = writes.number(development.methodFactor, 4);
  return [
    {
      label: time.method.label,
      expression: time.method.sum({
        method: time.method.names[method],
        sum: `${seconds(writes, before)} × ${factor} = ${seconds(writes, after)}`,
      }),
      result: writeClockTime(after),
    },
  ];
}

/** Seconds before reuse and method. */
function steady({ drifting, rated }: Development): number {
  return drifting?.seconds ?? rated;
}

/** `"569.2 s"`: a tenth more than the result is rounded to, so that the next line can be redone. */
function seconds(writes: Writing, time: number): string {
  return `${writes.number(time, 1)} s`;
}

/** What k per °C means, as a teacher says it. */
function perCent({ time, writes }: PlanWords, perDegree: number): string {
  const change = Math.exp(-perDegree) - 1;
  const percent = writes.number(Math.abs(change) * 100, 1);
  return time.temperature.change({ percent, less: change <= 0 });
}
