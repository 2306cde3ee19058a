import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planOf } from "../../src/plan/plan.ts";
import { allEnglish } from "../../src/plan/words/english-asides.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { processBaths } from "../../src/trade/baths.ts";
import { writingIn } from "../../src/units/writing.ts";
import { anyWorksheet } from "./any-worksheet.ts";
import { benchInCelsius, benchInFahrenheit } from "./bench-worksheets.ts";
import { leftOf, madeUp, sentencesByKey, sentencesOf } from "./made-up-words.ts";
import { rareWorksheets } from "./rare-worksheets.ts";
import { foghorn, gullrock } from "./worksheets.ts";

const words = madeUp(writingIn("de"));

/** Everything that a plan says in words. */
function textsOf(worksheet: Worksheet, said = words): readonly string[] {
  const { baths, working, warnings } = planOf(worksheet, said);
  return [
    ...baths.map(({ label }) => label),
    ...working.flatMap(({ label, expression, result }) => [label, expression, result]),
    ...warnings.map(({ text }) => text),
  ];
}

const rich = { gullrock, foghorn, benchInFahrenheit, benchInCelsius, ...rareWorksheets };

describe("a plan in other words", () => {
  test.each(Object.entries(rich))("holds no English: %s", (_, worksheet) => {
    for (const text of textsOf(worksheet))
      expect(leftOf(text, worksheet), text).not.toMatch(/\p{L}/u);
  });

  test("holds no English, whatever the worksheet", () => {
    fc.assert(
      fc.property(anyWorksheet, (worksheet) => {
        for (const text of textsOf(worksheet)) {
          expect(leftOf(text, worksheet), text).not.toMatch(/\p{L}/u);
        }
      }),
      { numRuns: 200 },
    );
  });

  test("writes every figure with the language's decimal mark", () => {
    fc.assert(
      fc.property(fc.oneof(anyWorksheet, fc.constantFrom(...Object.values(rich))), (worksheet) => {
        for (const text of textsOf(worksheet)) {
          expect(leftOf(text, worksheet), text).not.toMatch(/\d\.\d/);
        }
      }),
      { numRuns: 200 },
    );
  });

  test("has the numbers of the plan in English", () => {
    fc.assert(
      fc.property(anyWorksheet, (worksheet) => {
        const [here, there] = [planOf(worksheet), planOf(worksheet, words)];
        expect(there.developmentSeconds).toBe(here.developmentSeconds);
        expect(there.mix).toEqual(here.mix);
        expect(there.baths.map(({ label: _, ...bath }) => bath)).toEqual(
          here.baths.map(({ label: _, ...bath }) => bath),
        );
        expect(there.working.map(({ about }) => about)).toEqual(
          here.working.map(({ about }) => about),
        );
        expect(there.warnings.map(({ text: _, ...warning }) => warning)).toEqual(
          here.warnings.map(({ text: _, ...warning }) => warning),
        );
      }),
    );
  });
});

describe("the catalogue", () => {
  test("names every bath of every process", () => {
    const ids = Object.values(processBaths).flatMap((baths) => baths.map(({ id }) => id));
    expect(Object.keys(allEnglish.baths.names)).toEqual(ids);
  });

  test("holds no sentence that no plan says", () => {
    const said = new Set<string>();
    const listening = madeUp(writingIn("en"), (key) => said.add(key));
    const many = fc.sample(anyWorksheet, { seed: 7, numRuns: 600 });
    for (const worksheet of [...Object.values(rich), ...many]) planOf(worksheet, listening);
    const all = sentencesByKey(sentencesOf(allEnglish)).map(([key]) => key);
    // A developer goes by its own name in a plan, and no worksheet holds a wedge of two steps.
    expect(all.filter((key) => !said.has(key))).toEqual([
      "contrast.warnings.wedge.too-few",
      "baths.names.developer",
    ]);
  });
});
