import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  alongOther,
  beyond,
  curveThrough,
  perDegreeBetween,
  timeAt,
} from "../../src/trade/time-temperature.ts";
import { celsiusFromFahrenheit } from "../../src/units/temperature.ts";

const at = (celsius: number, seconds: number) => ({ celsius, seconds });
const atF = (fahrenheit: number, seconds: number) => at(celsiusFromFahrenheit(fahrenheit), seconds);

/** Rows of a leaflet: whole °C apart, times that differ by no more than leaflets' do. */
const rows = fc
  .uniqueArray(fc.integer({ min: 10, max: 40 }), { minLength: 2, maxLength: 8 })
  .chain((degrees) =>
    fc
      .array(fc.integer({ min: 60, max: 3600 }), {
        minLength: degrees.length,
        maxLength: degrees.length,
      })
      .map((times) => degrees.map((celsius, index) => at(celsius, times[index] ?? 60))),
  );

describe("against figures in print", () => {
  test("Wall's worked example: 70 s at 8 °C and 25 s at 20 °C give 0.037 in log10 per °C (Jahrbuch 24, 1910, p. 44; to the 0.001 he prints)", () => {
    const k = perDegreeBetween(at(8, 70), at(20, 25));
    expect(Math.abs(k / Math.LN10 - 0.037)).toBeLessThan(0.001);
    expect(k).toBeCloseTo(0.0858, 4);
  });

  test("Mees's meaning of the coefficient, rates 10 °C apart, is 2.36 for Wall's developer (Jahrbuch 25, 1911, p. 170; 0.005)", () => {
    const curve = curveThrough([at(8, 70), at(20, 25)]);
    expect(timeAt(curve, 15) / timeAt(curve, 25)).toBeCloseTo(2.36, 2);
  });

  test("memory, plausibility (ILFORD data sheets): 4 min at 20 °C is 3 min at 23 °C and 6 min at 16 °C, within 3 % on the usual slope", () => {
    const curve = curveThrough([at(20, 240)]);
    expect(Math.abs(timeAt(curve, 23) / 180 - 1)).toBeLessThan(0.03);
    expect(Math.abs(timeAt(curve, 16) / 360 - 1)).toBeLessThan(0.03);
  });

  test("practice, a wall chart's rows: 10:00 at 68 °F and 9:00 at 70 °F give 9:29 at 69 °F and 8:32 at 71 °F (half a second)", () => {
    const curve = curveThrough([atF(68, 600), atF(70, 540)]);
    expect(Math.abs(timeAt(curve, celsiusFromFahrenheit(69)) - 569)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(timeAt(curve, celsiusFromFahrenheit(71)) - 512)).toBeLessThanOrEqual(0.5);
    expect(perDegreeBetween(atF(68, 600), atF(70, 540))).toBeCloseTo(0.0948, 4);
  });
});

describe("the curve through a leaflet's rows", () => {
  test("gives each row's own time back exactly", () => {
    fc.assert(
      fc.property(rows, (points) => {
        const curve = curveThrough(points);
        for (const point of points) expect(timeAt(curve, point.celsius)).toBe(point.seconds);
      }),
    );
  });

  test("is linear in ln(time) between two rows: half-way lies their geometric mean (1e-9)", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 60, max: 3600 }),
        fc.integer({ min: 60, max: 3600 }),
        (a, b) => {
          const middle = timeAt(curveThrough([at(18, a), at(22, b)]), 20);
          expect(middle / Math.sqrt(a * b)).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  test("never has more time in a warmer bath, where no row has", () => {
    const falling = rows.map((points) => {
      const times = points.map((it) => it.seconds).sort((a, b) => b - a);
      const degrees = points.map((it) => it.celsius).sort((a, b) => a - b);
      return degrees.map((celsius, index) => at(celsius, times[index] ?? 60));
    });
    const degrees = fc.double({ min: 5, max: 45, noNaN: true });
    fc.assert(
      fc.property(falling, degrees, degrees, (points, a, b) => {
        const curve = curveThrough(points);
        const [cold, warm] = [Math.min(a, b), Math.max(a, b)];
        expect(timeAt(curve, warm)).toBeLessThanOrEqual(timeAt(curve, cold) * (1 + 1e-9));
      }),
    );
  });

  test("goes on beyond the rows with the nearest pair's slope (1e-9)", () => {
    const curve = curveThrough([at(18, 800), at(20, 600), at(24, 500)]);
    expect(timeAt(curve, 16)).toBeCloseTo(800 * (800 / 600), 9);
    expect(timeAt(curve, 28)).toBeCloseTo(500 * (500 / 600), 9);
  });

  test("does not depend on the order in which the rows were typed", () => {
    fc.assert(
      fc.property(rows, fc.double({ min: 5, max: 45, noNaN: true }), (points, celsius) => {
        const turned = curveThrough([...points].reverse());
        expect(timeAt(turned, celsius)).toBe(timeAt(curveThrough(points), celsius));
      }),
    );
  });

  test("stays finite and above 0 for the steepest rows and any temperature", () => {
    const steep = curveThrough([at(20, 1), at(20.001, 86_400)]);
    fc.assert(
      fc.property(fc.double({ min: -100, max: 200, noNaN: true }), (celsius) => {
        expect(timeAt(steep, celsius)).toSatisfy((t: number) => t > 0 && Number.isFinite(t));
      }),
    );
  });
});

describe("a row alone", () => {
  test("takes 0.099 per °C unless it brings a slope of its own (1e-9)", () => {
    expect(timeAt(curveThrough([at(20, 600)]), 21)).toBeCloseTo(600 * Math.exp(-0.099), 9);
    expect(timeAt(curveThrough([at(20, 600)], 0.07), 18)).toBeCloseTo(600 * Math.exp(0.14), 9);
  });

  test("goes along another curve in proportion, and keeps its own time (1e-9)", () => {
    const other = curveThrough([at(18, 800), at(20, 600), at(24, 500)]);
    const curve = alongOther(at(19, 300), other);
    expect(timeAt(curve, 19)).toBe(300);
    for (const celsius of [16, 18.5, 20, 22, 26]) {
      const ratio = timeAt(other, celsius) / timeAt(other, 19);
      expect(timeAt(curve, celsius)).toBeCloseTo(300 * ratio, 9);
    }
  });
});

test("a temperature is beyond the rows by its distance from the nearest, and not at all among them", () => {
  const points = [at(18, 800), at(24, 500)];
  expect(beyond(points, 18)).toBeNull();
  expect(beyond(points, 21)).toBeNull();
  expect(beyond(points, 16.5)).toEqual({ nearest: 18, degrees: 1.5 });
  expect(beyond(points, 27)).toEqual({ nearest: 24, degrees: 3 });
});
