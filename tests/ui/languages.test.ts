// Every language in which the screens are written is held beside English: nothing missing, no slot lost,
// nothing left in English.
import { describe, expect, test } from "vitest";
import { catalogueOf } from "../../src/ui/words/catalogues.ts";
import { first } from "../../src/ui/words/en/first.ts";
import { late } from "../../src/ui/words/en/late.ts";
import { languages } from "../../src/units/language.ts";

type Text = string | ((...slots: readonly unknown[]) => string);
interface Words {
  readonly [key: string]: Words | Text | readonly string[];
}

const english = { first, late } as unknown as Words;
const baths = Object.keys(first.baths);

/** Given a bath's id, which a language may look up in a table of its own. */
const byBath = [
  "first.more.bath",
  "late.score.bath",
  "late.deeds.pourIn",
  "late.deeds.pourOut",
  "late.duringRun.leftIn",
];

/** Every text by the way to it: `late.walk.next`. */
function textsOf(words: Words, way = ""): readonly (readonly [string, Text])[] {
  return Object.entries(words).flatMap(([key, part]) => {
    const here = way === "" ? key : `${way}.${key}`;
    if (typeof part === "string" || typeof part === "function") return [[here, part] as const];
    return textsOf(part as Words, here);
  });
}

/** What it comes to with each slot as `⟨its place⟩`; lists where a list is wanted. */
function named(text: Text): string {
  if (typeof text === "string") return text;
  const slots = Array.from({ length: text.length }, (_, at) => `⟨${at}⟩`);
  try {
    return text(...slots);
  } catch {
    return text(...slots.map((slot) => [slot]));
  }
}

/** What it comes to where its first slot is a count, or a bath. */
function others(way: string, text: Text): readonly string[] {
  if (typeof text === "string") return [];
  const rest = Array.from({ length: text.length }, (_, at) => `⟨${at}⟩`).slice(1);
  return [...(byBath.includes(way) ? baths : [0, 1, 2, 3, 5, 21])].flatMap((slot) => {
    try {
      return [String(text(slot, ...rest))];
    } catch {
      // A text in which this slot is no count.
      return [];
    }
  });
}

const slotsIn = (text: string) => [...new Set(text.match(/⟨\d⟩/g))].sort().join("");
/** Three words that are the same in both are no chance. */
const isEnglish = (text: string) => (text.match(/\p{L}{3,}/gu) ?? []).length >= 3;

/** What is wrong with a language's words beside the English ones. */
function flaws(words: Words): readonly string[] {
  const theirs = new Map(textsOf(words));
  return textsOf(english).flatMap(([way, own]) => {
    const text = theirs.get(way);
    // A list may be longer or shorter in another language.
    if (text === undefined) return /\.\d+$/.test(way) ? [] : [`${way} is missing`];
    const [here, there] = [named(own), named(text)];
    const all = [there, ...others(way, text)];
    const slots = byBath.includes(way) || slotsIn(here) === slotsIn(there);
    return [
      ...(all.some((it) => it.trim() === "") ? [`${way} is empty`] : []),
      ...(slots ? [] : [`${way} has not the slots of “${here}”`]),
      ...(byBath.includes(way) && all.slice(1).some((it) => it.includes("undefined"))
        ? [`${way} does not know every bath`]
        : []),
      ...(all.some((it) => /\d\.\d/.test(it)) ? [`${way} has a decimal point`] : []),
      ...(there === here && isEnglish(there) ? [`${way} is English: “${there}”`] : []),
    ];
  });
}

const written = languages.filter((it) => it !== "en");

test.each(written)("has every text, with its slots and in its own words: %s", async (language) => {
  const catalogue = catalogueOf(language);
  const words = {
    first: (await catalogue.first()).screens,
    late: (await catalogue.late()).screens,
  };
  expect(flaws(words as unknown as Words)).toEqual([]);
});

test.each(languages)(
  "names every kind of thing that a file of everything holds: %s",
  async (language) => {
    const { everything } = (await catalogueOf(language).late()).screens;
    const { kinds, hint, rule } = everything;
    const said = hint.toLowerCase();
    const { runs, pictures, tanks, bottles, rooms } = kinds;
    for (const kind of [runs, pictures, tanks, bottles, rooms])
      expect(said).toContain(kind.toLowerCase());
    expect(rule.toLowerCase()).toContain(rooms.toLowerCase());
  },
);

describe("a flaw in a language's words is found", () => {
  const spoilt = (sheet: object) =>
    flaws({
      ...english,
      first: { ...first, sheet: { ...first.sheet, ...sheet } },
    } as unknown as Words);
  const { undo: _, ...short } = first.sheet;

  test.each([
    [
      "a text that is missing",
      { ...english, first: { ...first, sheet: short } },
      "first.sheet.undo is missing",
    ],
    [
      "a slot that is lost",
      {
        ...english,
        late: { ...late, write: { ...late.write, saved: (_: string) => "Gespeichert." } },
      },
      "late.write.saved has not the slots of “Saved as ⟨0⟩.”",
    ],
    [
      "a bath that has no name",
      {
        ...english,
        late: {
          ...late,
          deeds: {
            ...late.deeds,
            pourIn: (id: string) =>
              `${({ stop: "Stoppbad" } as Record<string, string>)[id]} eingießen`,
          },
        },
      },
      "late.deeds.pourIn does not know every bath",
    ],
  ])("%s", (_, words, flaw) => {
    expect(flaws(words as unknown as Words)).toContain(flaw);
  });

  test("an empty text, a decimal point, and what is still English", () => {
    expect(spoilt({ undo: " " })).toContain("first.sheet.undo is empty");
    expect(spoilt({ undo: "um 2.5" })).toContain("first.sheet.undo has a decimal point");
    expect(spoilt({})).toContain(
      "first.greeting.notHeard is English: “No sound could be started here.”",
    );
  });
});
