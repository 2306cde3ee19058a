import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { rowOutOfLine } from "../../src/trade/out-of-line.ts";
import { celsiusFromFahrenheit } from "../../src/units/temperature.ts";

const rows = (all: readonly (readonly [number, number])[]) =>
  all.map(([celsius, seconds]) => ({ celsius, seconds }));

/** A leaflet as printed: a slope, and times rounded to a quarter of a minute. */
const printed = fc
  .record({
    k: fc.double({ min: 0.06, max: 0.13, noNaN: true }),
    at20: fc.integer({ min: 360, max: 1200 }),
    from: fc.integer({ min: 15, max: 18 }),
    count: fc.integer({ min: 4, max: 8 }),
  })
  .map(({ k, at20, from, count }) =>
    rows(
      Array.from({ length: count }, (_, i) => {
        const celsius = from + i;
        return [celsius, Math.round((at20 * Math.exp(-k * (celsius - 20))) / 15) * 15] as const;
      }),
    ),
  );

describe("a row out of line", () => {
  test("is found by its place, with the time that the others have for it", () => {
    const found = rowOutOfLine(
      rows([
        [18, 750],
        [20, 600],
        [21, 900],
        [22, 510],
        [24, 435],
      ]),
    );
    expect(found?.index).toBe(2);
    expect(Math.abs((found?.expected ?? 0) - 555)).toBeLessThan(15);
  });

  test("is found among three rows: the two that are left have the usual slope", () => {
    const f = celsiusFromFahrenheit;
    expect(
      rowOutOfLine(
        rows([
          [f(68), 600],
          [f(70), 450],
          [f(75), 420],
        ]),
      )?.index,
    ).toBe(1);
  });

  test("does not show in rows as leaflets print them", () => {
    fc.assert(
      fc.property(printed, (points) => {
        expect(rowOutOfLine(points)).toBeNull();
      }),
    );
    const maker = rows([
      [16, 360],
      [20, 240],
      [23, 180],
    ]);
    expect(
      rowOutOfLine(maker),
      "memory (ILFORD data sheets): 6, 4 and 3 min are in line",
    ).toBeNull();
  });

  test("is found wherever a digit was misread: a time a third too long or too short", () => {
    fc.assert(
      fc.property(printed, fc.nat(), fc.constantFrom(0.66, 1.34), (points, any, slip) => {
        const index = any % points.length;
        const slipped = points.map((it, i) =>
          i === index ? { ...it, seconds: it.seconds * slip } : it,
        );
        expect(rowOutOfLine(slipped)?.index).toBe(index);
      }),
    );
  });

  test("is never named of fewer than three", () => {
    expect(
      rowOutOfLine(
        rows([
          [18, 600],
          [20, 60],
        ]),
      ),
    ).toBeNull();
  });
});
