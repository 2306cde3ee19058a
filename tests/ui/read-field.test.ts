import { describe, expect, test } from "vitest";
import { readField, unitTyped } from "../../src/ui/read-field.ts";

const value = (kind: Parameters<typeof readField>[0], typed: string, lent = "") => {
  const reading = readField(kind, typed, lent);
  return reading.kind === "read" ? reading.value : "unread";
};

describe("a field's text", () => {
  test("a temperature keeps the unit it was typed in", () => {
    expect(value("temperature", "68 °F", "c")).toEqual({ f: 68 });
    expect(value("temperature", "20 C", "f")).toEqual({ c: 20 });
  });

  test("a number alone takes the unit it is lent, and says so", () => {
    expect(readField("temperature", "68", "f")).toEqual({
      kind: "read",
      value: { f: 68 },
      meaning: "68 °F",
      lent: true,
    });
    expect(readField("volume", "20", "flOz")).toMatchObject({ value: { flOz: 20 }, lent: true });
    expect(readField("volume", "600 ml", "flOz")).toMatchObject({
      value: { ml: 600 },
      lent: false,
    });
  });

  test("a time becomes the clock time that a worksheet holds", () => {
    expect(value("time", "9.5 min")).toBe("9:30");
    expect(value("time", "9:30")).toBe("9:30");
    expect(value("time", "9.5")).toBe("unread");
  });

  test("seconds may be typed alone, with their unit, or as a clock shows them", () => {
    expect(["10", "10 s", "0:10", "2,5"].map((typed) => value("seconds", typed))).toEqual([
      10, 10, 10, 2.5,
    ]);
  });

  test("minutes may be typed alone or with their unit", () => {
    expect(["30", "30 min", "1 h"].map((typed) => value("minutes", typed))).toEqual([30, 30, 60]);
    // A tank may take longer than a day to go half-way.
    expect(value("minutes", "2000 min")).toBe(2000);
  });

  test("per cent become a fraction", () => {
    expect(["10", "10 %", "12.5%"].map((typed) => value("per-cent", typed))).toEqual([
      0.1, 0.1, 0.125,
    ]);
  });

  test("fills are told apart by commas, spaces or both", () => {
    expect(value("counts", "5, 10 20")).toEqual([5, 10, 20]);
    expect(value("counts", "5, ten")).toBe("unread");
  });

  test("a size and a dilution are put in the worksheet's own form", () => {
    expect(value("size", "4 × 5 in")).toBe("4x5in");
    expect(value("dilution", "1 + 3")).toBe("1+3");
    expect(value("dilution", "1:3")).toBe("unread");
  });

  test("a refusal is about the text as it was typed", () => {
    expect(readField("temperature", "warm", "c")).toEqual({
      kind: "unread",
      may: 'a temperature with its unit, such as "20 °C", "20.5 C" or "68 °F"',
    });
  });
});

test("the unit typed is found only where one was typed", () => {
  expect(unitTyped("temperature", "68F")).toBe("f");
  expect(unitTyped("volume", "20 fl oz")).toBe("flOz");
  expect(unitTyped("volume", "20")).toBeNull();
});
