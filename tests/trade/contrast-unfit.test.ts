import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type ContrastTest, fitContrast } from "../../src/trade/contrast.ts";

const tested = (minutes: number, gradient: number): ContrastTest => ({
  seconds: minutes * 60,
  gradient,
});

const whyUnfit = (...tests: readonly ContrastTest[]) => {
  const fit = fitContrast(tests);
  return fit.kind === "unfit" ? fit.why : "fitted";
};

describe("no law is fitted", () => {
  test("to fewer than two tests", () => {
    expect(whyUnfit()).toBe("too-few");
    expect(whyUnfit(tested(5, 0.45))).toBe("too-few");
  });

  test("to tests at one time, which are those less than a second apart", () => {
    expect(whyUnfit(tested(5, 0.45), tested(5, 0.5))).toBe("one-time");
    expect(whyUnfit({ seconds: 300, gradient: 0.5 }, { seconds: 300.9, gradient: 0.5 })).toBe(
      "one-time",
    );
    expect(whyUnfit({ seconds: 300, gradient: 0.5 }, { seconds: 301, gradient: 0.501 })).toBe(
      "fitted",
    );
  });

  test("where a longer time gave less by more than 0.02 (practice, a densitometer's error), though a third test is higher", () => {
    expect(whyUnfit(tested(5, 0.6), tested(10, 0.45))).toBe("contradictory");
    expect(whyUnfit(tested(5, 0.5), tested(8, 0.62), tested(10, 0.59))).toBe("contradictory");
    expect(whyUnfit(tested(5, 0.5), tested(8, 0.62), tested(10, 0.6))).toBe("fitted");
    const sooner = { seconds: 300, gradient: 0.5 };
    const hardlyLater = { seconds: 300.9, gradient: 0.45 };
    expect(whyUnfit(sooner, hardlyLater, tested(10, 0.7))).toBe("fitted");
    expect(whyUnfit(sooner, { ...hardlyLater, seconds: 301 }, tested(10, 0.7))).toBe(
      "contradictory",
    );
  });

  test("where the gradient did not grow, or is none: these contradict the law too", () => {
    expect(whyUnfit(tested(5, 0.6), tested(10, 0.6))).toBe("contradictory");
    expect(whyUnfit(tested(5, 0.6), tested(10, 0.59))).toBe("contradictory");
    expect(whyUnfit(tested(5, 0.6), tested(8, 0.6), tested(10, 0.6))).toBe("contradictory");
    expect(whyUnfit(tested(5, 0), tested(10, 0.5))).toBe("contradictory");
    expect(whyUnfit(tested(5, -0.1), tested(10, -0.05))).toBe("contradictory");
  });

  test("where the gradient of a pair grows in proportion to time or faster, whatever the pair", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 30, max: 3600 }),
        fc.double({ min: 1.05, max: 5, noNaN: true }),
        fc.double({ min: 0.05, max: 2, noNaN: true }),
        fc.double({ min: 1, max: 3, noNaN: true }),
        (seconds, longer, gradient, faster) => {
          const second = { seconds: seconds * longer, gradient: gradient * longer * faster };
          expect(whyUnfit({ seconds, gradient }, second)).toBe("straight");
        },
      ),
    );
  });

  test("where it bends too little to show a limit, or the other way", () => {
    expect(whyUnfit(tested(5, 0.35), tested(10, 0.695))).toBe("straight");
    expect(whyUnfit(tested(5, 0.35), tested(10, 0.66))).toBe("fitted");
    expect(whyUnfit(tested(4, 0.3), tested(6, 0.45), tested(8, 0.6))).toBe("straight");
    expect(whyUnfit(tested(4, 0.2), tested(6, 0.4), tested(8, 0.7))).toBe("straight");
  });

  test("and the tests are handed back by time", () => {
    const [early, late] = [tested(5, 0.6), tested(10, 0.45)];
    expect(fitContrast([late, early])).toEqual({
      kind: "unfit",
      why: "contradictory",
      tests: [early, late],
    });
  });

  test("and a number that is none, or a time not above 0, is a mistake of the program", () => {
    expect(() => fitContrast([tested(0, 0.4), tested(5, 0.5)])).toThrow(RangeError);
    expect(() => fitContrast([tested(5, Number.NaN), tested(8, 0.5)])).toThrow(RangeError);
  });
});
