import fc from "fast-check";
import { Solver } from "odex";
import { describe, expect, test } from "vitest";
import { type ThermometerReading, temperatureAfter } from "../../src/trade/drift.ts";
import { type Fitted, fitCooling, type Range, whenAt } from "../../src/trade/tempering.ts";
import { celsiusFromFahrenheit, fahrenheitFromCelsius } from "../../src/units/temperature.ts";
import {
  chance,
  drifts,
  exact,
  fitted,
  readable,
  readings,
  shareOfWay,
  shares,
  squaresOf,
  width,
} from "./vessels.ts";

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

  test.each([
    { rows: readings([0, 24], [5, 22], [10, 20.75]), bath: 18, target: 20 },
    { rows: readings([0, 24], [5, 22]), bath: 18, target: 18.75 },
    { rows: readings([0, 24], [5, 22], [10, 20.75], [30, 19]), bath: null, target: 19.75 },
    { rows: readings([0, 24], [5, 22.5], [10, 21]), bath: null, target: 12 },
    { rows: readings([2, 24], [5, 23], [10, 20.9]), bath: null, target: 19.5 },
  ])(
    "has the interval that trying all curves between 0 and 24 °C gives: $target °C, bath $bath (1 %)",
    ({ rows, bath, target }) => {
      const fit = fitted(fitCooling(rows, bath, readable));
      const reach = whenAt(fit, target);
      if (reach.kind === "never") throw new Error("the target may be reached");
      const tried = tryAllCurves(fit, target);
      const range = reach.kind === "unsure" ? { from: reach.from, to: Infinity } : reach.range;
      expect(Math.abs(range.from / tried.from - 1)).toBeLessThan(0.01);
      if (range.to === Infinity) expect(tried.to).toBe(Infinity);
      else expect(Math.abs(range.to / tried.to - 1)).toBeLessThan(0.01);
    },
  );

  test("has its interval by the scatter of the readings where that is greater than the thermometer's error (1 s)", () => {
    const rows = readings([0, 24.3], [3, 22.4], [6, 21.9], [9, 20.7], [12, 20.5], [15, 19.4]);
    const [fine, finer, coarse] = [0.15, 0.12, 0.5].map((error) => {
      const reach = whenAt(fitted(fitCooling(rows, 18, error)), 20);
      return reach.kind === "reached" ? reach.range : { from: 0, to: 0 };
    });
    if (!fine || !finer || !coarse) throw new Error("three thermometers were tried");
    expect(Math.abs(fine.from - finer.from)).toBeLessThan(1);
    expect(Math.abs(fine.to - finer.to)).toBeLessThan(1);
    expect(width(coarse)).toBeGreaterThan(width(fine) + 60);
  });

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
    for (const bath of [16.1, 17, 19.3]) {
      const reach = whenAt(fitted(fitCooling(readings([0, 24], [5, 22]), bath, readable)), bath);
      expect(reach).toMatchObject({ kind: "unsure", at: null });
    }
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

/**
 * Seconds from the earliest to the latest at which any curve has the target that misses the readings by no more
 * than 3.84 of the thermometer's errors beyond the best: room and half-way time in small steps, and of the
 * starts that fit with them the least and the greatest.
 */
function tryAllCurves({ drift, readings: rows, bath }: Fitted, target: number): Range {
  const known = bath === null ? [] : [bath];
  const best = squaresOf(drift, rows) + known.reduce((sum, it) => sum + (it - drift.room) ** 2, 0);
  let [from, to] = [Infinity, -Infinity];
  for (let halfway = 0.5; halfway < 1440; halfway *= 1.01) {
    for (let room = 0; room <= 24; room += 0.02) {
      let [xx, xy, yy] = [0, 0, known.reduce((sum, it) => sum + (it - room) ** 2, 0)];
      for (const { seconds, celsius } of rows) {
        const [x, y] = [2 ** (-seconds / 60 / halfway), celsius - room];
        [xx, xy, yy] = [xx + x * x, xy + x * y, yy + y * y];
      }
      const slack = best + 3.84 * readable ** 2 - (yy - (xy * xy) / xx);
      if (slack < 0) continue;
      for (const lead of [xy / xx - Math.sqrt(slack / xx), xy / xx + Math.sqrt(slack / xx)]) {
        const share = (target - room) / lead;
        const at = share > 0 ? -60 * halfway * Math.log2(share) : Infinity;
        [from, to] = [Math.min(from, at), Math.max(to, at)];
      }
    }
  }
  return { from, to };
}

function numbersIn(value: unknown): number[] {
  if (typeof value === "number") return [value];
  if (typeof value !== "object" || value === null) return [];
  return Object.values(value).flatMap(numbersIn);
}
