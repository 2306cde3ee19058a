import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { WorkingLine } from "../../src/plan/line.ts";
import { planOf } from "../../src/plan/plan.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { readClockTime } from "../../src/units/clock-time.ts";
import { changed, foghorn, gullrock } from "./worksheets.ts";

const readAloud = ({ working }: { readonly working: readonly WorkingLine[] }) =>
  working.map(({ label, expression, result }) => `${label}: ${expression} → ${result}`);

function line(worksheet: Worksheet, label: string): string {
  return readAloud(planOf(worksheet)).find((it) => it.startsWith(`${label}: `)) ?? "";
}

/** A sum as it stands in a line, worked out: clock times are seconds, units are only said. */
function pocketCalculator(sum: string): number {
  const plain = sum
    .replace(/\d+(?::\d\d)+/g, (time) => {
      const reading = readClockTime(time);
      return reading.kind === "read" ? String(reading.seconds) : "NaN";
    })
    .replace(/ (?:ml|fl oz|°[CF]|s|films?)\b(?: before| of stock)?/g, "")
    .replaceAll("×", "*")
    .replaceAll("−", "-")
    .replaceAll("^", "**")
    .replaceAll("e*", "Math.E*");
  return Function(`"use strict"; return ${plain};`)();
}

/** The sums of a line: each `a = b = c` between the words. */
function sumsOf({ expression }: WorkingLine): readonly (readonly number[])[] {
  return expression
    .split(/[;:] |[.] /)
    .filter((part) => part.includes(" = "))
    .map((part) => part.split(" = ").map(pocketCalculator));
}

describe("the working, read aloud", () => {
  test("of one roll between two rows", () => {
    expect(readAloud(planOf(gullrock))).toEqual([
      "Leaflet: 10:00 at 68 °F, 9:00 at 70 °F → 2 rows",
      "Temperature: 68 °F and 70 °F are 2 °F (1.11 °C) apart, 9 % less for each °C warmer; 69 °F is 1 °F from 68 °F: 600 s × (9:00 / 10:00)^(1 °F / 2 °F) = 569.2 s → 9:29",
      "Development: 569.2 s to the nearest second, half up → 9:29",
      "Mix: 300 ml × 1 / (1 + 3) = 75 ml of stock; the rest is water → 75 ml of stock + 225 ml of water",
      "Film: 1 × 135-36, in films of 80 sq in or 516.1 cm² → 1 film",
      "Stock needed: 1 film × 75 ml = 75 ml; that is in 300 ml of 1+3, and this mix holds 75 ml → 75 ml",
      "Stop bath: the usual time, since none was given → 1:00",
      "Fixer: the usual time, since none was given → 5:00",
      "Wash: the usual time, since none was given → 10:00",
      "Wetting agent: the usual time, since none was given → 1:00",
    ]);
  });

  test("of a push in a drum, in a cold room, with a wash by fills", () => {
    expect(readAloud(planOf(foghorn))).toEqual([
      "Leaflet: 12:30 at 18 °C, 10:00 at 20 °C, 7:00 at 24 °C → 3 rows",
      "Temperature: 20 °C and 24 °C are 4 °C apart, 8.5 % less for each °C warmer; 21 °C is 1 °C from 20 °C: 600 s × (7:00 / 10:00)^(1 °C / 4 °C) = 548.8 s → 9:09",
      "Rating: box speed 400, metered at 800: log2(400 / 800) is 1 stop under; 548.8 s × (1 + 0.45)^1 = 548.8 s × 1.45 = 795.8 s → 13:16",
      "Drift: half-way to 16.11 °C every 40 min. The time is 13:16 (21 °C) at the start, 13:56 (20.44 °C) half-way through and 14:35 (19.95 °C) at the end: 6 / (1 / 795.8 + 4 / 836.2 + 1 / 874.6) = 835.1 s → 13:55",
      "Reuse: 1 + 0.05 × 2 films before = 1.1; 835.1 s × 1.1 = 918.6 s → 15:19",
      "Method: rotary: 918.6 s × 0.9 = 826.8 s → 13:47",
      "Development: 826.8 s to the nearest second, half up → 13:47",
      "Mix: 40 fl oz × 1 / (1 + 1.5) = 16 fl oz of stock; the rest is water → 16 fl oz of stock + 24 fl oz of water",
      "Film: 2 × 120 + 4 × 4x5in, in films of 80 sq in or 516.1 cm² → 3 films",
      "Stock needed: 3 films × 4 fl oz = 12 fl oz; that is in 30 fl oz of 1+1.5, and this mix holds 16 fl oz → 12 fl oz",
      "Pre-wet: the usual time, since none was given → 1:00",
      "Stop bath: as given → 0:45",
      "Fixer: the usual time, since none was given → 5:00",
      "Rinse: the usual time, since none was given → 0:30",
      "Wash aid: as given → 2:00",
      "Wash: fresh water with 5, 10, 20 inversions, at 2.5 s an inversion and 27.5 s to pour each time: 40 s + 52.5 s + 77.5 s → 2:50",
    ]);
  });

  const alone = [{ temperature: { c: 20 }, time: "10:00" }];

  test("at a row's own temperature says so", () => {
    const worksheet = changed(gullrock, { developer: { temperature: { c: 20 } } });
    expect(line(worksheet, "Temperature")).toBe(
      "Temperature: the bath is at 20 °C, as a row is: its time as it stands → 10:00",
    );
  });

  test("from a row alone says whose slope it took", () => {
    const developer = { leaflet: alone, temperature: { c: 21.5 } };
    expect(line(changed(gullrock, { developer }), "Temperature")).toBe(
      "Temperature: 21.5 °C is 1.5 °C from the row's 20 °C, 9.4 % less for each °C warmer as usual: 600 s × e^(−0.099 × 1.5) = 600 s × e^(−0.1485) = 517.2 s → 8:37",
    );
    const given = changed(gullrock, { developer: { ...developer, perDegree: 0.07 } });
    expect(line(given, "Temperature")).toContain("6.8 % less for each °C warmer as given");
    const others = [
      { temperature: { c: 20 }, time: "13:00", exposureIndex: 800 },
      { temperature: { c: 22 }, time: "11:00", exposureIndex: 800 },
    ];
    const beside = changed(gullrock, {
      developer: { leaflet: [...alone, ...others], temperature: { c: 22 } },
    });
    expect(line(beside, "Temperature")).toBe(
      "Temperature: 22 °C is 2 °C from the row's 20 °C, over which the leaflet's other rows change by × 0.8462: 600 s × 0.8462 = 507.7 s → 8:28",
    );
  });

  test("of a recipe in ounces for a tank in millilitres turns them over first", () => {
    const worksheet = changed(gullrock, { developer: { stockPerFilm: { flOz: 2 } } });
    expect(line(worksheet, "Stock needed")).toBe(
      "Stock needed: 2 fl oz a film is 59.1 ml; 1 film × 59.1 ml = 59.1 ml; that is in 236.6 ml of 1+3, and this mix holds 75 ml → 59.1 ml",
    );
  });

  test("of a rating that the leaflet has rows for says that nothing is added", () => {
    const worksheet = changed(gullrock, {
      films: [{ label: "a", size: "120", count: 1, boxSpeed: 125, exposureIndex: 250 }],
      developer: { leaflet: [{ temperature: { f: 69 }, time: "12:00", exposureIndex: 250 }] },
    });
    expect(line(worksheet, "Leaflet")).toBe("Leaflet: given for 250: 12:00 at 69 °F → 1 row");
    expect(line(worksheet, "Rating")).toBe(
      "Rating: metered at 250, which the leaflet's rows are for: nothing to add → 12:00",
    );
  });
});

test("every sum in the working comes to what it says, on a pocket calculator (1 s in ten minutes)", () => {
  let sums = 0;
  const developer = {
    c: fc.integer({ min: 160, max: 260 }).map((tenths) => ({ c: tenths / 10 })),
    f: fc.integer({ min: 61, max: 79 }).map((f) => ({ f })),
  };
  const worksheet = fc
    .record({
      temperature: fc.oneof(developer.c, developer.f),
      exposureIndex: fc.constantFrom(64, 125, 160, 250, 400),
      rows: fc.integer({ min: 1, max: 2 }),
      room: fc.constantFrom(15, 19, 24),
      halfway: fc.constantFrom(20, 45, 90),
      filmsBefore: fc.integer({ min: 0, max: 6 }),
      method: fc.constantFrom("inversion" as const, "rotary" as const),
    })
    .map(({ temperature, exposureIndex, rows, room, halfway, filmsBefore, method }) =>
      changed(gullrock, {
        films: [{ label: "a", size: "135-36", count: 1, boxSpeed: 125, exposureIndex }],
        developer: {
          leaflet: gullrock.developer.leaflet.slice(0, rows),
          temperature,
          filmsBefore,
          perFilmBefore: 0.04,
        },
        tank: { method, room: { c: room }, halfway },
      }),
    );
  fc.assert(
    fc.property(worksheet, (it) => {
      for (const [said, ...others] of planOf(it).working.flatMap(sumsOf)) {
        for (const other of others) {
          expect(Math.abs(other / (said ?? Number.NaN) - 1)).toBeLessThan(1 / 600);
          sums += 1;
        }
      }
    }),
  );
  expect(sums).toBeGreaterThan(300);
});
