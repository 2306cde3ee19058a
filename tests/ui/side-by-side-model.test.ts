import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { RunRecord } from "../../src/logbook/run-record.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { sideBySide } from "../../src/ui/side-by-side-model.ts";
import { beside } from "../../src/ui/words/en/log.ts";
import { choices } from "../../src/ui/words/en/questions.ts";
import { writeClockTime } from "../../src/units/clock-time.ts";
import { anyWorksheet } from "../plan/any-worksheet.ts";
import { foghorn } from "../plan/worksheets.ts";
import { begunAt, night } from "./write-up-world.tsx";
import "./late-words.ts";

const { developer, tank, agitation, clock, baths = {} } = foghorn;
const differed = (a: RunRecord, b: RunRecord) =>
  sideBySide(a, b).differed.map((pair) => [pair.name, pair.a, pair.b]);
const withSheet = (parts: Partial<Worksheet>): RunRecord => ({
  ...night,
  worksheet: { ...foghorn, ...parts },
});
const withBath = (id: string, wish: object) =>
  withSheet({ baths: { ...baths, [id]: { ...baths[id], ...wish } } });

const { starts, ends } = { starts: choices["clock.starts"], ends: choices["clock.ends"] };

describe("of two runs side by side", () => {
  test.each([
    [
      "the developer's bottle",
      withSheet({ developer: { ...developer, bottle: "Kelp B" } }),
      ["Developer: Bottle from the shelf", "", "Kelp B"],
    ],
    [
      "a bath's bottle",
      withBath("fixer", { bottle: "Fixer B" }),
      ["Fixer: Bottle from the shelf", "", "Fixer B"],
    ],
    [
      "the films before",
      withSheet({ developer: { ...developer, filmsBefore: 5 } }),
      ["Developer: Films through it before", "2", "5"],
    ],
    [
      "a bath's temperature",
      withBath("stop", { temperature: { c: 23 } }),
      ["Stop bath: Temperature", "20 °C", "23 °C"],
    ],
    [
      "the volume",
      withSheet({ tank: { ...tank, volume: { flOz: 44 } } }),
      ["Tank: To cover the film", "40 fl oz", "44 fl oz"],
    ],
    [
      "the pour in",
      withSheet({ tank: { ...tank, pourIn: 9.5 } }),
      ["Tank: Pouring in takes", "15 s", "9.5 s"],
    ],
    [
      "the pour out",
      withSheet({ tank: { ...tank, pourOut: 30 } }),
      ["Tank: Pouring out takes", "12.5 s", "30 s"],
    ],
    [
      "the pace of inversions",
      withSheet({ agitation: { ...agitation, perInversion: 5 } }),
      ["Agitation: Over and back takes", "2.5 s", "5 s"],
    ],
    [
      "the taps",
      withSheet({ agitation: { ...agitation, taps: 0 } }),
      ["Agitation: Taps after each", "1", "0"],
    ],
    [
      "when the clock starts",
      withSheet({ clock: { ...clock, starts: "full" } }),
      ["The clock starts", starts["pour-in"], starts.full],
    ],
    [
      "when time is up",
      withSheet({ clock: { ...clock, ends: "pour-out" } }),
      ["Time is up", ends.empty, ends["pour-out"]],
    ],
    [
      "the leaflet",
      withSheet({ developer: { ...developer, leaflet: developer.leaflet.slice(1, 3) } }),
      [
        "Rows of the leaflet",
        "18 °C, 12:30\n20 °C, 10:00\n24 °C, 7:00, 400\n20 °C, 13:00, 1600",
        "20 °C, 10:00\n24 °C, 7:00, 400",
      ],
    ],
    [
      "the time between two presses",
      {
        ...night,
        presses: night.presses.map(({ section, at }, i) => ({ section, at: at + i * 5000 })),
      },
      [
        beside.pressed,
        "Lay out: 0:00\nOpen the film: 0:31\nDeveloper: 3:01",
        "Lay out: 0:00\nOpen the film: 0:36\nDeveloper: 3:11",
      ],
    ],
  ])("%s is told where it differed, and nothing else is", (_, other, pair) => {
    expect(differed(night, other)).toEqual([pair]);
  });

  test("a time that the first versions kept of a bath is the one asked for, beside one planned", () => {
    const planned = [{ bath: "stop", section: "developer", seconds: 60 }];
    expect(differed(night, { ...night, planned })).toContainEqual(["Stop bath", "0:45", "1:00"]);
  });

  test("all that a worksheet says of developer, tank, agitation and clock is told, each by a name of its own", () => {
    const parts = ["developer", "tank", "agitation", "clock", "darkWait", "loading"] as const;
    const said = (worksheet: Worksheet) => {
      const { measured: _, ...ownTank } = worksheet.tank;
      const { soughtTime: __, dilution = "stock", ...ownDeveloper } = worksheet.developer;
      const { first, every, for: lasts, ...moved } = worksheet.agitation;
      return JSON.stringify({
        ...worksheet,
        // To the second, as a clock tells it.
        agitation: [moved, [first, every, lasts].map(writeClockTime)],
        tank: ownTank,
        developer: { ...ownDeveloper, dilution },
      });
    };
    fc.assert(
      fc.property(anyWorksheet, anyWorksheet, fc.constantFrom(...parts), (a, from, part) => {
        // As it is kept: what is not there has no place in it.
        const b: Worksheet = JSON.parse(JSON.stringify({ ...a, [part]: from[part] }));
        const sides = sideBySide({ ...night, worksheet: a }, { ...night, worksheet: b });
        const names = [...sides.differed, ...sides.same].map(({ name }) => name);
        expect(new Set(names).size).toBe(names.length);
        expect(sides.differed.length > 0).toBe(said(a) !== said(b));
      }),
    );
  });

  test("what differed stands in the order in which a run is told, the day of it first", () => {
    const later = { ...withBath("fixer", { bottle: "Fixer B" }), begunAt: begunAt, note: "thin" };
    const names = differed(night, later).map(([name]) => name);
    expect(names[0]).toBe(beside.begun);
    expect(names.at(-1)).toBe("What came of it");
  });
});
