// A tank that warms or cools toward its room in, the time that gives the same development out.
// Alone, because it is the one sum here that has to be integrated.
import { sameTemperature, type TimeCurve, timeAt } from "./time-temperature.ts";

/** A temperature read at a time: seconds on one clock, °C. */
export interface ThermometerReading {
  readonly seconds: number;
  readonly celsius: number;
}

/** °C at the start, °C that it drifts toward, and the minutes in which it goes half-way there. */
export interface Drift {
  readonly start: number;
  readonly room: number;
  readonly halfway: number;
}

/** °C after so many seconds: room + (start − room) · 2^(−s / (60 · halfway)), Newton's cooling. */
export function temperatureAfter({ start, room, halfway }: Drift, seconds: number): number {
  return room + (start - room) * 2 ** (-seconds / (60 * halfway));
}

/** After so many half-ways the tank is at the room's temperature to 1e-16 of the difference. */
const halfwaysToRest = 54;

/** Of each stretch, even, as Simpson's rule needs. */
const panels = 64;

/**
 * Seconds after which the integral of ds / time(T(s)) reaches 1, the drift being that of the bath.
 *
 * The integrand is smooth but where T crosses a point of the curve, so the sum is cut there and at
 * every half-way, and Simpson's rule runs within. A bath at rest goes on at one rate. Good to far less
 * than a hundredth of a second for any leaflet in print; the work is bounded for any input.
 */
export function driftedSeconds(curve: TimeCurve, drift: Drift): number {
  if (Math.abs(drift.start - drift.room) <= sameTemperature) return timeAt(curve, drift.start);
  const rate = (seconds: number) => 1 / timeAt(curve, temperatureAfter(drift, seconds));
  const cuts = cutsOf(curve, drift);
  let done = 0;
  let from = 0;
  for (const to of cuts) {
    const part = simpson(rate, from, to);
    if (done + part >= 1) return reach(rate, from, to, 1 - done);
    done += part;
    from = to;
  }
  return from + (1 - done) * timeAt(curve, drift.room);
}

/** Seconds, in order, at which a stretch of the sum ends. */
function cutsOf({ points }: TimeCurve, drift: Drift): readonly number[] {
  const half = 60 * drift.halfway;
  const crossings = points
    .map(({ celsius }) => (celsius - drift.room) / (drift.start - drift.room))
    .filter((left) => left > 0 && left < 1)
    .map((left) => -half * Math.log2(left));
  const halfways = Array.from({ length: halfwaysToRest }, (_, index) => (index + 1) * half);
  return [...crossings.filter((at) => at < halfwaysToRest * half), ...halfways].sort(
    (a, b) => a - b,
  );
}

/** Integral of `f` from `a` to `b` by Simpson's rule. */
function simpson(f: (x: number) => number, a: number, b: number): number {
  const step = (b - a) / panels;
  let sum = f(a) + f(b);
  for (let i = 1; i < panels; i += 1) sum += (i % 2 === 1 ? 4 : 2) * f(a + i * step);
  return (sum * step) / 3;
}

/** The x in (a, b] up to which the integral of `f` from `a` is `wanted`: `f` is above 0, so halving finds it. */
function reach(f: (x: number) => number, a: number, b: number, wanted: number): number {
  let [low, high] = [a, b];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (simpson(f, a, middle) < wanted) low = middle;
    else high = middle;
  }
  return high;
}
