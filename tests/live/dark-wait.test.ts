// The wait in the dark, as it is compiled and as it is run: a sign of life, a count of minutes, and no clock.
import { describe, expect, test } from "vitest";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { gullrock } from "../plan/worksheets.ts";
import { compiled, english } from "../timeline/scene.ts";
import { runByHand } from "./by-hand.ts";
import { acrossIn } from "./ear.ts";

const waiting = (darkWait: string, detail: "full" | "brief" | "tones" = "full"): Worksheet => ({
  ...gullrock,
  darkWait,
  voice: { detail },
});

const sectionOf = (worksheet: Worksheet) => {
  const { sections } = compiled(worksheet);
  const index = sections.findIndex(({ id }) => id === "wait");
  const section = sections[index];
  if (section === undefined) throw new Error("no wait");
  return { section, index };
};

const minutesSaid = (says: string) => /^(\w+(?: \w+)*?) minutes?\.$/.exec(says)?.[1];

describe("The wait in the dark", () => {
  test("counts the minutes at wide intervals, and closes by asking for the press", () => {
    const { section } = sectionOf(waiting("20:00"));
    const said = section.cues.flatMap(({ says, at }) => (says === undefined ? [] : [{ says, at }]));
    const counts = said.flatMap(({ says, at }) => {
      const count = minutesSaid(says);
      return count === undefined ? [] : [`${count} ${Math.round(at / 60)}`];
    });
    expect(counts).toEqual(["One 1", "Two 2", "Three 3", "Four 4", "Five 5", "Ten 10"]);
    expect(said.some(({ says, at }) => /quarter of an hour/.test(says) && at >= 900)).toBe(true);
    expect(said.at(-1)?.says).toBe(english.say("press.dark", "full").join(" "));
    expect(section.left).toEqual([]);
  });

  test("is never silent for a minute, whatever the detail, and has no moments", () => {
    for (const detail of ["full", "brief", "tones"] as const) {
      const { section } = sectionOf(waiting("9:00", detail));
      expect(section.moments).toEqual([]);
      expect(section.seconds).toBe(540);
      const heard = [...section.cues, { at: section.seconds, until: section.seconds }];
      let until = 0;
      for (const cue of heard) {
        expect(cue.at - until).toBeLessThan(46);
        until = Math.max(until, cue.until);
      }
    }
  });

  test("goes on by a press at any time", () => {
    for (const seconds of [2, 45, 130, 179, 400]) {
      const { index } = sectionOf(waiting("3:00"));
      const here = runByHand(waiting("3:00"));
      here.pressThrough(index + 1);
      here.wait(seconds);
      expect(here.run.position().section?.id).toBe("wait");
      here.press();
      expect(here.run.position().section?.id).toBe("open");
    }
  });

  test("asked where it is tells its words again, without the count, which goes on as before", () => {
    const { index } = sectionOf(waiting("5:00"));
    const here = runByHand(waiting("5:00"));
    here.pressThrough(index + 1);
    here.wait(80);
    const before = here.said().length;
    here.run.where();
    here.wait(20);
    const again = here.said().slice(before);
    expect(again).toEqual(
      ["wait.look", "wait.any"].map((key) => english.say(key, "full").join(" ")),
    );
    here.wait(60);
    const heard = here
      .ears()
      .filter(({ cue }) => cue.channel === "voice")
      .toSorted((a, b) => a.at - b.at)
      .at(-1);
    expect(heard?.cue.says).toBe("Two minutes.");
    expect(acrossIn(here.ears())).toEqual([]);
  });
});
