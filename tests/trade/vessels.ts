// Vessels in a bath, and what a thermometer reads in them, exact or with errors of chance that are the same each time.
import fc from "fast-check";
import { type Drift, type ThermometerReading, temperatureAfter } from "../../src/trade/drift.ts";
import type { CoolingFit, Fitted } from "../../src/trade/tempering.ts";

export const readable = 0.25;

export function readings(...pairs: readonly (readonly [number, number])[]): ThermometerReading[] {
  return pairs.map(([minutes, celsius]) => ({ seconds: 60 * minutes, celsius }));
}

export function fitted(fit: CoolingFit): Fitted {
  if (fit.kind === "unfit") throw new Error(`no curve: ${fit.why}`);
  return fit;
}

/** Readings of a drift with no error, evenly over so many minutes. */
export function exact(drift: Drift, minutes: number, count: number): ThermometerReading[] {
  return Array.from({ length: count }, (_, index) => {
    const seconds = (60 * minutes * index) / (count - 1);
    return { seconds, celsius: temperatureAfter(drift, seconds) };
  });
}

/** Numbers of the normal law with standard deviation 1, the same each time: a congruential row, Box and Muller. */
export function chance(seed: number) {
  let state = seed;
  const even = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
  const normal = () => Math.sqrt(-2 * Math.log(even())) * Math.cos(2 * Math.PI * even());
  return { even, normal };
}

/** Tanks that move by 3 °C at least, warming or cooling. */
export const drifts = fc
  .record({
    start: fc.double({ min: 10, max: 40, noNaN: true }),
    room: fc.double({ min: 10, max: 40, noNaN: true }),
    halfway: fc.double({ min: 2, max: 20, noNaN: true }),
  })
  .filter(({ start, room }) => Math.abs(start - room) > 3);
export const shares = fc.double({ min: 0.05, max: 0.9, noNaN: true });

/** °C after a share of the way to where it settles, and the seconds of it. */
export function shareOfWay({ start, room, halfway }: Drift, share: number) {
  return { celsius: start + (room - start) * share, seconds: -60 * halfway * Math.log2(1 - share) };
}

export function width({ from, to }: { readonly from: number; readonly to: number }): number {
  return to - from;
}

export function squaresOf(drift: Drift, rows: readonly ThermometerReading[]): number {
  return rows.reduce((sum, it) => sum + (temperatureAfter(drift, it.seconds) - it.celsius) ** 2, 0);
}
