// Of two baths in one section, which was missed, and of which the tank is empty now: the first that may still be in.
import { describe, expect, test } from "vitest";
import { staysOf } from "../../src/live/stays.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import type { Section } from "../../src/timeline/score.ts";
import { gullrock } from "../plan/worksheets.ts";
import { runByHand } from "./by-hand.ts";

const shortStop: Worksheet = { ...gullrock, baths: { ...gullrock.baths, stop: { time: "0:30" } } };

/** Some seconds into the developer. */
function developing(seconds: number, worksheet = gullrock) {
  const here = runByHand(worksheet);
  const index = here.planned.sections.findIndex(({ id }) => id === "developer");
  here.pressThrough(index + 1);
  here.wait(seconds);
  const [developer, stop] = staysOf(here.planned.sections[index] as Section);
  if (developer === undefined || stop === undefined) throw new Error("a developer, and a stop");
  return { here, developer, stop };
}

/** As far as `from`, then nothing is heard until `to`, then it is told of. */
function silent(from: number, to: number, worksheet = gullrock) {
  const all = developing(from, worksheet);
  const { here } = all;
  here.setSounding(false);
  here.wait(to - from);
  here.setSounding(true);
  const since = here.clocks().steady;
  here.wait(15);
  const said = here
    .ears()
    .flatMap(({ cue, at }) => (at >= since && cue.says !== undefined ? [cue.says] : []));
  return { ...all, said };
}

function emptied({ here }: { readonly here: ReturnType<typeof runByHand> }) {
  expect(here.run.emptied(here.clocks().steady)).toBe(true);
  return here.kept.at(-1);
}

describe("Where nothing was heard across two calls to pour out", () => {
  test("the first bath is the one that may still be in", () => {
    const { said } = silent(560, 740);
    expect(said[0]).toMatch(/If the developer is still in, pour it out now/);
  });

  test("and only the second call was missed, it is the second bath", () => {
    const { said } = silent(600, 740);
    expect(said[0]).toMatch(/If the stop bath is still in, pour it out now/);
  });

  test("a tank that is empty then is the first bath's", () => {
    const all = silent(560, 740);
    const by = 740 + 15 - all.developer.empty;
    expect(emptied(all)).toMatchObject({ kind: "emptied", bath: "developer", stay: 0 });
    expect(all.here.kept.at(-1)).toHaveProperty("by", expect.closeTo(by, 3));
    // The stop bath is still to come.
    expect(all.here.run.position()).toMatchObject({ kind: "timed", bath: "developer" });
    expect(staysOf(all.here.run.position().section as Section)[1]?.pourIn).toBeCloseTo(
      all.here.clocks().steady - all.here.run.begunAt() + 5,
      5,
    );
  });

  test("a tank that is empty after the first was said to be is the second bath's", () => {
    const all = silent(560, 740);
    emptied(all);
    const [, stop] = staysOf(all.here.run.position().section as Section);
    all.here.wait((stop?.empty ?? 0) + all.here.run.begunAt() - all.here.clocks().steady + 4);
    expect(emptied(all)).toMatchObject({ kind: "emptied", bath: "stop", stay: 1 });
  });

  test("it is the second bath's too where the call of that one alone was missed", () => {
    expect(emptied(silent(600, 740))).toMatchObject({ kind: "emptied", bath: "stop", stay: 1 });
  });

  test("it is the second bath's where that one was said to be poured in", () => {
    const all = developing(560);
    all.here.setSounding(false);
    all.here.wait(50);
    all.here.setSounding(true);
    all.here.wait(1);
    expect(all.here.run.poured(all.here.clocks().steady)).toBe(true);
    all.here.wait(60);
    expect(emptied(all)).toMatchObject({ kind: "emptied", bath: "stop", stay: 1 });
  });
});

describe("A tank that is empty between two baths, each call of which was heard", () => {
  test("is the first one's, late, rather than the second one's, cut short", () => {
    for (const late of [5, 20, 30, 37]) {
      const all = developing(0, shortStop);
      all.here.wait(all.developer.empty + late);
      expect(emptied(all)).toMatchObject({ bath: "developer" });
    }
  });

  test("is the second one's once that is nearly over", () => {
    for (const early of [8, 0, -20]) {
      const all = developing(0, shortStop);
      all.here.wait(all.stop.empty - early);
      expect(emptied(all)).toMatchObject({ bath: "stop" });
    }
  });
});
