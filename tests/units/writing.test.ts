import { describe, expect, test } from "vitest";
import { languages } from "../../src/units/language.ts";
import { writingIn } from "../../src/units/writing.ts";

const german = writingIn("de");
const english = writingIn("en");

describe("figures in a language", () => {
  test.each(languages)("have a point in English and a comma in every other: %s", (language) => {
    const { number, typed } = writingIn(language);
    const mark = language === "en" ? "." : ",";
    expect(number(9.5)).toBe(`9${mark}5`);
    expect(number(1234.5678, 3)).toBe(`1234${mark}568`);
    expect(typed(640.125)).toBe(`640${mark}125`);
    expect(number(12)).toBe("12");
  });

  test("keep the true minus sign and the units, and round as in English", () => {
    expect(german.number(-0.285)).toBe("−0,29");
    expect(german.temperature({ c: 20.5 })).toBe("20,5 °C");
    expect(german.degrees({ f: 68 }, 1.5)).toBe("2,7 °F");
    expect(german.tenths({ c: 0 }, 20.04)).toBe("20 °C");
    expect(german.degreesOf({ c: 0 }, 20.46)).toBe("20,5");
    expect(german.volume({ flOz: 5.25 })).toBe("5,25 fl oz");
    expect(german.millilitres({ ml: 1 }, 62.5)).toBe("62,5 ml");
  });

  test("write a dilution by its parts, or by the language's word for stock", () => {
    expect(german.dilution({ stock: 1, water: 1.5 }, "Stammlösung")).toBe("1+1,5");
    expect(german.dilution({ stock: 1, water: 0 }, "Stammlösung")).toBe("Stammlösung");
  });

  test("are parted by semicolons where the comma is taken", () => {
    expect(english.list(["9.5 s", "10 s"])).toBe("9.5 s, 10 s");
    expect(german.list(["9,5 s", "10 s"])).toBe("9,5 s; 10 s");
  });
});
