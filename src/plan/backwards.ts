// A time sought in, the temperature that gives it out, with its lines and warnings.
// Alone, because it asks the leaflet the other way round, and nothing of the plan depends on it.
import { type TemperatureFor, temperatureFor } from "../trade/temperature-for.ts";
import { pairFor, scaled, type TimeCurve } from "../trade/time-temperature.ts";
import { writeClockTime } from "../units/clock-time.ts";
import type { Temperature } from "../units/temperature.ts";
import type { Writing } from "../units/writing.ts";
import { secondsOf } from "./clock-readings.ts";
import type { Development } from "./development.ts";
import { evenFrom } from "./limits.ts";
import type { Warning, WorkingLine } from "./line.ts";
import * as messages from "./messages.ts";
import type { PlanWords } from "./words/words.ts";
import type { Developer } from "./worksheet.ts";

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
  words: PlanWords,
  developer: Developer,
  development: Development,
): readonly WorkingLine[] {
  const says = words.time.sought;
  const sought = soughtSeconds(developer);
  if (sought === null) return [];
  const times = sought === evenFrom ? [sought] : [sought, evenFrom];
  return times.map((seconds) => {
    const time = writeClockTime(seconds);
    const label = seconds === sought ? says.label({ time }) : says.least({ time });
    return { label, ...answered(words, developer.temperature, development, seconds) };
  });
}

export function soughtWarnings(
  words: PlanWords,
  developer: Developer,
  development: Development,
): readonly Warning[] {
  const sought = soughtSeconds(developer);
  if (sought === null) return [];
  const found = temperatureFor(ownCurve(development), sought);
  const time = writeClockTime(sought);
  if (found.kind === "not-falling") return [messages.soughtNowhere(words, time)];
  const at = words.writes.tenths(developer.temperature, found.celsius);
  return found.beyond > 1e-6
    ? [messages.soughtBeyond(words, time, at, developer.temperature, found.beyond)]
    : [];
}

export function soughtSeconds(developer: Developer): number | null {
  return developer.soughtTime === undefined ? null : secondsOf(developer.soughtTime);
}

/** Ta + (Tb − Ta) × ln(ta / t) / ln(ta / tb), or Ta + ln(ta / t) / k for a row alone. */
function answered(
  { time: { sought: says }, writes }: PlanWords,
  like: Temperature,
  development: Development,
  seconds: number,
): Pick<WorkingLine, "expression" | "result"> {
  const factor = ownFactor(development);
  const base = seconds / factor;
  const found = temperatureFor(development.curve, base);
  if (found.kind === "not-falling") {
    return { expression: says.notFalling, result: says.noAnswer };
  }
  const at = writes.tenths(like, found.celsius);
  const guessed = found.beyond > 1e-6;
  const beyond = guessed ? `, ${says.beyond({ by: writes.degrees(like, found.beyond) })}` : "";
  const sum = `${sumFor(writes, like, development, base, found)} = ${at}${beyond}`;
  const onLeaflet = {
    factor: writes.number(factor, 4),
    time: `${seconds} s`,
    base: `${writes.number(base, 1)} s`,
  };
  return {
    expression: Math.abs(factor - 1) < 1e-9 ? sum : says.onLeaflet({ ...onLeaflet, sum }),
    result: guessed ? says.guess({ at }) : at,
  };
}

function sumFor(
  writes: Writing,
  like: Temperature,
  { curve }: Development,
  base: number,
  { celsius }: Extract<TemperatureFor, { readonly kind: "temperature" }>,
): string {
  const [from, to] = pairFor(curve, celsius);
  const [a, t] = [writes.number(from.seconds, 1), writes.number(base, 1)];
  const start = writes.degreesOf(like, from.celsius);
  if (!to) {
    const k = writes.number("c" in like ? curve.perDegree : curve.perDegree / 1.8, 4);
    return `${start} + ln(${a} / ${t}) / ${k}`;
  }
  const apart = (to.celsius - from.celsius) * ("c" in like ? 1 : 1.8);
  return `${start} + ${writes.number(apart, 1)} × ln(${a} / ${t}) / ln(${a} / ${writes.number(to.seconds, 1)})`;
}
