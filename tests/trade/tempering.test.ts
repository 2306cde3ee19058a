import fc from "fast-check";
import { levenbergMarquardt } from "ml-levenberg-marquardt";
import { Solver } from "odex";
import { describe, expect, test } from "vitest";
import { type Drift, temperatureAfter } from "../../src/trade/drift.ts";
import {
  type CoolingFit,
  type Fitted,
  fitCooling,
  type ThermometerReading,
  whenAt,
} from "../../src/trade/tempering.ts";
import { celsiusFromFahrenheit, fahrenheitFromCelsius } from "../../src/units/temperature.ts";

const readable = 0.25;

function readings(...pairs: readonly (readonly [number, number])[]): ThermometerReading[] {
  return pairs.map(([minutes, celsius]) => ({ seconds: 60 * minutes, celsius }));
}

function fitted(fit: CoolingFit): Fitted {
  if (fit.kind === "unfit") throw new Error(`no curve: ${fit.why}`);
  return fit;
}

function why(fit: CoolingFit): string {
  return fit.kind === "unfit" ? fit.why : "fitted";
}

/** Readings of a drift with no error, evenly over so many minutes. */
function exact(drift: Drift, minutes: number, count: number): ThermometerReading[] {
  return Array.from({ length: count }, (_, index) => {
    const seconds = (60 * minutes * index) / (count - 1);
    return { seconds, celsius: temperatureAfter(drift, seconds) };
  });
}

/** Numbers of the normal law with standard deviation 1, the same each time: a congruential row, Box and Muller. */
function chance(seed: number) {
  let state = seed;
  const even = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
  const normal = () => Math.sqrt(-2 * Math.log(even())) * Math.cos(2 * Math.PI * even());
  return { even, normal };
}

/** Tanks that move by 3 °C at least, warming or cooling. */
const drifts = fc
  .record({
    start: fc.double({ min: 10, max: 40, noNaN: true }),
    room: fc.double({ min: 10, max: 40, noNaN: true }),
    halfway: fc.double({ min: 2, max: 20, noNaN: true }),
  })
  .filter(({ start, room }) => Math.abs(start - room) > 3);
const shares = fc.double({ min: 0.05, max: 0.9, noNaN: true });

/** °C after a share of the way to where it settles, and the seconds of it. */
function shareOfWay({ start, room, halfway }: Drift, share: number) {
  return { celsius: start + (room - start) * share, seconds: -60 * halfway * Math.log2(1 - share) };
}

describe("the curve through readings", () => {
  test("memory, plausibility (Trench, Elementary Differential Equations §4.2): 400 °C that is 200 °C after 4 min in a 25 °C room is 106.67 °C after 8 min (0.005 °C, 0.1 s)", () => {
    const fit = fitted(fitCooling(readings([0, 400], [4, 200]), 25, readable));
    expect(temperatureAfter(fit.drift, 480)).toBeCloseTo(106.67, 2);
    const reach = whenAt(fit, 106.667);
    expect(reach).toMatchObject({ kind: "reached", at: expect.closeTo(480, 1) });
  });

  test("is the tank's own where the readings have no error, the bath known or not (1e-3 °C, 1e-3 of the half-way time)", () => {
    fc.assert(
      fc.property(drifts, fc.integer({ min: 3, max: 8 }), fc.boolean(), (drift, count, known) => {
        const rows = exact(drift, 2.5 * drift.halfway, count);
        const fit = fitted(fitCooling(rows, known ? drift.room : null, readable));
        expect(Math.abs(fit.drift.start - drift.start)).toBeLessThan(1e-3);
        expect(Math.abs(fit.drift.room - drift.room)).toBeLessThan(1e-3);
        expect(Math.abs(fit.drift.halfway / drift.halfway - 1)).toBeLessThan(1e-3);
        expect(fit.misfit).toBeLessThan(1e-4);
        expect(fit.settles.from).toBeLessThanOrEqual(fit.drift.room);
        expect(fit.settles.to).toBeGreaterThanOrEqual(fit.drift.room);
      }),
    );
  });

  test("misses the readings by as much as the curve of Levenberg and Marquardt, the best of four starts, and by no more (1e-6 of the squares)", () => {
    const { even, normal } = chance(7);
    let compared = 0;
    for (let run = 0; run < 60; run += 1) {
      const drift = { start: 22 + 8 * even(), room: 12 + 6 * even(), halfway: 3 + 9 * even() };
      const rows = exact(drift, 20, 6).map((row) => ({
        ...row,
        celsius: row.celsius + readable * normal(),
      }));
      const fit = fitCooling(rows, null, readable);
      if (fit.kind === "unfit") continue;
      const data = { x: rows.map((it) => it.seconds / 60), y: rows.map((it) => it.celsius) };
      const squares = [2, 5, 10, 20].map((halfway) => {
        const { parameterValues } = levenbergMarquardt(
          data,
          ([start = 0, room = 0, half = 1]) =>
            (minutes) =>
              temperatureAfter({ start, room, halfway: half }, 60 * minutes),
          {
            initialValues: [24, 16, halfway],
            minValues: [0, 0, 0.3],
            maxValues: [100, 100, 24 * 60],
            gradientDifference: 1e-4,
            centralDifference: true,
            maxIterations: 200,
          },
        );
        const [start = 0, room = 0, half = 1] = parameterValues;
        return squaresOf({ start, room, halfway: half }, rows);
      });
      expect(Math.abs(squaresOf(fit.drift, rows) / Math.min(...squares) - 1)).toBeLessThan(1e-6);
      compared += 1;
    }
    expect(compared).toBeGreaterThan(50);
  });

  test("does not ask in which order the readings were written down", () => {
    const rows = readings([0, 24], [5, 22], [10, 20.75], [15, 20]);
    const turned = fitted(fitCooling(rows.toReversed(), 18, readable));
    expect(turned).toEqual(fitCooling(rows, 18, readable));
  });

  test("takes the bath's temperature for one more reading, no better than the others", () => {
    const rows = readings([0, 24], [5, 22], [10, 20.75], [15, 20], [30, 18.75], [40, 18.5]);
    const fit = fitted(fitCooling(rows, 18, readable));
    expect(fit.settles.from).toBeLessThan(18);
    expect(fit.settles.to).toBeGreaterThan(18);
    const alone = fitted(fitCooling(rows, null, readable));
    expect(width(fit.settles)).toBeLessThan(width(alone.settles));
  });

  test("settles between freezing and boiling, however little the readings bend", () => {
    const fit = fitted(fitCooling(readings([0, 24], [5, 22.5], [10, 21]), null, readable));
    expect(fit.drift.room).toBeGreaterThanOrEqual(0);
    expect(fit.settles.from).toBe(0);
  });
});

describe("the time at which a target is reached", () => {
  test("is that at which the differential equation, integrated step by step, has the target (1e-4 °C)", () => {
    fc.assert(
      fc.property(drifts, shares, (drift, share) => {
        const rows = exact(drift, 2.5 * drift.halfway, 5);
        const { celsius } = shareOfWay(drift, share);
        const reach = whenAt(fitted(fitCooling(rows, drift.room, 0.05)), celsius);
        if (reach.kind === "never") throw new Error("a share of the way is reached");
        const solver = new Solver(1);
        solver.absoluteTolerance = 1e-10;
        solver.relativeTolerance = 1e-10;
        const slope = (_: number, [now = 0]: number[]) => [
          (-Math.LN2 / (60 * drift.halfway)) * (now - drift.room),
        ];
        const { y } = solver.solve(slope, 0, [drift.start], reach.at ?? 0);
        expect(Math.abs((y[0] ?? 0) - celsius)).toBeLessThan(1e-4);
      }),
    );
  });

  test.each([
    { count: 2, known: true },
    { count: 3, known: true },
    { count: 6, known: true },
    { count: 4, known: false },
    { count: 8, known: false },
  ])(
    "lies in the interval in at least 92 of 100 tanks, read $count times, bath known: $known",
    ({ count, known }) => {
      const { even, normal } = chance(20 + count);
      let [held, answered] = [0, 0];
      while (answered < 300) {
        const drift = { start: 21 + 9 * even(), room: 14 + 4 * even(), halfway: 3 + 12 * even() };
        const rows = exact(drift, 3 + 12 * even(), count).map((row) => ({
          ...row,
          celsius: row.celsius + readable * normal(),
        }));
        const bath = known ? drift.room + readable * normal() : null;
        const { celsius, seconds } = shareOfWay(drift, 0.1 + 0.8 * even());
        const fit = fitCooling(rows, bath, readable);
        if (fit.kind === "unfit") continue;
        answered += 1;
        const reach = whenAt(fit, celsius);
        if (reach.kind === "unsure" && reach.from <= seconds) held += 1;
        if (reach.kind !== "reached") continue;
        if (reach.range.from <= seconds && seconds <= reach.range.to) held += 1;
      }
      expect(held / answered).toBeGreaterThanOrEqual(0.92);
    },
  );

  test("has an interval about it even where the readings fit exactly, wider the coarser the thermometer", () => {
    const widths = [0.05, 0.1, 0.25].map((error) => {
      const reach = whenAt(fitted(fitCooling(readings([0, 24], [5, 22]), 18, error)), 20);
      if (reach.kind !== "reached") throw new Error("20 °C is reached");
      expect(reach.range.from).toBeLessThan(reach.at);
      expect(reach.range.to).toBeGreaterThan(reach.at);
      return width(reach.range);
    });
    expect(widths).toEqual(widths.toSorted((a, b) => a - b));
    expect(widths[0]).toBeGreaterThan(1);
  });

  test("narrows as readings are added", () => {
    const drift = { start: 24, room: 18, halfway: 8 };
    const widths = [3, 6, 12, 24].map((count) => {
      const reach = whenAt(fitted(fitCooling(exact(drift, 15, count), 18, readable)), 20);
      return reach.kind === "reached" ? width(reach.range) : Infinity;
    });
    expect(widths).toEqual(widths.toSorted((a, b) => b - a));
    expect(new Set(widths).size).toBe(4);
  });

  test("comes sooner for a nearer target, and so do both ends of its interval", () => {
    fc.assert(
      fc.property(drifts, shares, shares, (drift, one, other) => {
        fc.pre(Math.abs(one - other) > 0.01);
        const fit = fitted(fitCooling(exact(drift, 2 * drift.halfway, 4), drift.room, 0.1));
        const times = [Math.min(one, other), Math.max(one, other)].map((share) => {
          const reach = whenAt(fit, shareOfWay(drift, share).celsius);
          if (reach.kind === "never") throw new Error("a share of the way is reached");
          return reach.kind === "unsure"
            ? [reach.from, reach.at ?? Infinity, Infinity]
            : [reach.range.from, reach.at, reach.range.to];
        });
        const [sooner = [], later = []] = times;
        for (const [index, time] of sooner.entries()) {
          expect(time).toBeLessThanOrEqual(later[index] ?? 0);
        }
      }),
    );
  });

  test("is before the last reading where the developer has gone past, and before the first where it began past", () => {
    const fit = fitted(fitCooling(readings([0, 24], [5, 22], [10, 20.75]), 18, readable));
    expect(whenAt(fit, 22)).toMatchObject({ kind: "reached", at: expect.closeTo(300, -2) });
    expect(whenAt(fit, 26)).toMatchObject({ kind: "reached", at: expect.closeTo(-220, -2) });
  });

  test("never comes where no curve that fits goes so far, and then the nearest is said", () => {
    const cooling = fitted(fitCooling(readings([0, 24], [5, 22], [10, 20.75]), 18, readable));
    const never = whenAt(cooling, 17);
    expect(never).toEqual({ kind: "never", nearest: cooling.drift.room, range: cooling.settles });
    const warming = fitted(fitCooling(readings([0, 16], [5, 20], [10, 22]), 24, readable));
    expect(whenAt(warming, 25.5).kind).toBe("never");
    expect(whenAt(warming, 22.5).kind).toBe("reached");
  });

  test("is unsure where the bath stands at the very target, and not before the interval of a target just short of it", () => {
    const fit = fitted(fitCooling(readings([0, 24], [5, 22]), 18, readable));
    const [there, short] = [whenAt(fit, 18), whenAt(fit, 18.6)];
    if (there.kind !== "unsure" || short.kind !== "reached") throw new Error("18 °C is unsure");
    expect(there.at).toBeNull();
    expect(there.from).toBeGreaterThan(short.range.from);
  });

  test("is unsure of a temperature beyond three readings whose bath nobody knows", () => {
    const fit = fitted(fitCooling(readings([0, 24], [5, 22], [10, 20.75]), null, readable));
    const reach = whenAt(fit, 19.5);
    if (reach.kind !== "unsure") throw new Error("19.5 °C is unsure");
    expect(reach.from).toBeGreaterThan(600);
    expect(reach.at).toBeGreaterThan(reach.from);
  });

  test("does not hang on the unit of the thermometer, nor on when the clock was started (0.01 s)", () => {
    const rows = readings([0, 24], [5, 22], [10, 20.75], [16, 19.75]);
    const answer = (of: readonly ThermometerReading[], bath: number, target: number) => {
      const reach = whenAt(fitted(fitCooling(of, bath, readable)), target);
      if (reach.kind !== "reached") throw new Error("the target is reached");
      return [reach.at, reach.range.from, reach.range.to];
    };
    const there = (celsius: number) => celsiusFromFahrenheit(fahrenheitFromCelsius(celsius));
    const inFahrenheit = rows.map((it) => ({ ...it, celsius: there(it.celsius) }));
    const later = rows.map((it) => ({ ...it, seconds: it.seconds + 2000 }));
    const plain = answer(rows, 18, 20);
    for (const [index, time] of answer(inFahrenheit, there(18), there(20)).entries()) {
      expect(Math.abs(time - (plain[index] ?? 0))).toBeLessThan(0.01);
    }
    for (const [index, time] of answer(later, 18, 20).entries()) {
      expect(Math.abs(time - 2000 - (plain[index] ?? 0))).toBeLessThan(0.01);
    }
  });
});

describe("readings from which nothing can be said", () => {
  test("are too few: fewer than two, or fewer than three where the bath is not known", () => {
    expect(why(fitCooling([], 18, readable))).toBe("too-few");
    expect(why(fitCooling(readings([0, 24]), 18, readable))).toBe("too-few");
    expect(why(fitCooling(readings([5, 24], [5, 22]), 18, readable))).toBe("too-few");
    expect(why(fitCooling(readings([0, 24], [5, 22]), null, readable))).toBe("too-few");
    expect(why(fitCooling(readings([0, 24], [5, 22], [10, 20.75]), null, readable))).toBe("fitted");
  });

  test("are too close within less than a minute", () => {
    expect(why(fitCooling(readings([0, 24], [0.9, 20]), 18, readable))).toBe("too-close");
    expect(why(fitCooling(readings([0, 24], [1, 20]), 18, readable))).toBe("fitted");
  });

  test("are still where two differ by less than 1.96 · √2 errors: 0.69 °C for a quarter of a degree", () => {
    expect(why(fitCooling(readings([0, 24], [5, 23.32]), 18, readable))).toBe("still");
    expect(why(fitCooling(readings([0, 24], [5, 23.3]), 18, readable))).toBe("fitted");
  });

  test("are noisy where they scatter far beyond the thermometer's error", () => {
    const about = readings([0, 24], [3, 21], [6, 23.5], [9, 20], [12, 22]);
    expect(why(fitCooling(about, 18, readable))).toBe("noisy");
    const steps = readings([0, 30], [3, 29], [6, 24], [9, 23.5], [12, 19], [15, 18.5]);
    expect(why(fitCooling(steps, null, 0.1))).toBe("noisy");
  });

  test.each([
    { rows: readings([0, 20], [5, 22]), bath: 18, told: "move away from the bath" },
    { rows: readings([0, 24], [5, 20], [10, 22]), bath: null, told: "fall and rise" },
    { rows: readings([0, 16], [5, 20], [10, 18]), bath: 24, told: "rise and fall" },
    { rows: readings([0, 24], [5, 23], [10, 20]), bath: null, told: "fall ever faster" },
    { rows: readings([0, 24], [5, 21], [10, 20.2], [15, 20]), bath: 14, told: "settle elsewhere" },
  ])("are contradictory where they $told", ({ rows, bath }) => {
    expect(why(fitCooling(rows, bath, readable))).toBe("contradictory");
  });

  test("are seldom called contradictory or noisy where only chance is at work: fewer than 3 in 100 tanks", () => {
    const { even, normal } = chance(3);
    let called = 0;
    for (let run = 0; run < 300; run += 1) {
      const drift = { start: 16 + 14 * even(), room: 20, halfway: 3 + 12 * even() };
      const rows = exact(drift, 20, 3 + (run % 18)).map((row) => ({
        ...row,
        celsius: row.celsius + readable * normal(),
      }));
      const verdict = why(fitCooling(rows, run % 2 ? 20 : null, readable));
      if (verdict === "contradictory" || verdict === "noisy") called += 1;
    }
    expect(called).toBeLessThan(9);
  });
});

describe("an answer is never something that is not a number", () => {
  const target = fc.double({ min: -50, max: 150, noNaN: true });

  function expectNumbers(fit: Fitted, celsius: number) {
    expect(numbersIn([fit.drift, fit.settles, fit.misfit]).every(Number.isFinite)).toBe(true);
    expect(fit.settles.from).toBeLessThanOrEqual(fit.drift.room);
    expect(fit.settles.to).toBeGreaterThanOrEqual(fit.drift.room);
    const reach = whenAt(fit, celsius);
    expect(numbersIn(reach).every(Number.isFinite)).toBe(true);
    if (reach.kind !== "reached") return;
    expect(reach.range.from).toBeLessThanOrEqual(reach.at);
    expect(reach.range.to).toBeGreaterThanOrEqual(reach.at);
  }

  test("for tanks quick and slow, on clocks that were started long ago", () => {
    const tenths = (least: number, most: number) =>
      fc.integer({ min: 10 * least, max: 10 * most }).map((it) => it / 10);
    const tank = fc.record({
      start: tenths(0, 100),
      room: tenths(0, 100),
      halfway: fc.oneof(tenths(1, 60), fc.double({ min: 0.05, max: 5000, noNaN: true })),
    });
    const times = fc.array(tenths(0, 3000), { minLength: 2, maxLength: 8 });
    const late = fc.oneof(fc.constant(0), fc.double({ min: 0, max: 1e6, noNaN: true }));
    const error = fc.oneof(fc.constant(0), tenths(0, 1));
    let answers = 0;
    fc.assert(
      fc.property(tank, times, late, error, fc.boolean(), target, (drift, at, by, e, known, to) => {
        const rows = at.map((seconds, index) => ({
          seconds: seconds + by,
          celsius: temperatureAfter(drift, seconds) + e * Math.sin(index + by),
        }));
        const fit = fitCooling(rows, known ? drift.room : null, e);
        if (fit.kind === "unfit") return;
        answers += 1;
        expectNumbers(fit, to);
      }),
      { numRuns: 1000 },
    );
    expect(answers).toBeGreaterThan(100);
  });

  test("for whatever else is typed", () => {
    const typed = fc.record({ seconds: fc.double(), celsius: fc.double() });
    const good = fc.constantFrom(...readings([0, 24], [5, 22], [10, 20.75], [20, 19.2]));
    const rows = fc.array(fc.oneof({ weight: 9, arbitrary: good }, typed), { maxLength: 8 });
    fc.assert(
      fc.property(rows, fc.oneof(fc.constant(18), fc.double()), target, (all, bath, celsius) => {
        const fit = fitCooling(all, bath, readable);
        if (fit.kind === "fitted") expectNumbers(fit, celsius);
      }),
      { numRuns: 1000 },
    );
  });
});

function width({ from, to }: { readonly from: number; readonly to: number }): number {
  return to - from;
}

function squaresOf(drift: Drift, rows: readonly ThermometerReading[]): number {
  return rows.reduce((sum, it) => sum + (temperatureAfter(drift, it.seconds) - it.celsius) ** 2, 0);
}

function numbersIn(value: unknown): number[] {
  if (typeof value === "number") return [value];
  if (typeof value !== "object" || value === null) return [];
  return Object.values(value).flatMap(numbersIn);
}
