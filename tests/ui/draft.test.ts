import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { blankRow, type Change, changed, type Draft, rowCount } from "../../src/ui/draft.ts";

const twoFilms: Draft = {
  title: "Two",
  "films[0].label": "a",
  "films[1].label": "b",
  "films[1].size": "120",
  "developer.leaflet[0].temperature": "68",
  "developer.leaflet[0].temperature@unit": "f",
  "developer.leaflet[1].temperature": "70 °F",
};

describe("rows", () => {
  test("a blank row counts, so that an added row is there before anything is typed", () => {
    const { draft } = changed(twoFilms, {
      kind: "insert",
      list: "films",
      at: 2,
      row: blankRow("films"),
    });
    expect(rowCount(draft, "films")).toBe(3);
    expect(draft["films[2].label"]).toBe("");
  });

  test("the rows behind one that is taken out move up, with what they hold", () => {
    const { draft } = changed(twoFilms, { kind: "remove", list: "films", at: 0 });
    expect(draft["films[0].label"]).toBe("b");
    expect(draft["films[0].size"]).toBe("120");
    expect(rowCount(draft, "films")).toBe(1);
  });

  test("the unit lent to a number goes with its row", () => {
    const { draft } = changed(twoFilms, {
      kind: "insert",
      list: "developer.leaflet",
      at: 0,
      row: blankRow("developer.leaflet"),
    });
    expect(draft["developer.leaflet[1].temperature@unit"]).toBe("f");
    expect(draft["developer.leaflet[0].temperature@unit"]).toBeUndefined();
  });

  test("rows of one list leave the other list alone", () => {
    const { draft } = changed(twoFilms, { kind: "remove", list: "films", at: 1 });
    expect(rowCount(draft, "developer.leaflet")).toBe(2);
  });
});

test("every change is taken back by its inverse, to the letter", () => {
  const change: fc.Arbitrary<Change> = fc.oneof(
    fc.record({
      kind: fc.constant("insert" as const),
      list: fc.constantFrom("films" as const, "developer.leaflet" as const),
      at: fc.nat(2),
      row: fc.constantFrom(blankRow("films"), blankRow("developer.leaflet"), { label: "c" }),
    }),
    fc.record({
      kind: fc.constant("remove" as const),
      list: fc.constantFrom("films" as const, "developer.leaflet" as const),
      at: fc.nat(1),
    }),
    fc.constant({ kind: "replace" as const, draft: { title: "another" } }),
  );
  fc.assert(
    fc.property(change, (it) => {
      const there = changed(twoFilms, it);
      expect(changed(there.draft, there.inverse).draft).toEqual(twoFilms);
    }),
  );
});
