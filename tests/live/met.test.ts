import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { apart, type Due, metBy, stray, unmet } from "../../src/live/met.ts";

const seconds = fc.integer({ min: 0, max: 400 }).map((quarters) => quarters / 4);
const anyDue: fc.Arbitrary<readonly Due[]> = fc
  .array(
    fc.record({ at: seconds, is: fc.constantFrom("to-be-marked", "may-be-marked" as const) }),
    { maxLength: 5 },
  )
  .map((due) => due.toSorted((a, b) => a.at - b.at));
const anyMarks = fc
  .array(seconds, { maxLength: 4 })
  .map((marks) => marks.toSorted((a, b) => a - b));

/** The least that any way of telling which mark is for what comes to, all of them tried. */
function least(due: readonly Due[], marks: readonly number[], all = due): number {
  const [first, ...later] = due;
  const [mark, ...more] = marks;
  const ways = [
    ...(first === undefined ? [] : [unmet(first) + least(later, marks, all)]),
    ...(mark === undefined ? [] : [stray(mark, all) + least(due, more, all)]),
    ...(first === undefined || mark === undefined
      ? []
      : [apart(first, mark) + least(later, more, all)]),
  ];
  return ways.length === 0 ? 0 : Math.min(...ways);
}

function costOf(due: readonly Due[], marks: readonly number[], met: ReadonlyMap<number, number>) {
  const used = new Set(met.values());
  const strays = marks.filter((_, i) => !used.has(i)).map((mark) => stray(mark, due));
  const dues = due.map((each, place) => {
    const mark = marks[met.get(place) ?? -1];
    return mark === undefined ? unmet(each) : apart(each, mark);
  });
  return [...strays, ...dues].reduce((sum, it) => sum + it, 0);
}

const pour = (at: number): Due => ({ at, is: "to-be-marked" });
const bout = (at: number): Due => ({ at, is: "may-be-marked" });
const metOf = (due: readonly Due[], marks: readonly number[]) => [...metBy(due, marks)].toSorted();

describe("Which mark was for which moment", () => {
  test("is found as by trying every way, and no two cross", () => {
    fc.assert(
      fc.property(anyDue, anyMarks, (due, marks) => {
        const met = metBy(due, marks);
        expect(costOf(due, marks, met)).toBeCloseTo(least(due, marks), 9);
        const places = [...met].toSorted(([a], [b]) => a - b).map(([, mark]) => mark);
        expect(places).toEqual(places.toSorted((a, b) => a - b));
        expect(new Set(places).size).toBe(places.length);
      }),
      { numRuns: 500 },
    );
  });

  test("is the nearest, where one mark came", () => {
    expect(metOf([pour(8), pour(60)], [20])).toEqual([[0, 0]]);
    expect(metOf([pour(8), pour(60)], [40])).toEqual([[1, 0]]);
  });

  test("is both pours, each late, where both were: not the second early and the first missed", () => {
    expect(metOf([pour(53), pour(57)], [58, 61])).toEqual([
      [0, 0],
      [1, 1],
    ]);
  });

  test("is the pour rather than a bout as near, and none where it is pressed twice", () => {
    expect(metOf([pour(8), bout(18)], [13])).toEqual([[0, 0]]);
    expect(metOf([pour(8), bout(12)], [8, 9])).toEqual([[0, 0]]);
    expect(metOf([pour(8), bout(18)], [8, 18.5])).toEqual([
      [0, 0],
      [1, 1],
    ]);
  });

  test("is as pressed where one press was forgotten: those before it do not move up", () => {
    expect(metOf([bout(30), pour(42), pour(46)], [30.2, 42.2])).toEqual([
      [0, 0],
      [1, 1],
    ]);
  });
});
