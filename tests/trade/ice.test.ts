import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { temperatureAfter } from "../../src/trade/drift.ts";
import { bathFor, iceFor } from "../../src/trade/ice.ts";
import { mixedCelsius } from "../../src/trade/water.ts";

const degrees = fc.double({ min: 1, max: 60, noNaN: true });
const minutes = fc.double({ min: 0.5, max: 120, noNaN: true });

describe("the bath for a developer", () => {
  test("lies as far beyond the target as the developer does before it, where one half-way time is given", () => {
    expect(bathFor({ now: 24, target: 20, halfway: 8, minutes: 8 })).toBeCloseTo(16, 9);
  });

  test("brings the developer to the target in the minutes asked for, by the cooling of drift (1e-6 °C)", () => {
    fc.assert(
      fc.property(degrees, degrees, minutes, minutes, (now, target, halfway, wanted) => {
        const room = bathFor({ now, target, halfway, minutes: wanted }) ?? Number.NaN;
        const then = temperatureAfter({ start: now, room, halfway }, wanted * 60);
        expect(Math.abs(then - target)).toBeLessThan(1e-6);
      }),
    );
  });

  test("memory, plausibility (Trench, Elementary Differential Equations §4.2): 400 °C to 106.67 °C in 8 min, half-way in 3.638 min, wants 25 °C (0.01 °C)", () => {
    const halfway = (4 * Math.LN2) / Math.log(375 / 175);
    const bath = bathFor({ now: 400, target: 106.667, halfway, minutes: 8 });
    expect(bath).toBeCloseTo(25, 2);
  });

  test("is the target itself where there is nothing to change, or all the time in the world", () => {
    expect(bathFor({ now: 20, target: 20, halfway: 8, minutes: 3 })).toBe(20);
    expect(bathFor({ now: 24, target: 20, halfway: 1, minutes: 1e4 })).toBe(20);
  });

  test("is none where there is no time", () => {
    expect(bathFor({ now: 24, target: 20, halfway: 8, minutes: 0 })).toBeNull();
    expect(bathFor({ now: 24, target: 20, halfway: 8, minutes: -1 })).toBeNull();
    expect(bathFor({ now: 24, target: 20, halfway: 0, minutes: 5 })).toBeNull();
    expect(bathFor({ now: 24, target: 20, halfway: 1e308, minutes: 1e-308 })).toBeNull();
  });
});

describe("ice for a bath", () => {
  test("memory, plausibility (physics): 1000 ml from 24 to 18 °C take 61 g (1 g)", () => {
    expect(Math.abs((iceFor({ water: 1000, from: 24, to: 18 }) ?? 0) - 61)).toBeLessThan(1);
  });

  test("mixes as water of −79.7 °C would, by the balance of heat (0.01 °C)", () => {
    const ordered = fc.tuple(degrees, degrees).filter(([a, b]) => a !== b);
    fc.assert(
      fc.property(ordered, fc.double({ min: 100, max: 20_000, noNaN: true }), (pair, water) => {
        const [to, from] = [Math.min(...pair), Math.max(...pair)];
        const ice = iceFor({ water, from, to }) ?? Number.NaN;
        const mixed = mixedCelsius([
          { amount: water, celsius: from },
          { amount: ice, celsius: -79.7 },
        ]);
        expect(Math.abs((mixed ?? Number.NaN) - to)).toBeLessThan(0.01);
      }),
    );
  });

  test("leaves the same bath whether it goes in at once or in two helpings (1e-9 g)", () => {
    const first = iceFor({ water: 3000, from: 25, to: 21 }) ?? Number.NaN;
    const second = iceFor({ water: 3000 + first, from: 21, to: 18 }) ?? Number.NaN;
    expect(first + second).toBeCloseTo(iceFor({ water: 3000, from: 25, to: 18 }) ?? 0, 9);
  });

  test("does nothing for water that is to be no colder, or at 0 °C or below, or is not there", () => {
    expect(iceFor({ water: 1000, from: 20, to: 20 })).toBeNull();
    expect(iceFor({ water: 1000, from: 20, to: 21 })).toBeNull();
    expect(iceFor({ water: 1000, from: 20, to: 0 })).toBeNull();
    expect(iceFor({ water: 0, from: 20, to: 10 })).toBeNull();
  });
});
