import { afterEach, describe, expect, test } from "vitest";
import { demos } from "../../src/ui/demo.ts";
import { directionOf } from "../../src/ui/direction.ts";
import { draftOf } from "../../src/ui/draft-of.ts";
import {
  fixed,
  language,
  lateWords,
  locale,
  planWords,
  speak,
  typedFigure,
  withLateWords,
  words,
  writing,
} from "../../src/ui/language.ts";
import { inLanguage, sheetLanguage } from "../../src/ui/sheet-language.ts";
import { type Catalogue, catalogueOf } from "../../src/ui/words/catalogues.ts";
import { makeWorkOut, openWorkOut } from "../../src/ui/work-out-state.ts";
import { languages } from "../../src/units/language.ts";
import { benchInCelsius } from "../plan/bench-worksheets.ts";
import { markedCatalogue, markedFirst } from "./marked-words.ts";
import { world } from "./ports.ts";

afterEach(() => speak("en"));

const lost: Catalogue = {
  first: async () => {
    throw new Error("no network");
  },
  late: async () => {
    throw new Error("no network");
  },
};

/** Fetched when the test says so. */
function slow() {
  let come = () => {};
  const there = new Promise<void>((resolve) => {
    come = resolve;
  });
  const catalogue: Catalogue = {
    async first() {
      await there;
      return markedFirst;
    },
    late: markedCatalogue.late,
  };
  return { catalogue, come: () => come() };
}

describe("a language put in force", () => {
  test("changes the words of the first screen, of what came later and of the plan, and the figures", async () => {
    await withLateWords(Promise.resolve());
    expect(await speak("de", markedCatalogue)).toBe(true);
    expect(language.value).toBe("de");
    expect(words.value.frame.skip).toBe("‹Skip to the page›");
    expect(lateWords.value.walk.next).toBe("‹Next step›");
    expect(planWords.value.baths.given).toMatch(/^‹/);
    expect(writing.value.number(9.5)).toBe("9,5");
    expect(fixed(0.6, 2)).toBe("0,60");
    expect(locale.value).toBe("de");
    await speak("en");
    expect(words.value.frame.skip).toBe("Skip to the page");
    expect(fixed(0.6, 2)).toBe("0.60");
  });

  test("whose words cannot be fetched leaves all as it was", async () => {
    expect(await speak("fr", lost)).toBe(false);
    expect(language.value).toBe("en");
    expect(words.value.frame.skip).toBe("Skip to the page");
    expect(await speak("fr", { ...lost, first: markedCatalogue.first })).toBe(false);
    expect(words.value.frame.skip).toBe("Skip to the page");
  });

  test("is the one asked for last, whichever is fetched last", async () => {
    const first = slow();
    const asked = speak("de", first.catalogue);
    await speak("nl");
    first.come();
    expect(await asked).toBe(true);
    expect(language.value).toBe("nl");
    expect(words.value.frame.skip).not.toMatch(/^‹/);
  });

  test("is one of seven, each with words of its own or in English", async () => {
    for (const each of languages) {
      expect(await speak(each)).toBe(true);
      expect((await catalogueOf(each).late()).screens.walk.next).not.toBe("");
    }
  });
});

describe("a figure as a person would type it", () => {
  test.each([
    ["en", 1.125, "1.125"],
    ["de", 1.125, "1,1250"],
    ["de", 0.5, "0,5"],
    ["de", -12.25, "-12,25"],
    ["de", 400, "400"],
  ] as const)("in %s, %d is %s", async (into, value, text) => {
    await speak(into, markedCatalogue);
    expect(typedFigure(value)).toBe(text);
  });

  test("reads as the same worksheet in every language, whatever language it is then read in", async () => {
    for (const worksheet of [demos.gullrock, demos.foghorn, benchInCelsius]) {
      for (const typed of languages) {
        await speak(typed);
        const workOut = makeWorkOut(draftOf(worksheet), null, world().ports);
        expect(workOut.worksheet.value).toEqual(worksheet);
        await speak("en");
        expect(workOut.worksheet.value).toEqual(worksheet);
      }
    }
  });
});

describe("a worksheet's own language", () => {
  test("is the page's where it begins there, and goes unsaid in English", async () => {
    const english = await openWorkOut(world().ports);
    expect(english.worksheet.value).toEqual(demos.gullrock);
    await speak("es");
    const spanish = await openWorkOut(world().ports);
    // Where leaflets are in °C, so is the demo.
    const { developer, title } = spanish.worksheet.value ?? {};
    expect(spanish.worksheet.value?.language).toBe("es");
    expect(title).not.toBe(demos.gullrock.title);
    expect(developer?.leaflet.every(({ temperature }) => "c" in temperature)).toBe(true);
    spanish.startDemo("foghorn");
    expect(spanish.worksheet.value?.language).toBe("es");
    spanish.startEmpty();
    expect(spanish.draft.value.language).toBe("es");
  });

  test("goes along when the page's is chosen, as one step that undo takes back", () => {
    const workOut = makeWorkOut(draftOf(demos.gullrock), null, world().ports);
    workOut.speakIn("it");
    expect(workOut.worksheet.value).toEqual({ ...demos.gullrock, language: "it" });
    expect(workOut.notice.value?.says).toContain("Italiano");
    workOut.undo();
    expect(workOut.worksheet.value).toEqual(demos.gullrock);
    workOut.speakIn("en");
    expect(workOut.canUndo.value).toBe(false);
  });

  test("stays as it is where the worksheet is opened with another", async () => {
    const workOut = makeWorkOut(draftOf(demos.gullrock), null, world().ports);
    workOut.open("mine.json", JSON.stringify({ ...demos.gullrock, language: "pt-BR" }));
    await speak("fr");
    expect(workOut.worksheet.value?.language).toBe("pt-BR");
    expect(sheetLanguage(workOut.draft.value)).toBe("pt");
  });

  test("is the usual one where it is none of ours, and is not written down", () => {
    expect(sheetLanguage({ language: "sv" })).toBe("en");
    expect(sheetLanguage({})).toBe("en");
    expect(inLanguage({ language: "de", title: "a" }, "en")).toEqual({ title: "a" });
  });
});

test("a notice that is shown goes along with the page's language", async () => {
  const workOut = makeWorkOut(draftOf(demos.gullrock), null, world().ports);
  workOut.startEmpty();
  expect(workOut.notice.value?.says).toMatch(/^The page is empty/);
  await speak("de", markedCatalogue);
  expect(workOut.notice.value?.says).toMatch(/^‹The page is empty/);
});

test("a script's way is told where the browser knows it", () => {
  expect(directionOf("en")).toBe("ltr");
  const known = "getTextInfo" in Intl.Locale.prototype || "textInfo" in Intl.Locale.prototype;
  expect(directionOf("ar")).toBe(known ? "rtl" : "ltr");
});
