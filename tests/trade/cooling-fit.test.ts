import fc from "fast-check";
import { levenbergMarquardt } from "ml-levenberg-marquardt";
import { describe, expect, test } from "vitest";
import { temperatureAfter } from "../../src/trade/drift.ts";
import { type CoolingFit, fitCooling, whenAt } from "../../src/trade/tempering.ts";
import { chance, drifts, exact, fitted, readable, readings, squaresOf, width } from "./vessels.ts";

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

  test("leaves out what no thermometer shows, and what was read before the clock began or never", () => {
    const rows = readings([0, 24], [5, 22], [10, 20.75]);
    const stray = readings([-5, 25], [7, 1e9], [8, Number.NaN], [Infinity, 18], [Number.NaN, 20]);
    expect(fitCooling([...stray, ...rows], 18, readable)).toEqual(fitCooling(rows, 18, readable));
    expect(fitCooling(rows, Number.NaN, readable)).toEqual(fitCooling(rows, null, readable));
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
    { rows: readings([0, 20], [5, 21]), bath: 18, told: "move a little away from the bath" },
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

function why(fit: CoolingFit): string {
  return fit.kind === "unfit" ? fit.why : "fitted";
}
