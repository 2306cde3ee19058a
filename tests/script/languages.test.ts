// Every language's script beside the English one: nothing missing, nothing left in English, and every
// sentence sayable with every value of its slots. Counted, so that absence fails.
import { readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { everyPhrase, forms } from "../../src/script/script.ts";
import { scriptIn } from "../../src/script/scripts.ts";
import { languageNames, languages } from "../../src/units/language.ts";
import { english } from "../timeline/scene.ts";

const scripts = await Promise.all(languages.map(scriptIn));

test("each language has a script of its own, under its own code and name, and no script is left over", () => {
  const named = Object.fromEntries(scripts.map(({ source }) => [source.language, source.name]));
  expect(named).toEqual(languageNames);
  const files = readdirSync(new URL("../../audio-scripts/", import.meta.url));
  expect(files.sort()).toEqual([...languages].map((language) => `${language}.json`).sort());
});

describe.each(scripts)("The script in $source.name", (script) => {
  const { source } = script;
  const sentences = Object.entries(source.sentences);

  test("has every sentence, title and slot of the English one, and no others", () => {
    expect(Object.keys(source.sentences)).toEqual(Object.keys(english.source.sentences));
    expect(Object.keys(source.titles)).toEqual(Object.keys(english.source.titles));
    const base = [...new Set(Object.keys(source.slots).map((table) => table.replace(/_.*/, "")))];
    expect(base.sort()).toEqual(Object.keys(english.source.slots).sort());
  });

  test("has words for every bath, vessel and count of blows, in every case it puts them in", () => {
    for (const slot of ["bath", "vessel", "times"]) {
      const values = Object.keys(english.source.slots[slot] ?? {}).sort();
      for (const [table, words] of Object.entries(source.slots)) {
        if (table.replace(/_.*/, "") !== slot) continue;
        expect(Object.keys(words).sort(), table).toEqual(values);
      }
    }
  });

  test("has a wording for every plural category of its language", () => {
    const categories = new Intl.PluralRules(source.language).resolvedOptions().pluralCategories;
    for (const table of ["minutes", "mark", "seconds"]) {
      const words = Object.keys(source.slots[table] ?? {});
      expect(words, table).toEqual(expect.arrayContaining(["other"]));
      for (const word of words.filter((it) => !/^\d+$/.test(it))) {
        expect(categories, `${table} ${word}`).toContain(word);
      }
    }
  });

  test("says each example as it is written, and gets no longer from full to shortest", () => {
    for (const [key, { example, within }] of sentences) {
      const said = forms.map((form) => script.say(key, form, example.slots).join(" "));
      expect(said[0], key).toBe(example.says);
      const [full = 0, brief = 0, shortest = 0] = said.map(({ length }) => length);
      expect(full, key).toBeGreaterThanOrEqual(brief);
      expect(brief, key).toBeGreaterThanOrEqual(shortest);
      expect(within, key).toHaveLength(3);
    }
  });

  test("can say every phrase, writes every number out, and leaves no slot open", () => {
    const phrases = everyPhrase(script);
    expect(phrases.length).toBeGreaterThan(350);
    for (const phrase of phrases) expect(phrase).not.toMatch(/[\d{}|]|undefined/);
  });
});

test.each(scripts.map(({ source }) => source).filter(({ language }) => language !== "en"))(
  "No sentence of the script in $name is left in English",
  ({ sentences }) => {
    const same = Object.entries(sentences).filter(([key, { full }]) => {
      const words = full.replace(/\{\w+\}/g, "");
      return /[a-z]{3}/.test(words) && full === english.source.sentences[key]?.full;
    });
    expect(same).toEqual([]);
  },
);
