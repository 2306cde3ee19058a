// "I pour only now", "the tank is empty now", whenever it is told: the clock of the bath moves, the record keeps plan
// and fact, and what is heard from then on keeps to the laws of a timeline.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { staysOf } from "../../src/live/stays.ts";
import type { Cue, Section } from "../../src/timeline/score.ts";
import { gullrock } from "../plan/worksheets.ts";
import { compiled } from "../timeline/scene.ts";
import { runByHand } from "./by-hand.ts";
import { acrossIn, coveredIn, lostIn } from "./ear.ts";

const { sections } = compiled(gullrock);
const developer = sections.findIndex(({ id }) => id === "developer");
const planned = sections[developer] as Section;
const [first, second] = staysOf(planned);
if (first === undefined || second === undefined) throw new Error("a developer, and a stop bath");

const called = ["pour-in", "agitate", "rest", "pour-out"];
type Here = ReturnType<typeof runByHand>;

function at(seconds: number): Here {
  const here = runByHand(gullrock);
  here.pressThrough(developer + 1);
  here.wait(seconds);
  return here;
}
const sectionOf = (here: Here) => here.run.journal().timeline.sections[developer] as Section;
const saidSince = (here: Here, from: number) =>
  here.ears().flatMap((each) => (each.at >= from && each.cue.says ? [each.cue.says] : []));

/** To the section's end: every moment's tone at its time, no word over another, none in the second before one. */
function keepsTheLaws(here: Here): void {
  const section = sectionOf(here);
  const changed = here.clocks().steady;
  const pressedAt = here.run.begunAt();
  const into = changed - pressedAt;
  here.wait(section.seconds + 20 - into);
  const ears = here.ears().filter((each) => each.until >= changed);
  expect(lostIn(ears, section, pressedAt, into + 0.01, section.seconds)).toEqual([]);
  for (const moment of section.moments) {
    if (!called.includes(moment.do) || moment.at <= into + 0.01) continue;
    const tone = ears.some(
      ({ cue, at }) => cue.kind === "now" && Math.abs(at - pressedAt - moment.at) < 1e-6,
    );
    expect(tone, `${moment.do} at ${moment.at}`).toBe(true);
  }
  expect(coveredIn(ears, changed)).toEqual([]);
  expect(acrossIn(ears)).toEqual([]);
}

describe("A bath that is poured late", () => {
  const late = fc.oneof(
    fc.double({ min: 0.5, max: 59, noNaN: true }),
    fc.double({ min: 60, max: 560, noNaN: true }),
  );
  const stays = fc.constantFrom(0, 1);

  test("counts from when it was poured: every moment of it as much later, and all laws kept", () => {
    fc.assert(
      fc.property(stays, late, fc.constantFrom(0, 2.5, 9, 10.5, 11), (stay, by, told) => {
        const times = [first, second][stay] ?? first;
        if (times.pourIn + by + told >= times.pourOut) return;
        const here = at(times.pourIn + by + told);
        const pressedAt = here.run.begunAt();
        expect(here.run.poured(here.clocks().steady - told)).toBe(true);
        const after = staysOf(sectionOf(here));
        expect((after[stay]?.pourIn ?? 0) - times.pourIn).toBeCloseTo(by, 5);
        expect((after[stay]?.pourOut ?? 0) - times.pourOut).toBeCloseTo(by, 5);
        expect((after[1]?.pourOut ?? 0) - second.pourOut).toBeCloseTo(by, 5);
        const from = here.clocks().steady;
        keepsTheLaws(here);
        expect(here.run.begunAt()).toBeCloseTo(pressedAt, 6);
        expect(saidSince(here, from).some((says) => /counts? from now|From now/.test(says))).toBe(
          true,
        );
      }),
      { numRuns: 25 },
    );
  });

  test("is taken until it is called out, however late", () => {
    for (const [times, stay] of [
      [first, 0],
      [second, 1],
    ] as const) {
      const here = at(times.pourOut - 1.5);
      expect(here.run.poured(here.clocks().steady)).toBe(true);
      expect(here.kept.at(-1)).toMatchObject({ kind: "poured", stay });
    }
  });

  test("is none before it is called for, nor once it is called out", () => {
    for (const seconds of [first.pourIn - 1, first.pourOut + 1, second.pourOut + 1]) {
      const here = at(seconds);
      expect(here.run.poured(here.clocks().steady)).toBe(false);
      expect(here.kept.filter(({ kind }) => kind === "poured")).toEqual([]);
    }
  });
});

describe("A tank that is empty only now, or already", () => {
  const byStay = fc.constantFrom(0, 1).chain((stay) => {
    // One that is cut short is a third as likely as one that runs over.
    const between = (second.empty - first.empty) / 4;
    const least = stay === 0 ? -59 : -between;
    const most = stay === 0 ? 3 * between : 120;
    return fc.tuple(
      fc.constant(stay),
      fc.double({ min: least + 0.5, max: most - 0.5, noNaN: true }),
    );
  });
  const told = fc.double({ min: 0, max: 9, noNaN: true });

  test("has the next pour-in 5 s after it is told, with its count-in, and all laws kept", () => {
    fc.assert(
      fc.property(byStay, told, ([stay, by], wait) => {
        const times = [first, second][stay] ?? first;
        const here = at(times.empty + by + wait);
        const now = here.clocks().steady;
        expect(here.run.emptied(now - wait)).toBe(true);
        const after = staysOf(sectionOf(here));
        expect(after[stay]?.empty).toBeCloseTo(times.empty + by, 5);
        const pressedAt = here.run.begunAt();
        keepsTheLaws(here);
        if (stay === 1) return;
        expect(pressedAt + (after[1]?.pourIn ?? 0)).toBeCloseTo(now + 5, 5);
        const beats = here.ears().filter((each) => each.cue.kind === "count-in" && each.at > now);
        expect(beats.slice(0, 3).map((each) => Math.round((each.at - now) * 1e5) / 1e5)).toEqual([
          2, 3, 4,
        ]);
      }),
      { numRuns: 40 },
    );
  });

  test("is told of by how much it was over or short, to five seconds; what is near is not worth a word", () => {
    const say = (by: number) => {
      const here = at(first.empty + by);
      const from = here.clocks().steady;
      here.run.emptied(from);
      here.wait(30);
      return saidSince(here, from).filter((says) => /over by|short by/i.test(says));
    };
    expect(say(18.8)[0]).toMatch(/over by twenty seconds/i);
    expect(say(-31)[0]).toMatch(/short by (half a minute|thirty seconds)/i);
    expect(say(1)).toEqual([]);
  });

  test("is later than what was told of the next pour-in, which then never was", () => {
    const here = at(second.pourIn + 3);
    here.run.poured(here.clocks().steady);
    here.wait(4);
    expect(here.run.emptied(here.clocks().steady)).toBe(true);
    const after = staysOf(sectionOf(here));
    expect((after[1]?.pourIn ?? 0) - (after[0]?.empty ?? 0)).toBeCloseTo(5, 5);
    keepsTheLaws(here);
  });
});

describe("Taking back", () => {
  const change = fc.constantFrom("poured", "emptied", "read");
  const tonesFrom = (cues: readonly Cue[], from: number) =>
    cues.filter(({ channel, at }) => channel !== "voice" && at > from);

  test("within 3 s restores every tone and every word to come, the answer's own time aside", () => {
    fc.assert(
      fc.property(change, fc.double({ min: 0.1, max: 2.9, noNaN: true }), (kind, after) => {
        const seconds = { poured: first.pourIn + 20, emptied: first.empty - 25, read: 200 }[kind];
        const here = at(seconds);
        if (kind === "read") expect(here.run.read({ f: 72 })).toBe(true);
        else expect(here.run[kind](here.clocks().steady)).toBe(true);
        expect(sectionOf(here).moments).not.toEqual(planned.moments);
        here.wait(after, after);
        expect(here.run.takeBack(here.clocks().steady)).toBe(true);
        expect(sectionOf(here).moments).toEqual(planned.moments);
        const into = here.clocks().steady - here.run.begunAt();
        const pressedAt = here.run.begunAt();
        here.wait(planned.seconds + 1 - into);
        const heard = here
          .ears()
          .filter((each) => each.at > pressedAt + into)
          .map(({ cue, at }) => ({ ...cue, at: at - pressedAt }));
        const expected = tonesFrom(planned.cues, into);
        expect(tonesFrom(heard, into).map((cue) => cue.sounds)).toEqual(
          expected.map((cue) => cue.sounds),
        );
        tonesFrom(heard, into).forEach((cue, i) => {
          expect(cue.at).toBeCloseTo(expected[i]?.at ?? 0, 5);
        });
        // What is being said as it is taken back is said to its end: none is longer than this, seconds.
        const words = (cues: readonly Cue[]) =>
          cues.flatMap(({ says, at }) => (says !== undefined && at > into + 8 ? [says] : []));
        expect(words(heard)).toEqual(words(planned.cues));
      }),
      { numRuns: 25 },
    );
  });

  test("after 3 s does nothing", () => {
    const here = at(first.pourIn + 20);
    here.run.poured(here.clocks().steady);
    const moved = sectionOf(here).moments;
    here.wait(3.1);
    expect(here.run.canTakeBack()).toBe(false);
    expect(here.run.takeBack(here.clocks().steady)).toBe(false);
    expect(sectionOf(here).moments).toEqual(moved);
  });

  test("counts from when a change was told of, not from when it came about", () => {
    const here = at(first.pourIn + 30);
    here.run.poured(here.clocks().steady - 9);
    here.wait(2);
    expect(here.run.canTakeBack()).toBe(true);
  });
});
