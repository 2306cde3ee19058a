import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Plan, planOf } from "../../src/plan/plan.ts";
import type { Developer, Film, LeafletRow, Tank, Worksheet } from "../../src/plan/worksheet.ts";
import { writeClockTime } from "../../src/units/clock-time.ts";
import { fahrenheitFromCelsius } from "../../src/units/temperature.ts";
import { mlPerFlOz } from "../../src/units/volume.ts";
import { anyWorksheet } from "./any-worksheet.ts";
import { changed, gullrock } from "./worksheets.ts";

function timeOf(
  developer: Partial<Developer>,
  speeds: Pick<Film, "boxSpeed" | "exposureIndex"> = { boxSpeed: 125 },
  tank: Partial<Tank> = {},
): string {
  const films = [{ label: "Gullrock", size: "120", count: 1, ...speeds }];
  return writeClockTime(planOf(changed(gullrock, { films, developer, tank })).developmentSeconds);
}

const row = (c: number, time: string, exposureIndex?: number): LeafletRow =>
  exposureIndex === undefined
    ? { temperature: { c }, time }
    : { temperature: { c }, time, exposureIndex };

describe("the development time", () => {
  test("practice, a wall chart's rows: 10:00 at 68 °F and 9:00 at 70 °F give 9:29 at 69 °F and 8:32 at 71 °F", () => {
    expect(timeOf({ temperature: { f: 69 } })).toBe("9:29");
    expect(timeOf({ temperature: { f: 71 } })).toBe("8:32");
  });

  test("is the row's own at a row's temperature, in either unit", () => {
    expect(timeOf({ temperature: { f: 68 } })).toBe("10:00");
    expect(timeOf({ temperature: { c: 20 } })).toBe("10:00");
  });

  test("practice: one stop over takes 10 % off, so 9:00 becomes 8:06", () => {
    const leaflet = [row(20, "9:00")];
    const speeds = { boxSpeed: 125, exposureIndex: 62.5 };
    expect(timeOf({ leaflet, temperature: { c: 20 } }, speeds)).toBe("8:06");
  });

  test("one stop under adds 40 %, and half a stop its square root, unless the worksheet says otherwise", () => {
    const developer = { leaflet: [row(20, "10:00")], temperature: { c: 20 } };
    expect(timeOf(developer, { boxSpeed: 400, exposureIndex: 800 })).toBe("14:00");
    const half = { boxSpeed: 400, exposureIndex: 400 * Math.SQRT2 };
    expect(timeOf(developer, half)).toBe(writeClockTime(600 * Math.sqrt(1.4)));
    const perStop = { pull: 0.2, push: 0.5 };
    expect(timeOf({ ...developer, perStop }, { boxSpeed: 400, exposureIndex: 800 })).toBe("15:00");
    expect(timeOf({ ...developer, perStop }, { boxSpeed: 400, exposureIndex: 200 })).toBe("8:00");
  });

  test("comes from the leaflet's rows for the film's rating alone, with nothing added for stops", () => {
    const developer = {
      leaflet: [row(20, "10:00"), row(20, "13:00", 800), row(24, "9:00", 800), row(24, "7:00")],
      temperature: { c: 20 },
    };
    expect(timeOf(developer, { boxSpeed: 400, exposureIndex: 800 })).toBe("13:00");
    expect(timeOf({ ...developer, temperature: { c: 24 } }, { boxSpeed: 800 })).toBe("9:00");
  });

  test("takes rows for the box speed as base beside those for none", () => {
    const developer = {
      leaflet: [row(20, "10:00"), row(24, "7:00", 400)],
      temperature: { c: 24 },
    };
    expect(timeOf(developer, { boxSpeed: 400, exposureIndex: 800 })).toBe("9:48");
  });

  test("follows the given slope from a row alone, else that of the leaflet's other rows, else 0.099 per °C", () => {
    const alone = { leaflet: [row(20, "10:00")], temperature: { c: 21 } };
    expect(timeOf(alone)).toBe(writeClockTime(600 * Math.exp(-0.099)));
    expect(timeOf({ ...alone, perDegree: 0.07 })).toBe(writeClockTime(600 * Math.exp(-0.07)));
    const beside = {
      leaflet: [row(20, "10:00"), row(20, "13:00", 800), row(22, "11:00", 800)],
      temperature: { c: 21 },
    };
    expect(timeOf(beside)).toBe(writeClockTime(600 * Math.sqrt(11 / 13)));
    expect(timeOf({ ...beside, perDegree: 0.07 })).toBe(writeClockTime(600 * Math.exp(-0.07)));
  });

  test("takes the slope of the rating next to the film's, where several have one", () => {
    const leaflet = [
      row(20, "10:00", 125),
      row(20, "20:00", 1600),
      row(22, "10:00", 1600),
      row(20, "12:00", 200),
      row(22, "11:00", 200),
    ];
    expect(timeOf({ leaflet, temperature: { c: 22 } })).toBe(writeClockTime(600 * (11 / 12)));
  });

  test("is multiplied for the films before, and for the method: 0.85 for rotary unless said otherwise", () => {
    const developer = { leaflet: [row(20, "10:00")], temperature: { c: 20 } };
    const used = { ...developer, filmsBefore: 4, perFilmBefore: 0.05 };
    expect(timeOf(used)).toBe("12:00");
    expect(timeOf(developer, {}, { method: "rotary" })).toBe("8:30");
    expect(timeOf(used, {}, { method: "rotary", timeFactor: 0.9 })).toBe("10:48");
    expect(timeOf({ ...developer, filmsBefore: 4 })).toBe("10:00");
  });

  test("is rounded to whole seconds half up, once, at the end: 81 s over 1 stop and 1/2 of it is 72.9, then 36.45 s", () => {
    const developer = { leaflet: [row(20, "1:21")], temperature: { c: 20 } };
    const over = { boxSpeed: 100, exposureIndex: 50 };
    expect(timeOf(developer, over)).toBe("1:13");
    expect(timeOf(developer, over, { timeFactor: 0.5 })).toBe("0:36");
    expect(
      timeOf({ leaflet: [row(20, "0:45")], temperature: { c: 20 } }, {}, { timeFactor: 0.1 }),
    ).toBe("0:05");
  });

  test("does not change with a tank that is at the room's temperature, and is longer in a cold room", () => {
    const steady = timeOf({ temperature: { c: 20 } });
    expect(timeOf({ temperature: { c: 20 } }, {}, { room: { f: 68 }, halfway: 20 })).toBe(steady);
    expect(timeOf({ temperature: { c: 20 } }, {}, { room: { c: 14 }, halfway: 20 })).toBe("10:59");
  });
});

describe("the mix", () => {
  test("is the tank's volume in parts, unrounded", () => {
    const mix = (dilution: string, ml: number) =>
      planOf(changed(gullrock, { developer: { dilution }, tank: { volume: { ml } } })).mix;
    expect(mix("1+3", 600)).toEqual({ stock: 150, water: 450, total: 600 });
    expect(mix("stock", 600)).toEqual({ stock: 600, water: 0, total: 600 });
    expect(mix("1+1.5", 500)).toEqual({ stock: 200, water: 300, total: 500 });
  });

  test("is stock as it is where nothing is said", () => {
    const { dilution, ...developer } = gullrock.developer;
    expect(dilution).toBe("1+3");
    expect(planOf({ ...gullrock, developer }).mix).toEqual({ stock: 300, water: 0, total: 300 });
  });
});

describe("every plan", () => {
  test("is finite and whole where it must be, whatever the worksheet holds", () => {
    fc.assert(
      fc.property(anyWorksheet, (worksheet) => {
        const plan = planOf(worksheet);
        expect(JSON.parse(JSON.stringify(plan))).toEqual(plan);
        expect(Number.isInteger(plan.developmentSeconds)).toBe(true);
        expect(plan.developmentSeconds).toSatisfy((s: number) => s >= 0 && s <= 86_400);
        expect(plan.baths.every((bath) => bath.seconds >= 0)).toBe(true);
        expect(JSON.stringify(plan)).not.toMatch(/NaN|Infinity|undefined/);
      }),
    );
  });

  test("is the same for the same worksheet, which it leaves alone", () => {
    fc.assert(
      fc.property(anyWorksheet, (worksheet) => {
        const before = structuredClone(worksheet);
        expect(planOf(worksheet)).toEqual(planOf(before));
        expect(worksheet).toEqual(before);
      }),
    );
  });

  test("does not depend on the units that a worksheet is written in: times are the same, volumes to 1e-9", () => {
    fc.assert(
      fc.property(anyWorksheet, (worksheet) => {
        const [plan, other] = [planOf(worksheet), planOf(inOtherUnits(worksheet))];
        expect(Math.abs(other.developmentSeconds - plan.developmentSeconds)).toBeLessThanOrEqual(
          // A time on the edge between two seconds may fall either side.
          1,
        );
        expect(other.mix.stock / plan.mix.stock).toBeCloseTo(1, 9);
        expect(idsOf(other)).toEqual(idsOf(plan));
      }),
      { numRuns: 200 },
    );
  });

  test("has no more time in a warmer bath, for a leaflet that has none", () => {
    const degrees = fc.integer({ min: 150, max: 250 }).map((tenths) => tenths / 10);
    const leaflet = [row(18, "12:00"), row(20, "10:00"), row(24, "7:30")];
    fc.assert(
      fc.property(degrees, degrees, (a, b) => {
        const at = (c: number) =>
          planOf(changed(gullrock, { developer: { leaflet, temperature: { c } } }))
            .developmentSeconds;
        expect(at(Math.max(a, b))).toBeLessThanOrEqual(at(Math.min(a, b)));
      }),
    );
  });
});

/**
 * The warnings' ids. Readings that no one bath can have given are told as contradictory or as noisy by a fit that
 * the last bit of a temperature may tip.
 */
function idsOf({ warnings }: Plan): readonly string[] {
  return warnings.map(({ id }) =>
    /^tempering-(contradictory|noisy)$/.test(id) ? "tempering-at-odds" : id,
  );
}

/** Every quantity of a worksheet in the other unit: °C as °F, ml as US fl oz, and back. */
function inOtherUnits(worksheet: Worksheet): Worksheet {
  return JSON.parse(JSON.stringify(worksheet), (_, held) => {
    if (typeof held !== "object" || held === null) return held;
    if ("c" in held) return { f: fahrenheitFromCelsius(held.c) };
    if ("f" in held) return { c: ((held.f - 32) * 5) / 9 };
    if ("ml" in held) return { flOz: held.ml / mlPerFlOz };
    return "flOz" in held ? { ml: held.flOz * mlPerFlOz } : held;
  });
}
