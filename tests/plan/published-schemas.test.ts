import Ajv2020 from "ajv/dist/2020.js";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { faultsIn } from "../../src/plan/faults.ts";
import { worksheetSchema } from "../../src/plan/worksheet-schema.ts";
import { compiled } from "../timeline/scene.ts";
import { anyWorksheet } from "./any-worksheet.ts";
import { placesIn, withAt } from "./places.ts";
import { fileText, schemas } from "./published-schemas.ts";
import { foghorn, gullrock } from "./worksheets.ts";

const ajv = new Ajv2020({ strict: true, allErrors: true });
const worksheetFits = ajv.compile(schemas["worksheet.schema.json"]);
const timelineFits = ajv.compile(schemas["timeline.schema.json"]);

/** What stands in a place by mistake. None of these is refused by a rule that only code can state. */
const slips: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom(undefined, null, true, "", " ", "x", "9:30", "9.30", "1:4", "stock", "120"),
  fc.constantFrom("line\nbreak", "٩:٣٠", "en", "full", "full ", "x".repeat(201)),
  fc.constantFrom(-1e12, -40.5, -1, 0, 0.05, 0.5, 1, 1.5, 2, 60, 601, 86_401, 1e7, 1e300),
  fc.constantFrom([], [5], [0], {}, { c: 20 }, { c: "20" }, { f: 68 }, { c: 20, f: 68 }, { ml: 5 }),
);

describe("the published schemas", () => {
  test.each(Object.entries(schemas))(
    "%s is what the code checks (run vitest with -u to publish a change)",
    async (file, schema) => {
      await expect(fileText(schema)).toMatchFileSnapshot(`../../public/schema/${file}`);
    },
  );

  test("close every object, so that no slip in a name goes unseen", () => {
    const objects = Object.values(schemas)
      .flatMap((schema) => [schema, ...placesIn(schema).map((place) => at(schema, place))])
      .filter(isObjectSchema);
    expect(objects.length).toBeGreaterThan(40);
    for (const schema of objects) expect(schema).toHaveProperty("additionalProperties", false);
  });
});

describe("the worksheet's schema", () => {
  test("accepts what the program accepts", () => {
    fc.assert(
      fc.property(anyWorksheet, (worksheet) => {
        expect(worksheetFits(worksheet)).toBe(true);
      }),
    );
  });

  test("and the program agree on a worksheet with one thing wrong, or put right", () => {
    const places = [gullrock, foghorn].flatMap((worksheet) =>
      [...placesIn(worksheet), ["x"], ["tank", "x"], ["developer", "leaflet", 0, "x"]].map(
        (place) => ({ worksheet, place }),
      ),
    );
    const seen = { accepted: 0, refused: 0 };
    fc.assert(
      fc.property(fc.constantFrom(...places), slips, ({ worksheet, place }, slip) => {
        const value = withAt(worksheet, place, slip);
        const fits = faultsIn(worksheetSchema, value).length === 0;
        expect(worksheetFits(value)).toBe(fits);
        seen[fits ? "accepted" : "refused"] += 1;
      }),
      { numRuns: 2000 },
    );
    expect(seen.accepted).toBeGreaterThan(50);
    expect(seen.refused).toBeGreaterThan(500);
  });
});

describe("the timeline's schema", () => {
  const timeline = JSON.parse(JSON.stringify(compiled(gullrock)));

  test("accepts what the program compiles", () => {
    expect(timelineFits(timeline)).toBe(true);
    expect(timelineFits(JSON.parse(JSON.stringify(compiled(foghorn))))).toBe(true);
  });

  test("does without what the program adds of its own: the voice, and the names of sounds", () => {
    const { voice, ...bare } = timeline;
    expect(voice).toBeDefined();
    const sections = bare.sections.map((section: { cues: { sounds: unknown }[] }) => ({
      ...section,
      cues: section.cues.map(({ sounds, ...cue }) => cue),
    }));
    expect(timelineFits({ ...bare, sections })).toBe(true);
  });

  test("refuses a field it does not know, or one that is gone, wherever it is", () => {
    const optional = ["says", "sounds", "count", "about", "film", "more", "jams"];
    const places = placesIn(timeline).filter((place) => typeof place.at(-1) === "string");
    // One place of each kind is enough: its indices do not matter.
    const kinds = new Map(
      places.map((place) => [place.filter((it) => typeof it === "string").join(), place]),
    );
    expect(kinds.size).toBeGreaterThan(40);
    for (const place of kinds.values()) {
      expect(timelineFits(withAt(timeline, [...place.slice(0, -1), "x"], 1))).toBe(false);
      const name = String(place.at(-1));
      const whole = place.length === 1 && name === "voice";
      if (!whole && !optional.includes(name)) {
        expect(timelineFits(withAt(timeline, place, undefined))).toBe(false);
      }
    }
  });
});

function at(value: unknown, place: readonly (string | number)[]): unknown {
  return place.reduce<unknown>(
    (held, step) => (held as Record<string | number, unknown>)[step],
    value,
  );
}

function isObjectSchema(value: unknown): value is { readonly type: "object" } {
  return (
    typeof value === "object" &&
    value !== null &&
    "type" in value &&
    value.type === "object" &&
    "properties" in value
  );
}
