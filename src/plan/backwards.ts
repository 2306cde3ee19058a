// A time sought in, the temperature that gives it out, with its lines and warnings.
// Alone, because it asks the leaflet the other way round, and nothing of the plan depends on it.
import { type TemperatureFor, temperatureFor } from "../trade/temperature-for.ts";
import { pairFor, scaled, type TimeCurve } from "../trade/time-temperature.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { degreesOf, type Temperature, writeDegrees, writeTenths } from "../units/temperature.ts";
import { writeNumber } from "../units/written-number.ts";
import { secondsOf } from "./clock-readings.ts";
import type { Development } from "./development.ts";
import type { Warning, WorkingLine } from "./line.ts";
import * as messages from "./messages.ts";
import type { Developer } from "./worksheet.ts";

/** Seconds under which development is uneven; common practice. */
export const evenFrom = 300;

/** By which every time of the leaflet is lengthened for this film at a steady temperature. */
export function ownFactor({ ratingFactor, reuseFactor, methodFactor }: Development): number {
  return ratingFactor * reuseFactor * methodFactor;
}

/** The film's own times at any steady temperature: rating, reuse and method are in them. */
export function ownCurve(development: Development): TimeCurve {
  return scaled(development.curve, ownFactor(development));
}

/** °C at which this film takes so many seconds; null where the leaflet has no one answer. */
export function celsiusFor(development: Development, seconds: number): number | null {
  const found = temperatureFor(ownCurve(development), seconds);
  return found.kind === "temperature" ? found.celsius : null;
}

export function soughtLines(
  developer: Developer,
  development: Development,
): readonly WorkingLine[] {
  const sought = soughtSeconds(developer);
  if (sought === null) return [];
  const times = sought === evenFrom ? [sought] : [sought, evenFrom];
  return times.map((seconds) => {
    const label = seconds === sought ? `For ${writeClockTime(sought)}` : "For the least, 5:00";
    return { label, ...answered(developer.temperature, development, seconds) };
  });
}

export function soughtWarnings(developer: Developer, development: Development): readonly Warning[] {
  const sought = soughtSeconds(developer);
  if (sought === null) return [];
  const found = temperatureFor(ownCurve(development), sought);
  const time = writeClockTime(sought);
  if (found.kind === "not-falling") return [messages.soughtNowhere(time)];
  const at = writeTenths(developer.temperature, found.celsius);
  return found.beyond > 1e-6
    ? [messages.soughtBeyond(time, at, developer.temperature, found.beyond)]
    : [];
}

export function soughtSeconds(developer: Developer): number | null {
  return developer.soughtTime === undefined ? null : secondsOf(developer.soughtTime);
}

/** Ta + (Tb − Ta) × ln(ta / t) / ln(ta / tb), or Ta + ln(ta / t) / k for a row alone. */
function answered(
  like: Temperature,
  development: Development,
  seconds: number,
): Pick<WorkingLine, "expression" | "result"> {
  const factor = ownFactor(development);
  const base = seconds / factor;
  const found = temperatureFor(development.curve, base);
  if (found.kind === "not-falling") {
    return { expression: "the rows' times do not fall as it gets warmer", result: "no answer" };
  }
  const onRows =
    Math.abs(factor - 1) < 1e-9
      ? ""
      : `with this film's factor ${writeNumber(factor, 4)}, ${seconds} s are ${writeNumber(base, 1)} s on the leaflet: `;
  const at = writeTenths(like, found.celsius);
  const beyond = found.beyond > 1e-6 ? `, ${writeDegrees(like, found.beyond)} beyond the rows` : "";
  return {
    expression: `${onRows}${sumFor(like, development, base, found)} = ${at}${beyond}`,
    result: beyond ? `${at}, a guess` : at,
  };
}

function sumFor(
  like: Temperature,
  { curve }: Development,
  base: number,
  { celsius }: Extract<TemperatureFor, { readonly kind: "temperature" }>,
): string {
  const [from, to] = pairFor(curve, celsius);
  const [a, t] = [writeNumber(from.seconds, 1), writeNumber(base, 1)];
  const start = degreesOf(like, from.celsius);
  if (!to) {
    const k = writeNumber("c" in like ? curve.perDegree : curve.perDegree / 1.8, 4);
    return `${start} + ln(${a} / ${t}) / ${k}`;
  }
  const apart = (to.celsius - from.celsius) * ("c" in like ? 1 : 1.8);
  return `${start} + ${writeNumber(apart, 1)} × ln(${a} / ${t}) / ln(${a} / ${writeNumber(to.seconds, 1)})`;
}
