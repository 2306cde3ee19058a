// A page that dies in the middle of a run, at any second, and is opened again: it is where it would have been.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Clocks } from "../../src/live/clocks.ts";
import type { Entry } from "../../src/live/journal.ts";
import type { Position } from "../../src/live/position.ts";
import { gullrock } from "../plan/worksheets.ts";
import { compiled, english } from "../timeline/scene.ts";
import { runByHand } from "./by-hand.ts";
import { acrossIn, isSummary, lateIn, lostIn, twiceIn } from "./ear.ts";

const { sections } = compiled(gullrock);

type Here = ReturnType<typeof runByHand>;

/** Its journal as the store has it, with when it was last seen alive. */
function left(here: Here): readonly Entry[] {
  const { life, steady, wall } = here.clocks();
  return [...here.kept, { life, steady, wall, kind: "alive" }];
}

/** Opened again after so many seconds by the wall clock, its own steady clock anywhere. */
function openedAgain(here: Here, gone: number, life = "second"): Here {
  const clocks: Clocks = {
    life,
    steady: 3.25,
    wall: here.clocks().wall + gone * 1000,
    audio: 0,
  };
  const again = runByHand(gullrock, { entries: left(here), clocks });
  again.look();
  return again;
}

function expectSame(position: Position, other: Position): void {
  expect(position.kind).toBe(other.kind);
  expect(position.section?.id).toBe(other.section?.id);
  if (position.kind !== "timed" || other.kind !== "timed") return;
  expect(Math.abs(position.elapsed - other.elapsed)).toBeLessThan(1.001e-3);
}

/** What was to be done in a stretch of a section, the gravest of it, as it is spoken of. */
function gravestOf(index: number, from: number, to: number): string {
  const deeds = ["pour-out", "pour-in", "agitate", "rest"];
  const missed = sections[index]?.moments.filter(({ at }) => at >= from && at < to) ?? [];
  const deed = deeds.find((each) => missed.some((moment) => moment.do === each));
  return english.say(`missed.${deed ?? "nothing"}`, "full").join(" ");
}

/** Any second of a run: so many sections pressed for, and some seconds into the last. */
const anywhere = fc
  .integer({ min: 1, max: sections.length - 1 })
  .chain((pressed) =>
    fc.tuple(
      fc.constant(pressed),
      fc.double({ min: 0.5, max: (sections[pressed - 1]?.seconds ?? 0) + 40, noNaN: true }),
    ),
  );
const back = fc.double({ min: -7200, max: -0.1, noNaN: true });
const gone = fc.oneof(
  fc.double({ min: 4, max: 90, noNaN: true }),
  fc.double({ min: 4, max: 1500, noNaN: true }),
);

function runTo([pressed, seconds]: readonly [number, number]): Here {
  const here = runByHand(gullrock);
  here.pressThrough(pressed);
  here.wait(seconds);
  return here;
}

describe("A run whose page died", () => {
  test("is where it would be had it never died, to the millisecond, and its journal has only grown", () => {
    fc.assert(
      fc.property(anywhere, gone, (second, seconds) => {
        const here = runTo(second);
        const before = left(here);
        const again = openedAgain(here, seconds);
        expect(again.run.journal().entries.slice(0, before.length)).toEqual(before);
        here.wait(seconds, 30);
        expectSame(again.run.position(), here.run.position());
      }),
      { numRuns: 60 },
    );
  });

  test("says first what was missed, the gravest alone, and then where it is", () => {
    fc.assert(
      fc.property(anywhere, gone, (second, seconds) => {
        const here = runTo(second);
        const index = second[0] - 1;
        const from = here.clocks().steady - here.run.begunAt();
        const again = openedAgain(here, seconds);
        again.wait(60);
        // Planned words whose time had not gone by may come first, where before a moment they alone have room.
        const planned = new Set(again.planned.sections[index]?.cues);
        const said = again
          .ears()
          .flatMap(({ cue }) => (cue.says === undefined || planned.has(cue) ? [] : [cue.says]));
        expect(said.filter(isSummary)).toHaveLength(1);
        const first = said.findIndex(isSummary);
        expect(first).toBe(0);
        const missed = gravestOf(index, from, from + seconds - 0.5);
        const forms = ["full", "brief", "shortest"] as const;
        const key = Object.keys(english.source.sentences).find(
          (each) => each.startsWith("missed.") && english.say(each, "full").join(" ") === missed,
        );
        const wordings = forms.map((form) => english.say(key ?? "", form).join(" "));
        expect(wordings.some((wording) => said[first]?.includes(wording))).toBe(true);
        const position = again.run.position();
        const next = said[first + 1] ?? "";
        if (position.kind === "timed") expect(next).toMatch(/left|minute|second|next|press/i);
        else expect(next).not.toBe("");
      }),
      { numRuns: 60 },
    );
  });

  test("loses no moment after it, and nothing stale, nothing twice and no burst is heard", () => {
    fc.assert(
      fc.property(anywhere, gone, (second, seconds) => {
        const here = runTo(second);
        const again = openedAgain(here, seconds);
        const section = sections[second[0] - 1];
        if (section === undefined) throw new Error("the run is somewhere");
        const pressedAt = again.run.begunAt();
        const into = again.clocks().steady - pressedAt;
        again.wait(150);
        const ears = again.ears();
        expect(lostIn(ears, section, pressedAt, into + 0.01, into + 149)).toEqual([]);
        expect(twiceIn([...here.ears(), ...ears], section)).toEqual([]);
        const late = lateIn(ears, section, pressedAt);
        expect(late.length).toBeLessThanOrEqual(1);
        for (const by of late) expect(by).toBeLessThanOrEqual(0.5);
        expect(acrossIn(ears)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  test("that dies again and again is still where it would be, though the wall clock was set meanwhile", () => {
    const set = fc.constantFrom(0, 3600, -3600);
    fc.assert(
      fc.property(anywhere, fc.oneof(gone, back), set, gone, (second, seconds, by, more) => {
        const here = runTo(second);
        here.shift({ wall: by * 1000 });
        here.look();
        const again = openedAgain(here, seconds);
        again.wait(7);
        const whole = [...left(here), ...again.kept.filter(({ kind }) => kind !== "alive")];
        expect(again.run.journal().entries).toEqual(whole);
        // What the store holds of both lives: a stamp of being alive is kept once a run goes on from it.
        const stored = [...here.kept, ...again.kept];
        const { wall } = again.clocks();
        const alive: Entry = { ...again.clocks(), kind: "alive" };
        const third = runByHand(gullrock, {
          entries: [...stored, alive],
          clocks: { life: "third", steady: 55, wall: wall + more * 1000, audio: 0 },
        });
        third.look();
        again.wait(more, 30);
        expectSame(third.run.position(), again.run.position());
      }),
      { numRuns: 40 },
    );
  });

  test("says that it cannot tell for how long it was gone, where the wall clock was set back meanwhile", () => {
    fc.assert(
      fc.property(anywhere, back, (second, seconds) => {
        const here = runTo(second);
        const before = here.run.position();
        const again = openedAgain(here, seconds);
        expectSame(again.run.position(), before);
        again.wait(40);
        const said = again.ears().flatMap(({ cue }) => (cue.says ? [cue.says] : []));
        expect(said.filter(isSummary)).toHaveLength(1);
        expect(said.find(isSummary)).toMatch(/cannot tell/);
      }),
      { numRuns: 30 },
    );
  });

  test("that could not sound at once still says so, and loses no time, however late it is heard", () => {
    const here = runTo([4, 30]);
    const again = runByHand(gullrock, {
      entries: left(here),
      clocks: { life: "second", steady: 3, wall: here.clocks().wall - 60_000, audio: 0 },
    });
    again.setSounding(false);
    again.wait(90);
    expect(again.ears()).toEqual([]);
    again.setSounding(true);
    again.wait(30);
    const said = again.ears().flatMap(({ cue }) => (cue.says ? [cue.says] : []));
    expect(said.find(isSummary)).toMatch(/cannot tell/);
  });
});
