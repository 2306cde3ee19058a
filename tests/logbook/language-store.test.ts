import { describe, expect, test } from "vitest";
import { languageOfVisit, languageStore } from "../../src/logbook/language-store.ts";

/** As much of a browser's storage as is used. */
function storage(kept: Record<string, string> = {}): Storage {
  return {
    length: 0,
    key: () => null,
    clear() {},
    removeItem() {},
    getItem: (key) => kept[key] ?? null,
    setItem(key, text) {
      kept[key] = text;
    },
  };
}

const refused = languageStore(() => {
  throw new Error("the browser will not have it");
});
const nothing = languageStore(() => storage());

describe("the page's language between visits", () => {
  test("is the one that was chosen last", () => {
    const shelf = storage();
    const store = languageStore(() => shelf);
    expect(store.load()).toBeNull();
    expect(store.keep("fr")).toBe(true);
    expect(store.keep("it")).toBe(true);
    expect(languageStore(() => shelf).load()).toBe("it");
    expect(languageOfVisit(store, ["de-DE", "en"])).toBe("it");
  });

  test("is none where what is kept is of another make", () => {
    expect(languageStore(() => storage({ "tankside-language": "tlh" })).load()).toBeNull();
  });

  test("is not kept, and says so, where the browser refuses or is full", () => {
    expect(refused.load()).toBeNull();
    expect(refused.keep("de")).toBe(false);
    expect(languageOfVisit(refused, ["nl"])).toBe("nl");
  });
});

describe("the language of a first visit", () => {
  test("is the first of the person's own that is one of ours, whatever country stands behind it", () => {
    expect(languageOfVisit(nothing, ["sv-SE", "pt-BR", "en-US"])).toBe("pt");
    expect(languageOfVisit(nothing, ["de-AT"])).toBe("de");
  });

  test("is English where none is", () => {
    expect(languageOfVisit(nothing, ["sv", "ja-JP"])).toBe("en");
    expect(languageOfVisit(nothing, [])).toBe("en");
  });
});
