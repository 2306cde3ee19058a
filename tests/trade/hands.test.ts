import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isUneven, paceOf } from "../../src/trade/hands.ts";

const time = fc.double({ min: 0.1, max: 120, noNaN: true });
const some = fc.array(time, { minLength: 1, maxLength: 9 });

/** The pace of times that are there. */
function pace(times: readonly number[]) {
  const found = paceOf(times);
  if (found === null) throw new Error("no pace of no times");
  return found;
}

describe("the pace of a person's hands", () => {
  test("of no times is none", () => {
    expect(paceOf([])).toBeNull();
  });

  test("of three times is the middle one, and the spread from shortest to longest", () => {
    expect(paceOf([10.5, 12, 10])).toEqual({ median: 10.5, spread: 2 });
  });

  test("of one time is that time, without a spread", () => {
    expect(paceOf([8.4])).toEqual({ median: 8.4, spread: 0 });
  });

  test("has the middle of the sorted times, or half-way between the middle two", () => {
    fc.assert(
      fc.property(some, (times) => {
        const sorted = times.toSorted((a, b) => a - b);
        const middles = [Math.ceil(sorted.length / 2) - 1, Math.floor(sorted.length / 2)];
        const expected = middles.reduce((sum, at) => sum + (sorted[at] ?? Number.NaN), 0) / 2;
        expect(pace(times).median).toBeCloseTo(expected, 9);
      }),
    );
  });

  test("does not hang on the order, and leaves the times as they were given", () => {
    fc.assert(
      fc.property(
        some.chain((times) => fc.tuple(fc.constant(times), shuffled(times))),
        ([times, mixed]) => {
          const before = [...mixed];
          expect(pace(mixed)).toEqual(pace(times));
          expect(mixed).toEqual(before);
        },
      ),
    );
  });

  test("goes with the scale of the times, and a constant added moves the median alone (1e-9)", () => {
    fc.assert(
      fc.property(some, fc.double({ min: 0.25, max: 4, noNaN: true }), (times, by) => {
        const [plain, scaled] = [pace(times), pace(times.map((it) => it * by))];
        expect(scaled.median).toBeCloseTo(plain.median * by, 9);
        expect(scaled.spread).toBeCloseTo(plain.spread * by, 9);
        const later = pace(times.map((it) => it + by));
        expect(later.median).toBeCloseTo(plain.median + by, 9);
        expect(later.spread).toBeCloseTo(plain.spread, 9);
      }),
    );
  });

  test("has a median that one slip of three does not carry off", () => {
    fc.assert(
      fc.property(time, time, fc.double({ min: 121, max: 9000, noNaN: true }), (a, b, slip) => {
        expect(pace([a, slip, b]).median).toBe(Math.max(a, b));
      }),
    );
  });
});

describe("practice: times are uneven", () => {
  test("only where they spread over more than 30 % of the median, the mark itself left out", () => {
    expect(isUneven({ median: 10, spread: 3 })).toBe(false);
    expect(isUneven({ median: 10, spread: 3.1 })).toBe(true);
  });

  test("only where they spread over more than half a second, the mark itself left out", () => {
    expect(isUneven({ median: 1.2, spread: 0.5 })).toBe(false);
    expect(isUneven({ median: 1.2, spread: 0.6 })).toBe(true);
  });

  test("not by the rounding of binary numbers", () => {
    const [half, third] = [pace([0.6, 0.9, 1.1]), pace([2.3, 3, 3.2])];
    expect(half.spread).toBeGreaterThan(0.5);
    expect(third.spread).toBeGreaterThan(0.3 * third.median);
    expect([half, third].map(isUneven)).toEqual([false, false]);
  });

  test("never where all are the same", () => {
    fc.assert(
      fc.property(time, fc.integer({ min: 1, max: 5 }), (it, count) => {
        expect(isUneven(pace(Array(count).fill(it)))).toBe(false);
      }),
    );
  });
});

function shuffled(times: readonly number[]) {
  return fc.shuffledSubarray([...times], { minLength: times.length });
}
