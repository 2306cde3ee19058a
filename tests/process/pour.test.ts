import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Agitation, Worksheet } from "../../src/plan/worksheet.ts";
import { momentsOf, pourOf } from "../../src/process/pour.ts";
import { gullrock } from "../plan/worksheets.ts";
import { anyWorksheet } from "../timeline/any-worksheet.ts";

const tank = { ...gullrock.tank, pourIn: 10, pourOut: 15 };
const clocks = (starts: "pour-in" | "full", ends: "pour-out" | "empty"): Worksheet => ({
  ...gullrock,
  tank,
  clock: { starts, ends },
});
const habit: Agitation = { first: 30, every: 30, for: 5, perInversion: 2.5, taps: 2 };

const said = (worksheet: Worksheet, seconds: number, agitation: Agitation | null) =>
  momentsOf(pourOf("developer", 8, seconds, worksheet), agitation).map(
    (m) => `${m.at} ${m.do}${m.count === undefined ? "" : ` ${m.count}`}`,
  );

describe("A bath's times", () => {
  test.each([
    ["pour-in", "pour-out", { full: 18, clock: 8, pourOut: 308, empty: 323 }],
    ["pour-in", "empty", { full: 18, clock: 8, pourOut: 293, empty: 308 }],
    ["full", "pour-out", { full: 18, clock: 18, pourOut: 318, empty: 333 }],
    ["full", "empty", { full: 18, clock: 18, pourOut: 303, empty: 318 }],
  ] as const)("run from %s to %s as the person counts", (starts, ends, times) => {
    expect(pourOf("fixer", 8, 300, clocks(starts, ends))).toEqual({
      bath: "fixer",
      pourIn: 8,
      ...times,
    });
  });
});

describe("What the hands do", () => {
  test("the first bout begins at full; later ones begin on the bath's own clock", () => {
    expect(said(clocks("pour-in", "pour-out"), 100, habit)).toEqual([
      "8 pour-in",
      "18 full",
      "18 agitate",
      ...Array.from({ length: 12 }, (_, i) => `${18 + i * 2.5} invert ${i + 1}`),
      "48 rest",
      "48 tap 2",
      // 38 and 68 on the clock that began at 8: 38 falls within the first bout.
      "68 agitate",
      "68 invert 1",
      "70.5 invert 2",
      "73 rest",
      "73 tap 2",
      "98 agitate",
      "98 invert 1",
      "100.5 invert 2",
      "103 rest",
      "103 tap 2",
      "108 pour-out",
      "123 empty",
    ]);
  });

  test("a bout is left out that would begin sooner than 5 s after the last or end nearer than 5 s to the pour-out", () => {
    const bouts = (seconds: number, first: number) =>
      momentsOf(pourOf("fixer", 8, seconds, clocks("full", "pour-out")), { ...habit, first })
        .filter((m) => m.do === "agitate")
        .map((m) => m.at);
    expect(bouts(100, 25)).toEqual([18, 48, 78, 108]);
    expect(bouts(99.9, 25)).toEqual([18, 48, 78]);
    expect(bouts(100, 25.1)).toEqual([18, 78, 108]);
  });

  test("an inversion is begun while time is left in the bout", () => {
    const short = { ...habit, first: 0, for: 5, perInversion: 3, taps: 0 };
    expect(said(clocks("full", "pour-out"), 60, short)).toEqual([
      "8 pour-in",
      "18 full",
      "48 agitate",
      "48 invert 1",
      "51 invert 2",
      "53 rest",
      "78 pour-out",
      "93 empty",
    ]);
  });

  test("continuous agitation runs from full to the pour-out without a rest", () => {
    const moments = said(clocks("full", "pour-out"), 30, { ...habit, every: 5, for: 5 });
    expect(moments.filter((m) => /rest|tap|agitate/.test(m))).toEqual(["18 agitate"]);
    expect(moments.filter((m) => m.includes("invert"))).toHaveLength(12);
  });

  test("a standing bath has its first bout and no other", () => {
    const moments = said(clocks("full", "pour-out"), 3600, { ...habit, for: 0 });
    expect(moments.filter((m) => m.includes("agitate"))).toEqual(["18 agitate"]);
  });

  test("a bath left alone is poured in and out", () => {
    expect(said(clocks("full", "pour-out"), 60, null)).toEqual([
      "8 pour-in",
      "18 full",
      "78 pour-out",
      "93 empty",
    ]);
  });

  test("bouts keep 5 s from one another and from the pour-out, and stand on the clock's marks", () => {
    fc.assert(
      fc.property(anyWorksheet, fc.integer({ min: 1, max: 3600 }), (worksheet, seconds) => {
        const pour = pourOf("fixer", 8, seconds, worksheet);
        const moments = momentsOf(pour, worksheet.agitation);
        const { every, for: lasts, first } = worksheet.agitation;
        expect(moments.map((m) => m.at)).toEqual(
          moments.map((m) => m.at).toSorted((a, b) => a - b),
        );
        if (lasts > 0 && lasts >= every) return;
        const bouts = moments.filter((m) => m.do === "agitate");
        const rests = moments.filter((m) => m.do === "rest");
        for (const [i, bout] of bouts.entries()) {
          if (i === 0 && first > 0) continue;
          const turns = (bout.at - pour.clock) / every;
          expect(Math.abs(turns - Math.round(turns)) * every).toBeLessThan(1e-5);
          expect(bout.at - (rests[i - 1]?.at ?? pour.full)).toBeGreaterThan(5 - 1e-5);
          expect(pour.pourOut - (rests[i]?.at ?? 0)).toBeGreaterThan(5 - 1e-5);
        }
      }),
    );
  });
});

describe("Habits in print", () => {
  const deeds = (worksheet: Worksheet, seconds: number, agitation: Agitation, deed: string) =>
    momentsOf(pourOf("developer", 0, seconds, worksheet), agitation)
      .filter((m) => m.do === deed)
      .map((m) => m.at);

  test("clock from a full tank, 30 s of inversions, 5 s each minute, pour-out begun with 10 s left (US Navy NAVEDTRA 14209, fig. 10-18)", () => {
    const navy: Worksheet = {
      ...clocks("full", "empty"),
      tank: { ...tank, pourIn: 15, pourOut: 10 },
    };
    const habits = { first: 30, every: 60, for: 5, perInversion: 2.5, taps: 1 };
    // Full at 15 s, so the clock's minutes fall at 75, 135 …; a bath of 5:00 ends empty at 315.
    expect(deeds(navy, 300, habits, "agitate")).toEqual([15, 75, 135, 195, 255]);
    expect(deeds(navy, 300, habits, "rest")[0]).toBe(45);
    expect(deeds(navy, 300, habits, "pour-out")).toEqual([305]);
    expect(deeds(navy, 300, habits, "empty")).toEqual([315]);
  });

  test("every step drained in its last 10 s (US Army SS0514)", () => {
    const army: Worksheet = { ...clocks("pour-in", "empty"), tank: { ...tank, pourOut: 10 } };
    const [out] = deeds(
      army,
      480,
      { first: 30, every: 60, for: 5, perInversion: 5, taps: 0 },
      "pour-out",
    );
    expect(out).toBe(470);
  });

  test("30 s at first, tapped, then 5 s every 30 s, with 15 s of lead for the pour (common practice)", () => {
    const lead: Worksheet = { ...clocks("pour-in", "pour-out"), tank: { ...tank, pourIn: 15 } };
    expect(deeds(lead, 120, habit, "agitate")).toEqual([15, 60, 90]);
    expect(deeds(lead, 120, habit, "tap")).toEqual([45, 65, 95]);
  });

  test("the first 10 s of each minute, 4 inversions and a tap (memory: ILFORD data sheets; a plausibility check)", () => {
    const minutes = { first: 10, every: 60, for: 10, perInversion: 2.5, taps: 1 };
    const moments = momentsOf(pourOf("developer", 0, 300, clocks("full", "pour-out")), minutes);
    const bouts = moments.filter((m) => m.do === "agitate").length;
    expect(moments.filter((m) => m.do === "invert")).toHaveLength(4 * bouts);
    expect(moments.filter((m) => m.do === "tap")).toHaveLength(bouts);
  });

  test("trays are moved without a break (US Army SS0509, p. 18; NAVEDTRA 14209), and so is a stop bath of 30 to 60 s (SS0509, p. 24)", () => {
    for (const seconds of [30, 60]) {
      const moving = { first: seconds, every: seconds, for: seconds, perInversion: 5, taps: 0 };
      expect(deeds(clocks("full", "pour-out"), seconds, moving, "agitate")).toHaveLength(1);
      expect(deeds(clocks("full", "pour-out"), seconds, moving, "rest")).toEqual([]);
    }
  });
});
