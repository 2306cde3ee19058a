import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readLeafletText } from "../../src/plan/leaflet-text.ts";
import {
  readingTexts,
  stamped,
  type Timed,
  takenBack,
  timedField,
  withHands,
  withLeaflet,
} from "../../src/ui/bench-acts.ts";
import { demos } from "../../src/ui/demo.ts";
import type { Draft } from "../../src/ui/draft.ts";
import { draftOf } from "../../src/ui/draft-of.ts";
import { readDraft } from "../../src/ui/work-out-model.ts";
import { type Temperature, toCelsius } from "../../src/units/temperature.ts";

const demo = draftOf(demos.gullrock);
const pushed = draftOf(demos.foghorn);

/** Seconds since midnight. */
const day = 86_400;
const clock = (hours: number, minutes: number, seconds = 0) =>
  hours * 3600 + minutes * 60 + seconds;

/** A draft after readings at these times of day. */
const stampedAt = (draft: Draft, ...readings: readonly (readonly [Temperature, number])[]) =>
  readings.reduce((it, [temperature, at]) => stamped(it, temperature, at).draft, draft);

const under = (draft: Draft, start: string): Draft =>
  Object.fromEntries(Object.entries(draft).filter(([path]) => path.startsWith(start)));
const beside = (draft: Draft, ...starts: readonly string[]): Draft =>
  Object.fromEntries(
    Object.entries(draft).filter(([path]) => !starts.some((start) => path.startsWith(start))),
  );

const temperature: fc.Arbitrary<Temperature> = fc.oneof(
  fc.integer({ min: 0, max: 8000 }).map((it) => ({ c: it / 100 })),
  fc.integer({ min: 3300, max: 21_000 }).map((it) => ({ f: it / 100 })),
);

describe("a reading stamped", () => {
  test("starts the clock at 0:00 where it is the first, and notes the time of day", () => {
    const { draft, afresh } = stamped(demo, { f: 75 }, clock(19, 5, 7));
    expect(afresh).toBe(false);
    expect(beside(draft, "unit.")).toEqual({
      ...beside(demo, "unit."),
      "tempering.began": "19:05:07",
      "tempering.readings[0].at": "0:00",
      "tempering.readings[0].temperature": "75 °F",
    });
  });

  test("counts from the first where it is a later one", () => {
    const draft = stampedAt(demo, [{ f: 75 }, clock(19, 5)], [{ f: 72.5 }, clock(19, 8, 20)]);
    expect(under(draft, "tempering.")).toEqual({
      "tempering.began": "19:05:00",
      "tempering.readings[0].at": "0:00",
      "tempering.readings[0].temperature": "75 °F",
      "tempering.readings[1].at": "3:20",
      "tempering.readings[1].temperature": "72.5 °F",
    });
  });

  test("goes on from a time of day that was typed, minutes only too", () => {
    const { draft, afresh } = stamped(pushed, { f: 70 }, clock(19, 14));
    expect(afresh).toBe(false);
    expect(draft["tempering.began"]).toBe("19:05");
    expect(draft["tempering.readings[3].at"]).toBe("9:00");
    expect(draft["tempering.readings[2].at"]).toBe("6:00");
  });

  test("counts on across midnight", () => {
    const draft = stampedAt(demo, [{ c: 24 }, clock(23, 58)], [{ c: 23 }, clock(0, 3)]);
    expect(draft["tempering.began"]).toBe("23:58:00");
    expect(draft["tempering.readings[1].at"]).toBe("5:00");
  });

  test("begins afresh where readings stand without a time of day, and says so", () => {
    const { "tempering.began": _, ...undated } = pushed;
    const { draft, afresh } = stamped(undated, { f: 74 }, clock(20, 0));
    expect(afresh).toBe(true);
    expect(under(draft, "tempering.readings[")).toEqual({
      "tempering.readings[0].at": "0:00",
      "tempering.readings[0].temperature": "74 °F",
    });
    expect(draft["tempering.began"]).toBe("20:00:00");
    expect(draft["tempering.target"]).toBe("68 °F");
  });

  test("begins afresh behind a time of day that cannot be read", () => {
    const { draft, afresh } = stamped(
      { ...pushed, "tempering.began": "after tea" },
      { f: 74 },
      clock(20, 0),
    );
    expect(afresh).toBe(true);
    expect(draft["tempering.began"]).toBe("20:00:00");
    expect(readingTexts(draft)).toHaveLength(1);
  });

  test("starts the clock anew where a time of day stands but no reading does", () => {
    const { draft, afresh } = stamped(
      { ...demo, "tempering.began": "8:00" },
      { c: 22 },
      clock(20, 0),
    );
    expect(afresh).toBe(false);
    expect(draft["tempering.began"]).toBe("20:00:00");
    expect(draft["tempering.readings[0].at"]).toBe("0:00");
  });

  test("takes the place of an empty row at the end", () => {
    const waiting = {
      ...demo,
      "tempering.readings[0].at": "",
      "tempering.readings[0].temperature": "",
    };
    const { draft, afresh } = stamped(waiting, { c: 22 }, clock(20, 0));
    expect(afresh).toBe(false);
    expect(readingTexts(draft)).toEqual([{ at: 0, temperature: "22 °C" }]);
  });

  test("keeps every degree of what was shown, and its unit is used from then on", () => {
    fc.assert(
      fc.property(temperature, fc.integer({ min: 0, max: day - 1 }), (shown, at) => {
        const { draft } = stamped({ ...demo, "tempering.target": "68 °F" }, shown, at);
        expect(draft["unit.temperature"]).toBe("c" in shown ? "c" : "f");
        expect(readDraft(draft).worksheet?.tempering?.readings).toEqual([
          { at: "0:00", temperature: shown },
        ]);
      }),
    );
  });

  test("stands as long after the first as it was taken after it, whatever the time of day", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: day - 1 }),
        fc.array(fc.integer({ min: 0, max: day - 1 }), { minLength: 1, maxLength: 8 }),
        (first, later) => {
          const passed = [0, ...later.sort((a, b) => a - b)];
          const draft = stampedAt(
            demo,
            ...passed.map((s) => [{ c: 22 }, (first + s) % day] as const),
          );
          expect(readingTexts(draft).map(({ at }) => at)).toEqual(passed);
        },
      ),
    );
  });
});

describe("a reading taken back", () => {
  test("is the last one, and the others stay as they are", () => {
    const draft = takenBack(pushed);
    expect(readingTexts(draft)).toEqual(readingTexts(pushed).slice(0, 2));
    expect(draft["tempering.began"]).toBe("19:05");
    expect(beside(draft, "tempering.readings[")).toEqual(beside(pushed, "tempering.readings["));
  });

  test("is the last one that holds anything, behind which an empty row may stand", () => {
    const waiting = {
      ...pushed,
      "tempering.readings[3].at": "",
      "tempering.readings[3].temperature": "",
    };
    expect(readingTexts(takenBack(waiting))).toEqual(readingTexts(pushed).slice(0, 2));
  });

  test("takes the clock with it where it was the only one", () => {
    expect(under(takenBack(stampedAt(demo, [{ f: 75 }, clock(19, 5)])), "tempering.")).toEqual({});
  });

  test("takes nothing where there is none", () => {
    expect(takenBack(demo)).toBe(demo);
  });

  test("is undone to the letter by reading it again", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(temperature, fc.integer({ min: 0, max: day - 1 })), {
          minLength: 2,
          maxLength: 5,
        }),
        (readings) => {
          const all = stampedAt(demo, ...readings);
          expect(under(takenBack(all), "tempering.")).toEqual(
            under(stampedAt(demo, ...readings.slice(0, -1)), "tempering."),
          );
        },
      ),
    );
  });
});

describe("the readings shown at the sink", () => {
  test("are those of the worksheet, with their seconds", () => {
    expect(readingTexts(pushed)).toEqual([
      { at: 0, temperature: "75 °F" },
      { at: 180, temperature: "72.5 °F" },
      { at: 360, temperature: "71 °F" },
    ]);
    expect(readingTexts(demo)).toEqual([]);
  });
});

describe("hands timed", () => {
  test.each<readonly [Timed, string]>([
    ["pourIn", "tank.pourIn"],
    ["pourOut", "tank.pourOut"],
    ["perInversion", "agitation.perInversion"],
  ])("put the middle of the times into the field, and all of them beside it: %s", (what, field) => {
    const draft = withHands(demo, what, [12.4, 10.9, 10.1]);
    expect(timedField[what]).toBe(field);
    expect(draft).toEqual({
      ...demo,
      [field]: "10.9 s",
      [`tank.measured.${what}`]: "12.4 10.9 10.1",
    });
  });

  test("read as the worksheet's own times, every try of them", () => {
    const { worksheet, faults } = readDraft(withHands(demo, "pourIn", [12.4, 10.9, 10.1]));
    expect(faults).toEqual({});
    expect(worksheet?.tank.pourIn).toBe(10.9);
    expect(worksheet?.tank.measured).toEqual({ pourIn: [12.4, 10.9, 10.1] });
  });

  test("change nothing where none was taken", () => {
    expect(withHands(demo, "pourIn", [])).toBe(demo);
  });
});

describe("a leaflet pasted", () => {
  const { rows } = readLeafletText("20 °C 11:00\n24 °C 8 min EI 250");

  test("takes the place of every row, and leaves the rest as it was", () => {
    const draft = withLeaflet(demo, rows);
    expect(under(draft, "developer.leaflet")).toEqual({
      "developer.leaflet[0].temperature": "20 °C",
      "developer.leaflet[0].time": "11:00",
      "developer.leaflet[0].exposureIndex": "",
      "developer.leaflet[1].temperature": "24 °C",
      "developer.leaflet[1].time": "8:00",
      "developer.leaflet[1].exposureIndex": "250",
    });
    expect(beside(draft, "developer.leaflet", "unit.")).toEqual(
      beside(demo, "developer.leaflet", "unit."),
    );
  });

  test("has its unit used from then on", () => {
    expect(demo["unit.temperature"]).toBe("f");
    expect(withLeaflet(demo, rows)["unit.temperature"]).toBe("c");
  });

  test("leaves no unit lent to a row that is gone", () => {
    const lent = { ...demo, "developer.leaflet[0].temperature@unit": "f" };
    expect(withLeaflet(lent, rows)).not.toHaveProperty(["developer.leaflet[0].temperature@unit"]);
  });

  test("reads as those rows, every digit of them", () => {
    const row = fc.record(
      {
        temperature,
        time: fc
          .integer({ min: 1, max: 3599 })
          .map((s) => `${Math.floor(s / 60)}:${String(s % 60).padStart(2, "0")}`),
        exposureIndex: fc.integer({ min: 1, max: 3200 }),
      },
      { requiredKeys: ["temperature", "time"] },
    );
    const served = { temperature: { f: 68 }, time: "10:00" };
    const others = fc.uniqueArray(row, {
      maxLength: 6,
      selector: (it) => toCelsius(it.temperature).toFixed(1),
    });
    fc.assert(
      fc.property(
        others.map((list) => list.filter((it) => Math.abs(toCelsius(it.temperature) - 20) > 0.2)),
        (list) => {
          const leaflet = [served, ...list];
          const { worksheet, faults } = readDraft(withLeaflet(pushed, leaflet));
          expect(faults).toEqual({});
          expect(worksheet?.developer.leaflet).toEqual(leaflet);
        },
      ),
    );
  });
});
