import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readField } from "../../src/ui/read-field.ts";
import { faults as faultWords } from "../../src/ui/words/en/faults.ts";

const signed = (typed: string) => readField("signed", typed, "");
const numbers = (typed: string) => readField("numbers", typed, "");

const read = (value: unknown, meaning: string) => ({ kind: "read", value, meaning, lent: false });

describe("a number that may lie below 0", () => {
  test.each([
    ["−1.85", -1.85, "−1.85"],
    ["-1.85", -1.85, "−1.85"],
    ["–1,85", -1.85, "−1.85"],
    [" - 1.85 ", -1.85, "−1.85"],
    ["+1.85", 1.85, "1.85"],
    ["1.85", 1.85, "1.85"],
    ["-½", -0.5, "−0.5"],
  ])("is read from %j", (typed, value, meaning) => {
    expect(signed(typed)).toEqual(read(value, meaning));
  });

  test("is plain 0 where nothing is below it", () => {
    expect(signed("-0")).toEqual(read(0, "0"));
    expect(Object.is((signed("−0.0") as { value?: unknown }).value, 0)).toBe(true);
  });

  test.each(["x", "-", "--1", "1-2", "-1.85 x", ""])("is not made out of %j", (typed) => {
    expect(signed(typed)).toEqual({ kind: "unread", may: faultWords.number });
  });
});

describe("numbers on one line", () => {
  test.each([
    ["0.12 0.2", [0.12, 0.2], "0.12 0.2"],
    ["0,12; 0,2", [0.12, 0.2], "0.12 0.2"],
    ["0.12,0.2", [0.12, 0.2], "0.12 0.2"],
    ["0.12, 0.2", [0.12, 0.2], "0.12 0.2"],
    ["0,12 0,2", [0.12, 0.2], "0.12 0.2"],
    ["0,12, 0,2", [0.12, 0.2], "0.12 0.2"],
    ["0.12;0.2;", [0.12, 0.2], "0.12 0.2"],
    ["  3   5 ", [3, 5], "3 5"],
    ["0.3", [0.3], "0.3"],
  ])("are parted in %j", (typed, value, meaning) => {
    expect(numbers(typed)).toEqual(read(value, meaning));
  });

  test.each(["x", "0.12 x", "x 0.12", "0.12 -0.2", "0.1.2"])(
    "are refused whole for one that is none: %j",
    (typed) => {
      expect(numbers(typed)).toEqual({ kind: "unread", may: faultWords.numbers });
    },
  );

  test("are as many as were typed, longer than any single field's text", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 600 }), { minLength: 1, maxLength: 60 }),
        fc.constantFrom(" ", "; ", ", "),
        fc.boolean(),
        (hundredths, between, commas) => {
          const values = hundredths.map((it) => it / 100);
          const typed = values
            .map((it) => (commas ? it.toFixed(2).replace(".", ",") : it.toFixed(2)))
            .join(between);
          expect(numbers(typed)).toMatchObject({ kind: "read", value: values });
        },
      ),
    );
  });
});
