import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { asides } from "../../src/plan/asides.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { warningsAbout, workingAbout } from "../../src/ui/answer-model.ts";
import { demos } from "../../src/ui/demo.ts";
import { blankRow, changed, type Draft, rowCount } from "../../src/ui/draft.ts";
import { draftOf } from "../../src/ui/draft-of.ts";
import type { RowList } from "../../src/ui/fields.ts";
import { notices } from "../../src/ui/words/en/frame.ts";
import { readDraft } from "../../src/ui/work-out-model.ts";
import { makeWorkOut } from "../../src/ui/work-out-state.ts";
import { benchInCelsius, benchInFahrenheit } from "../plan/bench-worksheets.ts";
import { world } from "./ports.ts";

const demo = draftOf(demos.gullrock);
const pushed = draftOf(demos.foghorn);

/** The development of a draft that asks nothing beside it. */
const bare = readDraft(demo);

describe("a question beside the development", () => {
  const half = { ...demo, "mixing.target": "68 °F" };

  test("half answered, leaves the development standing, and is named field by field", () => {
    const { worksheet, plan, faults, wanting } = readDraft(half);
    expect(worksheet).toEqual(demos.gullrock);
    expect(worksheet).not.toHaveProperty("mixing");
    expect(plan).toEqual(bare.plan);
    expect(faults).toEqual({});
    expect(wanting).toEqual(["mixing.stock", "mixing.cold", "mixing.hot"]);
  });

  test("answered, stands in the worksheet again", () => {
    const whole = {
      ...half,
      "mixing.stock": "73 °F",
      "mixing.cold": "58 °F",
      "mixing.hot": "108 °F",
    };
    const { worksheet, plan, wanting } = readDraft(whole, asides);
    expect(wanting).toEqual([]);
    expect(worksheet?.mixing).toEqual(demos.foghorn.mixing);
    expect(plan && workingAbout(plan, "mixing").length).toBeGreaterThan(0);
  });

  test("half answered, takes no other question with it", () => {
    const { worksheet, plan, wanting } = readDraft({ ...pushed, "mixing.hot": "" }, asides);
    const { mixing: _, ...others } = demos.foghorn;
    expect(worksheet).toEqual(others);
    expect(wanting).toEqual(["mixing.hot"]);
    expect(plan && warningsAbout(plan, ["tempering"]).length).toBeGreaterThan(0);
    expect(plan && workingAbout(plan, "contrast").length).toBeGreaterThan(0);
    expect(plan && workingAbout(plan, "mixing")).toEqual([]);
  });

  test.each<readonly [string, string, keyof Worksheet]>([
    ["mixing.cold", "icy", "mixing"],
    ["mixing.cold", "120 °F", "mixing"],
    ["tempering.readings[1].at", "later", "tempering"],
    ["tempering.began", "after tea", "tempering"],
    ["contrast.tests[0].gradient", "steep", "contrast"],
    ["contrast.wanted", "99", "contrast"],
  ])("with a fault in it is left out, and the fault is told beside %s: %s", (path, text, part) => {
    const { worksheet, plan, faults } = readDraft({ ...pushed, [path]: text });
    expect(Object.keys(faults)).toEqual([path]);
    expect(worksheet).not.toHaveProperty(part);
    expect(plan?.developmentSeconds).toBe(readDraft(pushed).plan?.developmentSeconds);
  });

  test("whose readings are wanted altogether is told at their list, and left out", () => {
    const { worksheet, faults } = readDraft({ ...demo, "tempering.target": "68 °F" });
    expect(Object.keys(faults)).toEqual(["tempering.readings"]);
    expect(worksheet).toEqual(demos.gullrock);
  });

  test.each([
    ["developer.temperature", "warm"],
    ["developer.temperature", ""],
    ["tank.volume", ""],
    ["tank.pourIn", "0.2 s"],
    ["baths.fixer.time", "soon"],
    ["films[0].size", "huge"],
  ])("does not hide a fault of the development's own: %s %j", (path, text) => {
    for (const draft of [demo, half, pushed]) {
      const { worksheet, plan, faults, wanting } = readDraft({ ...draft, [path]: text });
      expect(worksheet).toBeNull();
      expect(plan).toBeNull();
      expect([...Object.keys(faults), ...wanting]).toContain(path);
    }
  });

  test("never changes the development, whichever of its fields are filled in", () => {
    const beside = Object.keys(pushed).filter((path) =>
      /^(mixing|tempering|contrast)\./.test(path),
    );
    fc.assert(
      fc.property(fc.subarray(beside), (kept) => {
        const draft = { ...demo, ...Object.fromEntries(kept.map((it) => [it, pushed[it] ?? ""])) };
        const { worksheet, plan } = readDraft(draft, asides);
        expect(worksheet).toMatchObject(demos.gullrock);
        expect(plan?.developmentSeconds).toBe(bare.plan?.developmentSeconds);
        expect(plan?.mix).toEqual(bare.plan?.mix);
        expect(plan?.baths).toEqual(bare.plan?.baths);
      }),
    );
  });

  test("half answered, is saved to no file: its empty fields are named instead", () => {
    const { ports, saved } = world();
    const workOut = makeWorkOut(half, null, ports);
    workOut.save();
    expect(saved).toEqual([]);
    expect(workOut.notice.value).toEqual({
      says: notices.notSaved,
      lines: [],
      fields: ["mixing.stock", "mixing.cold", "mixing.hot"],
    });
  });

  test("answered, is saved with the rest", () => {
    const { ports, saved } = world();
    makeWorkOut(pushed, null, ports).save();
    expect(saved.map(({ text }) => JSON.parse(text))).toEqual([demos.foghorn]);
  });

  test("has its own arithmetic only once that is fetched", async () => {
    const { ports } = world();
    const workOut = makeWorkOut(pushed, null, ports);
    const lines = () => workOut.plan.value?.working.filter(({ about }) => about === "mixing");
    expect(lines()).toEqual([]);
    await Promise.resolve();
    expect(lines()?.length).toBeGreaterThan(0);
  });
});

describe("an empty row", () => {
  const lists: readonly RowList[] = ["developer.readings", "tempering.readings", "contrast.tests"];
  const withRow = (draft: Draft, list: RowList, at: number): Draft =>
    changed(draft, { kind: "insert", list, at, row: blankRow(list) }).draft;

  test.each(lists)("at the end of a list that may be empty is no fault: %s", (list) => {
    for (const [draft, worksheet] of [
      [demo, demos.gullrock],
      [pushed, demos.foghorn],
      [draftOf(benchInCelsius), benchInCelsius],
    ] as const) {
      const longer = withRow(draft, list, rowCount(draft, list));
      expect(rowCount(longer, list)).toBe(rowCount(draft, list) + 1);
      expect(readDraft(longer)).toMatchObject({ worksheet, faults: {}, wanting: [] });
    }
  });

  test("before one that is filled in is to be filled in too", () => {
    const { worksheet, wanting } = readDraft(withRow(pushed, "tempering.readings", 1));
    expect(wanting).toEqual(["tempering.readings[1].at", "tempering.readings[1].temperature"]);
    expect(worksheet).not.toHaveProperty("tempering");
  });

  test("of the films or the leaflet is to be filled in, wherever it stands", () => {
    const films = readDraft(withRow(demo, "films", 1));
    expect(films.wanting).toContain("films[1].size");
    expect(films.worksheet).toBeNull();
    const leaflet = readDraft(withRow(demo, "developer.leaflet", 4));
    expect(leaflet.wanting).toEqual([
      "developer.leaflet[4].temperature",
      "developer.leaflet[4].time",
    ]);
  });
});

describe("a worksheet with every optional field", () => {
  const full: Worksheet = {
    ...benchInFahrenheit,
    title: "Everything measured",
    language: "en-GB",
    films: [{ label: "Foghorn 400", size: "4x5in", count: 6, boxSpeed: 400, exposureIndex: 640.5 }],
    developer: {
      ...benchInFahrenheit.developer,
      perDegree: 0.0987,
      perStop: { pull: 0.07, push: 0.2845 },
      filmsBefore: 2.5,
      perFilmBefore: 0.015,
      kept: { flOz: 33.8 },
    },
    tank: {
      ...benchInFahrenheit.tank,
      handover: 4.5,
      timeFactor: 0.95,
      room: { f: 63.5 },
      halfway: 27.5,
    },
    mixing: {
      target: { f: 68 },
      stock: { f: 72.5 },
      cold: { f: 60 },
      hot: { f: 110 },
      mark: { flOz: 0.25 },
    },
    tempering: {
      target: { f: 68 },
      readings: [
        { at: "0:00", temperature: { f: 75 } },
        { at: "1:02:30", temperature: { f: 71.5 } },
      ],
      bath: { f: 66 },
      bathVolume: { flOz: 135 },
      began: "23:55:30",
    },
    contrast: {
      wanted: 0.58,
      stepLog: 0.15,
      firstLog: -1.85,
      tests: [
        { time: "6:30", gradient: 0.55 },
        { time: "1:02:00", densities: [0.3, 0.305, 0.41, 0.62, 1], baseFog: 0.28 },
      ],
    },
    baths: {
      prewet: { time: "1:00", temperature: { f: 68 }, agitation: benchInFahrenheit.agitation },
      developer: { afterwards: "return" },
      stop: { skip: true, time: "0:45", filmsPerLitre: 30, filmsBefore: 4, kept: { ml: 1000 } },
      fixer: {
        time: "6:00",
        clearing: { time: "1:15", fresh: "0:45", times: 3 },
        filmsPerLitre: 20.5,
        filmsBefore: 12,
        kept: { flOz: 32 },
      },
      "wash-aid": { afterwards: "return" },
      wash: { time: "3:00", carryOver: { ml: 20.5 }, flow: { ml: 1200 }, thiosulfate: 150 },
    },
    voice: { detail: "brief", rate: 1.15 },
  };

  test.each<readonly [string, Worksheet]>([
    ["all of it at once", full],
    [
      "filled and dumped",
      { ...full, baths: { wash: { fills: [5, 10, 20], carryOver: { ml: 20 } } } },
    ],
    ["measured in °F and fluid ounces", benchInFahrenheit],
    ["measured in °C and ml", benchInCelsius],
  ])("comes back from its draft as it went in: %s", (_, worksheet) => {
    const { worksheet: back, faults, wanting } = readDraft(draftOf(worksheet));
    expect({ faults, wanting }).toEqual({ faults: {}, wanting: [] });
    expect(back).toEqual(worksheet);
  });

  test("opens as texts that have to be explained to nobody", () => {
    const { firstLog: _, ...contrast } = full.contrast ?? { tests: [] };
    expect(readDraft(draftOf({ ...full, contrast })).meanings).toEqual({});
  });

  test("comes back with any of its parts left out", () => {
    const { mixing, tempering, contrast, voice, baths, title, language, ...rest } = full;
    const parts = { mixing, tempering, contrast, voice, title, language };
    const names = Object.keys(parts) as (keyof typeof parts)[];
    fc.assert(
      fc.property(fc.subarray(names), fc.subarray(Object.keys(baths ?? {})), (kept, bathsKept) => {
        const some = Object.fromEntries(bathsKept.map((id) => [id, baths?.[id] ?? {}]));
        const worksheet: Worksheet = {
          ...rest,
          ...Object.fromEntries(kept.map((name) => [name, parts[name]])),
          ...(bathsKept.length > 0 ? { baths: some } : {}),
        };
        expect(readDraft(draftOf(worksheet)).worksheet).toEqual(worksheet);
      }),
    );
  });
});
