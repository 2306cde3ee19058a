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
