import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { mixingFor, pouredTogether, toMark } from "../../src/trade/mixing.ts";
import { waterDensity } from "../../src/trade/water.ts";
import { celsiusFromFahrenheit } from "../../src/units/temperature.ts";

const grams = (millilitres: number, celsius: number) =>
  (millilitres * (waterDensity(celsius) ?? Number.NaN)) / 1000;

const wanted = fc.record({
  total: fc.double({ min: 100, max: 5000, noNaN: true }),
  celsius: fc.double({ min: 16, max: 40, noNaN: true }),
  stock: fc.record({
    millilitres: fc.double({ min: 1, max: 95, noNaN: true }),
    celsius: fc.double({ min: 5, max: 35, noNaN: true }),
  }),
  cold: fc.double({ min: 1, max: 20, noNaN: true }),
  hot: fc.double({ min: 30, max: 70, noNaN: true }),
});

describe("stock and two taps", () => {
  test("give the volume at the temperature wanted when poured together, whatever the densities (1e-6)", () => {
    fc.assert(
      fc.property(wanted, (it) => {
        const mixing = mixingFor(it);
        if (mixing.kind !== "mix") return;
        const whole = pouredTogether([it.stock, mixing.cold, mixing.hot]);
        expect(whole.celsius).toBeCloseTo(it.celsius, 6);
        // The two formulas for density meet at 40 °C with a step of 6e-7.
        expect(Math.abs(whole.millilitres / it.total - 1)).toBeLessThan(1e-6);
      }),
    );
  });

  test("lose no weight: the parts weigh what the whole weighs (1e-9)", () => {
    fc.assert(
      fc.property(wanted, (it) => {
        const mixing = mixingFor(it);
        if (mixing.kind !== "mix") return;
        const parts = [it.stock, mixing.cold, mixing.hot].map((pour) =>
          grams(pour.millilitres, pour.celsius),
        );
        const whole = parts.reduce((sum, part) => sum + part, 0);
        expect(whole / grams(it.total, it.celsius)).toBeCloseTo(1, 9);
      }),
    );
  });

  test("turned round, the tutorial's worked example: 370 g at 43.92 °C of water at 25 and 95 °C is 270 and 100 g (0.1 g)", () => {
    const total = 370 / ((waterDensity(43.92) ?? 0) / 1000);
    const mixing = mixingFor({
      total,
      celsius: 43.92,
      stock: { millilitres: 0, celsius: 20 },
      cold: 25,
      hot: 95,
    });
    expect(mixing.kind).toBe("mix");
    if (mixing.kind !== "mix") return;
    expect(Math.abs(mixing.weights.cold - 270)).toBeLessThan(0.1);
    expect(Math.abs(mixing.weights.hot - 100)).toBeLessThan(0.1);
  });

  test("come out alike in °F and °C, to rounding (1e-9)", () => {
    const inF = mixingFor({
      total: 640,
      celsius: celsiusFromFahrenheit(68),
      stock: { millilitres: 160, celsius: celsiusFromFahrenheit(72.5) },
      cold: celsiusFromFahrenheit(59),
      hot: celsiusFromFahrenheit(113),
    });
    const inC = mixingFor({
      total: 640,
      celsius: 20,
      stock: { millilitres: 160, celsius: 22.5 },
      cold: 15,
      hot: 45,
    });
    if (inF.kind !== "mix" || inC.kind !== "mix") throw new Error("within reach");
    expect(inF.hot.millilitres).toBeCloseTo(inC.hot.millilitres, 9);
    expect(inF.cold.millilitres).toBeCloseTo(inC.cold.millilitres, 9);
  });

  test("out of reach, say what is reachable: no less than all cold, no more than all hot", () => {
    const it = {
      total: 600,
      celsius: 20,
      stock: { millilitres: 300, celsius: 26 },
      cold: 18,
      hot: 50,
    };
    const mixing = mixingFor(it);
    expect(mixing.kind).toBe("out-of-reach");
    if (mixing.kind !== "out-of-reach") return;
    expect(mixing.coldest).toBeCloseTo(22, 1);
    expect(mixing.warmest).toBeCloseTo(38, 0);
    expect(mixingFor({ ...it, celsius: mixing.coldest + 0.01 }).kind).toBe("mix");
  });

  test("that run alike leave nothing to choose, and outside 0 to 100 °C are no water", () => {
    const it = {
      total: 600,
      celsius: 20,
      stock: { millilitres: 150, celsius: 20 },
      cold: 18,
      hot: 18,
    };
    expect(mixingFor(it).kind).toBe("one-tap");
    expect(mixingFor({ ...it, hot: 101 }).kind).toBe("no-water");
  });
});

test("a graduate's marks take the nearest, half up: 382.5 ml on marks of 5 is 385", () => {
  expect([382.4, 382.5, 2.4, 380].map((ml) => toMark(ml, 5))).toEqual([380, 385, 0, 380]);
});
