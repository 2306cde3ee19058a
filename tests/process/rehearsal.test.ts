import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planOf } from "../../src/plan/plan.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import type { Moment } from "../../src/process/moments.ts";
import { LEAD, type Step, stepsOf } from "../../src/process/process.ts";
import { LEAST_REST, rehearsalSteps, shortened } from "../../src/process/rehearsal.ts";
import { gullrock } from "../plan/worksheets.ts";
import { anyWorksheet } from "../timeline/any-worksheet.ts";

const anyFactor = fc.oneof(
  fc.constantFrom(0, 1 / 4, 1 / 2, 1),
  fc.double({ min: 0, max: 1, noNaN: true }),
);
const run = (worksheet: Worksheet) => stepsOf(worksheet, planOf(worksheet), LEAD);
const rehearsed = (worksheet: Worksheet, factor: number, why = false) =>
  rehearsalSteps(worksheet, planOf(worksheet), { factor, why });
const timed = (steps: readonly Step[]) => steps.filter(({ stays }) => stays.length > 0);
/** What is done, apart from when. */
const done = ({ at: _, ...rest }: Moment) => rest;
/** Times are whole microseconds: two of them may each be off by half of one. */
const EXACT = 1.1e-6;

/** From each moment to the next, and whether the hands rest meanwhile: written from the promise alone. */
function stretches({ moments }: Step) {
  return moments.slice(1).map((moment, i) => {
    const before = moments[i];
    const isRest =
      ["full", "rest", "tap"].includes(before?.do ?? "") &&
      ["agitate", "pour-out"].includes(moment.do);
    return { isRest, lasts: moment.at - (before?.at ?? 0) };
  });
}

describe("A rehearsal, of any worksheet and by any factor,", () => {
  test("has the same moments in the same order, and the same baths from the same vessels", () => {
    fc.assert(
      fc.property(anyWorksheet, anyFactor, fc.boolean(), (worksheet, factor, why) => {
        const [planned, here] = [timed(run(worksheet)), timed(rehearsed(worksheet, factor, why))];
        expect(here.map(({ id }) => id)).toEqual(planned.map(({ id }) => id));
        const deeds = (steps: readonly Step[]) => steps.map((step) => step.moments.map(done));
        expect(deeds(here)).toEqual(deeds(planned));
        const vessels = (steps: readonly Step[]) =>
          steps.flatMap(({ stays }) => stays.map(({ bath, vessel }) => `${bath} ${vessel}`));
        expect(vessels(here)).toEqual(vessels(planned));
      }),
      { numRuns: 300 },
    );
  });

  test("shortens every rest by the factor, none below what its words need, and nothing else at all", () => {
    fc.assert(
      fc.property(anyWorksheet, anyFactor, (worksheet, factor) => {
        const here = timed(rehearsed(worksheet, factor)).map(stretches);
        for (const [i, step] of timed(run(worksheet)).entries()) {
          for (const [j, { isRest, lasts }] of stretches(step).entries()) {
            const wanted = Math.max(factor * lasts, Math.min(lasts, LEAST_REST));
            const is = here[i]?.[j]?.lasts ?? 0;
            expect(Math.abs(is - (isRest ? wanted : lasts))).toBeLessThan(EXACT);
          }
          // What comes before the first pour and after the last is for words.
          const there = timed(rehearsed(worksheet, factor))[i];
          expect(there?.moments[0]?.at).toBe(step.moments[0]?.at);
          const tail = (of: Step | undefined) => (of?.seconds ?? 0) - (of?.moments.at(-1)?.at ?? 0);
          expect(Math.abs(tail(there) - tail(step))).toBeLessThan(EXACT);
        }
      }),
      { numRuns: 200 },
    );
  });

  test("keeps the stays of its baths and their moments together", () => {
    fc.assert(
      fc.property(anyWorksheet, anyFactor, (worksheet, factor) => {
        for (const { moments, stays } of timed(rehearsed(worksheet, factor))) {
          const at = (deed: string) => moments.filter((it) => it.do === deed).map((it) => it.at);
          expect(stays.map(({ pourIn }) => pourIn)).toEqual(at("pour-in"));
          expect(stays.map(({ full }) => full)).toEqual(at("full"));
          expect(stays.map(({ pourOut }) => pourOut)).toEqual(at("pour-out"));
        }
      }),
      { numRuns: 100 },
    );
  });

  test("is never dark", () => {
    fc.assert(
      fc.property(anyWorksheet, anyFactor, (worksheet, factor) => {
        expect(rehearsed(worksheet, factor).some(({ dark }) => dark)).toBe(false);
      }),
      { numRuns: 50 },
    );
  });

  test("tells a reason before its bath, each once, and changes no time by it", () => {
    fc.assert(
      fc.property(anyWorksheet, anyFactor, (worksheet, factor) => {
        const [with_, without] = [rehearsed(worksheet, factor, true), rehearsed(worksheet, factor)];
        expect(timed(with_)).toEqual(timed(without));
        const reasons = with_.filter(({ id }) => id.startsWith("why"));
        expect(reasons.length).toBeGreaterThan(0);
        expect(new Set(reasons.map(({ id }) => id)).size).toBe(reasons.length);
        const told = reasons.flatMap(({ tells }) => tells);
        expect(new Set(told).size).toBe(told.length);
        for (const each of reasons) {
          expect(each.seconds).toBe(0);
          expect(with_[with_.indexOf(each) + 1]?.stays.length).toBeGreaterThan(0);
        }
      }),
      { numRuns: 100 },
    );
  });

  test("with reasons, tells unasked what each step says more of, before its press; without, not", () => {
    let told = 0;
    fc.assert(
      fc.property(anyWorksheet, anyFactor, (worksheet, factor) => {
        const without = rehearsed(worksheet, factor);
        for (const step of rehearsed(worksheet, factor, true).filter(
          ({ more }) => more.length > 0,
        )) {
          const plain = without.find(({ id }) => id === step.id);
          const said = plain?.tells ?? [];
          expect(step.tells).toEqual([...said.slice(0, -1), ...step.more, said.at(-1)]);
          expect(String(said.at(-1))).toMatch(/^press\./);
          for (const key of step.more) expect(said).not.toContain(key);
          told += 1;
        }
      }),
      { numRuns: 100 },
    );
    expect(told).toBeGreaterThan(100);
  });
});

describe("A rehearsal", () => {
  test("by the factor 1 has every time of the run", () => {
    fc.assert(
      fc.property(anyWorksheet, (worksheet) => {
        for (const step of run(worksheet)) expect(shortened(step, 1)).toEqual(step);
      }),
      { numRuns: 200 },
    );
  });

  test("by a quarter makes rests of 50 s twelve and a half, and leaves a quarter of the wash", () => {
    const steps = timed(rehearsed(gullrock, 1 / 4));
    const developer = steps.find(({ id }) => id === "developer");
    const bouts = developer?.moments.filter((it) => it.do === "agitate" && it.bath === "developer");
    const gaps = bouts?.slice(2).map(({ at }, i) => at - (bouts[i + 1]?.at ?? 0));
    expect(new Set(gaps)).toEqual(new Set([12.5 + 10]));
    const wash = steps.find(({ id }) => id === "wash")?.stays[0];
    const planned = timed(run(gullrock)).find(({ id }) => id === "wash")?.stays[0];
    expect((wash?.pourOut ?? 0) - (wash?.full ?? 0)).toBe(
      ((planned?.pourOut ?? 0) - (planned?.full ?? 0)) / 4,
    );
  });

  test("opens with what it is, ends with what to practise, and every step asks for its press", () => {
    for (const why of [true, false]) {
      const steps = rehearsed(gullrock, 1 / 4, why);
      expect(steps[0]?.tells[0]).toBe("rehearse");
      expect(steps.at(-1)?.id).toBe("practise");
      const asks = (step: Step) => {
        const last = step.tells.at(-1);
        return typeof last === "string" && (last.startsWith("press.") || last === "next.section");
      };
      for (const [i, step] of steps.slice(0, -1).entries()) {
        // A bath asks by itself, and for the bath that comes next.
        const byItself = step.stays.length > 0 || (steps[i + 1]?.stays.length ?? 0) > 0;
        expect(asks(step), step.id).toBe(!byItself);
      }
    }
  });
});
