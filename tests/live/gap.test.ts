// Clocks that go wrong in the middle of a bath: sleep, freezing, a clock that is set, sound that stands still, a
// page that is late. Told apart by the three clocks, each handled as what it is.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { gapBetween } from "../../src/live/gap.ts";
import { gullrock } from "../plan/worksheets.ts";
import { compiled } from "../timeline/scene.ts";
import { runByHand } from "./by-hand.ts";
import { acrossIn, isSummary, lateIn, lostIn, twiceIn } from "./ear.ts";

const { sections } = compiled(gullrock);
const developer = sections.findIndex(({ id }) => id === "developer");
const at = fc.double({ min: 1, max: 600, noNaN: true });

/** Some seconds into the developer, looked at a second ago at most. */
function developing(seconds: number) {
  const here = runByHand(gullrock);
  here.pressThrough(developer + 1);
  here.wait(seconds);
  return here;
}
type Here = ReturnType<typeof developing>;

const elapsed = ({ run }: Here): number => {
  const now = run.position();
  return now.kind === "timed" ? now.elapsed : Number.POSITIVE_INFINITY;
};
const notes = ({ run }: Here) =>
  run
    .journal()
    .entries.flatMap((entry) =>
      entry.kind === "woke" ? [entry.from] : entry.kind === "clock-set" ? [entry.kind] : [],
    );

/** Two minutes on: every moment in its time, one late cue at most, one summary at most, never two voices. */
function heardWell(here: Here, woke: number, summaries: number): void {
  const [section] = here.run.journal().timeline.sections.slice(developer);
  if (section === undefined) throw new Error("a development has a developer");
  const before = here.ears().length;
  const into = elapsed(here);
  here.look();
  const pressedAt = here.run.begunAt();
  here.wait(120);
  const ears = here.ears();
  const since = ears.slice(before);
  expect(lostIn(ears, section, pressedAt, into + 0.01, into + 119)).toEqual([]);
  expect(twiceIn(ears, section)).toEqual([]);
  const late = lateIn(since, section, pressedAt).filter((by) => by < 1000);
  expect(late.length).toBeLessThanOrEqual(1);
  for (const by of late) expect(by).toBeLessThanOrEqual(0.5);
  const said = since.flatMap(({ cue }) => (cue.says && isSummary(cue.says) ? [cue.says] : []));
  expect(said).toHaveLength(summaries);
  expect(acrossIn(since)).toEqual([]);
  expect(since.filter((each) => each.at < woke - 1e-6)).toEqual([]);
}

describe("A gap", () => {
  test("in which the device slept moves the run on by what the wall clock says, told of once", () => {
    fc.assert(
      fc.property(at, fc.double({ min: 3, max: 400, noNaN: true }), (seconds, slept) => {
        const here = developing(seconds);
        const before = elapsed(here);
        here.shift({ steady: 0.2, wall: (slept + 0.2) * 1000, audio: 0.05 });
        here.look();
        expect(notes(here)).toEqual(["asleep"]);
        const now = here.run.position();
        if (now.kind !== "timed") return;
        expect(now.elapsed).toBeCloseTo(before + slept + 0.2, 3);
        heardWell(here, 0, 1);
      }),
      { numRuns: 40 },
    );
  });

  test("in which the page was frozen, its sound with it, lets nothing stale be heard", () => {
    fc.assert(
      fc.property(at, fc.constantFrom(8, 20, 90), (seconds, frozen) => {
        const here = developing(seconds);
        const before = elapsed(here);
        here.shift({ steady: frozen, wall: frozen * 1000 });
        const woke = here.clocks().steady;
        here.look();
        expect(notes(here)).toEqual(["frozen"]);
        const now = here.run.position();
        if (now.kind !== "timed") return;
        expect(now.elapsed).toBeCloseTo(before + frozen, 6);
        heardWell(here, woke, 1);
      }),
      { numRuns: 40 },
    );
  });

  test("in which the wall clock was set is noted, moves nothing and is not told", () => {
    fc.assert(
      fc.property(at, fc.constantFrom(3600, -3600, 20, -20), (seconds, by) => {
        const here = developing(seconds);
        const before = elapsed(here);
        here.shift({ wall: by * 1000 });
        here.look();
        expect(notes(here)).toEqual(["clock-set"]);
        expect(elapsed(here)).toBeCloseTo(before, 9);
        heardWell(here, 0, 0);
        const section = here.planned.sections[developer];
        const pressedAt = here.run.begunAt();
        const so = here.ears().filter((each) => each.at >= pressedAt);
        expect(so.map(({ cue }) => cue)).toEqual(
          section?.cues.filter((cue) => pressedAt + cue.at < here.clocks().steady),
        );
      }),
      { numRuns: 20 },
    );
  });

  test("in which sound alone stood still puts every moment after it right, and tells of what was missed", () => {
    fc.assert(
      fc.property(at, fc.double({ min: 0.3, max: 5, noNaN: true }), (seconds, stood) => {
        const here = developing(seconds);
        here.setSounding(false);
        here.wait(stood, 1);
        here.setSounding(true);
        const into = elapsed(here);
        const woke = here.clocks().steady;
        here.look();
        expect(notes(here)).toEqual([stood > 3 ? "frozen" : "silent"]);
        const missed = sections[developer]?.moments.some(
          (moment) =>
            ["pour-in", "agitate", "rest", "pour-out"].includes(moment.do) &&
            moment.at >= into - stood &&
            moment.at < into - 0.5,
        );
        if (!Number.isFinite(into)) return;
        heardWell(here, woke, stood >= 2 || missed ? 1 : 0);
      }),
      { numRuns: 60 },
    );
  });

  test("of a page that was merely late is none: nothing is said and all is heard", () => {
    fc.assert(
      fc.property(at, fc.double({ min: 1, max: 40, noNaN: true }), (seconds, late) => {
        const here = developing(seconds);
        here.wait(late, late);
        expect(notes(here)).toEqual([]);
        const pressedAt = here.run.begunAt();
        const heard = here.ears().filter((each) => each.at >= pressedAt);
        const to = here.clocks().steady - pressedAt;
        const due = here.planned.sections[developer]?.cues.filter((cue) => cue.at < to) ?? [];
        expect(heard.map(({ cue }) => cue).slice(0, due.length)).toEqual(due);
      }),
      { numRuns: 30 },
    );
  });

  test("is told from every other by the clocks alone", () => {
    const clocks = { life: "one", steady: 100, wall: 1e12, audio: 7 };
    const kindAfter = (steady: number, wall: number, audio: number) =>
      gapBetween(clocks, {
        life: "one",
        steady: 100 + steady,
        wall: 1e12 + wall * 1000,
        audio: 7 + audio,
      }).kind;
    expect(kindAfter(1, 1, 1)).toBe("none");
    expect(kindAfter(20, 20, 20)).toBe("none");
    expect(kindAfter(1, 1, 0.98)).toBe("none");
    expect(kindAfter(1, 601, 0.9)).toBe("asleep");
    expect(kindAfter(8, 8, 0)).toBe("frozen");
    expect(kindAfter(1, 1, 0.6)).toBe("silent");
    expect(kindAfter(1, 3601, 1)).toBe("clock-set");
    expect(kindAfter(1, -3599, 1)).toBe("clock-set");
  });
});
