// The outline around the dark as data: the check before it, the wait, loading by kind of film, and the gate.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planOf } from "../../src/plan/plan.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import type { Tell } from "../../src/process/outline.ts";
import { stepsOf } from "../../src/process/process.ts";
import type { Method } from "../../src/trade/method.ts";
import { gullrock } from "../plan/worksheets.ts";
import { anyWorksheet } from "../timeline/any-worksheet.ts";

const keyOf = (tell: Tell): string => (typeof tell === "string" ? tell : tell.key);
const steps = (worksheet: Worksheet) =>
  stepsOf(worksheet, planOf(worksheet)).map((step) => ({ ...step, tells: step.tells.map(keyOf) }));
const film = (size: string, count = 1) => ({ label: "Gullrock 125", size, count, boxSpeed: 125 });
const sheet = (method: Method, ...films: Worksheet["films"]): Worksheet => ({
  ...gullrock,
  films,
  tank: { ...gullrock.tank, method },
});
const darkIds = (worksheet: Worksheet) =>
  steps(worksheet)
    .filter(({ dark }) => dark)
    .map(({ id }) => id);

describe("In the dark", () => {
  const around = (...loading: readonly string[]) => ["lights-out", "wait", "open", ...loading];
  const gate = ["core", "close", "everyone"];

  test.each<readonly [string, Worksheet, readonly string[]]>([
    ["a 135 film", sheet("inversion", film("135-36")), ["cut", "feed", "wind", "spool", ...gate]],
    ["a 120 film", sheet("twist", film("120")), ["feed", "wind", "tape", ...gate]],
    ["two 120 films", sheet("rotary", film("120", 2)), ["feed", "wind", "tape", "others", ...gate]],
    ["sheets in a tank", sheet("inversion", film("4x5in", 4)), ["count", "holders", ...gate]],
    [
      "sheets in hangers",
      sheet("hanger", film("4x5in", 4)),
      ["count", "holders", "stay-dark", "developer", "fixer"],
    ],
    [
      "sheets in trays",
      sheet("tray", film("9x12cm", 4)),
      ["count", "holders", "stay-dark", "developer", "fixer"],
    ],
    [
      "two kinds of film in one tank",
      sheet("inversion", film("120"), film("135-24")),
      [...["cut", "feed", "wind", "spool"], ...["open-2", "feed-2", "wind-2", "tape"], ...gate],
    ],
  ])("%s has steps of its own", (_, worksheet, loading) => {
    expect(darkIds(worksheet)).toEqual(around(...loading));
  });

  test("trays are stacked and hangers filled, under one name, and neither hears of a lid", () => {
    const told = (method: Method) =>
      steps(sheet(method, film("4x5in", 4))).flatMap(({ tells }) => tells);
    expect(told("tray")).toContain("load.sheet.stack");
    expect(told("tray")).not.toContain("load.sheet.holders");
    expect(told("hanger")).toContain("load.sheet.holders");
    for (const method of ["tray", "hanger"] as const) {
      expect(told(method)).not.toContain("close.lid");
      expect(told(method)).not.toContain("check.dry");
    }
  });

  test("light comes back by two presses of the gate, or, in an open tray, once the film is fixed", () => {
    fc.assert(
      fc.property(anyWorksheet, (worksheet) => {
        const all = steps(worksheet);
        const last = all.findLastIndex(({ dark }) => dark);
        const out = all.findIndex(({ id }) => id === "lights-out");
        const open = ["tray", "hanger"].includes(worksheet.tank.method);
        expect(all.slice(out, last + 1).every(({ dark }) => dark)).toBe(true);
        expect(all.filter(({ film }) => film === "open").every(({ dark }) => dark)).toBe(true);
        if (!open)
          expect(all.slice(last - 1, last + 1).map(({ id }) => id)).toEqual(["close", "everyone"]);
        else {
          const fixer = worksheet.baths?.fixer?.skip ? all.at(-2)?.id : "fixer";
          expect(all[last]?.id).toBe(fixer);
        }
      }),
      { numRuns: 100 },
    );
  });
});

describe("Before the dark", () => {
  const light = steps(gullrock).slice(0, 8);

  test("every point is a step of its own, confirmed by a press, and an old hand hears one line of it", () => {
    for (const { id, tells, niceties, dark } of light) {
      expect(dark, id).toBe(false);
      expect(tells.at(-1), id).toMatch(/^press\./);
      const brief = tells.filter((key) => !niceties.includes(key));
      const cautions = brief.filter((key) => key.startsWith("caution."));
      // Of the temperature both lines are wanted: what to read, and what to do about it.
      expect(brief.length - cautions.length, id).toBe(id === "temper" ? 2 : 1);
    }
  });

  test("what is told is what fogs film, and that black on a lit screen is not dark", () => {
    const told = light.flatMap(({ tells }) => tells);
    const asked = ["check.phone", "dark.glow", "check.dry", "lay-out.loading", "check.volume"];
    for (const key of [...asked, "check.screen", "check.black"]) {
      expect(
        told.filter((other) => other === key),
        key,
      ).toHaveLength(1);
    }
  });

  test("each caution is told once, at every detail, and the gloves only once film is loaded", () => {
    for (const worksheet of [gullrock, sheet("tray", film("4x5in", 4))]) {
      const all = steps(worksheet);
      const cautions = all.flatMap(({ id, tells, niceties }) =>
        tells
          .filter((key) => key.startsWith("caution.") && !niceties.includes(key))
          .map((key) => ({ id, key })),
      );
      expect(cautions.map(({ key }) => key).sort()).toEqual(
        ["air", "floor", "glass", "glasses", "gloves", "mains", "sheet"].map(
          (it) => `caution.${it}`,
        ),
      );
      const gloves = all.findIndex(({ tells }) => tells.includes("caution.gloves"));
      expect(all[gloves + 1]?.stays.length).toBeGreaterThan(0);
    }
  });
});

describe("Film that is in the closed tank already", () => {
  test("is led to the first bath in the light: a short check, every caution, and no step of the dark", () => {
    const all = steps({ ...gullrock, loading: "done" });
    const before = all.slice(
      0,
      all.findIndex(({ stays }) => stays.length > 0),
    );
    expect(before.map(({ id }) => id)).toEqual(["quiet", "volume", "wet-side", "temper"]);
    expect(all.filter(({ dark }) => dark)).toEqual([]);
    expect(new Set(before.map(({ film }) => film))).toEqual(new Set(["tank"]));
    const told = before.flatMap(({ tells }) => tells);
    for (const caution of ["sheet", "glasses", "air", "floor", "glass", "mains", "gloves"])
      expect(told).toContain(`caution.${caution}`);
    // The baths are the same.
    const baths = (of: typeof all) => of.filter(({ stays }) => stays.length > 0);
    expect(baths(all)).toEqual(baths(steps(gullrock)));
  });

  test("is not to be had in a tray, which no lid closes", () => {
    const inTray = { ...gullrock, tank: { ...gullrock.tank, method: "tray" as const } };
    expect(steps({ ...inTray, loading: "done" })).toEqual(steps(inTray));
  });
});

describe("The wait in the dark", () => {
  const waitOf = (darkWait?: string) =>
    steps(darkWait === undefined ? gullrock : { ...gullrock, darkWait }).find(
      ({ id }) => id === "wait",
    );

  test("lasts as long as wanted, a few minutes where nobody says, and is left out at 0:00", () => {
    expect(waitOf()?.seconds).toBe(180);
    expect(waitOf("12:30")?.seconds).toBe(750);
    expect(waitOf("30:00")?.seconds).toBe(1800);
    expect(waitOf("0:00")).toBeUndefined();
  });

  test("leaves its own words time, however short", () => {
    expect(waitOf("0:01")?.seconds).toBe(20);
  });
});
