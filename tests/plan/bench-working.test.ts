// The working of everything measured at the bench: read aloud as a text to compare, and done again by a
// pocket calculator that knows only what stands on the line.
import { describe, expect, test } from "vitest";
import type { WorkingLine } from "../../src/plan/line.ts";
import { planOf } from "../../src/plan/plan.ts";
import { readWorksheet } from "../../src/plan/read-worksheet.ts";
import { benchInCelsius, benchInFahrenheit } from "./bench-worksheets.ts";
import { redone } from "./pocket-calculator.ts";

const worksheets = {
  "°F and fluid ounces": benchInFahrenheit,
  "°C and millilitres": benchInCelsius,
};

describe.each(Object.entries(worksheets))("a worksheet in %s", (title, worksheet) => {
  const { working, warnings } = planOf(worksheet);

  test("is one that a file may hold", () => {
    expect(readWorksheet(worksheet)).toEqual({ kind: "worksheet", worksheet });
  });

  test("has its working read aloud", async () => {
    const lines = working.map(({ about, label, expression, result }) =>
      [`${label} (${about})`, `  ${expression}`, `  ${result}`].join("\n"),
    );
    const told = warnings.map(({ id, severity, text }) => `${severity}, ${id}\n  ${text}`);
    const file = `working-in-${worksheet === benchInCelsius ? "celsius" : "fahrenheit"}.txt`;
    await expect(`${[...lines, "", ...told].join("\n")}\n`, title).toMatchFileSnapshot(file);
  });

  test("every sum on a line comes to what the line says (to half of its last digit, and what its own rounded numbers leave)", () => {
    const sums = working.flatMap((line: WorkingLine) => redone(line));
    expect(sums.length).toBeGreaterThanOrEqual(22);
    for (const { label, sum, said, comes, within } of sums) {
      expect(
        Math.abs(comes - said),
        `${label}: ${sum} is ${comes}, said ${said}`,
      ).toBeLessThanOrEqual(within);
    }
  });
});
