import { describe, expect, test } from "vitest";
import { inUnitOf, readTypedVolume, toMillilitres, writeVolume } from "../../src/units/volume.ts";

describe("a volume", () => {
  test("a US fluid ounce is 29.5735295625 ml (by definition)", () => {
    expect(toMillilitres({ flOz: 1 })).toBe(29.5735295625);
    expect(toMillilitres({ ml: 600 })).toBe(600);
  });

  test.each([
    ["600 ml", { ml: 600 }, "600 ml"],
    ["600ML", { ml: 600 }, "600 ml"],
    ["0,6 l", { ml: 600 }, "600 ml"],
    ["0.125 litre", { ml: 125 }, "125 ml"],
    ["30 cl", { ml: 300 }, "300 ml"],
    ["20 fl oz", { flOz: 20 }, "20 fl oz"],
    ["20.5oz", { flOz: 20.5 }, "20.5 fl oz"],
    ["8½ fl. oz.", { flOz: 8.5 }, "8.5 fl oz"],
    ["16 ounces", { flOz: 16 }, "16 fl oz"],
  ])("%j keeps the unit typed", (typed, volume, written) => {
    expect(readTypedVolume(typed)).toEqual({ kind: "read", volume });
    expect(writeVolume(volume)).toBe(written);
  });

  test.each(["", "600", "1,000 ml", "six hundred ml", "-5 ml", "600 g", "٦٠٠ ml"])(
    "%j is refused",
    (typed) => {
      expect(readTypedVolume(typed)).toHaveProperty("may", expect.stringContaining("its unit"));
    },
  );

  test("a result is written in the unit of what was typed", () => {
    expect(writeVolume(inUnitOf({ flOz: 20 }, 147.8676478125))).toBe("5 fl oz");
    expect(writeVolume(inUnitOf({ ml: 600 }, 150))).toBe("150 ml");
  });
});
