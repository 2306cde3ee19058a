import { describe, expect, test } from "vitest";
import type { Section } from "../../src/timeline/score.ts";
import { demos } from "../../src/ui/demo.ts";
import { entriesOf, entryAt } from "../../src/ui/score-entries.ts";
import { compiled } from "../timeline/scene.ts";
import "./late-words.ts";

const developer = compiled(demos.gullrock).sections.find(({ id }) => id === "developer");
const section = (): Section => {
  if (developer === undefined) throw new Error("the demo has no developer");
  return developer;
};
const entries = entriesOf(section(), "inversion");
const handsAt = (at: number) => entries.find((entry) => entry.at === at)?.hands;

describe("a section in words", () => {
  test("tells a bout once, with its inversions counted and its end", () => {
    expect(handsAt(18)).toBe("tank full, invert 12 times, until 0:48");
    expect(handsAt(68)).toBe("invert twice, until 1:13");
    expect(entries.filter((entry) => entry.hands?.includes("invert"))).toHaveLength(19);
  });

  test("tells what happens at one time as one entry", () => {
    expect(handsAt(8)).toBe("pour in the developer");
    expect(handsAt(48)).toBe("rest, tap twice");
    const times = entries.map(({ at }) => at);
    expect(times).toEqual([...new Set(times)].toSorted((a, b) => a - b));
  });

  test("holds all that is said, and every moment but the single inversions", () => {
    const said = section().cues.flatMap((cue) => (cue.says === undefined ? [] : [cue.says]));
    expect(entries.flatMap((entry) => entry.says)).toEqual(said);
    expect(said.length).toBeGreaterThan(20);
    const deeds = section().moments.filter((moment) => moment.do !== "invert");
    const told = entries.flatMap((entry) => entry.hands?.split(", ") ?? []);
    expect(told.filter((deed) => !deed.startsWith("until"))).toHaveLength(deeds.length);
  });

  test("names what the hands turn, by the kind of tank", () => {
    const drum = entriesOf(section(), "rotary");
    expect(drum.some((entry) => entry.hands?.includes("turn the drum 12 times"))).toBe(true);
  });

  test("knows which entry is on", () => {
    expect(entryAt(entries, 0)).toBe(-1);
    expect(entries[entryAt(entries, 47.9)]?.at).toBeLessThan(48);
    expect(entries[entryAt(entries, 48)]?.at).toBe(48);
  });
});
