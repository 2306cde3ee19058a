// Leaflets in °C and in °F, and the end of a development by a sum in small steps, which shares nothing with the
// formula that it is there to check.
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { toCelsius } from "../../src/units/temperature.ts";
import { changed, gullrock } from "../plan/worksheets.ts";

export const inFahrenheit = gullrock;
export const inCelsius = changed(gullrock, {
  developer: {
    leaflet: [
      { temperature: { c: 18 }, time: "12:30" },
      { temperature: { c: 20 }, time: "10:00" },
      { temperature: { c: 24 }, time: "7:00" },
    ],
    temperature: { c: 20.5 },
  },
});
/** In a warm room, toward which the tank drifts after the last reading. */
export const warm = { room: 26, halfway: 30 };
export const inWarmRoom = changed(inCelsius, {
  tank: { room: { c: warm.room }, halfway: warm.halfway },
});

/** Points of the leaflet: °C and seconds. */
export const pointsOf = (worksheet: Worksheet) =>
  worksheet.developer.leaflet.map(({ temperature, time }) => {
    const [minutes = 0, seconds = 0] = String(time).split(":").map(Number);
    return { celsius: toCelsius(temperature), seconds: 60 * minutes + seconds };
  });

export interface Taken {
  readonly at: number;
  readonly celsius: number;
}

/** The end by steps of 0.05 s: the development's rate at the temperature between the readings, added up. */
export function summedUp(worksheet: Worksheet, readings: readonly Taken[]): number {
  const points = pointsOf(worksheet).toSorted((a, b) => a.celsius - b.celsius);
  const timeAt = (celsius: number) => {
    const upper = Math.max(
      1,
      points.findIndex((point) => point.celsius >= celsius),
    );
    const at = points.at(-1)?.celsius ?? 0;
    const to = points[celsius > at ? points.length - 1 : upper];
    const from = points[(celsius > at ? points.length - 1 : upper) - 1];
    if (from === undefined || to === undefined) throw new Error("a leaflet of two rows");
    const part = (celsius - from.celsius) / (to.celsius - from.celsius);
    return Math.exp((1 - part) * Math.log(from.seconds) + part * Math.log(to.seconds));
  };
  const celsiusAt = (s: number) => {
    const next = readings.findIndex((reading) => reading.at > s);
    const [a, b] = [readings[next - 1], readings[next]];
    if (a === undefined || b === undefined) {
      const last = readings.at(-1) ?? { at: 0, celsius: 0 };
      if (worksheet.tank.room === undefined) return last.celsius;
      return warm.room + (last.celsius - warm.room) * 2 ** (-(s - last.at) / (60 * warm.halfway));
    }
    return a.celsius + ((s - a.at) / (b.at - a.at)) * (b.celsius - a.celsius);
  };
  const step = 0.05;
  let done = 0;
  let s = 0;
  for (; done < 1; s += step) done += step / timeAt(celsiusAt(s + step / 2));
  return s;
}
