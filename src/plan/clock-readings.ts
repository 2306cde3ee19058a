// Times and thermometer readings as a worksheet that has been read holds them in, seconds and °C out.
// Alone, because the plan may rely on what the reader has looked at, and says so in one place.
import type { ThermometerReading } from "../trade/drift.ts";
import { readClockTime } from "../units/clock-time.ts";
import { toCelsius } from "../units/temperature.ts";
import type { ThermometerRow } from "./worksheet.ts";

/** Seconds of a clock time. @throws where a worksheet was not read before it was planned. */
export function secondsOf(time: string): number {
  const reading = readClockTime(time);
  if (reading.kind === "unread") throw new Error(`"${time}" was not validated`);
  return reading.seconds;
}

/** In order of time. */
export function readingsOf(rows: readonly ThermometerRow[]): readonly ThermometerReading[] {
  return rows
    .map(({ at, temperature }) => ({ seconds: secondsOf(at), celsius: toCelsius(temperature) }))
    .sort((a, b) => a.seconds - b.seconds);
}
