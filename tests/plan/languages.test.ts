// Every language that is written is held beside English: nothing missing, nothing left in English.
import { describe, expect, test } from "vitest";
import { allEnglish } from "../../src/plan/words/english-asides.ts";
import { planWordsIn, wordsIn } from "../../src/plan/words/languages.ts";
import { languages } from "../../src/units/language.ts";
import { type Catalogue, type Slots, sentencesByKey, sentencesOf } from "./made-up-words.ts";
import { mayTexts } from "./may-texts.ts";

type Sentence = string | ((slots: Slots) => string);

/** What a wording may hang on beside its slots, in every way it can fall out. */
const hangs = [
  "warmer",
  "tooFar",
  "given",
  "over",
  "less",
  "only",
  "twice",
  "developer",
  "fromFirst",
] as const;
const ways: readonly Slots[] = [0, 1, 2, 5, 1000].flatMap((count) =>
  [true, false].flatMap((yes) =>
    [true, false].map((tooFar) => ({
      ...Object.fromEntries(hangs.map((name) => [name, yes])),
      tooFar,
      count,
    })),
  ),
);

/** Each slot as `⟨its name⟩`. */
const named = (way: Slots): Slots =>
  new Proxy(way, {
    get: (known, name) => known[String(name)] ?? `⟨${String(name)}⟩`,
  });

/** The texts that a sentence comes to. */
function wordings(sentence: Sentence): readonly string[] {
  return typeof sentence === "string" ? [sentence] : ways.map((way) => sentence(named(way)));
}

function slotsOf(text: string): readonly string[] {
  return [...new Set(text.match(/⟨\w+⟩|\{\w+\}/g))].sort();
}

/** What is wrong with a catalogue beside the English one, by key. */
function flaws(catalogue: Catalogue): readonly string[] {
  const theirs = new Map(sentencesByKey(catalogue));
  return sentencesByKey(sentencesOf(allEnglish)).flatMap(([key, own]) => {
    const sentence = theirs.get(key);
    if (sentence === undefined) return [`${key} is missing`];
    const [here, there] = [wordings(own), wordings(sentence)];
    const lost = here.find(
      (text, way) => slotsOf(text).join() !== slotsOf(there[way] ?? "").join(),
    );
    return [
      ...(there.some((text) => text.trim() === "") ? [`${key} is empty`] : []),
      ...(lost === undefined ? [] : [`${key} has not the slots of "${lost}"`]),
      ...(there.some((text) => /\d\.\d/.test(text)) ? [`${key} has a decimal point`] : []),
      // Three words that are the same in both are no chance.
      ...(there.some((text, way) => text === here[way] && isEnglish(text))
        ? [`${key} is English: "${there[0]}"`]
        : []),
    ];
  });
}

function isEnglish(text: string): boolean {
  return (text.replace(/⟨\w+⟩|\{\w+\}/g, " ").match(/\p{L}{3,}/gu) ?? []).length >= 3;
}

const others = languages.filter((language) => language !== "en");

describe("each language that is written", () => {
  test.each(others)(
    "has every sentence, with its slots and in its own words: %s",
    async (language) => {
      expect(flaws(sentencesOf(await wordsIn(language)))).toEqual([]);
    },
  );

  test.each(others)("says all that a field may hold, with its gaps: %s", async (language) => {
    const { mays } = await planWordsIn(language);
    expect(mayTexts.filter((text) => !mays[text])).toEqual([]);
    expect(Object.keys(mays).filter((text) => !mayTexts.includes(text))).toEqual([]);
    const changed = mayTexts.filter(
      (text) => slotsOf(text).join() !== slotsOf(mays[text] ?? "").join(),
    );
    expect(changed).toEqual([]);
    expect(mayTexts.filter((text) => mays[text] === text && isEnglish(text))).toEqual([]);
  });
});

test("a flaw in a catalogue is found: a sentence missing, empty, short of a slot, or English", () => {
  const english = sentencesOf(allEnglish);
  const mix = english.mix as Catalogue;
  expect(flaws({ ...english, mix: { ...mix, label: "" } })).toContain("mix.label is empty");
  const { label: _, ...unlabelled } = mix;
  expect(flaws({ ...english, mix: unlabelled })).toContain("mix.label is missing");
  const short = { ...mix, sum: ({ sum }: Slots) => `${sum}, der Rest ist Wasser` };
  expect(flaws({ ...english, mix: short })).toContain(
    'mix.sum has not the slots of "⟨sum⟩ = ⟨stock⟩ of stock; the rest is water"',
  );
  expect(flaws(english).some((flaw) => flaw.startsWith("warnings.clearedQuicker is English"))).toBe(
    true,
  );
});
