import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { worksheetOfToday } from "../../src/ui/do-again.ts";
import { fitted } from "../../src/ui/scale-picture.ts";
import { anyWorksheet } from "../plan/any-worksheet.ts";
import { benchInFahrenheit } from "../plan/bench-worksheets.ts";

describe("today's worksheet of an old run", () => {
  test("is a worksheet, whatever the old one was, with its leaflet and method", () => {
    fc.assert(
      fc.property(anyWorksheet, (was) => {
        const today = worksheetOfToday(was, was.developer.temperature);
        if (today.kind === "faults") throw new Error(JSON.stringify(today.faults));
        expect(today.worksheet.developer.leaflet).toEqual(was.developer.leaflet);
        expect(today.worksheet.tank).toEqual(was.tank);
        expect(today.worksheet.agitation).toEqual(was.agitation);
        expect(today.worksheet.films).toEqual(was.films);
      }),
    );
  });

  test("has nothing in it that was measured on the day", () => {
    const was = {
      ...benchInFahrenheit,
      developer: {
        ...benchInFahrenheit.developer,
        readings: [{ at: "2:00", temperature: { f: 70 } }],
      },
      baths: { fixer: { time: "5:00", temperature: { f: 69 } } },
    };
    const today = worksheetOfToday(was, { c: 21.5 });
    if (today.kind === "faults") throw new Error(JSON.stringify(today.faults));
    const { developer, mixing, tempering, baths } = today.worksheet;
    expect([developer.temperature, developer.readings, mixing, tempering, baths]).toEqual([
      { c: 21.5 },
      undefined,
      undefined,
      undefined,
      { fixer: { time: "5:00" } },
    ]);
  });

  test("is refused with the field's own fault where no bath can be so", () => {
    const today = worksheetOfToday(benchInFahrenheit, { c: 300 });
    expect(today).toMatchObject({ kind: "faults", faults: [{ path: "developer.temperature.c" }] });
  });
});

describe("a picture made small", () => {
  test("keeps its shape, is at most 1600 px, and is never made larger", () => {
    expect(fitted(4000, 3000)).toEqual({ width: 1600, height: 1200 });
    expect(fitted(3000, 4000)).toEqual({ width: 1200, height: 1600 });
    expect(fitted(800, 600)).toEqual({ width: 800, height: 600 });
    expect(fitted(20_000, 2)).toEqual({ width: 1600, height: 1 });
  });
});
