import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { stateOf } from "../../src/logbook/bottle-state.ts";
import { demos } from "../../src/ui/demo.ts";
import { filledFrom, worksheetOfToday } from "../../src/ui/do-again.ts";
import { fitted } from "../../src/ui/scale-picture.ts";
import { anyWorksheet } from "../plan/any-worksheet.ts";
import { benchInFahrenheit } from "../plan/bench-worksheets.ts";
import { bottleOf, fixerB } from "./shelf-by-hand.ts";

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
        const { developer, baths = {} } = today.worksheet;
        for (const bath of [developer, ...Object.values(baths)])
          expect(Object.keys(bath)).not.toEqual(
            expect.arrayContaining([expect.stringMatching(/^(?:filmsBefore|kept|clearing)$/)]),
          );
      }),
    );
  });

  test("has nothing in it that was measured on the day", () => {
    const was = {
      ...benchInFahrenheit,
      developer: {
        ...benchInFahrenheit.developer,
        readings: [{ at: "2:00", temperature: { f: 70 } }],
        filmsPerLitre: 12,
        filmsBefore: 3,
        perFilmBefore: 0.1,
        kept: { ml: 900 },
        bottle: "Kelp B",
      },
      baths: {
        fixer: {
          time: "5:00",
          temperature: { f: 69 },
          clearing: { time: "0:50", fresh: "0:40" },
          filmsPerLitre: 20,
          filmsBefore: 4,
          kept: { ml: 950 },
          bottle: "Fixer B",
        },
      },
    };
    const today = worksheetOfToday(was, { c: 21.5 });
    if (today.kind === "faults") throw new Error(JSON.stringify(today.faults));
    const { developer, mixing, tempering, baths } = today.worksheet;
    expect([mixing, tempering]).toEqual([undefined, undefined]);
    const { readings: _, filmsBefore: __, ...asBefore } = benchInFahrenheit.developer;
    expect(developer).toEqual({
      ...asBefore,
      temperature: { c: 21.5 },
      filmsPerLitre: 12,
      perFilmBefore: 0.1,
      bottle: "Kelp B",
    });
    expect(baths).toEqual({ fixer: { time: "5:00", filmsPerLitre: 20, bottle: "Fixer B" } });
  });

  test("is refused with the field's own fault where no bath can be so", () => {
    const today = worksheetOfToday(benchInFahrenheit, { c: 300 });
    expect(today).toMatchObject({ kind: "faults", faults: [{ path: "developer.temperature.c" }] });
  });
});

describe("a worksheet of today that is poured from bottles", () => {
  const { developer, baths } = demos.gullrock;
  const today = {
    ...demos.gullrock,
    developer: { ...developer, bottle: "Kelp B" },
    baths: { ...baths, fixer: { ...baths?.fixer, bottle: "Fixer B" } },
  };
  const fixer = stateOf({
    ...bottleOf(fixerB),
    entries: [
      ...bottleOf(fixerB).entries,
      ...([0, 4] as const).map((count, i) => ({
        kind: "tested" as const,
        seconds: 40 + count,
        film: "Gullrock 125",
        id: `test ${i}`,
        at: i,
        on: "2026-05-02",
      })),
      { kind: "films", films: [{ size: "120", count: 7 }], id: "f", at: 5, on: "2026-05-03" },
      { kind: "taken", volume: { ml: 100 }, id: "t", at: 6, on: "2026-05-04" },
    ],
  });

  test("says of a bottle that stands on the shelf what the shelf says now, and of another nothing", () => {
    const filled = filledFrom(today, [fixer]);
    expect(filled.developer).toEqual(today.developer);
    expect(filled.baths?.fixer).toEqual({
      ...today.baths.fixer,
      filmsPerLitre: 20,
      filmsBefore: 6.3,
      kept: { ml: 900 },
      clearing: { time: "0:44", fresh: "0:40" },
    });
    expect(filled.films).toEqual(today.films);
  });

  test("takes nothing from a bottle that was poured away, nor for a bath that is skipped", () => {
    const away = { ...fixer, stands: "poured away" as const };
    expect(filledFrom(today, [away])).toEqual(today);
    const skipped = { ...today, baths: { fixer: { skip: true, bottle: "Fixer B" } } };
    expect(filledFrom(skipped, [fixer])).toEqual(skipped);
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
