import { describe, expect, test } from "vitest";
import { languageNames, languageOf, languages } from "../../src/units/language.ts";

describe("languages", () => {
  test("a region, a script or capitals do not hide a language", () => {
    expect(languageOf("de-AT")).toBe("de");
    expect(languageOf("PT-br")).toBe("pt");
    expect(languageOf("en")).toBe("en");
  });

  test("another language is none of them", () => {
    expect(languageOf("sv")).toBeNull();
    expect(languageOf("nld")).toBeNull();
    expect(languageOf("")).toBeNull();
  });

  test("each has the name that a display-name table gives it", () => {
    for (const language of languages) {
      const name = new Intl.DisplayNames(language, { type: "language" }).of(language) ?? "";
      expect(name.toLowerCase()).toBe(languageNames[language].toLowerCase());
    }
  });
});
