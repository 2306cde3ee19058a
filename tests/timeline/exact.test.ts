// The compiler's choice beside an integer program's. Past 200 lines because the instances of golden,
// random and made-up sections are held to the same claims.
import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planOf } from "../../src/plan/plan.ts";
import { readWorksheetText } from "../../src/plan/read-worksheet.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { choose, PAUSE, type Window } from "../../src/timeline/choose.ts";
import { lengthsOf } from "../../src/timeline/lengths.ts";
import { quietOf, type Stretch } from "../../src/timeline/quiet.ts";
import { compile } from "../../src/timeline/timeline.ts";
import { weights } from "../../src/timeline/wish.ts";
import { packIndex } from "../voice/built-pack.ts";
import { anyWorksheet } from "./any-worksheet.ts";
import { bestValue, type Instance, instancesOf, worthOf } from "./integer-program.ts";
import { english } from "./scene.ts";

const folder = new URL("../golden/", import.meta.url);
const golden = readdirSync(folder).filter((file) => file.endsWith(".json"));
const rates = [0.8, 1, 1.6];

function goldenSheet(file: string): Worksheet {
  const reading = readWorksheetText(readFileSync(new URL(file, folder), "utf8"));
  if (reading.kind !== "worksheet") throw new Error(JSON.stringify(reading.faults));
  return reading.worksheet;
}

const spoken = (sheet: Worksheet) => lengthsOf(packIndex, sheet.voice?.rate ?? 1);
const goldenAt = (file: string, detail: "full" | "brief" | "tones", rate: number) => ({
  ...goldenSheet(file),
  voice: { detail, rate },
});
const placedIn = ({ windows, stretches }: Pick<Instance, "windows" | "stretches">) =>
  choose(windows, quietOf(stretches));
const chosen = (instance: Instance) => worthOf(instance.windows, placedIn(instance));
/** Where every wish is said in the words worth most, no order can add anything. */
const everything = ({ windows }: Instance) =>
  windows.reduce((sum, { wordings }) => sum + Math.max(0, ...wordings.map((w) => w.value)), 0);
const freely = (instance: Instance) =>
  chosen(instance) === everything(instance) ? chosen(instance) : bestValue(instance, "free");

/** Random worksheets, the same ones each time, so that what is pinned stays pinned. */
const sample = (numRuns: number) => fc.sample(anyWorksheet, { numRuns, seed: 7 });

describe("The sections handed to the solver", () => {
  const sheets = [
    ...golden.flatMap((file) =>
      (["full", "brief", "tones"] as const).map((detail) => goldenAt(file, detail, 1)),
    ),
    ...sample(60),
  ];

  test("are the compiler's own: their choice is the words of the timeline, to the microsecond", () => {
    let words = 0;
    for (const sheet of sheets) {
      const timeline = compile(sheet, planOf(sheet), english, spoken(sheet));
      const starts = timeline.sections.map(({ cues }) =>
        cues.flatMap(({ channel, at, until }) => (channel === "voice" ? [[at, until]] : [])),
      );
      const rebuilt = instancesOf(sheet, spoken(sheet)).map((instance) =>
        placedIn(instance)
          .flatMap((place, i) => {
            const seconds = instance.windows[i]?.wordings[place?.wording ?? -1]?.seconds;
            if (place === null || seconds === undefined) return [];
            return [[place.at, place.at + seconds].map((s) => Math.round(s * 1e6) / 1e6)];
          })
          .toSorted(([a = 0], [b = 0]) => a - b),
      );
      const silent = sheet.voice?.detail === "tones";
      expect(silent ? timeline.sections.map(() => []) : rebuilt).toEqual(starts);
      words += starts.flat().length;
    }
    expect(words).toBeGreaterThan(1000);
  });

  test("list their wishes by the end of the window, without exception", () => {
    for (const sheet of sheets) {
      for (const { windows, section } of instancesOf(sheet, spoken(sheet))) {
        for (const [i, { latestEnd }] of windows.entries()) {
          expect(latestEnd, section).toBeGreaterThanOrEqual(windows[i - 1]?.latestEnd ?? 0);
        }
      }
    }
  });

  test("do not all open in that order: these may open before one that closes sooner", () => {
    const early = (some: readonly Worksheet[]) => {
      const found = new Set<string>();
      for (const sheet of some) {
        for (const { windows, keys } of instancesOf(sheet, spoken(sheet))) {
          let latest = 0;
          for (const [i, { earliest }] of windows.entries()) {
            if (earliest < latest) found.add((keys[i] ?? "").split(".").slice(0, 2).join("."));
            latest = Math.max(latest, earliest);
          }
        }
      }
      return [...found].toSorted();
    };
    expect(early(sheets.slice(0, golden.length * 3))).toEqual(["pour-in.ready", "pour-out.ready"]);
    expect(early(sheets)).toEqual([
      "agitate.first",
      "agitate.soon",
      "gate.bath",
      "gate.press",
      "gate.tap",
      "gate.vessel",
      "next.section",
      "pour-in.ready",
      "pour-out.ready",
      "remaining.minutes",
    ]);
  });
});

const goldenSections = (file: string) =>
  (["full", "brief"] as const).flatMap((detail) =>
    rates.flatMap((rate) => {
      const sheet = goldenAt(file, detail, rate);
      return instancesOf(sheet, spoken(sheet)).map((instance) => ({ detail, rate, instance }));
    }),
  );

test("The golden sections put the choice to the test: in some, not all can be said in full", () => {
  const pressed = golden
    .flatMap(goldenSections)
    .filter(({ instance }) => chosen(instance) < everything(instance));
  expect(pressed.length).toBeGreaterThan(10);
});

describe.each(golden)("In the sections of %s", (file) => {
  const all = goldenSections(file);

  test("what is said is worth as much as an integer program finds, at every detail and rate", () => {
    expect(all.length).toBeGreaterThanOrEqual(60);
    for (const { detail, rate, instance } of all) {
      const where = `${instance.section}, ${detail}, rate ${rate}`;
      expect(bestValue(instance, "kept"), where).toBe(chosen(instance));
    }
  });

  test("no other order of the wishes would be worth more", () => {
    for (const { detail, rate, instance } of all) {
      const where = `${instance.section}, ${detail}, rate ${rate}`;
      expect(freely(instance), where).toBe(chosen(instance));
    }
  });
});

const timed = sample(60)
  .flatMap((sheet) => instancesOf(sheet, spoken(sheet)))
  .filter(({ windows }) => windows.some(({ latestEnd }) => Number.isFinite(latestEnd)));

describe("In the baths of random worksheets", () => {
  test("what is said is worth as much as an integer program finds", () => {
    expect(timed.length).toBeGreaterThan(100);
    for (const instance of timed) expect(bestValue(instance, "kept")).toBe(chosen(instance));
  });

  test("another order of the wishes would seldom be worth more, and never a pour-in's words", () => {
    const gains = timed.map((instance) => freely(instance) - chosen(instance));
    expect(Math.min(...gains)).toBe(0);
    expect(gains.filter((gain) => gain > 0).length / gains.length).toBeLessThan(0.02);
    expect(Math.max(...gains)).toBeLessThan(weights.pourIn * 8);
  });
});

const half = (min: number, max: number) =>
  fc.integer({ min: min * 2, max: max * 2 }).map((n) => n / 2);
const anyWindow: fc.Arbitrary<Window> = fc.record({
  earliest: half(0, 20),
  latestEnd: half(0, 30),
  prefer: fc.constant(() => 0),
  wordings: fc.array(fc.record({ seconds: half(0.5, 5), value: fc.integer({ min: 1, max: 20 }) }), {
    minLength: 1,
    maxLength: 3,
  }),
});
const anyWindows = fc.array(anyWindow, { maxLength: 7 });
const anyQuiet = fc.array(
  fc.tuple(half(0, 30), half(0.5, 4)).map(([from, length]) => ({ from, to: from + length })),
  { maxLength: 4 },
);

/** Both ends put in order along the list, each window still open where it was. */
function inStep(windows: readonly Window[]): readonly Window[] {
  const opens = windows.map((w) => w.earliest).toSorted((a, b) => a - b);
  const closes = windows.map((w) => w.latestEnd).toSorted((a, b) => a - b);
  return windows.map((w, i) => ({ ...w, earliest: opens[i] ?? 0, latestEnd: closes[i] ?? 0 }));
}

const instance = (windows: readonly Window[], stretches: readonly Stretch[]): Instance => ({
  section: "made up",
  keys: [],
  windows,
  stretches,
});

describe("Of any windows", () => {
  test("what is said is worth as much as an integer program finds, in whatever order they come", () => {
    fc.assert(
      fc.property(anyWindows, anyQuiet, (windows, stretches) => {
        const made = instance(windows, stretches);
        expect(bestValue(made, "kept")).toBe(chosen(made));
      }),
      { numRuns: 150 },
    );
  });

  test("that open and close in order, none is better said out of it, where no tone parts them", () => {
    fc.assert(
      fc.property(anyWindows.map(inStep), (windows) => {
        const made = instance(windows, []);
        expect(bestValue(made, "free")).toBe(chosen(made));
      }),
      { numRuns: 60 },
    );
  });
});

/** A window with one wording. */
const one = (earliest: number, latestEnd: number, seconds: number, value: number): Window => ({
  earliest,
  latestEnd,
  prefer: () => earliest,
  wordings: [{ seconds, value }],
});

describe("Exactness ends at the order of the wishes", () => {
  test("where one window lies within another: the long one's words might go first", () => {
    const made = instance([one(4, 9, 4, 3), one(0, 10, 3, 5)], []);
    expect([chosen(made), bestValue(made, "kept"), bestValue(made, "free")]).toEqual([5, 5, 8]);
  });

  test("where a tone leaves unlike room on its two sides, though the windows are in order", () => {
    const made = instance([one(0, 10, 5, 3), one(0, 10, 3, 5)], [{ from: 3.5, to: 4.5 }]);
    expect([chosen(made), bestValue(made, "kept"), bestValue(made, "free")]).toEqual([5, 5, 8]);
  });

  test("and not where the pause alone is short", () => {
    const made = instance([one(0, 5 + PAUSE, 3, 3), one(0, 5 + PAUSE, 2, 5)], []);
    expect([chosen(made), bestValue(made, "kept"), bestValue(made, "free")]).toEqual([8, 8, 8]);
  });
});
