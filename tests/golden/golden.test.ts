import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readWorksheetText } from "../../src/plan/read-worksheet.ts";
import { sheetOf } from "../../src/track/sheet.ts";
import { brokenLaws } from "../timeline/laws.ts";
import { compiled, english } from "../timeline/scene.ts";

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
});
