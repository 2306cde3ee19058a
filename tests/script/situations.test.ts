// A file a situation, with its sentence in every language at every length: what a translator reads, and
// what a change of a script is seen by. `npx vitest run tests/script -u` writes them anew.
import { readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { forms, type Slots } from "../../src/script/script.ts";
import { scriptIn } from "../../src/script/scripts.ts";
import { languages } from "../../src/units/language.ts";
import { english } from "../timeline/scene.ts";

const scripts = await Promise.all(languages.map(scriptIn));
const situations = Object.keys(english.source.sentences);

/** Where grammar or hearing could differ: each bath and vessel, one of a thing, some, and hours. */
const values: { readonly [slot: string]: readonly (string | number)[] } = {
  ...Object.fromEntries(
    Object.entries(english.source.slots).map(([slot, words]) => [slot, Object.keys(words)]),
  ),
  minutes: [1, 2, 15, 21, 30, 60, 90],
  mark: [1, 2, 15, 30, 60, 90],
  seconds: [5, 30, 45],
  degrees: [16, 20, 21, 68, 81],
  times: [1, 2, 3, 4],
};

const slotOf = (key: string): readonly string[] =>
  Object.keys(english.source.sentences[key]?.example.slots ?? {});

/** The example's slots, with one of them after the other at each of its values. */
function casesOf(key: string): readonly Slots[] {
  const example = english.source.sentences[key]?.example.slots ?? {};
  const slots = slotOf(key);
  if (slots.length === 0) return [{}];
  return slots.flatMap((slot) =>
    (values[slot] ?? []).map((value) => ({ ...example, [slot]: value })),
  );
}

test.each(situations)("%s is said so in every language", async (key) => {
  const cases = casesOf(key).map((slots) => ({
    ...(Object.keys(slots).length > 0 ? { slots } : {}),
    ...Object.fromEntries(
      scripts.map((script) => [
        script.source.language,
        [...new Set(forms.map((form) => script.say(key, form, slots).join(" ")))],
      ]),
    ),
  }));
  expect(cases.length).toBeGreaterThan(0);
  await expect(`${JSON.stringify(cases, null, 2)}\n`).toMatchFileSnapshot(`situations/${key}.json`);
});

test("every situation has its file, and no file is left over", () => {
  const files = readdirSync(new URL("situations/", import.meta.url));
  expect(files.sort()).toEqual(situations.map((key) => `${key}.json`).sort());
  expect(situations.length).toBeGreaterThan(75);
});
