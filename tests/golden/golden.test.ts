import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readWorksheetText } from "../../src/plan/read-worksheet.ts";
import { planOf } from "../../src/plan/plan.ts";
import { wordsIn } from "../../src/plan/words/languages.ts";
import { scriptIn } from "../../src/script/scripts.ts";
import { compile } from "../../src/timeline/timeline.ts";
import { sheetOf } from "../../src/track/sheet.ts";
import { languages } from "../../src/units/language.ts";
import { brokenLaws } from "../timeline/laws.ts";
import { compiled, english, estimatedLengths } from "../timeline/scene.ts";

const folder = new URL(".", import.meta.url);
const names = readdirSync(folder).flatMap((file) => (file.endsWith(".json") ? [file.slice(0, -5)] : []));

describe("The golden sheets", () => {
  test("are five", () => expect(names).toHaveLength(5));

  // Words have the lengths that scene.ts estimates, so that a sheet changes by intent alone.
  test.each(names)("%s reads as it did", async (name) => {
    const reading = readWorksheetText(readFileSync(new URL(`${name}.json`, folder), "utf8"));
    if (reading.kind !== "worksheet") throw new Error(JSON.stringify(reading.faults));
    const timeline = compiled(reading.worksheet);
    expect(brokenLaws(timeline)).toEqual([]);
    await expect(sheetOf(timeline, english)).toMatchFileSnapshot(`./${name}.txt`);
  });

  test.each(languages.filter((language) => language !== "en"))(
    "gullrock-inversion reads as it did in %s",
    async (language) => {
      const reading = readWorksheetText(readFileSync(new URL("gullrock-inversion.json", folder), "utf8"));
      if (reading.kind !== "worksheet") throw new Error(JSON.stringify(reading.faults));
      const worksheet = { ...reading.worksheet, language };
      const [script, words] = await Promise.all([scriptIn(language), wordsIn(language)]);
      const timeline = compile(worksheet, planOf(worksheet, words), script, estimatedLengths(1));
      expect(brokenLaws(timeline)).toEqual([]);
      await expect(sheetOf(timeline, script)).toMatchFileSnapshot(`./gullrock-inversion.${language}.txt`);
    },
  );
});
