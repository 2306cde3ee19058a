// Clocks that go wrong in the middle of a bath: sleep, freezing, a clock that is set, sound that stands still, a
// page that is late. Told apart by the three clocks, each handled as what it is.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { heardAt, watchFrom } from "../../src/live/gap.ts";
import {
  anySecond,
  developer,
  developing,
  elapsed,
  heardWell,
  notes,
  sections,
} from "./gaps-by-hand.ts";

describe("A gap", () => {
  test("in which the device slept moves the run on by what the wall clock says, told of once", () => {
    fc.assert(
      fc.property(anySecond, fc.double({ min: 3, max: 400, noNaN: true }), (seconds, slept) => {
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
      fc.property(anySecond, fc.constantFrom(8, 20, 90), (seconds, frozen) => {
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
      fc.property(anySecond, fc.constantFrom(3600, -3600, 20, -20), (seconds, by) => {
        const here = developing(seconds);
        const before = elapsed(here);
        here.shift({ wall: by * 1000 });
        here.look();
        here.wait(3);
        expect(notes(here)).toEqual(["clock-set"]);
        expect(elapsed(here)).toBeCloseTo(before + 3, 9);
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
      fc.property(anySecond, fc.double({ min: 0.3, max: 5, noNaN: true }), (seconds, stood) => {
        const here = developing(seconds);
        here.setSounding(false);
        here.wait(stood, 1);
        here.setSounding(true);
        const into = elapsed(here);
        const woke = here.clocks().steady;
        here.look();
        expect(notes(here)).toEqual(["silent"]);
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
      fc.property(anySecond, fc.double({ min: 1, max: 40, noNaN: true }), (seconds, late) => {
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
    const after = (steady: number, wall: number, audio: number) => ({
      life: "one",
      steady: 100 + steady,
      wall: 1e12 + wall * 1000,
      audio: 7 + audio,
    });
    const found = (...readings: readonly (readonly [number, number, number])[]) => {
      let watch = watchFrom(clocks);
      return readings.flatMap((reading) => {
        const { gaps, ...next } = heardAt(watch, after(...reading));
        watch = next.watch;
        return gaps.map((gap) => (gap.kind === "woke" ? gap.from : gap.kind));
      });
    };
    expect(found([1, 1, 1])).toEqual([]);
    expect(found([20, 20, 20])).toEqual([]);
    expect(found([1, 1, 0.98])).toEqual([]);
    expect(found([1, 601, 0.9])).toEqual(["asleep"]);
    expect(found([8, 8, 0])).toEqual(["frozen"]);
    expect(found([1, 1, 0.6])).toEqual(["silent"]);
    expect(found([1, -3599, 1])).toEqual(["clock-set"]);
    // Which of two a wall clock that is ahead means shows only as sound goes on.
    expect(found([1, 3601, 1], [2, 3602, 2])).toEqual([]);
    expect(found([1, 3601, 1], [2, 3602, 2], [2.5, 3602.5, 2.5])).toEqual(["clock-set"]);
    expect(found([1, 3601, 0.98], [2, 3602, 1.3])).toEqual(["asleep"]);
    expect(found([1, 3601, 1], [2, 2, 2], [3, 3, 3])).toEqual([]);
  });
});
