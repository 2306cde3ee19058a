// The timeline of a rehearsal, held to the laws of every timeline, and beside that of its run: what is called
// before a moment there is called here.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planOf } from "../../src/plan/plan.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import type { Tell } from "../../src/process/outline.ts";
import { type Rehearsal, rehearsalSteps } from "../../src/process/rehearsal.ts";
import type { Script } from "../../src/script/script.ts";
import { scriptIn } from "../../src/script/scripts.ts";
import { type Lengths, lengthsOf } from "../../src/timeline/lengths.ts";
import type { Timeline } from "../../src/timeline/score.ts";
import { compile, compileSteps } from "../../src/timeline/timeline.ts";
import { languages } from "../../src/units/language.ts";
import { gullrock } from "../plan/worksheets.ts";
import { builtPack } from "../voice/built-pack.ts";
import { anyWorksheet } from "./any-worksheet.ts";
import { brokenLaws } from "./laws.ts";
import { english, estimatedLengths } from "./scene.ts";

const anyRehearsal: fc.Arbitrary<Rehearsal> = fc.record({
  factor: fc.constantFrom(0, 1 / 4, 1 / 2, 1),
  why: fc.boolean(),
});

const voices = await Promise.all(
  languages.map(async (language) => ({
    language,
    script: await scriptIn(language),
    index: builtPack(language).index,
  })),
);

/** Every way in which a moment can be worth practising. */
const everyFinding: readonly Tell[] = [
  "practise.these",
  ...["pour-in", "pour-out"].flatMap((deed) => ["late", "early", "missed"].map((it) => [deed, it])),
  ...["late", "early"].map((it) => ["agitate", it]),
].map((it) =>
  typeof it === "string" ? it : { key: `practise.${it.join(".")}`, slots: { bath: "developer" } },
);

function rehearsed(
  worksheet: Worksheet,
  rehearsal: Rehearsal,
  script: Script,
  lengths: Lengths,
): Timeline {
  const plan = planOf(worksheet);
  const steps = rehearsalSteps(worksheet, plan, rehearsal, everyFinding);
  return compileSteps(steps, worksheet, plan, script, lengths);
}

/** Of each moment that is called in words before it: its section, and its place among that section's. */
const called = (timeline: Timeline, deeds: readonly string[]) =>
  timeline.sections.flatMap(({ id, cues, moments }) =>
    cues.flatMap(({ kind, moment }) =>
      kind === "prepare" && deeds.includes(moments[moment ?? -1]?.do ?? "")
        ? [`${id} ${moment} ${moments[moment ?? -1]?.do}`]
        : [],
    ),
  );

describe("The timeline of a rehearsal", () => {
  test("keeps every law, whatever the worksheet and the rests", () => {
    fc.assert(
      fc.property(anyWorksheet, anyRehearsal, (worksheet, rehearsal) => {
        const lengths = estimatedLengths(worksheet.voice?.rate ?? 1);
        expect(brokenLaws(rehearsed(worksheet, rehearsal, english, lengths))).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });

  test("loses no call to pour that the run has", () => {
    fc.assert(
      fc.property(anyWorksheet, anyRehearsal, (worksheet, rehearsal) => {
        const lengths = estimatedLengths(worksheet.voice?.rate ?? 1);
        const run = compile(worksheet, planOf(worksheet), english, lengths);
        const here = new Set(
          called(rehearsed(worksheet, rehearsal, english, lengths), ["pour-in", "pour-out"]),
        );
        expect(called(run, ["pour-in", "pour-out"]).filter((it) => !here.has(it))).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });

  test.each(voices)("in $language says all of it with the voice that is played", (voice) => {
    const { script, index } = voice;
    const all = [0, 1 / 4, 1 / 2, 1].map((factor) =>
      rehearsed(gullrock, { factor, why: true }, script, lengthsOf(index, 1)),
    );
    const run = compile(gullrock, planOf(gullrock), script, lengthsOf(index, 1));
    for (const timeline of all) {
      expect(brokenLaws(timeline)).toEqual([]);
      const told = timeline.sections.filter(({ seconds }) => seconds === 0);
      expect(told.flatMap(({ left }) => left)).toEqual([]);
      const spoken = told.flatMap(({ cues }) => cues.map(({ says }) => says));
      expect(spoken.length).toBeGreaterThan(30);
      // Each bout that is called in the run is called here, as far as its rest is shortened.
      const deeds = ["pour-in", "pour-out", "agitate"];
      expect(called(timeline, deeds)).toEqual(called(run, deeds));
    }
  });
});
