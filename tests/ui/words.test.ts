import { describe, expect, test } from "vitest";
import { methods } from "../../src/trade/method.ts";
import { fieldKinds } from "../../src/ui/fields.ts";
import { first as words } from "../../src/ui/words/en/first.ts";

/** Every sentence without a slot. */
const all = JSON.stringify(words);

describe("the words of the page", () => {
  test("every field that a person fills in has a label", () => {
    const shown = Object.keys(fieldKinds);
    expect(shown.length).toBeGreaterThan(40);
    expect(Object.keys(words.fields).sort()).toEqual(shown.sort());
  });

  test("every method of the trade can be chosen", () => {
    expect(Object.keys(words.choices["tank.method"]).sort()).toEqual([...methods].sort());
  });

  test("no sentence names a path or a type", () => {
    expect(all).toContain(words.greeting.says);
    expect(all).not.toMatch(/"[^"]* (?:films\[|developer\.|tank\.[a-z]|Promise|undefined)[^"]*"/);
  });

  test("the cautions name gloves, eyes, acid, fixer, air, food, glass, battery, and who comes first", () => {
    const told = words.cautions.join(" ").toLowerCase();
    for (const word of [
      "gloves",
      "eye",
      "acid into water",
      "fixer",
      "sulphite",
      "air",
      "food",
      "glass",
      "wet floor",
      "battery",
      "safety sheet",
      "rules",
    ]) {
      expect(told).toContain(word);
    }
  });
});
