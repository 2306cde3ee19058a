// A change of detail in the middle of a run: what is left is said anew, and nothing else happens.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Detail } from "../../src/live/detail.ts";
import type { Cue } from "../../src/timeline/score.ts";
import { gullrock } from "../plan/worksheets.ts";
import { compiled } from "../timeline/scene.ts";
import { runByHand } from "./by-hand.ts";

const details = ["full", "brief", "tones"] as const;
const timelines = Object.fromEntries(
  details.map((detail) => [detail, compiled({ ...gullrock, voice: { detail } })]),
);
const at = (detail: string) => {
  const found = timelines[detail];
  if (!found) throw new Error(detail);
  return found;
};
const developer = at("full").sections.findIndex(({ id }) => id === "developer");
const section = (detail: string) => {
  const found = at(detail).sections[developer];
  if (!found) throw new Error("a development has a developer");
  return found;
};

/** What was heard of the developer's section, in seconds from its press, changed at some second. */
function heard(from: Detail, to: Detail, second: number): readonly Cue[] {
  const here = runByHand({ ...gullrock, voice: { detail: from } });
  here.pressThrough(developer + 1);
  const pressedAt = here.run.begunAt();
  here.wait(second);
  here.run.sayAt(to);
  here.wait(section(from).seconds - second + 1);
  return here
    .sounded()
    .filter((entry) => entry.at >= pressedAt)
    .map((entry) => {
      const begin = entry.at - pressedAt;
      return { ...entry.cue, at: begin, until: begin + entry.cue.until - entry.cue.at };
    });
}

/** Anywhere in the section, and more often about where words begin and end: there it is hard. */
const edges = [...section("full").cues, ...section("brief").cues]
  .filter(({ channel }) => channel === "voice")
  .flatMap(({ at, until }) => [at, until]);
const second = fc.oneof(
  fc.double({ min: 0.1, max: section("full").seconds - 1, noNaN: true }),
  fc
    .tuple(fc.constantFrom(...edges), fc.double({ min: -1, max: 1, noNaN: true }))
    .map(([edge, off]) => Math.max(0.1, edge + off)),
);

const change = fc.record({
  from: fc.constantFrom(...details),
  to: fc.constantFrom(...details),
  second,
});

describe("a change of detail in the middle of a bath", () => {
  test("moves no moment: every tone of one sounds in its time, and once (1e-6 s)", () => {
    fc.assert(
      fc.property(change, ({ from, to, second }) => {
        const tones = (cues: readonly Cue[]) =>
          cues.filter(({ kind }) => kind === "now").map((cue) => Math.round(cue.at * 1e6));
        expect(tones(heard(from, to, second))).toEqual(tones(section(from).cues));
      }),
      { numRuns: 150 },
    );
  });

  test("never has two voices at once: half a second parts one from the next", () => {
    fc.assert(
      fc.property(change, ({ from, to, second }) => {
        const said = heard(from, to, second).filter(({ channel }) => channel === "voice");
        said.forEach((cue, index) => {
          const before = said[index - 1];
          if (before) expect(cue.at - before.until).toBeGreaterThanOrEqual(0.5 - 1e-6);
        });
      }),
      { numRuns: 150 },
    );
  });

  test("says the new detail's words from then on, and none that the old alone had", () => {
    fc.assert(
      fc.property(change, ({ from, to, second }) => {
        const known = new Set(section(to).cues.map(({ says }) => says));
        const warnings = section(from).cues.filter(({ kind }) => kind === "prepare");
        for (const cue of heard(from, to, second)) {
          if (cue.channel !== "voice" || cue.at <= second + 1e-6) continue;
          expect(known.has(cue.says) || warnings.some(({ says }) => says === cue.says)).toBe(true);
        }
      }),
      { numRuns: 150 },
    );
  });

  test("leaves no pour-out without its warning, 30 to 3 s ahead, where both details speak", () => {
    const pourOuts = section("full").moments.flatMap((moment, index) =>
      moment.do === "pour-out" ? [{ index, at: moment.at }] : [],
    );
    const spoken = fc.constantFrom("full", "brief");
    fc.assert(
      fc.property(
        spoken,
        spoken,
        fc.double({ min: -12, max: -5, noNaN: true }),
        (from, to, ahead) => {
          for (const pourOut of pourOuts) {
            const cues = heard(from, to, pourOut.at + ahead);
            const warned = cues.some(
              (cue) =>
                cue.channel === "voice" &&
                cue.kind === "prepare" &&
                cue.moment === pourOut.index &&
                pourOut.at - cue.until <= 30 &&
                pourOut.at - cue.until >= 3 - 1e-6,
            );
            const was = section(from).cues.some(
              (cue) =>
                cue.kind === "prepare" && cue.channel === "voice" && cue.moment === pourOut.index,
            );
            expect(warned).toBe(was);
          }
        },
      ),
      { numRuns: 150 },
    );
  });

  test("tells a section that only tells to its end as it was begun", () => {
    const here = runByHand(gullrock);
    here.press();
    here.wait(1);
    here.run.sayAt("brief");
    here.wait(60);
    const said = here.sounded().flatMap(({ cue }) => (cue.says ? [cue.says] : []));
    const first = at("full").sections[0]?.cues.flatMap(({ says }) => (says ? [says] : []));
    expect(said).toEqual(first);
  });

  test("holds for the steps that follow", () => {
    const here = runByHand(gullrock);
    here.press();
    here.wait(60);
    here.run.sayAt("tones");
    const before = here.sounded().length;
    here.press();
    here.wait(60);
    expect(
      here
        .sounded()
        .slice(before)
        .map(({ cue }) => cue.channel),
    ).not.toContain("voice");
  });
});
