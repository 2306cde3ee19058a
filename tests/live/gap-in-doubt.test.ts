// Clocks that go wrong in a way that the first look cannot tell, or before a press: held open, decided by what sound
// does then, and never counted for what came after.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { gullrock } from "../plan/worksheets.ts";
import { runByHand } from "./by-hand.ts";
import { isSummary } from "./ear.ts";
import {
  anySecond,
  developer,
  developing,
  elapsed,
  heardWell,
  notes,
  saidSince,
} from "./gaps-by-hand.ts";

describe("A gap", () => {
  test("in which the device slept is one though it is looked at before sound can have stood still for long", () => {
    fc.assert(
      fc.property(
        anySecond,
        fc.double({ min: 3, max: 400, noNaN: true }),
        fc.double({ min: 0, max: 0.06, noNaN: true }),
        fc.boolean(),
        (seconds, slept, first, looks) => {
          const here = developing(seconds);
          const before = elapsed(here);
          here.shift({ steady: first, wall: (slept + first) * 1000 });
          here.look();
          expect(notes(here)).toEqual([]);
          if (looks) here.setSounding(false);
          here.shift({ steady: 0.3, wall: 300, audio: looks ? 0 : 0.1 });
          here.look();
          expect(notes(here)).toEqual(["asleep"]);
          here.setSounding(true);
          const now = here.run.position();
          if (now.kind !== "timed") return;
          expect(now.elapsed).toBeCloseTo(before + slept + first + 0.3, 3);
          heardWell(here, 0, 1);
        },
      ),
      { numRuns: 40 },
    );
  });

  test("in which the device fell asleep a little after its sound is counted once, and told of once", () => {
    const here = developing(100);
    here.setSounding(false);
    here.wait(4);
    here.shift({ steady: 0.2, wall: 300_200 });
    here.look();
    expect(notes(here)).toEqual(["asleep"]);
    expect(elapsed(here)).toBeCloseTo(404.2, 3);
    here.wait(1);
    here.setSounding(true);
    heardWell(here, 0, 1);
    expect(notes(here)).toEqual(["asleep", "silent"]);
    expect(saidSince(here, 104).find(isSummary)).toMatch(/five minutes/);
  });

  test("of sound alone, in which the clock was set, counts no hour, and is not told of as known", () => {
    for (const set of [3600, 600]) {
      const here = developing(100);
      const woke = here.clocks().steady;
      here.setSounding(false);
      here.wait(30);
      here.shift({ wall: set * 1000 });
      here.wait(30);
      here.setSounding(true);
      here.wait(20);
      expect(elapsed(here)).toBeCloseTo(180, 6);
      expect(notes(here)).toEqual(["clock-set", "silent"]);
      expect(saidSince(here, woke).filter(isSummary)).toEqual([
        expect.stringMatching(/how long I cannot tell.*missed/),
      ]);
    }
  });

  test("of a page that looked on is of its sound alone, however long; of one that did not, the page's own", () => {
    for (const [looks, kind] of [
      [1, "silent"],
      [20, "frozen"],
    ] as const) {
      const here = developing(100);
      here.setSounding(false);
      here.wait(40, looks);
      here.setSounding(true);
      here.wait(1);
      expect(notes(here)).toEqual([kind]);
    }
  });
});

describe("A press that comes before the first look after a sleep", () => {
  /** Waiting for the developer, asleep for ten minutes, and awake for as many seconds. */
  function slept(awake: number, audio: number) {
    const here = runByHand(gullrock);
    here.pressThrough(developer);
    here.wait(60);
    here.shift({ steady: awake, wall: (600 + awake) * 1000, audio });
    return here;
  }

  test("begins a bath that is as old as the press", () => {
    for (const [awake, audio] of [
      [0.3, 0.1],
      [0.01, 0.01],
    ] as const) {
      const here = slept(awake, audio);
      const pressed = here.clocks().steady;
      here.press();
      here.look();
      here.wait(30);
      expect(here.run.position().section?.id).toBe("developer");
      expect(elapsed(here)).toBeCloseTo(30, 6);
      expect(here.run.begunAt()).toBeCloseTo(pressed, 6);
      expect(notes(here)).toEqual(["asleep"]);
      // Nothing was missed, and what the new bath has to say goes before.
      expect(saidSince(here, pressed).filter(isSummary)).toEqual([]);
      const section = here.planned.sections[developer];
      const words = section?.cues.filter(({ at, says }) => says !== undefined && at < 25) ?? [];
      expect(saidSince(here, pressed)).toEqual(
        expect.arrayContaining(words.map(({ says }) => says)),
      );
    }
  });

  test("goes past no call that nobody heard: it is answered with what was missed, and the next one goes on", () => {
    const here = developing(560);
    here.shift({ steady: 0.3, wall: 180_300, audio: 0.1 });
    const pressed = here.clocks().steady;
    here.press();
    expect(here.run.position().kind).toBe("waiting");
    here.wait(20);
    expect(here.run.position().section?.id).toBe("developer");
    const said = saidSince(here, pressed);
    expect(said[0]).toMatch(/three minutes.*missed.*If the developer is still in, pour it out/);
    expect(said.filter(isSummary)).toHaveLength(1);
    here.press();
    expect(here.run.position().section?.id).toBe("fixer");
  });

  test("is what a tank that is empty, a pour and a reading are counted by", () => {
    const asleep = (seconds: number) => {
      const here = developing(seconds);
      here.shift({ steady: 0.3, wall: 30_300, audio: 0.1 });
      return { here, now: here.clocks().steady };
    };
    const emptied = asleep(580);
    emptied.here.run.emptied(emptied.now);
    expect(emptied.here.kept.at(-1)).toHaveProperty("by", expect.closeTo(580 + 30.3 - 599, 3));
    const poured = asleep(10);
    poured.here.run.poured(poured.now);
    expect(poured.here.kept.at(-1)).toHaveProperty("by", expect.closeTo(10 + 30.3 - 8, 3));
    const read = asleep(200);
    read.here.run.read({ f: 71 });
    expect(read.here.kept.map(({ kind }) => kind).slice(-2)).toEqual(["woke", "read"]);
  });
});

describe("A press while it is not known yet why the wall clock is ahead", () => {
  test("takes it for set, where sound has gone on since it was seen", () => {
    const here = developing(200);
    here.shift({ wall: 3_600_000 });
    here.wait(0.01, 0.01);
    here.wait(0.8, 0.8);
    expect(notes(here)).toEqual([]);
    here.run.read({ f: 70 });
    expect(notes(here)).toEqual(["clock-set"]);
    expect(elapsed(here)).toBeCloseTo(200.81, 6);
  });
});
