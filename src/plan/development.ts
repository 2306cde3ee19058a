// Worksheet in, the development time out with every factor it is made of.
// Alone, so that the working and the warnings tell of the very numbers the time came from.
import { reuseFactor } from "../trade/capacity.ts";
import {
  type Drift,
  driftedSeconds,
  type ThermometerReading,
  temperatureAfter,
} from "../trade/drift.ts";
import {
  type DriftAfter,
  type MeasuredDevelopment,
  measuredDevelopment,
} from "../trade/measured-development.ts";
import { usualMethodFactor } from "../trade/method.ts";
import { ratingFactor, usualPerStop } from "../trade/rating.ts";
import { scaled, type TimeCurve, type TimePoint, timeAt } from "../trade/time-temperature.ts";
import { longestSeconds } from "../units/clock-time.ts";
import { toCelsius } from "../units/temperature.ts";
import {
  type BaseTime,
  baseTimeFor,
  curveOf,
  type LeafletPoint,
  leafletPoints,
  type SlopeSource,
} from "./base-time.ts";
import { readingsOf } from "./clock-readings.ts";
import type { Developer, Film, Worksheet } from "./worksheet.ts";

interface Drifting {
  readonly drift: Drift;
  /** Seconds in place of those at a steady temperature. */
  readonly seconds: number;
  /** At the start, half-way through and at the end: enough to do the sum by hand. */
  readonly points: readonly [TimePoint, TimePoint, TimePoint];
}

/** What a thermometer in the tank said; it takes the place of the modelled drift. */
export interface Measured extends MeasuredDevelopment {
  /** The time at any temperature with rating, reuse and method in it. */
  readonly curve: TimeCurve;
  /** In order, the first at 0 s: what was measured in the mixed bath, unless a reading says otherwise. */
  readonly readings: readonly ThermometerReading[];
  /** What goes on after the last of them; null: it stays as it is. */
  readonly after: DriftAfter | null;
}

/** Seconds and °C, unrounded but for `seconds`. */
export interface Development {
  /** The first film, for which the time is worked out. */
  readonly film: Film;
  readonly leaflet: readonly LeafletPoint[];
  readonly base: BaseTime;
  readonly curve: TimeCurve;
  readonly slope: SlopeSource;
  readonly celsius: number;
  readonly atTemperature: number;
  readonly ratingFactor: number;
  readonly rated: number;
  readonly drifting: Drifting | null;
  readonly measured: Measured | null;
  readonly reuseFactor: number;
  readonly methodFactor: number;
  /** Before rounding; may be longer than a day. */
  readonly exact: number;
  /** Whole seconds, half up, and a day at most. */
  readonly seconds: number;
}

/**
 * Base time, temperature, drift, reuse, method, in this order; rounded once, at the end. Readings taken
 * in the tank are on the clock itself, so with them all factors count at every moment.
 */
export function developmentOf({ films, developer, tank }: Worksheet): Development {
  const film = films[0];
  if (!film) throw new Error("a worksheet has at least one film");
  const leaflet = leafletPoints(developer.leaflet);
  const base = baseTimeFor(film, leaflet);
  const { curve, slope } = curveOf(developer, film, base, leaflet);
  const celsius = toCelsius(developer.temperature);
  const atTemperature = timeAt(curve, celsius);
  const forRating = ratingFactor(base.stops, developer.perStop ?? usualPerStop);
  const rated = atTemperature * forRating;
  const after =
    tank.room === undefined || tank.halfway === undefined
      ? null
      : { room: toCelsius(tank.room), halfway: tank.halfway };
  const forReuse = reuseFactor(developer.filmsBefore ?? 0, developer.perFilmBefore ?? 0);
  const forMethod = tank.timeFactor ?? usualMethodFactor(tank.method);
  const whole = scaled(curve, forRating * forReuse * forMethod);
  const measured = developer.readings ? measuredOf(whole, developer, after) : null;
  const drifting =
    after === null || measured !== null
      ? null
      : driftingOf(scaled(curve, forRating), { start: celsius, ...after });
  const exact = measured?.seconds ?? (drifting?.seconds ?? rated) * forReuse * forMethod;
  return {
    film,
    leaflet,
    base,
    curve,
    slope,
    celsius,
    atTemperature,
    ratingFactor: forRating,
    rated,
    drifting,
    measured,
    reuseFactor: forReuse,
    methodFactor: forMethod,
    exact,
    seconds: Math.min(halfUp(exact), longestSeconds),
  };
}

function measuredOf(curve: TimeCurve, developer: Developer, after: DriftAfter | null): Measured {
  const taken = readingsOf(developer.readings ?? []);
  const start = { seconds: 0, celsius: toCelsius(developer.temperature) };
  const readings = taken[0]?.seconds === 0 ? taken : [start, ...taken];
  return { ...measuredDevelopment(curve, readings, after), curve, readings, after };
}

function driftingOf(curve: TimeCurve, drift: Drift): Drifting {
  const seconds = driftedSeconds(curve, drift);
  const point = (after: number): TimePoint => {
    const celsius = temperatureAfter(drift, after);
    return { celsius, seconds: timeAt(curve, celsius) };
  };
  return { drift, seconds, points: [point(0), point(seconds / 2), point(seconds)] };
}

/** To whole seconds, half up; a millionth is added so that 486.5 kept as 486.4999… still goes up. */
function halfUp(seconds: number): number {
  return Math.floor(seconds + 0.5 + 1e-6);
}
