import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ratingFactor, stopsOver, usualPerStop } from "../../src/trade/rating.ts";

describe("stops", () => {
  test("half the box speed is a stop over, twice is a stop under, by definition", () => {
    expect(stopsOver(400, 200)).toBe(1);
    expect(stopsOver(400, 1600)).toBe(-2);
    expect(stopsOver(125, 125)).toBe(0);
  });

  test("a stop over takes about 10 % off: 9:00 becomes 8:06 (practice; 1e-9 s)", () => {
    expect(540 * ratingFactor(1, usualPerStop)).toBeCloseTo(486, 9);
  });

  test("a stop under adds 35 to 50 %, two add 75 to 100 % (Horenstein, Black & White Photography, p. 154, in a class handout)", () => {
    const more = (stops: number) => ratingFactor(-stops, usualPerStop) - 1;
    expect(more(1)).toSatisfy((it: number) => it >= 0.35 && it <= 0.5);
    expect(more(2)).toSatisfy((it: number) => it >= 0.75 && it <= 1);
  });

  test("fractions of a stop multiply up to the whole (1e-9)", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -4, max: 4, noNaN: true }),
        fc.double({ min: 0, max: 0.9, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (stops, pull, push) => {
          const half = ratingFactor(stops / 2, { pull, push });
          expect((half * half) / ratingFactor(stops, { pull, push })).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  test("no stop changes nothing, whatever a stop would do", () => {
    expect(ratingFactor(0, { pull: 0.9, push: 5 })).toBe(1);
  });
});
