import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Cause,
  causesOf,
  densities,
  edges,
  isMendable,
  marks,
  type Negatives,
  nothingSeen,
} from "../../src/trade/negatives.ts";

const any = fc.record({
  density: fc.constantFrom(null, ...densities),
  edges: fc.constantFrom(null, ...edges),
  marks: fc.subarray([...marks]),
});

describe("What negatives look like", () => {
  test("says nothing where nothing was seen, and that all is well where it is", () => {
    expect(causesOf(nothingSeen)).toEqual([]);
    expect(causesOf({ ...nothingSeen, edges: "faint" })).toEqual([]);
    expect(causesOf({ ...nothingSeen, density: "good" })).toEqual(["well"]);
  });

  test.each<[Negatives["density"], Negatives["edges"], Cause]>([
    ["clear", "usual", "not-exposed"],
    ["clear", "none", "not-developed"],
    ["thin", "faint", "under-developed"],
    ["thin", "usual", "under-exposed"],
    ["dense", "heavy", "over-developed"],
    ["dense", "usual", "over-exposed"],
    ["clear", null, "clear-either"],
    ["thin", null, "thin-either"],
    ["dense", null, "dense-either"],
    ["dense", "none", "dense-either"],
  ])("that are %s with %s edge numbers were %s", (density, numbers, cause) => {
    expect(causesOf({ density, edges: numbers, marks: [] })).toEqual([cause]);
  });

  test("lead to what can still be mended before all else, and to each mark once", () => {
    fc.assert(
      fc.property(any, (seen) => {
        const causes = causesOf(seen);
        const mendable = causes.map((cause) => isMendable(cause));
        expect(mendable).toEqual(mendable.toSorted((a, b) => Number(b) - Number(a)));
        expect(new Set(causes).size).toBe(causes.length);
        for (const mark of seen.marks) expect(causes).toContain(mark);
        if (seen.density !== null) expect(causes.length).toBeGreaterThan(0);
      }),
    );
  });
});
