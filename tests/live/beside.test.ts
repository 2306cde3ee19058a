import { describe, expect, test } from "vitest";
import { openBeside, type Saying } from "../../src/live/beside.ts";
import type { Outlet } from "../../src/live/outlet.ts";
import { type Pulses, pulsesFor, pulsesLast, pulsesOf } from "../../src/live/pulses.ts";
import { withoutWords } from "../../src/live/teller.ts";
import type { Section } from "../../src/timeline/score.ts";
import { toneNames } from "../../src/tones/designs.ts";
import { demos } from "../../src/ui/demo.ts";
import { compiled, english } from "../timeline/scene.ts";

const timeline = compiled(demos.gullrock);
const named = (id: string): Section => {
  const section = timeline.sections.find((each) => each.id === id);
  if (section === undefined) throw new Error(`no section ${id}`);
  return section;
};

/** A clock that is moved by hand, with its timers, and all that was given beside the sound. */
function world(vibrates = true) {
  let now = 50;
  let waiting: readonly { readonly at: number; readonly act: () => void }[] = [];
  const said: (Saying & { readonly from: number })[] = [];
  const turns: string[] = [];
  const felt: { readonly at: number; readonly pulses: Pulses }[] = [];
  const heardToo: string[] = [];
  const beside = openBeside({
    script: english,
    clock: {
      now: () => now,
      after(seconds, act) {
        const entry = { at: now + seconds, act };
        waiting = [...waiting, entry];
        return () => {
          waiting = waiting.filter((it) => it !== entry);
        };
      },
    },
    vibrate: () => (vibrates ? (pulses) => felt.push({ at: now, pulses }) : null),
  });
  beside.saying.subscribe((saying) => saying !== null && said.push({ ...saying, from: now }));
  beside.turn.subscribe((turn) => turn !== null && turns.push(turn));
  const sound: Outlet = {
    ahead: () => 0,
    update: () => heardToo.push("update"),
    look: () => heardToo.push("look"),
    resettle: () => heardToo.push("resettle"),
    close: () => heardToo.push("close"),
  };
  const outlet = beside.with(sound);
  return {
    outlet,
    beside,
    said,
    turns,
    felt,
    heardToo,
    now: () => now,
    /** Timers come when they are due, or all of them late, as on a page that stood still. */
    pass(seconds: number, late = false) {
      const end = now + seconds;
      if (late) now = end;
      for (;;) {
        const due = waiting.toSorted((a, b) => a.at - b.at)[0];
        if (due === undefined || due.at > end) break;
        now = Math.max(now, due.at);
        waiting = waiting.filter((it) => it !== due);
        due.act();
      }
      now = end;
      outlet.look();
    },
    lead(section: Section) {
      outlet.update({ sections: [section], index: 0, pressedAt: now });
      return now;
    },
  };
}

describe("What a run gives beside its sound", () => {
  const section = named("developer");
  const words = section.cues.filter(({ channel }) => channel === "voice");
  const tones = section.cues.filter(({ channel }) => channel === "tone");

  test("is every word at its time, every signal as its pulses, and both halves of each turn", () => {
    const it = world();
    const pressedAt = it.lead(section);
    for (let second = 0; second < section.seconds; second += 1) it.pass(1);
    expect(words.length).toBeGreaterThan(20);
    expect(it.said.map(({ says }) => says)).toEqual(words.map(({ says }) => says));
    for (const [i, { at }] of words.entries())
      expect(it.said[i]?.from ?? 0).toBeCloseTo(pressedAt + at, 2);
    const begun = it.felt.filter(({ pulses }) => pulses.length > 0);
    const due = tones.filter(({ at }) => at < section.seconds);
    expect(begun.map(({ pulses }) => pulses)).toEqual(due.map((cue) => pulsesFor(cue)));
    for (const [i, { at }] of due.entries())
      expect(begun[i]?.at ?? 0).toBeCloseTo(pressedAt + at, 2);
    expect(it.turns.length).toBeGreaterThan(10);
    expect(it.turns).toEqual(
      due.flatMap(({ sounds: [tone] }) => (tone === "over" || tone === "back" ? [tone] : [])),
    );
    expect(it.heardToo).toContain("update");
    it.outlet.close();
    expect(it.heardToo.at(-1)).toBe("close");
  });

  test("calls a caution urgent, and nothing else", () => {
    const gloved = timeline.sections.find(({ cues }) =>
      cues.some(({ says }) => says === "Put your gloves on."),
    );
    if (gloved === undefined) throw new Error("gloves are asked for");
    const it = world();
    it.lead(gloved);
    for (let second = 0; second < 60; second += 1) it.pass(1);
    const urgent = it.said.filter((each) => each.urgent).map(({ says }) => says);
    expect(urgent).toContain("Put your gloves on.");
    const source = english.source.sentences;
    const cautions = Object.keys(source).filter((key) => key.startsWith("caution."));
    expect(urgent.length).toBeLessThanOrEqual(cautions.length);
    expect(it.said.length).toBeGreaterThan(urgent.length);
  });

  test("takes words back that are hushed, and gives signals on", () => {
    const it = world();
    const pressedAt = it.lead(section);
    const [, second] = words;
    it.pass((second?.at ?? 0) + 0.2);
    expect(it.beside.saying.value?.says).toBe(second?.says);
    it.outlet.update({ sections: [withoutWords(section)], index: 0, pressedAt });
    expect(it.beside.saying.value).toBeNull();
    const felt = it.felt.length;
    for (let s = 0; s < 40; s += 1) it.pass(1);
    expect(it.said).toHaveLength(2);
    expect(it.felt.length).toBeGreaterThan(felt + 5);
  });

  test("gives no beat that a page which stood still would give late", () => {
    const it = world();
    it.lead(section);
    it.pass(20, true);
    expect(it.felt.filter(({ pulses }) => pulses.length > 0).length).toBeLessThanOrEqual(1);
  });

  test("is not felt where nobody asked for it", () => {
    const it = world(false);
    it.lead(section);
    for (let s = 0; s < 40; s += 1) it.pass(1);
    expect(it.felt).toEqual([]);
    expect(it.said.length).toBeGreaterThan(3);
  });
});

describe("Signals for the skin", () => {
  test("differ from each other in rhythm: in how many pulses there are, or in which of them are long", () => {
    const rhythms = toneNames.map((tone) =>
      pulsesOf(tone)
        .filter((_, i) => i % 2 === 0)
        .map((ms) => (ms >= 300 ? "—" : ms >= 60 ? "·" : "'"))
        .join(""),
    );
    // A beat of the count and over are one short pulse each: neither comes where the other may.
    const alike = rhythms.filter((each, i) => rhythms.indexOf(each) !== i);
    expect(alike).toEqual(["·"]);
    expect(rhythms[toneNames.indexOf("pour-out")]).toBe("···—");
  });

  test("end before the next beat of a count-in or of a quick turn", () => {
    expect(pulsesLast(pulsesOf("count"))).toBeLessThan(0.5);
    for (const tone of ["over", "back"] as const)
      expect(pulsesLast(pulsesOf(tone))).toBeLessThan(0.25);
    for (const tone of toneNames) expect(pulsesLast(pulsesOf(tone))).toBeLessThan(1.3);
  });
});
