// A rehearsal run by hand: the same engine as a run, with presses that are marks.
import { describe, expect, test } from "vitest";
import { judgedOf } from "../../src/live/judged.ts";
import type { Rehearsal } from "../../src/process/rehearsal.ts";
import { gullrock } from "../plan/worksheets.ts";
import { runByHand } from "./by-hand.ts";

const quarter: Rehearsal = { factor: 1 / 4, why: false };

type Hand = ReturnType<typeof runByHand>;

/** Presses up to a section; the press that starts it is the last. */
function upTo(hand: Hand, id: string): void {
  const { sections } = hand.run.journal().timeline;
  hand.pressThrough(sections.findIndex((section) => section.id === id) + 1);
}

/** From where it stands to the end: each section pressed for, and each pour marked so much off. */
function rehearse(hand: Hand, off: (bath: string, deed: string) => number | null): void {
  for (;;) {
    const { timeline } = hand.run.journal();
    const position = hand.run.position();
    if (position.kind === "over") return;
    if (position.kind === "waiting") {
      hand.press();
      hand.wait(1);
      continue;
    }
    const { section } = position;
    const pours = section.moments.filter((it) => it.do === "pour-in" || it.do === "pour-out");
    const times = pours.flatMap((it) => {
      const by = off(it.bath ?? "", it.do);
      return by === null ? [] : [it.at + by];
    });
    const pressedAt = hand.run.begunAt();
    for (const at of times.toSorted((a, b) => a - b)) {
      hand.wait(pressedAt + at - hand.clocks().steady);
      hand.press();
    }
    hand.wait(pressedAt + section.seconds + 5 - hand.clocks().steady);
    expect(timeline.sections).toContain(section);
  }
}

describe("A rehearsal", () => {
  test("sounds every moment of its own timeline, and a mark neither moves nor answers any", () => {
    const hand = runByHand(gullrock, { rehearsal: quarter });
    upTo(hand, "developer");
    const section = hand.planned.sections.find(({ id }) => id === "developer");
    const pressedAt = hand.run.begunAt();
    hand.wait(30);
    const before = hand.run.journal().timeline;
    hand.press();
    expect(hand.kept.at(-1)).toMatchObject({ kind: "marked", section: "developer" });
    expect(hand.answered()).toBeGreaterThan(0);
    expect(hand.run.journal().timeline).toBe(before);
    hand.wait((section?.seconds ?? 0) - 30);
    const heard = hand.sounded().filter(({ at }) => at >= pressedAt);
    const nows = section?.cues.filter(({ kind }) => kind === "now") ?? [];
    expect(nows.length).toBeGreaterThan(8);
    for (const now of nows) {
      const sounded = heard.filter(({ cue }) => cue === now).map(({ at }) => at - pressedAt);
      expect(sounded.map((at) => Math.abs(at - now.at) < 1e-6)).toEqual([true]);
    }
    const planned = section?.cues.flatMap(({ says }) => says ?? []) ?? [];
    // Word for word as planned: nobody was told where they are, and nobody was scolded.
    expect(heard.flatMap(({ cue }) => cue.says ?? [])).toEqual(planned);
  });

  test("told well at every pour, says so in the end, and shows it as what was said last", () => {
    const hand = runByHand(gullrock, { rehearsal: quarter });
    hand.press();
    rehearse(hand, () => 0.6);
    hand.wait(20);
    expect(hand.run.position().kind).toBe("over");
    expect(hand.run.position().section?.id).toBe("practise");
    expect(hand.said().at(-1)).toBe("All was well: nothing to practise.");
  });

  test("tells afterwards what was late, early and missed, the most harmful first, and nothing before", () => {
    const hand = runByHand(gullrock, { rehearsal: quarter });
    hand.press();
    rehearse(hand, (bath, deed) => {
      if (bath === "developer" && deed === "pour-out") return 3;
      if (bath === "fixer" && deed === "pour-out") return -4;
      return bath === "wash" && deed === "pour-in" ? null : 0;
    });
    hand.wait(20);
    const said = hand.said();
    expect(said.slice(said.indexOf("This is worth practising."))).toEqual([
      "This is worth practising.",
      "The developer can come out a little sooner.",
      "The fixer can come out a little later.",
      "The washing water wants a press as it goes in.",
    ]);
    expect(said.filter((it) => it.includes("can come out"))).toHaveLength(2);
    const { how, by } = judgedOf(hand.run.journal()).find(
      (it) => it.bath === "developer" && it.deed === "pour-out",
    ) ?? { how: null, by: 0 };
    expect(how).toBe("late");
    expect(by).toBeCloseTo(3, 6);
  });

  test("without a single mark is judged by nobody", () => {
    const hand = runByHand(gullrock, { rehearsal: { factor: 0, why: true } });
    hand.press();
    rehearse(hand, () => null);
    hand.wait(20);
    expect(hand.said().at(-1)).toBe("No pour was pressed, so I cannot tell.");
  });

  test("says why before a bath, and waits for a press behind it however long that takes", () => {
    const hand = runByHand(gullrock, { rehearsal: { factor: 1 / 4, why: true } });
    upTo(hand, "why");
    hand.wait(600);
    const position = hand.run.position();
    expect(position.kind === "waiting" && position.next.id).toBe("developer");
    const told = hand.said();
    expect(told).toContain("A steady pour leaves no marks.");
    expect(told.at(-1)).toBe("With it in your hand, press.");
  });

  test("takes a mark back with the press after it, which asks where we are, and by the key for it", () => {
    const hand = runByHand(gullrock, { rehearsal: quarter });
    upTo(hand, "developer");
    hand.wait(20);
    hand.press();
    hand.wait(0.2, 0.1);
    hand.press();
    hand.wait(3);
    expect(hand.said().at(-1)).toMatch(/^You are in the developer/);
    expect(judgedOf(hand.run.journal())).toEqual([]);
    hand.press();
    hand.wait(1);
    hand.guide.takeBack();
    expect(judgedOf(hand.run.journal())).toEqual([]);
  });

  test("moves no moment for what hands or a thermometer tell, and offers neither by ear", () => {
    const hand = runByHand(gullrock, { rehearsal: quarter });
    upTo(hand, "developer");
    hand.wait(30);
    const { steady } = hand.clocks();
    expect(hand.run.poured(steady)).toBe(false);
    expect(hand.run.emptied(steady)).toBe(false);
    expect(hand.run.read({ c: 22 })).toBe(false);
    expect(hand.guide.step(1)).toBe(false);
    const said = hand.said().length;
    hand.hold();
    hand.wait(40);
    const offered = hand.said().slice(said);
    expect(offered.filter((it) => /leave/.test(it))).toHaveLength(1);
    expect(offered.filter((it) => /pouring only now|is empty|thermometer/.test(it))).toEqual([]);
    expect(hand.run.journal().timeline).toBe(hand.planned);
  });

  test("is left without being asked twice", () => {
    const hand = runByHand(gullrock, { rehearsal: quarter });
    upTo(hand, "lay-out");
    hand.wait(60);
    hand.hold();
    for (let i = 0; i < 60 && !hand.ears().at(-1)?.cue.says?.includes("leave"); i += 1) {
      hand.wait(0.5, 0.25);
    }
    hand.press();
    expect(hand.left()).toBe(true);
  });
});

test("In a run, a press in a bath is no mark", () => {
  const hand = runByHand(gullrock);
  upTo(hand, "developer");
  hand.wait(30);
  hand.press();
  hand.wait(3);
  expect(hand.kept.some(({ kind }) => kind === "marked")).toBe(false);
  expect(hand.run.mark(hand.clocks().steady)).toBe(false);
});
