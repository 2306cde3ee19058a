import { Decimal } from "decimal.js";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { temperatureFor } from "../../src/trade/temperature-for.ts";
import { curveThrough, timeAt } from "../../src/trade/time-temperature.ts";
import { celsiusFromFahrenheit, fahrenheitFromCelsius } from "../../src/units/temperature.ts";

const at = (celsius: number, seconds: number) => ({ celsius, seconds });

/** Times that fall as it gets warmer, as leaflets' do. */
const falling = fc
  .array(
    fc.tuple(fc.integer({ min: 1, max: 4 }), fc.double({ min: 1.02, max: 1.5, noNaN: true })),
    {
      minLength: 1,
      maxLength: 6,
    },
  )
  .map((steps) => {
    const points = [at(15, 1200)];
    for (const [degrees, ratio] of steps) {
      const { celsius, seconds } = points.at(-1) ?? at(15, 1200);
      points.push(at(celsius + degrees, seconds / ratio));
    }
    return points;
  });

describe("the leaflet, asked backwards", () => {
  test("practice, a wall chart's rows: 10:00 at 68 °F and 9:00 at 70 °F give 9:29 at 69 °F (0.05 °F)", () => {
    const curve = curveThrough([
      at(celsiusFromFahrenheit(68), 600),
      at(celsiusFromFahrenheit(70), 540),
    ]);
    const found = temperatureFor(curve, 569);
    expect(found.kind).toBe("temperature");
    if (found.kind !== "temperature") return;
    expect(Math.abs(fahrenheitFromCelsius(found.celsius) - 69)).toBeLessThan(0.05);
    expect(found.beyond).toBe(0);
  });

  test("gives the temperature whose time was asked for, among the rows and beyond (1e-9 of the time)", () => {
    fc.assert(
      fc.property(falling, fc.integer({ min: 60, max: 3600 }), (points, seconds) => {
        const curve = curveThrough(points);
        const found = temperatureFor(curve, seconds);
        if (found.kind !== "temperature") throw new Error("these times fall");
        expect(timeAt(curve, found.celsius) / seconds).toBeCloseTo(1, 9);
      }),
    );
  });

  test("gives a row's own temperature back exactly", () => {
    fc.assert(
      fc.property(falling, (points) => {
        const curve = curveThrough(points);
        for (const { celsius, seconds } of points) {
          expect(temperatureFor(curve, seconds)).toEqual({
            kind: "temperature",
            celsius,
            beyond: 0,
          });
        }
      }),
    );
  });

  test("says by how many °C the answer lies beyond the rows", () => {
    const curve = curveThrough([at(18, 800), at(20, 600)]);
    const found = temperatureFor(curve, 600 * (600 / 800));
    expect(found).toMatchObject({ kind: "temperature" });
    if (found.kind === "temperature") expect(found.beyond).toBeCloseTo(2, 9);
  });

  test("has no answer where a warmer row takes as long or longer", () => {
    for (const seconds of [600, 700]) {
      const curve = curveThrough([at(18, 600), at(20, seconds)]);
      expect(temperatureFor(curve, 500)).toEqual({ kind: "not-falling" });
    }
  });

  test("a row alone goes by its slope (1e-9)", () => {
    const found = temperatureFor(curveThrough([at(20, 600)]), 600 * Math.exp(-0.099));
    if (found.kind !== "temperature") throw new Error("a slope above 0 falls");
    expect(found.celsius).toBeCloseTo(21, 9);
  });
});

test("time at a temperature agrees with forty digits of decimal arithmetic (1e-12 of the time)", () => {
  const Exact = Decimal.clone({ precision: 40 });
  fc.assert(
    fc.property(falling, fc.double({ min: 12, max: 30, noNaN: true }), (points, celsius) => {
      const curve = curveThrough(points);
      const upper =
        Math.max(
          points.findIndex((point) => point.celsius > celsius),
          0,
        ) || points.length - 1;
      const [from, to] = [points[upper - 1], points[upper]];
      if (!from || !to || points.some((point) => point.celsius === celsius)) return;
      const part = new Exact(celsius)
        .minus(from.celsius)
        .div(new Exact(to.celsius).minus(from.celsius));
      const exact = new Exact(to.seconds).div(from.seconds).pow(part).times(from.seconds);
      if (celsius < (points[0]?.celsius ?? 0)) return;
      expect(exact.div(timeAt(curve, celsius)).minus(1).abs().lt(1e-12)).toBe(true);
    }),
  );
});
