import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readLeafletText } from "../../src/plan/leaflet-text.ts";
import { readWorksheet, readWorksheetText } from "../../src/plan/read-worksheet.ts";
import { english } from "../../src/plan/words/english.ts";
import { mayIn, shapedAs } from "../../src/plan/words/fault-words.ts";
import { filled } from "../../src/units/may.ts";
import { readDilution } from "../../src/units/parts.ts";
import { writingIn } from "../../src/units/writing.ts";
import { anyWorksheet } from "./any-worksheet.ts";
import { madeUp } from "./made-up-words.ts";
import { mayTexts, wholeTexts } from "./may-texts.ts";
import { gullrock } from "./worksheets.ts";

const words = madeUp(writingIn("de"));

describe("what a field may hold", () => {
  test("is said in the language, with its bounds in the language's figures", () => {
    const mays = {
      "a number from {from} to {to}: {of}": "eine Zahl von {from} bis {to}: {of}",
      "seconds to fill it": "Sekunden zum Füllen",
      "{may}, in the digits 0 to 9": "{may}, in den Ziffern 0 bis 9",
    };
    const german = { ...words, mays };
    const may = "a number from 0.5 to 600: seconds to fill it";
    expect(mayIn(german, { may })).toBe("eine Zahl von 0,5 bis 600: Sekunden zum Füllen");
    expect(mayIn(german, { may: `${may}, in the digits 0 to 9` })).toBe(
      "eine Zahl von 0,5 bis 600: Sekunden zum Füllen, in den Ziffern 0 bis 9",
    );
  });

  test("stays English where the language has no text for it", () => {
    for (const may of [...wholeTexts, "what nobody foresaw"]) {
      expect(mayIn(english, { may })).toBe(may);
    }
    expect(mayIn({ ...words, mays: {} }, { may: wholeTexts[3] ?? "" })).toBe(wholeTexts[3]);
  });

  test("is taken apart where it was put together: its shape filled in is the text again", () => {
    const shaped = wholeTexts.flatMap((text) => shapedAs(text) ?? []);
    expect(shaped.length).toBeGreaterThan(90);
    for (const { shape, slots } of shaped) expect(wholeTexts).toContain(filled(shape, slots));
  });

  test("is in the table that a language is held to, all of it", async () => {
    expect(mayTexts.length).toBeGreaterThan(140);
    const entries = mayTexts.map((text) => `  ${JSON.stringify(text)}:\n    "",\n`).join("");
    await expect(`export const mays: Mays = {\n${entries}};\n`).toMatchFileSnapshot("mays.txt");
  });
});

/** A worksheet in which something stands that does not belong there. */
const spoilt = fc
  .tuple(
    anyWorksheet,
    fc.nat(),
    fc.constantFrom<unknown>("soon", -1, 1e9, null, [], {}, "٣", { c: 999 }, { ml: 0 }, true),
  )
  .map(([worksheet, at, junk]) => {
    const copy = structuredClone(worksheet) as unknown as { [name: string]: unknown };
    const places = placesIn(copy);
    const place = places[at % places.length];
    if (place) place.of[place.name] = junk;
    return copy as unknown;
  });

type Fields = { [name: string]: unknown };

function placesIn(of: Fields): { readonly of: Fields; readonly name: string }[] {
  return Object.entries(of).flatMap(([name, inner]) => [
    { of, name },
    ...(typeof inner === "object" && inner !== null ? placesIn(inner as Fields) : []),
  ]);
}

describe("a fault", () => {
  test("whatever it is, is in the table that a language is held to", () => {
    let faults = 0;
    fc.assert(
      fc.property(spoilt, (value) => {
        const reading = readWorksheet(value);
        if (reading.kind === "worksheet") return;
        for (const fault of reading.faults) {
          faults += 1;
          expect(mayIn(words, fault)).toMatch(/^‹may›/);
        }
      }),
      { numRuns: 400 },
    );
    expect(faults).toBeGreaterThan(100);
  });

  test.each([
    { ...gullrock, films: [{ label: "Foghorn", size: "120", count: 1, exposureIndex: 800 }] },
    { ...gullrock, tank: { ...gullrock.tank, room: { c: 17 } } },
    { ...gullrock, tank: { ...gullrock.tank, halfway: 20 } },
    { ...gullrock, baths: { fixer: { kept: { ml: 500 } } } },
    { ...gullrock, baths: { wash: { fills: [5], time: "5:00", flow: { ml: 1000 } } } },
    { ...gullrock, baths: { developer: { temperature: { c: 25 } } } },
    { ...gullrock, baths: { varnish: {} } },
    { ...gullrock, tittle: "Tuesday" },
    {
      ...gullrock,
      mixing: { target: { c: 20 }, stock: { c: 20 }, cold: { c: 30 }, hot: { c: 20.5 } },
    },
    { ...gullrock, contrast: { tests: [{ time: "7:00", densities: [0.1, 0.2, 0.3] }] } },
  ])("between fields is in it too: %#", (value) => {
    const reading = readWorksheet(value);
    const faults = reading.kind === "faults" ? reading.faults : [];
    expect(faults).not.toEqual([]);
    for (const fault of faults) expect(mayIn(words, fault)).toMatch(/^‹may›/);
  });

  test("of a file, of a leaflet's line and of a dilution is in it too", () => {
    const file = ["", "[]", '{ "tankside": 1,', "nonsense"].map(readWorksheetText);
    const lines = ["20 °C", "45 9:00", "20 °C 30 °C 9:00", "\n".repeat(300)].map(readLeafletText);
    const mays = [
      ...file.flatMap((it) => (it.kind === "faults" ? it.faults : [])),
      ...lines.flatMap(({ faults }) => faults),
      ...["1:4", "4:1", "1 and 4", "١+٣"].map(readDilution),
    ].flatMap((it) => ("may" in it ? [it] : []));
    expect(mays).toHaveLength(12);
    for (const each of mays) expect(mayIn(words, each)).toMatch(/^‹may›/);
  });
});
