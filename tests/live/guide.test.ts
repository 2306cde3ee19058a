// What the hands mean, with a run behind it: presses in a row, hush, the rest by ear, and taking back.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { pressesOf } from "../../src/live/journal.ts";
import { gullrock } from "../plan/worksheets.ts";
import { compiled, english } from "../timeline/scene.ts";
import { runByHand } from "./by-hand.ts";
import { acrossIn, coveredIn } from "./ear.ts";

const { sections } = compiled(gullrock);
const developer = sections.findIndex(({ id }) => id === "developer");
type Here = ReturnType<typeof runByHand>;

function developing(seconds: number): Here {
  const here = runByHand(gullrock);
  here.pressThrough(developer + 1);
  here.wait(seconds);
  return here;
}

const wordings = (key: string) =>
  (["full", "brief", "shortest"] as const).map((form) => english.say(key, form).join(" "));
const isSaid = (says: string | undefined, key: string) =>
  wordings(key).some((each) => says?.includes(each));
/** What was heard from a time on that nobody planned. */
function answersSince(here: Here, from: number) {
  const planned = new Set(here.planned.sections.flatMap(({ cues }) => cues));
  return here
    .ears()
    .filter(({ cue, at }) => at >= from && cue.channel === "voice" && !planned.has(cue));
}

function pressTimes(here: Here, times: number): void {
  for (let i = 0; i < times; i += 1) {
    here.press();
    here.wait(0.3, 0.1);
  }
}

/** Waits until an option is being told, or was just told, and presses. */
function choose(here: Here, option: string, from = here.clocks().steady): void {
  for (let i = 0; i < 1200; i += 1) {
    const last = answersSince(here, from).at(-1);
    if (last !== undefined && isSaid(last.cue.says, `rest.${option}`)) break;
    here.wait(0.1, 0.1);
  }
  expect(isSaid(answersSince(here, from).at(-1)?.cue.says, `rest.${option}`)).toBe(true);
  here.press();
}

describe("Presses", () => {
  test("twice take back the start that the first one made, wherever the run waits, and say where we are", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: sections.length - 1 }),
        fc.double({ min: 0.1, max: 0.4, noNaN: true }),
        (pressed, apart) => {
          const here = runByHand(gullrock);
          here.pressThrough(pressed);
          here.wait((sections[pressed - 1]?.seconds ?? 0) + 30);
          const before = here.run.position();
          here.press();
          here.wait(apart, apart);
          here.press();
          const from = here.clocks().steady;
          expect(here.run.position().kind).toBe("waiting");
          expect(here.run.position().section?.id).toBe(before.section?.id);
          here.wait(20);
          expect(pressesOf(here.run.journal().entries)).toHaveLength(pressed);
          expect(answersSince(here, from).length).toBeGreaterThan(0);
          const next = new Set(sections[pressed]?.cues);
          expect(here.ears().filter(({ cue, at }) => next.has(cue) && at > from)).toEqual([]);
        },
      ),
      { numRuns: 12 },
    );
  });

  test("twice in a bath only say where we are: what the press before a choice began is not taken back", () => {
    const here = developing(30);
    const before = here.kept.length;
    pressTimes(here, 2);
    here.wait(10);
    expect(here.kept).toHaveLength(before);
    expect(here.said().some((says) => says.startsWith("You are in the developer"))).toBe(true);
  });

  test("three times hush, and three times speak again; nothing is begun by them", () => {
    const here = developing(60);
    pressTimes(here, 3);
    expect(here.run.isHushed()).toBe(true);
    expect(here.run.position().section?.id).toBe("developer");
    here.wait(5);
    expect(here.said().some((says) => isSaid(says, "hush.on"))).toBe(true);
    pressTimes(here, 3);
    expect(here.run.isHushed()).toBe(false);
    const waiting = runByHand(gullrock);
    waiting.press();
    waiting.wait(40);
    pressTimes(waiting, 3);
    expect(pressesOf(waiting.run.journal().entries)).toHaveLength(1);
    expect(waiting.run.isHushed()).toBe(true);
  });
});

describe("Hushed", () => {
  test("no planned word is heard, every tone is, and what is asked for is answered", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 500, noNaN: true }), (seconds) => {
        const here = developing(seconds);
        here.run.hush(true);
        const from = here.clocks().steady;
        here.wait(10);
        here.run.where();
        here.wait(110);
        const cues = here.planned.sections[developer]?.cues ?? [];
        const pressedAt = here.run.begunAt();
        const heard = here.ears().filter(({ at }) => at >= from);
        expect(heard.filter(({ cue }) => cue.channel === "voice" && cues.includes(cue))).toEqual(
          [],
        );
        const due = cues.filter(
          ({ channel, at }) =>
            channel !== "voice" && pressedAt + at >= from && pressedAt + at < from + 119,
        );
        const tones = new Set(heard.map(({ cue }) => cue));
        expect(due.filter((cue) => !tones.has(cue))).toEqual([]);
        expect(answersSince(here, from)).toHaveLength(1);
        here.run.hush(false);
        here.wait(700);
        const last = cues.findLast(({ channel }) => channel === "voice");
        expect(here.ears().some(({ cue }) => cue === last)).toBe(true);
      }),
      { numRuns: 15 },
    );
  });
});

describe("The rest by ear", () => {
  test("tells one option after another, clear of every moment and of one another, and then that it is all", () => {
    fc.assert(
      fc.property(fc.double({ min: 9, max: 560, noNaN: true }), (seconds) => {
        const here = developing(seconds);
        const from = here.clocks().steady;
        here.hold();
        here.wait(75, 0.5);
        const told = answersSince(here, from).map(({ cue }) => cue.says ?? "");
        expect(isSaid(told.at(-1), "rest.end")).toBe(true);
        expect(isSaid(told.at(-2), "rest.leave")).toBe(true);
        expect(coveredIn(here.ears(), from)).toEqual([]);
        expect(acrossIn(here.ears())).toEqual([]);
        expect(here.kept.slice(-1)[0]?.kind).toBe("pressed");
      }),
      { numRuns: 15 },
    );
  });

  test("chooses what is being told, or was told last while the next waits for its turn", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 130, max: 400, noNaN: true }),
        fc.double({ min: 0, max: 25, noNaN: true }),
        (seconds, wait) => {
          const here = developing(seconds);
          const from = here.clocks().steady;
          here.hold();
          here.wait(wait, 0.05);
          const last = answersSince(here, from).at(-1)?.cue.says ?? "";
          here.press();
          here.wait(2, 0.1);
          const heard = answersSince(here, from).map(({ cue }) => cue.says ?? "");
          expect(here.run.detail()).toBe(isSaid(last, "rest.less") ? "brief" : "full");
          expect(heard.some((says) => isSaid(says, "rest.leave.sure"))).toBe(
            isSaid(last, "rest.leave"),
          );
          expect(here.left()).toBe(false);
        },
      ),
      { numRuns: 120 },
    );
  });

  test("undoes an option that is chosen by two presses: they ask where we are, wherever they come", () => {
    const pourOut =
      sections[developer]?.moments.find((moment) => moment.do === "pour-out")?.at ?? 0;
    for (const [option, seconds] of [
      ["emptied", pourOut - 20],
      ["poured", 12],
      ["less", 200],
    ] as const) {
      const here = developing(seconds);
      const moments = here.run.position().section?.moments;
      here.hold();
      choose(here, option);
      const chosen = here.clocks().steady;
      expect(here.kept.at(-1)?.kind).toBe(option === "less" ? "detail" : option);
      here.wait(0.3, 0.1);
      here.press();
      expect(here.run.journal().timeline.sections[developer]?.moments).toEqual(moments);
      expect(here.run.detail()).toBe("full");
      here.wait(15, 0.5);
      const says = answersSince(here, chosen + 0.3).map(({ cue }) => cue.says ?? "");
      expect(
        says.some((each) => /you are in|left|next/i.test(each)),
        option,
      ).toBe(true);
      const isTold = says.some((each) => isSaid(each, "taken-back"));
      expect(isTold, option).toBe(option !== "less");
      const later = developing(seconds);
      later.hold();
      choose(later, option);
      later.wait(2, 0.1);
      later.press();
      expect(later.kept.some(({ kind }) => kind === "taken-back")).toBe(false);
    }
  });

  test("undoes a reading that two presses end", () => {
    const here = developing(180);
    here.press();
    here.wait(20);
    here.guide.step(3);
    here.wait(4);
    here.press();
    expect(here.kept.at(-1)?.kind).toBe("read");
    here.wait(0.3, 0.1);
    here.press();
    expect(here.kept.at(-1)?.kind).toBe("taken-back");
    expect(here.run.position().section?.moments).toEqual(sections[developer]?.moments);
  });

  test("asks again before it leaves, and then leaves", () => {
    const here = developing(200);
    here.hold();
    choose(here, "leave");
    expect(here.left()).toBe(false);
    const asked = here.clocks().steady;
    // A press too soon would be the second in a row.
    here.wait(1, 0.1);
    choose(here, "leave.sure", asked);
    expect(here.left()).toBe(true);
    const other = developing(200);
    other.hold();
    choose(other, "leave");
    other.wait(15);
    other.press();
    expect(other.left()).toBe(false);
  });
});
