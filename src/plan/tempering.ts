// Thermometer readings from the water bath in, when the developer is ready and what to do meanwhile out.
// Alone, because its answers have an interval, and everything said of them must carry it.
import type { ThermometerReading } from "../trade/drift.ts";
import {
  type CoolingFit,
  type Fitted,
  fitCooling,
  type Reach,
  whenAt,
} from "../trade/tempering.ts";
import { toCelsius } from "../units/temperature.ts";
import { readingsOf } from "./clock-readings.ts";
import type { TemperingWish } from "./worksheet.ts";

export interface TemperingPlan {
  readonly wish: TemperingWish;
  readonly readings: readonly ThermometerReading[];
  /** °C. */
  readonly target: number;
  readonly fit: CoolingFit;
  /** Null where nothing could be fitted. */
  readonly reach: Reach | null;
  /** The last thing the thermometer said. */
  readonly last: ThermometerReading;
}

/**
 * °C, standard deviation of one reading: half a degree on the scale, a bath not quite stirred. Common
 * practice. The same in °F, so that the scale someone reads changes no answer.
 */
const readable = 0.2;

export function temperingOf(wish: TemperingWish): TemperingPlan {
  const readings = readingsOf(wish.readings);
  const last = readings.at(-1);
  if (!last) throw new Error("a worksheet's tempering has a reading");
  const target = toCelsius(wish.target);
  const bath = wish.bath === undefined ? null : toCelsius(wish.bath);
  const fit = fitCooling(readings, bath, readable);
  const reach = fit.kind === "fitted" ? whenAt(fit, target) : null;
  return { wish, readings, target, fit, reach, last };
}

/** Whether it stands so near its target that no thermometer could tell. */
export function isThere({ last, target }: TemperingPlan): boolean {
  return Math.abs(last.celsius - target) <= 2 * readable + 1e-9;
}

/** Whether the target lies on the way: the developer moves toward it and not away. */
export function movesToward({ last, target }: TemperingPlan, { drift }: Fitted): boolean {
  return Math.sign(target - last.celsius) === Math.sign(drift.room - drift.start);
}
