import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { gullrock } from "../plan/worksheets.ts";
import { anyWorksheet } from "./any-worksheet.ts";
import { brokenLaws } from "./laws.ts";
import { compiled } from "./scene.ts";

describe("The laws of a timeline", () => {
  test("hold for every worksheet, detail and rate", () => {
    fc.assert(
      fc.property(anyWorksheet, (worksheet) => {
        expect(brokenLaws(compiled(worksheet))).toEqual([]);
      }),
      { numRuns: 400 },
    );
  });

  test("hold where the film is in its tank already", () => {
    fc.assert(
      fc.property(anyWorksheet, (worksheet) => {
        expect(brokenLaws(compiled({ ...worksheet, loading: "done" }))).toEqual([]);
      }),
      { numRuns: 50 },
    );
  });

  test("hold whether the voice is slow or quick", () => {
    fc.assert(
      fc.property(
        anyWorksheet,
        fc.double({ min: 0.04, max: 0.08, noNaN: true }),
        (worksheet, pace) => {
          expect(brokenLaws(compiled(worksheet, pace))).toEqual([]);
        },
      ),
      { numRuns: 200 },
    );
  });

  test("the same worksheet gives the same bytes", () => {
    fc.assert(
      fc.property(anyWorksheet, (worksheet) => {
        expect(JSON.stringify(compiled(worksheet))).toBe(JSON.stringify(compiled(worksheet)));
      }),
      { numRuns: 50 },
    );
  });

  test("moments do not move with detail, rate or the length of words", () => {
    fc.assert(
      fc.property(anyWorksheet, (worksheet) => {
        const moments = (sheet: typeof worksheet, pace?: number) =>
          compiled(sheet, pace).sections.map((section) => section.moments);
        const silent = { ...worksheet, voice: { detail: "tones" as const } };
        expect(moments(silent)).toEqual(moments(worksheet, 0.09));
      }),
      { numRuns: 100 },
    );
  });

  test("tones alone speak no word and still sound every moment", () => {
    const timeline = compiled({ ...gullrock, voice: { detail: "tones" } });
    const channels = new Set(timeline.sections.flatMap((s) => s.cues.map((cue) => cue.channel)));
    expect([...channels]).toEqual(["tone"]);
    expect(timeline.sections.every((section) => section.cues.length > 0)).toBe(true);
  });

  test("what found no room is left with what was wanted and why", () => {
    const hasty = { ...gullrock, tank: { ...gullrock.tank, pourIn: 2, pourOut: 2 } };
    const left = compiled(hasty).sections.flatMap((section) => section.left);
    expect(left.length).toBeGreaterThan(0);
    for (const { wanted, why } of left) {
      expect(wanted).toMatch(/\w/);
      expect(why).toMatch(/\.$/);
    }
  });
});

describe("The checks of the laws", () => {
  test("see each law broken", () => {
    const timeline = compiled(gullrock);
    const broken = (change: (cue: (typeof timeline.sections)[0]["cues"][0]) => object | null) => ({
      ...timeline,
      sections: timeline.sections.map((section) => ({
        ...section,
        cues: section.cues.flatMap((cue) => {
          const changed = change(cue);
          return changed === null ? [] : [{ ...cue, ...changed }];
        }),
      })),
    });
    expect(brokenLaws(timeline)).toEqual([]);
    expect(brokenLaws(broken((cue) => (cue.kind === "now" ? null : {})))).not.toEqual([]);
    expect(
      brokenLaws(broken((cue) => (cue.kind === "now" ? { at: cue.at + 0.01 } : {}))),
    ).not.toEqual([]);
    expect(brokenLaws(broken((cue) => (cue.kind === "prepare" ? null : {})))).not.toEqual([]);
    expect(brokenLaws(broken((cue) => (cue.says ? { until: cue.until + 5 } : {})))).not.toEqual([]);
    const onlyNows = broken((cue) => (cue.kind === "now" || cue.says ? {} : null));
    expect(brokenLaws(onlyNows)).not.toEqual([]);
  });
});
