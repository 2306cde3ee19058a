// The talks by ear with a run behind them: more of a step, out of a jam, and something that is wrong in a bath.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { pressesOf } from "../../src/live/journal.ts";
import { LASTING } from "../../src/live/rest.ts";
import { forms } from "../../src/script/script.ts";
import { gullrock } from "../plan/worksheets.ts";
import { compiled, english } from "../timeline/scene.ts";
import { runByHand } from "./by-hand.ts";
import { acrossIn, coveredIn } from "./ear.ts";

const { sections } = compiled(gullrock);
type Here = ReturnType<typeof runByHand>;
const isSaid = (says: string | undefined, key: string) =>
  forms.some((form) => says === english.say(key, form).join(" "));

function standing(section: string, seconds = 30): Here {
  const here = runByHand(gullrock);
  here.pressThrough(sections.findIndex(({ id }) => id === section) + 1);
  here.wait(seconds);
  return here;
}

/** Waits until something is being said, or was said last. */
function hear(here: Here, key: string): void {
  const last = () => here.ears().findLast(({ cue }) => cue.channel === "voice")?.cue.says;
  for (let i = 0; i < 1200 && !isSaid(last(), key); i += 1) here.wait(0.1, 0.1);
  expect(isSaid(last(), key), `${key}, not “${last()}”`).toBe(true);
}

/** A press a while after the one before: not the second in a row. */
function press(here: Here): void {
  here.wait(1, 0.1);
  here.press();
}

/** Presses once each of these has been told. */
function takeOn(here: Here, ...options: readonly string[]): void {
  for (const option of options) {
    hear(here, option);
    press(here);
  }
}

function take(here: Here, ...options: readonly string[]): void {
  here.hold();
  takeOn(here, ...options);
}

const presses = (here: Here) => pressesOf(here.run.journal().entries).length;

describe("More of a step", () => {
  test("is told when asked for, all of it, and the run stands where it stood", () => {
    const here = standing("wind");
    const before = presses(here);
    take(here, "rest.told");
    hear(here, "more.wind");
    hear(here, "more.touch");
    expect(presses(here)).toBe(before);
    press(here);
    expect(here.run.position().section?.id).toBe("spool");
  });
});

describe("It's stuck", () => {
  test("leads out of a jam line by line, each confirmed by a press, and back to the step", () => {
    const here = standing("wind");
    const before = presses(here);
    take(here, "rest.stuck", "stuck.force", "stuck.back", "stuck.flex", "stuck.feed", "stuck.runs");
    hear(here, "press.done");
    expect(presses(here)).toBe(before);
    expect(here.run.position().section?.id).toBe("wind");
  });

  test("waits for hands as long as they take, and asks over and over whether it runs", () => {
    const here = standing("feed");
    take(here, "rest.stuck");
    hear(here, "stuck.force");
    here.wait(300);
    hear(here, "stuck.force");
    press(here);
    takeOn(here, "stuck.back", "stuck.flex", "stuck.feed");
    hear(here, "stuck.still");
    here.wait(LASTING + 2, 0.1);
    hear(here, "stuck.runs");
  });

  test("where it still jams puts the film into the locked tank before hands are dried", () => {
    const here = standing("wind");
    take(here, "rest.stuck", "stuck.force", "stuck.back", "stuck.flex", "stuck.feed");
    hear(here, "stuck.runs");
    takeOn(here, "stuck.still", "stuck.tank", "close.lid", "stuck.hands", "stuck.again");
    hear(here, "press.done");
    expect(here.run.position().section?.id).toBe("wind");
    expect(here.run.position().section?.dark).toBe(true);
  });

  test("tells the line before again where a press comes twice, and is left by holding", () => {
    const here = standing("wind");
    take(here, "rest.stuck", "stuck.force");
    here.wait(0.3, 0.1);
    here.press();
    hear(here, "stuck.force");
    press(here);
    hear(here, "stuck.back");
    here.wait(1, 0.1);
    here.hold();
    press(here);
    expect(here.run.position().section?.id).toBe("spool");
  });
});

describe("Something is wrong", () => {
  test("is answered between the moments of a bath, none of which moves, and written down", () => {
    fc.assert(
      fc.property(fc.double({ min: 9, max: 500, noNaN: true }), (seconds) => {
        const here = standing("developer", seconds);
        const from = here.clocks().steady;
        const moments = here.run.position().section?.moments;
        take(here, "rest.wrong", "wrong.eye");
        for (const key of ["wrong.eye.rinse", "wrong.eye.help", "wrong.eye.sheet"]) hear(here, key);
        here.wait(10);
        expect(here.kept.at(-1)).toMatchObject({ kind: "wrong", wrong: "eye" });
        expect(here.run.position().section?.moments ?? moments).toEqual(moments);
        expect(coveredIn(here.ears(), from)).toEqual([]);
        expect(acrossIn(here.ears())).toEqual([]);
      }),
      { numRuns: 12 },
    );
  });

  test("in a bath a lost clock is told of with where we are, and elsewhere that none runs", () => {
    const here = standing("developer", 100);
    take(here, "rest.wrong", "wrong.clock");
    hear(here, "wrong.clock.mine");
    here.wait(12, 0.1);
    expect(here.said().at(-1)).toMatch(/minute|left|next/i);
    const waiting = standing("cut");
    take(waiting, "rest.wrong", "wrong.clock");
    hear(waiting, "wrong.clock.none");
  });

  test("goes back to the run without a word written down", () => {
    const here = standing("fixer", 60);
    const before = here.kept.length;
    take(here, "rest.wrong", "wrong.back");
    here.wait(3);
    expect(here.kept).toHaveLength(before);
  });

  /** What the worksheet says, and a little more: nothing moves, or the end does. */
  const news = {
    "a probe's reading": (here: Here) => void here.run.read({ f: 69 }, "probe"),
    "a probe's reading that moves the end": (here: Here) => void here.run.read({ f: 70 }, "probe"),
    "the same words in fewer": (here: Here) => here.run.sayAt("brief"),
    "another voice": (here: Here) => here.run.sayAt("full"),
  };
  const rinse = ["wrong.eye.rinse", "wrong.eye.help", "wrong.eye.sheet"];
  const heardOf = (here: Here, from: number) =>
    here.ears().flatMap((each) => {
      const whole = each.until - each.at > each.cue.until - each.cue.at - 1e-6;
      const key = rinse.find((it) => isSaid(each.cue.says, it));
      return each.at >= from && whole && key !== undefined ? [key] : [];
    });

  for (const [what, comes] of Object.entries(news)) {
    test(`is answered to the end though ${what} comes meanwhile, in its order, each sentence whole and once`, () => {
      fc.assert(
        fc.property(
          fc.double({ min: 40, max: 400, noNaN: true }),
          fc.double({ min: 0, max: 9, noNaN: true }),
          (seconds, after) => {
            const here = standing("developer", seconds);
            here.guide.wrong();
            hear(here, "wrong.eye");
            press(here);
            const from = here.clocks().steady;
            here.wait(after, after);
            comes(here);
            here.wait(45, 0.5);
            expect(heardOf(here, from)).toEqual(rinse);
            expect(coveredIn(here.ears(), from)).toEqual([]);
            expect(acrossIn(here.ears())).toEqual([]);
          },
        ),
        { numRuns: 12 },
      );
    });
  }

  test("does not keep a probe's news from being told, behind it or behind the option that is told", () => {
    const moved = (here: Here) => here.said().filter((says) => /sooner/i.test(says)).length;
    const here = standing("developer", 100);
    here.guide.wrong();
    hear(here, "wrong.eye");
    press(here);
    here.wait(1);
    here.run.read({ f: 72 }, "probe");
    here.wait(45, 0.5);
    expect(moved(here)).toBe(1);
    const asked = standing("developer", 100);
    asked.hold();
    asked.wait(3, 0.1);
    asked.run.read({ f: 72 }, "probe");
    asked.wait(60, 0.5);
    const whole = asked.ears().filter(({ cue, at, until }) => {
      return /sooner/i.test(cue.says ?? "") && until - at > cue.until - cue.at - 1e-6;
    });
    expect(whole).toHaveLength(1);
  });

  test("is asked for by a button as well", () => {
    const here = standing("developer", 60);
    here.guide.wrong();
    hear(here, "wrong.eye");
    here.wait(2.5, 0.1);
    hear(here, "wrong.light");
    press(here);
    hear(here, "wrong.light.safe");
    expect(here.kept.at(-1)).toMatchObject({ kind: "wrong", wrong: "light" });
  });
});
