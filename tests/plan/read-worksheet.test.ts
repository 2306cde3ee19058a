import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Fault, faultLine } from "../../src/plan/faults.ts";
import { readWorksheet, readWorksheetText } from "../../src/plan/read-worksheet.ts";
import { anyWorksheet } from "./any-worksheet.ts";
import { type Place, placesIn, withAt, written } from "./places.ts";
import { foghorn, gullrock } from "./worksheets.ts";

function faultsOf(value: unknown): readonly Fault[] {
  const reading = readWorksheet(value);
  return reading.kind === "faults" ? reading.faults : [];
}

/** The faults of a worksheet with something else at a place, as lines. */
function linesWith(place: Place, other: unknown, from: unknown = gullrock): readonly string[] {
  return faultsOf(withAt(from, place, other)).map(faultLine);
}

const lines = (text: string) => {
  const reading = readWorksheetText(text);
  return reading.kind === "faults" ? reading.faults.map(faultLine) : [];
};

describe("a good worksheet", () => {
  test("is read as it stands", () => {
    for (const worksheet of [gullrock, foghorn]) {
      expect(readWorksheet(worksheet)).toEqual({ kind: "worksheet", worksheet });
      expect(readWorksheetText(JSON.stringify(worksheet))).toEqual({
        kind: "worksheet",
        worksheet,
      });
    }
  });

  test("is read whatever its fields hold within their bounds", () => {
    fc.assert(
      fc.property(anyWorksheet, (worksheet) => {
        expect(readWorksheet(worksheet)).toEqual({ kind: "worksheet", worksheet });
      }),
    );
  });
});

describe("a bad worksheet, of any kind", () => {
  test("is refused with faults, never with a throw", () => {
    const anything = fc.anything({
      withBigInt: true,
      withDate: true,
      withMap: true,
      withNullPrototype: true,
      withSparseArray: true,
      withTypedArray: true,
    });
    fc.assert(
      fc.property(anything, (value) => {
        const faults = faultsOf(value);
        expect(faults.length).toBeGreaterThan(0);
        for (const { path, holds, may } of faults) {
          expect([path, holds, may].every((text) => text !== "" && text.length < 2000)).toBe(true);
        }
      }),
    );
  });

  test("is refused as text with faults, never with a throw", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: "binary" }), fc.json()), (text) => {
        expect(lines(text).length).toBeGreaterThan(0);
      }),
    );
  });

  test("names every place that holds what no field may hold, and nothing else", () => {
    const places = placesIn(foghorn);
    expect(places.length).toBeGreaterThan(90);
    for (const wrong of [null, [], "", -1e12, Number.NaN, Number.POSITIVE_INFINITY, 10n, () => 1]) {
      for (const place of places) {
        const paths = faultsOf(withAt(foghorn, place, wrong)).map((fault) => fault.path);
        expect(paths).toEqual([written(place)]);
      }
    }
  });

  test("is refused for each field it lacks, but for the optional ones", () => {
    const optional = ["title", "films[0].boxSpeed", "developer.dilution", "developer.stockPerFilm"];
    const named = placesIn(gullrock).filter((place) => typeof place.at(-1) === "string");
    for (const place of named) {
      const faults = faultsOf(withAt(gullrock, place, undefined));
      if (optional.includes(written(place))) expect(faults).toEqual([]);
      // A quantity without its unit's field is refused as a whole.
      else if (["c", "f", "ml"].includes(String(place.at(-1))))
        expect(faults).toMatchObject([{ path: written(place.slice(0, -1)), holds: "{}" }]);
      else expect(faults).toMatchObject([{ path: written(place), holds: "nothing" }]);
    }
  });

  test("is refused for each name with a slip in it, by its path, and asked what was meant", () => {
    const named = placesIn(foghorn).filter((place) => String(place.at(-1)).length > 2);
    for (const place of named) {
      const name = String(place.at(-1));
      const slip = [...place.slice(0, -1), `${name.slice(0, -1)}_`];
      const faults = faultsOf(withAt(foghorn, slip, 1));
      expect(faults).toContainEqual({
        path: written(slip),
        holds: "1",
        may: `nothing: there is no such field; did you mean "${name}"?`,
      });
    }
  });

  test("is refused for every unknown field at once, names that every object inherits among them", () => {
    const text = JSON.stringify(gullrock).replace(
      "{",
      '{"constructor": 1, "toString": 2, "__proto__": {}, "a b": 3, "": 4, ',
    );
    const reading = readWorksheetText(text);
    expect(reading.kind === "faults" && reading.faults.map((fault) => fault.path)).toEqual([
      "constructor",
      "toString",
      "__proto__",
      '["a b"]',
      '[""]',
    ]);
  });

  test("is refused for all its faults together, in the order of its fields", () => {
    const broken = [
      [["films", 0, "count"], 0],
      [["developer", "leaflet", 1, "time"], "9.30"],
      [["tank", "halfway"], 30],
      [["agitation", "taps"], 1.5],
    ] as const;
    const value = broken.reduce<unknown>(
      (held, [place, other]) => withAt(held, place, other),
      gullrock,
    );
    expect(faultsOf(value).map((fault) => fault.path)).toEqual([
      "films[0].count",
      "developer.leaflet[1].time",
      "agitation.taps",
      "tank.room",
    ]);
  });
});

describe("what a fault says", () => {
  test.each([
    [
      ["developer", "leaflet", 1, "time"],
      "9.30",
      'developer.leaflet[1].time holds "9.30"; it may hold a clock time such as "9:30" or "1:02:00"',
    ],
    [
      ["developer", "leaflet", 0, "time"],
      "0:00",
      'developer.leaflet[0].time holds "0:00"; it may hold a clock time such as "9:30" or "1:02:00", above 0:00 and up to 24:00:00: the row\'s time',
    ],
    [
      ["developer", "leaflet", 0, "time"],
      "٩:٣٠",
      'developer.leaflet[0].time holds "٩:٣٠"; it may hold a clock time such as "9:30" or "1:02:00", in the digits 0 to 9',
    ],
    [
      ["developer", "dilution"],
      "1:4",
      'developer.dilution holds "1:4"; it may hold "stock", or parts of stock plus parts of water such as "1+3"; "1:4" is read both as 1+4 and as 1+3, so say it in parts',
    ],
    [
      ["developer", "temperature"],
      { c: 20, f: 68 },
      'developer.temperature holds { "c": 20, "f": 68 }; it may hold a temperature, { "c": 20 } or { "f": 68 }, from −10 to 110 °C or 14 to 230 °F: measured in the mixed bath, now',
    ],
    [
      ["developer", "temperature"],
      { C: 20 },
      'developer.temperature.C holds 20; it may hold nothing: there is no such field; did you mean "c"?',
    ],
    [
      ["tank", "pourIn"],
      undefined,
      "tank.pourIn holds nothing; it may hold a number from 1 to 600: seconds to fill it",
    ],
    [
      ["tank", "method"],
      "stirring",
      'tank.method holds "stirring"; it may hold "inversion", "twist", "rotary", "tray" or "hanger": how it is agitated',
    ],
    [
      ["films", 0, "count"],
      101,
      "films[0].count holds 101; it may hold a whole number from 1 to 100: how many of them",
    ],
    [
      ["language"],
      "de_AT",
      'language holds "de_AT"; it may hold a language tag (BCP 47) such as "en" or "de-AT"',
    ],
    [
      ["baths"],
      { developer: { time: "9:00" } },
      'baths.developer.time holds "9:00"; it may hold nothing: the developer\'s time comes from the leaflet',
    ],
    [
      ["baths"],
      { developer: { skip: true } },
      "baths.developer.skip holds true; it may hold nothing: nothing develops without a developer",
    ],
    [
      ["baths"],
      { prewet: { fills: [5] } },
      'baths.prewet.fills holds [5]; it may hold nothing: there is no such field here, only "time", "skip", "temperature", "agitation", "afterwards"',
    ],
    [["tankside"], 2, "tankside holds 2; it may hold 1, the version of worksheet that this is"],
  ] as const)("at %j, %j", (place, other, line) => {
    expect(linesWith(place, other)).toEqual([line]);
  });

  test("shows long and deep values shortened, on one line", () => {
    const [line = ""] = linesWith(["title"], `\n${"👋".repeat(500)}`);
    expect(line.length).toBeLessThan(200);
    expect(line).not.toMatch(/\n/);
    expect(line).not.toMatch(/\p{Cs}/u);
    const [deep = ""] = linesWith(["films"], { a: { b: { c: { d: [1, 2, 3, 4, 5, 6] } } } });
    expect(deep).toContain('{ "a": { "b": … } }');
  });
});

describe("the text of a file", () => {
  test.each([
    ["", "nothing"],
    [" \n", "nothing"],
    ["[]", "[]"],
    ["null", "null"],
    ["9", "9"],
    ['"worksheet"', '"worksheet"'],
  ])("%j is no worksheet", (text, holds) => {
    expect(lines(text)).toEqual([
      `worksheet holds ${holds}; it may hold a worksheet: a JSON object that begins with { "tankside": 1`,
    ]);
  });

  test("that is not JSON is refused, with the line where the engine names one", () => {
    const [line] = lines('{\n  "tankside": 1,\n}');
    expect(line).toMatch(/not JSON|stops being JSON on line 3$/);
  });

  test("may begin with a byte order mark", () => {
    expect(readWorksheetText(`\ufeff${JSON.stringify(gullrock)}`).kind).toBe("worksheet");
  });
});
