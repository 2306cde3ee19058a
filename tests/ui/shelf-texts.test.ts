// What is typed in the shelf's forms, as it is read.
import { describe, expect, test } from "vitest";
import { readAct, readContents } from "../../src/ui/shelf-texts.ts";
import { first as words } from "../../src/ui/words/en/first.ts";
import { bottleForm } from "../../src/ui/words/en/shelf-form.ts";
import "./late-words.ts";

const on = "2026-05-14";

describe("an act with a bottle", () => {
  test.each(["taken", "added"] as const)("%s: a volume above 0 is wanted", (kind) => {
    for (const volume of ["0 ml", "0", "0 fl oz", "0.0 l", ""])
      expect(readAct(kind, { on, volume }), volume).toEqual({
        kind: "faults",
        faults: { volume: bottleForm.wanted },
      });
    expect(readAct(kind, { on, volume: "0.5 ml" })).toEqual({
      kind: "read",
      value: { on, act: { kind, volume: { ml: 0.5 } } },
    });
  });
});

describe("what is in a bottle", () => {
  const typed = { name: "Fixer B", kind: "fixer", mixedOn: on, volume: "1 l" };

  test("keeps for a whole number of days, weeks or months, up to a hundred years", () => {
    const read = readContents({ ...typed, full: "1200", opened: "36500", openedUnit: "days" });
    expect(read.kind === "read" && read.value.keeps).toEqual({
      full: { count: 1200, unit: "months" },
      opened: { count: 36_500, unit: "days" },
    });
    const longer = readContents({
      ...typed,
      full: "1.5",
      half: "99999",
      opened: "0",
      openedUnit: "weeks",
    });
    expect(longer).toEqual({
      kind: "faults",
      faults: {
        full: words.faults.holds("1.5", bottleForm.spanMay("1200")),
        half: words.faults.holds("99999", bottleForm.spanMay("1200")),
        opened: words.faults.holds("0", bottleForm.spanMay("5200")),
      },
    });
  });
});
