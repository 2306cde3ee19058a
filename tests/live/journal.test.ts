// The journal is all there is of a run: what follows from it, whoever reads it, and what its record keeps.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { openBook } from "../../src/live/book.ts";
import type { Clocks } from "../../src/live/clocks.ts";
import {
  type Entry,
  type Happening,
  lastChange,
  pressesOf,
  standing,
  timeOf,
} from "../../src/live/journal.ts";
import { goesOnByItself } from "../../src/live/left-run.ts";
import { staysOf } from "../../src/live/stays.ts";
import { isRunRecord } from "../../src/logbook/run-record.ts";
import { recordOf } from "../../src/ui/record-of.ts";
import { gullrock } from "../plan/worksheets.ts";
import { sessionOf } from "../ui/run-stand-ins.ts";
import { runByHand } from "./by-hand.ts";

/** What a device may do between two entries, seconds: go on, be set, sleep, or die and come back. */
const step = fc.record({
  by: fc.double({ min: 0, max: 600, noNaN: true }),
  what: fc.constantFrom("on", "on", "set", "asleep", "died"),
  set: fc.double({ min: -7200, max: 7200, noNaN: true }),
});

/** A journal of such steps, with the time that truly went by until each entry. */
function journalOf(steps: readonly { by: number; what: string; set: number }[]) {
  let clocks: Clocks = { life: "0", steady: 50, wall: 1e12, audio: 0 };
  const kept: Entry[] = [];
  const book = openBook(
    () => clocks,
    (entry) => kept.push(entry),
  );
  const times = [0];
  let time = 0;
  book.write({ kind: "pressed", section: "0" });
  for (const [i, { by, what, set }] of steps.entries()) {
    const wall = clocks.wall + by * 1000;
    time += by;
    let happening: Happening = { kind: "pressed", section: `${i + 1}` };
    if (what === "asleep") {
      clocks = { ...clocks, wall };
      happening = { kind: "woke", from: "asleep", lost: by };
    } else if (what === "died") {
      clocks = { life: `${i + 1}`, steady: by / 3, wall, audio: 0 };
      happening = { kind: "woke", from: "closed", lost: by };
    } else {
      clocks = { ...clocks, steady: clocks.steady + by, wall };
      if (what === "set") {
        clocks = { ...clocks, wall: wall + set * 1000 };
        happening = { kind: "clock-set", by: set };
      }
    }
    book.write(happening);
    times.push(time);
  }
  return { book, kept, times };
}

describe("The time of a run", () => {
  test("is what truly went by, through sleep, clocks that are set, and lives of the page (1e-3 s)", () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 25 }), (steps) => {
        const { book, kept, times } = journalOf(steps);
        expect(book.entries()).toEqual(kept);
        expect(book.time()).toBeCloseTo(times.at(-1) ?? 0, 3);
        for (const [i, entry] of kept.entries()) {
          // Of an entry of sleep the time is that before it: its own seconds are counted from it on.
          if (entry.kind === "woke" && entry.from === "asleep") continue;
          expect(timeOf(kept.slice(0, i), entry)).toBeCloseTo(times[i] ?? 0, 3);
        }
      }),
    );
  });

  test("does not run back where the wall clock was set back between two lives", () => {
    const first: Entry = { life: "a", steady: 5, wall: 1e12, kind: "pressed", section: "x" };
    const later = { life: "b", steady: 900, wall: 1e12 - 3_600_000 };
    expect(timeOf([first], later)).toBe(0);
    expect(timeOf([first, { ...later, kind: "alive" }], { ...later, steady: 910 })).toBe(10);
  });
});

describe("What was taken back", () => {
  const kinds = fc.array(fc.constantFrom("pressed", "read", "hushed", "taken-back"), {
    maxLength: 30,
  });

  test("is the last change that stood, and it alone; its entry stays, and so does the time", () => {
    fc.assert(
      fc.property(kinds, (all) => {
        const entries = all.map((kind, i): Entry => {
          const stamp = { life: "a", steady: i, wall: 1e12 + i * 1000 };
          if (kind === "pressed") return { ...stamp, kind, section: `${i}` };
          if (kind === "read")
            return { ...stamp, kind, temperature: { c: i }, section: "x", by: "person" };
          return kind === "hushed"
            ? { ...stamp, kind, on: true }
            : { ...stamp, kind: "taken-back" };
        });
        const stack: number[] = [];
        for (const [i, kind] of all.entries()) {
          if (kind === "taken-back") stack.pop();
          else if (kind !== "hushed") stack.push(i);
        }
        const changes = standing(entries).flatMap((entry, i) =>
          entry.kind === "pressed" || entry.kind === "read" ? [i] : [],
        );
        expect(changes).toEqual(stack);
        expect(standing(entries)).toHaveLength(entries.length);
        expect(lastChange(entries)).toBe(entries[stack.at(-1) ?? -1] ?? null);
        expect(pressesOf(entries).map(({ at }) => at)).toEqual(
          stack.filter((i) => all[i] === "pressed"),
        );
      }),
    );
  });
});

describe("The record of a run", () => {
  test("keeps what was planned beside what happened: pours, readings, and the time that was lost", () => {
    const here = runByHand(gullrock);
    const index = here.planned.sections.findIndex(({ id }) => id === "developer");
    const [first] = staysOf(here.planned.sections[index] as never);
    here.pressThrough(index + 1);
    here.wait((first?.pourIn ?? 0) + 14);
    here.run.poured(here.clocks().steady - 2);
    here.wait(200);
    here.run.read({ f: 71 });
    here.wait(30);
    here.shift({ wall: 90_000, audio: -0.2 });
    here.look();
    const { developmentSeconds } = here.run.journal().timeline.plan;
    const session = sessionOf(here, gullrock);
    const record = recordOf(session, null);
    expect(isRunRecord(JSON.parse(JSON.stringify(record)))).toBe(true);
    expect(record.developmentSeconds).toBe(session.plan.developmentSeconds);
    expect(record.developedSeconds).toBe(developmentSeconds);
    expect(record.developedSeconds).toBeLessThan(record.developmentSeconds);
    expect(record.otherwise?.map(({ kind }) => kind)).toEqual(["poured", "read", "lost"]);
    const [poured, read, lost] = record.otherwise ?? [];
    expect(poured?.kind === "poured" && poured.by).toBeCloseTo(12, 5);
    expect(poured?.kind === "poured" && poured.bath).toBe("developer");
    expect(read?.kind === "read" && read.temperature).toEqual({ f: 71 });
    expect(read?.kind === "read" && read.after).toBeCloseTo((first?.pourIn ?? 0) + 214, 5);
    expect(lost?.kind === "lost" && lost.lost).toBeCloseTo(90, 5);
    const pressed = record.presses.at(-1)?.at ?? 0;
    expect((poured?.at ?? 0) - pressed).toBeCloseTo(((first?.pourIn ?? 0) + 12) * 1000, 0);
  });

  test("of one that was left has the baths that were poured in by then, the second of a section too", () => {
    const left = (...waits: readonly number[]) => {
      const here = runByHand(gullrock);
      const index = here.planned.sections.findIndex(({ id }) => id === "developer");
      here.pressThrough(index);
      here.wait(30);
      for (const seconds of waits) {
        here.press();
        here.wait(seconds);
      }
      here.run.ended("left");
      const record = recordOf(sessionOf(here, gullrock), "left");
      expect(isRunRecord(JSON.parse(JSON.stringify(record)))).toBe(true);
      return record.pouredIn;
    };
    const { planned } = runByHand(gullrock);
    const section = planned.sections.find(({ id }) => id === "developer");
    const stays = section ? staysOf(section) : [];
    const [, stop] = stays;
    if (section === undefined || stop === undefined) throw new Error("no stop bath is planned");
    expect(left()).toEqual([]);
    expect(left(1)).toEqual([]);
    expect(left(stop.pourIn - 1)).toEqual(["developer"]);
    expect(left(stop.pourIn + 1)).toEqual(["developer", "stop"]);
    expect(left(section.seconds + 300)).toEqual(["developer", "stop"]);
    expect(left(section.seconds, 1)).toEqual(["developer", "stop"]);
    expect(left(section.seconds, 60)).toEqual(["developer", "stop", "fixer"]);
  });

  test("has nothing of what was taken back, nor of a clock that is right again", () => {
    const here = runByHand(gullrock);
    const index = here.planned.sections.findIndex(({ id }) => id === "developer");
    here.pressThrough(index + 1);
    here.wait(20);
    here.run.poured(here.clocks().steady);
    here.wait(1);
    here.run.takeBack(here.clocks().steady);
    const record = recordOf(sessionOf(here, gullrock), "left");
    expect(record.otherwise).toBeUndefined();
    expect(record.developedSeconds).toBeUndefined();
    expect(record.presses).toHaveLength(index + 1);
    // Each bath as planned, and the section that it is poured in.
    const { baths } = sessionOf(here, gullrock).plan;
    expect(record.planned?.map(({ bath, seconds }) => [bath, seconds])).toEqual(
      baths.map(({ id, seconds }) => [id, seconds]),
    );
    expect(record.planned?.slice(0, 3).map(({ section }) => section)).toEqual([
      "developer",
      "developer",
      "fixer",
    ]);
  });
});

test("A run goes on by itself within half an hour of being seen alive, or where no clock can tell", () => {
  expect(goesOnByItself(1e12, 1e12 + 29 * 60_000)).toBe(true);
  expect(goesOnByItself(1e12, 1e12 + 31 * 60_000)).toBe(false);
  expect(goesOnByItself(1e12, 1e12 - 1)).toBe(true);
});
