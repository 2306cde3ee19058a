import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Entry, Happening } from "../../src/live/journal.ts";
import { type Judged, judgedOf, practiseOf, practiseTells, WELL } from "../../src/live/judged.ts";
import { planOf } from "../../src/plan/plan.ts";
import { rehearsalSteps } from "../../src/process/rehearsal.ts";
import { compileSteps } from "../../src/timeline/timeline.ts";
import { gullrock } from "../plan/worksheets.ts";
import { english, estimatedLengths } from "../timeline/scene.ts";

const plan = planOf(gullrock);
const steps = rehearsalSteps(gullrock, plan, { factor: 1 / 2, why: false });
const timeline = compileSteps(steps, gullrock, plan, english, estimatedLengths(1));
const baths = timeline.sections.filter(({ seconds }) => seconds > 0);

const entry = (at: number, happening: Happening): Entry => ({
  life: "first",
  steady: 100 + at,
  wall: 1_700_000_000_000 + at * 1000,
  ...happening,
});

interface Due {
  readonly section: string;
  readonly deed: string;
  readonly bath: string;
  readonly at: number;
}

const due = (deeds: readonly string[]): readonly Due[] =>
  baths.flatMap(({ id, moments }) =>
    moments.flatMap((it) =>
      deeds.includes(it.do) ? [{ section: id, deed: it.do, bath: it.bath ?? "", at: it.at }] : [],
    ),
  );
const pours = due(["pour-in", "pour-out"]);
const bouts = due(["agitate"]);

/** Every bath of the rehearsal, pressed for as the one before it is over, with the marks given. */
function judged(marks: readonly { readonly section: string; readonly at: number }[]) {
  let now = 0;
  const entries = baths.flatMap(({ id, seconds }) => {
    const pressedAt = now;
    now += seconds + 20;
    const here = marks.filter(({ section }) => section === id).toSorted((a, b) => a.at - b.at);
    return [
      entry(pressedAt, { kind: "pressed", section: id }),
      ...here.map(({ at }) => entry(pressedAt + at, { kind: "marked", section: id })),
    ];
  });
  const all = [...entries, entry(now, { kind: "pressed", section: "practise" })];
  return judgedOf({ timeline, entries: all });
}

const off = (marks: readonly Due[], which: (it: Due) => boolean, by: number) =>
  marks.map((it) => (which(it) ? { ...it, at: it.at + by } : it));
const wrong = (all: readonly Judged[]) => all.filter(({ how }) => how !== "well");
const is = (bath: string, deed: string) => (it: Due) => it.bath === bath && it.deed === deed;

describe("How a rehearsal's moments were met", () => {
  test("is well for every mark within a second and a half, before or after, bouts or none", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -WELL, max: WELL, noNaN: true }), {
          minLength: pours.length + bouts.length,
          maxLength: pours.length + bouts.length,
        }),
        fc.boolean(),
        (errors, also) => {
          const wanted = also ? [...pours, ...bouts] : pours;
          // A hair inside, since the clocks' own sums are not exact.
          const marks = wanted.map((it, i) => ({ ...it, at: it.at + (errors[i] ?? 0) * 0.999 }));
          const all = judged(marks);
          expect(wrong(all)).toEqual([]);
          expect(all).toHaveLength(wanted.length);
        },
      ),
      { numRuns: 100 },
    );
  });

  test("is late or early by as much as one pour was off, and well for all the others", () => {
    fc.assert(
      fc.property(
        fc.nat(pours.length - 1),
        fc.double({ min: WELL + 0.01, max: 3.5, noNaN: true }),
        fc.boolean(),
        (which, by, isLate) => {
          const one = pours[which];
          const all = judged(off(pours, (it) => it === one, isLate ? by : -by));
          expect(all).toHaveLength(pours.length);
          const [found, ...more] = wrong(all);
          expect(more).toEqual([]);
          expect(found?.how).toBe(isLate ? "late" : "early");
          expect(found).toMatchObject({ bath: one?.bath, deed: one?.deed, at: one?.at });
          expect(Math.abs(found?.by ?? 0)).toBeCloseTo(by, 6);
        },
      ),
    );
  });

  test("is missed for a pour that was not marked, and never for a bout", () => {
    const some = pours.filter((it) => !is("fixer", "pour-in")(it));
    expect(wrong(judged(some))).toEqual([
      { bath: "fixer", deed: "pour-in", at: 8, how: "missed", by: 0 },
    ]);
  });

  test("is not asked where nobody marked anything", () => {
    expect(judged([])).toEqual([]);
    expect(practiseTells(judged([]))).toEqual(["practise.unmarked"]);
  });

  test("takes of two marks the nearer, and none that is far from everything", () => {
    const twice = pours.map((it) => ({ ...it, at: it.at + 0.4 }));
    const inWash = { section: "wash", deed: "", bath: "", at: 120 };
    expect(wrong(judged([...pours, ...twice, inWash]))).toEqual([]);
  });

  test("leaves out what was taken back, and what was not yet due as it was left", () => {
    const at = (of: string) => pours.find(is("developer", of))?.at ?? 0;
    const left = judgedOf({
      timeline,
      entries: [
        entry(0, { kind: "pressed", section: "developer" }),
        entry(3, { kind: "marked", section: "developer" }),
        entry(4, { kind: "taken-back" }),
        entry(at("pour-in"), { kind: "marked", section: "developer" }),
        entry(30, { kind: "ended", how: "left" }),
      ],
    });
    expect(left).toEqual([
      { bath: "developer", deed: "pour-in", at: at("pour-in"), how: "well", by: 0 },
    ]);
  });
});

describe("What is worth practising", () => {
  test("is at most three things, the most harmful first", () => {
    const marks = [
      [is("wash", "pour-in"), 9],
      [is("fixer", "pour-in"), 3],
      [is("fixer", "pour-out"), -3],
      [is("developer", "pour-out"), 2],
      [is("stop", "pour-in"), 2.5],
    ] as const;
    const all = judged(
      marks.reduce<readonly Due[]>((so, [which, by]) => off(so, which, by), pours),
    );
    expect(wrong(all)).toHaveLength(5);
    expect(practiseOf(all)).toEqual([
      { bath: "stop", deed: "pour-in", how: "late" },
      { bath: "developer", deed: "pour-out", how: "late" },
      { bath: "wash", deed: "pour-in", how: "late" },
    ]);
  });

  test("is one thing where the same went the same way again and again", () => {
    const tardy = off([...pours, ...bouts], (it) => it.deed === "agitate", 2);
    const all = judged(tardy);
    expect(wrong(all).length).toBeGreaterThan(5);
    const baths = practiseOf(all).map(({ bath, deed, how }) => `${bath} ${deed} ${how}`);
    expect(new Set(baths).size).toBe(baths.length);
    expect(baths[0]).toBe("developer agitate late");
  });

  test("is told in sentences that the script has, or that all was well", () => {
    expect(practiseTells(judged(pours))).toEqual(["practise.well"]);
    const told = practiseTells(judged(off(pours, is("developer", "pour-out"), 3)));
    expect(told).toEqual([
      "practise.these",
      { key: "practise.pour-out.late", slots: { bath: "developer" } },
    ]);
    for (const tell of told) {
      const { key, slots } = typeof tell === "string" ? { key: tell, slots: {} } : tell;
      expect(english.say(key, "full", slots).length).toBeGreaterThan(0);
    }
  });
});
