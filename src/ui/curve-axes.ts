// The least and the greatest value of a drawing in, an axis with round ticks out. Alone, because a clock
// counts in sixties, and a degree of one scale is no round number of the other.
import { tickStep, ticks } from "d3-array";
import { writeClockTime } from "../units/clock-time.ts";
import {
  celsiusFromFahrenheit,
  fahrenheitFromCelsius,
  type Temperature,
} from "../units/temperature.ts";
import type { Axis } from "./curve-model.ts";
import { fixed, writing } from "./language.ts";

/** Ticks that an axis may have, about: across, as many as have room for words. */
const most = 7;
const mostUp = 8;

/** Of the length between the outermost values, the part added at either end. */
const margin = 0.07;

/** Seconds from one tick to the next: what people read off a clock at a glance. */
const clockSteps = [1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 14_400, 21_600];

/**
 * An axis of times, seconds, from 0 up.
 * @param from where it begins, if not a little below the least.
 */
export function clockAxis(
  label: string,
  values: readonly number[],
  along: "across" | "up",
  from?: number,
): Axis {
  const count = along === "up" ? mostUp : most;
  const ends = endsOf(values, 20);
  const start = from ?? Math.max(0, ends.from);
  const span = ends.to - start;
  const step = clockSteps.find((it) => span / it <= count) ?? longStep(span);
  return {
    label,
    from: start,
    to: ends.to,
    ticks: multiples(start, ends.to, step),
    write: writeClockTime,
  };
}

/** An axis in °C whose ticks are whole degrees of the scale that is shown. */
export function degreeAxis(label: string, values: readonly number[], like: Temperature): Axis {
  const { from, to } = endsOf(values, 2);
  const shown = "c" in like ? (celsius: number) => celsius : fahrenheitFromCelsius;
  const celsius = "c" in like ? (degrees: number) => degrees : celsiusFromFahrenheit;
  return {
    label,
    from,
    to,
    ticks: ticks(shown(from), shown(to), most)
      .filter(Number.isInteger)
      .map(celsius)
      .filter((tick) => tick >= from && tick <= to),
    write: (value) => writing.value.number(shown(value)),
  };
}

/** An axis of plain numbers, no shorter than `leastSpan`, all its ticks with as many decimals. */
export function numberAxis(label: string, values: readonly number[], leastSpan: number): Axis {
  const { from, to } = endsOf(values, leastSpan);
  const decimals = Math.max(0, -Math.floor(Math.log10(tickStep(from, to, most)) + 1e-9));
  const write = (value: number) => `${value < 0 ? "−" : ""}${fixed(Math.abs(value), decimals)}`;
  return { label, from, to, ticks: ticks(from, to, most), write };
}

/** A little beyond the outermost values. */
function endsOf(values: readonly number[], leastSpan: number) {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const missing = Math.max(0, leastSpan - (high - low)) / 2;
  const beyond = Math.max(high - low, leastSpan) * margin + missing;
  return { from: low - beyond, to: high + beyond };
}

/** Whole hours. */
function longStep(span: number): number {
  return 3600 * Math.ceil(tickStep(0, span / 3600, most));
}

function multiples(from: number, to: number, step: number): readonly number[] {
  const first = Math.ceil(from / step);
  const count = Math.floor(to / step) - first + 1;
  return Array.from({ length: count }, (_, index) => (first + index) * step);
}

/** `"°C"` or `"°F"`. */
export function unitOf(like: Temperature): string {
  return "c" in like ? "°C" : "°F";
}
