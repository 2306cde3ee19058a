import { describe, expect, test } from "vitest";
import { lineOf } from "../../src/logbook/run-line.ts";
import type { RunRecord } from "../../src/logbook/run-record.ts";
import { monthsOf } from "../../src/ui/over-time-model.ts";
import { choicesIn, matching, nothingWanted, type Wanted } from "../../src/ui/write-up-find.ts";
import { madeRuns } from "./made-runs.ts";

const runs = madeRuns(10_000);
const lines = runs.map(lineOf);

/** The same question, asked of the records by the shortest way. */
function plainly(wanted: Wanted): readonly string[] {
  return runs
    .filter(({ worksheet, note, stars, begunAt }) => {
      const text = `${worksheet.title} ${note}`.toLowerCase();
      return (
        wanted.text.split(" ").every((word) => text.includes(word)) &&
        (wanted.film === null || worksheet.films[0]?.label === wanted.film) &&
        (wanted.year === null || new Date(begunAt).getFullYear() === wanted.year) &&
        (wanted.stars === null || (stars || "unsaid") === wanted.stars)
      );
    })
    .map(({ id }) => id);
}

test("A run is found by the bottles that its baths were poured from, but for a bath that was left out", () => {
  const [run] = runs.slice(0, 1).map(
    (it): RunRecord => ({
      ...it,
      worksheet: {
        ...it.worksheet,
        developer: { ...it.worksheet.developer, bottle: "Kelp B" },
        baths: { fixer: { bottle: "Fixer B" }, "wash-aid": { bottle: "Rinse C", skip: true } },
      },
    }),
  );
  const found = (text: string) =>
    matching(run ? [lineOf(run)] : [], { ...nothingWanted, text }).length;
  expect(["fixer b", "kelp b", "rinse c"].map(found)).toEqual([1, 1, 0]);
});

describe("ten thousand runs", () => {
  const asked: readonly Partial<Wanted>[] = [
    {},
    { text: "streaks lamp" },
    { text: "evening 77", year: 2012 },
    { film: "Skerry 50", stars: 5 },
    { film: "Skerry 50", stars: "unsaid", year: 2020, text: "tide" },
    { text: "nowhere" },
  ];

  test.each(asked)("are found as by looking at each of them: %j", (part) => {
    const wanted = { ...nothingWanted, ...part };
    expect(matching(lines, wanted).map(({ id }) => id)).toEqual(plainly(wanted));
  });

  test.each(asked)("are counted by each choice as by choosing it: %j", (part) => {
    const wanted = { ...nothingWanted, ...part };
    const choices = choicesIn(lines, wanted);
    for (const { value, count } of choices.film)
      expect(count).toBe(plainly({ ...wanted, film: value }).length);
    for (const { value, count } of choices.stars)
      expect(count).toBe(plainly({ ...wanted, stars: value }).length);
    expect(choices.year.map(({ value }) => value)).toEqual(
      Array.from({ length: 20 }, (_, i) => 2025 - i),
    );
  });

  test("are of each month what they are in all", () => {
    const months = monthsOf(lines);
    expect(months).toHaveLength(240);
    expect(months.reduce((sum, month) => sum + month.runs, 0)).toBe(10_000);
    for (const { celsius, strays } of months) {
      expect(celsius.least).toBeLessThanOrEqual(celsius.middle);
      expect(celsius.middle).toBeLessThanOrEqual(celsius.most);
      expect([...strays.keys()]).toEqual(["developer", "stop", "fixer"]);
      expect(strays.get("fixer")).toEqual({ least: 0, middle: 0, most: 0 });
    }
  });
});
