import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { pressesOf } from "../../src/live/journal.ts";
import { gullrock } from "../plan/worksheets.ts";
import { compiled } from "../timeline/scene.ts";
import { runByHand } from "./by-hand.ts";

const timeline = compiled(gullrock);
const developer = timeline.sections.findIndex((section) => section.id === "developer");

describe("A run", () => {
  test("waits for a press before anything sounds", () => {
    const { run, sounded, wait } = runByHand(gullrock);
    wait(120);
    expect(sounded()).toEqual([]);
    expect(run.position().kind).toBe("waiting");
  });

  test("sounds every cue of a section once, each at the press plus its own time", () => {
    const here = runByHand(gullrock);
    here.pressThrough(developer + 1);
    const section = here.planned.sections[developer];
    here.wait((section?.seconds ?? 0) + 5);
    const heard = here.sounded();
    const origin = heard.find(({ cue }) => cue === section?.cues[0]);
    const from = (origin?.at ?? 0) - (section?.cues[0]?.at ?? 0);
    for (const cue of section?.cues ?? []) {
      const times = heard.filter((each) => each.cue === cue).map((each) => each.at);
      expect(times).toHaveLength(1);
      expect(times[0]).toBeCloseTo(from + cue.at, 9);
    }
  });

  test("never lays more than a window's worth of sound ahead", () => {
    const here = runByHand(gullrock);
    here.pressThrough(developer + 1);
    const now = here.run.position();
    expect(now.kind).toBe("timed");
    const latest = Math.max(...here.sounded().map(({ at }) => at));
    const first = here.sounded().find(({ cue }) => cue.kind === "now")?.at ?? 0;
    expect(latest - first).toBeLessThan(45);
  });

  test("loses no moment when the looks come seconds late", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 35, noNaN: true }), (step) => {
        const here = runByHand(gullrock);
        here.pressThrough(developer + 1);
        here.wait(timeline.sections[developer]?.seconds ?? 0, step);
        const heard = new Set(here.sounded().map(({ cue }) => cue));
        const nows =
          here.planned.sections[developer]?.cues.filter((cue) => cue.kind === "now") ?? [];
        expect(nows.every((cue) => heard.has(cue))).toBe(true);
      }),
      { numRuns: 25 },
    );
  });

  test("after a gap, stale words and beats are not spoken in a burst", () => {
    const here = runByHand(gullrock);
    here.pressThrough(developer + 1);
    const before = here.sounded().length;
    here.wait(180, 180);
    const late = here.sounded().slice(before);
    const now = Math.min(...late.map(({ at }) => at));
    const atOnce = late.filter(({ at }) => at < now + 0.5);
    expect(late.length).toBeGreaterThan(0);
    expect(atOnce.length).toBeLessThanOrEqual(1);
  });

  test("goes on by a press only where it waits", () => {
    const here = runByHand(gullrock);
    here.pressThrough(developer + 1);
    here.wait(20);
    const before = here.run.position();
    here.press();
    const after = here.run.position();
    expect(before.kind).toBe("timed");
    expect(after).toEqual(before);
    expect(pressesOf(here.run.journal().entries).map((press) => press.section)).toEqual(
      timeline.sections.slice(0, developer + 1).map((section) => section.id),
    );
  });

  test("says that it lives while it waits", () => {
    const here = runByHand(gullrock);
    here.press();
    here.wait(200);
    const confirms = here.sounded().filter(({ cue }) => cue.kind === "confirm");
    expect(confirms.length).toBeGreaterThanOrEqual(4);
    const gaps = confirms.slice(1).map(({ at }, i) => at - (confirms[i]?.at ?? 0));
    for (const gap of gaps) expect(gap).toBeCloseTo(30, 6);
  });

  test("a press silences what the section before still had to say", () => {
    const here = runByHand(gullrock);
    here.press();
    here.wait(2);
    here.press();
    here.wait(60);
    const first = new Set(here.planned.sections[0]?.cues);
    const spoken = here.sounded().filter(({ cue, at }) => first.has(cue) && at > 102);
    expect(spoken).toEqual([]);
  });

  test("is over after the last section, and a press then begins nothing", () => {
    const here = runByHand(gullrock);
    here.pressThrough(timeline.sections.length);
    here.wait(60);
    expect(here.run.position().kind).toBe("over");
    here.press();
    expect(pressesOf(here.run.journal().entries)).toHaveLength(timeline.sections.length);
  });
});

describe("Clocks that go on between two readings of them", () => {
  test("cut no word off and lay nothing anew: a section's press stays where it was, to the microsecond", () => {
    // As on a clock in steps of a millisecond, or on a page that was kept waiting in between.
    for (const step of [0.0011, 0.02]) {
      let read = 0;
      const tick = () => {
        read += 1;
        return read % 3 === 0 ? step : 0;
      };
      const here = runByHand(gullrock, { tick });
      here.pressThrough(developer + 1);
      here.wait(30);
      const begun = here.run.begunAt();
      here.run.hush(false);
      here.run.sayAt(here.run.detail());
      here.run.fallSilent();
      here.wait(60);
      expect(Math.abs(here.run.begunAt() - begun)).toBeLessThan(1e-6);
      const pressedAt = here.run.begunAt();
      const cues = here.planned.sections[developer]?.cues ?? [];
      const cut = here.heard.filter(
        ({ cue, at, stoppedAt }) => cues.includes(cue) && at > pressedAt && stoppedAt !== null,
      );
      expect(cut).toEqual([]);
    }
  });
});

describe("Two presses in a row", () => {
  test("take back the start that the first one made, and tell where we are", () => {
    const here = runByHand(gullrock);
    here.press();
    here.wait(40);
    here.press();
    here.wait(0.3, 0.1);
    here.press();
    here.wait(30);
    expect(pressesOf(here.run.journal().entries)).toHaveLength(1);
    const position = here.run.position();
    expect(position.kind === "waiting" && position.section?.id).toBe("lay-out");
    const second = new Set(here.planned.sections[1]?.cues);
    expect(here.sounded().filter(({ cue }) => second.has(cue))).toEqual([]);
    const again = here
      .sounded()
      .filter(({ cue }) => cue.says === timeline.sections[0]?.cues[0]?.says);
    expect(again).toHaveLength(2);
  });

  test("a bounce of a wet finger is no second press", () => {
    const here = runByHand(gullrock);
    here.press();
    here.wait(0.05, 0.05);
    here.press();
    here.wait(10);
    expect(pressesOf(here.run.journal().entries)).toHaveLength(1);
  });
});

describe("“Where are we?”", () => {
  test("never speaks over a moment or its count-in, nor over other words, whenever it is asked", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 640, noNaN: true }), (seconds) => {
        const here = runByHand(gullrock);
        here.pressThrough(developer + 1);
        here.wait(seconds);
        here.run.where();
        here.wait(60);
        const heard = here.sounded();
        const words = heard.filter(({ cue }) => cue.channel === "voice");
        const moments = heard.filter(({ cue }) => cue.kind === "now");
        for (const { cue, at } of words) {
          const until = at + cue.until - cue.at;
          for (const now of moments) {
            expect(at < now.at && until > now.at - 0.99, `${cue.says} before ${now.at}`).toBe(
              false,
            );
          }
        }
        const inOrder = words.toSorted((a, b) => a.at - b.at);
        for (const [i, { cue, at, stoppedAt }] of inOrder.entries()) {
          const next = inOrder[i + 1];
          const until = stoppedAt ?? at + cue.until - cue.at;
          if (next !== undefined) expect(next.at - until).toBeGreaterThan(-1e-6);
        }
      }),
      { numRuns: 60 },
    );
  });

  test("tells the bath, how much is left and what comes next", () => {
    const here = runByHand(gullrock);
    here.pressThrough(developer + 1);
    here.wait(18 + 34);
    here.run.where();
    const said = here
      .sounded()
      .flatMap(({ cue: { says } }) => (says?.startsWith("You are") ? [says] : []));
    expect(said).toEqual([
      "You are in the developer. Eight minutes. And fifty-five seconds left. What comes next is agitation.",
    ]);
  });
});
