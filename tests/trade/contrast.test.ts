import { Decimal } from "decimal.js";
import fc from "fast-check";
import { levenbergMarquardt } from "ml-levenberg-marquardt";
import { describe, expect, test } from "vitest";
import {
  type ContrastTest,
  type FittedContrast,
  fitContrast,
  gradientAt,
  gradientForStops,
  timeForGradient,
} from "../../src/trade/contrast.ts";
import { readWedge } from "../../src/trade/sensitometry.ts";

const tested = (minutes: number, gradient: number): ContrastTest => ({
  seconds: minutes * 60,
  gradient,
});

function fitted(tests: readonly ContrastTest[]): FittedContrast {
  const fit = fitContrast(tests);
  if (fit.kind === "unfit") throw new Error(`not fitted: ${fit.why}`);
  return fit;
}

function secondsFor(fit: FittedContrast, gradient: number): number {
  const time = timeForGradient(fit, gradient);
  if (time.kind === "beyond-limit") throw new Error("beyond the limit");
  return time.seconds;
}

/** The law itself, K per minute. */
const law = (limit: number, perMinute: number, seconds: number) =>
  limit * (1 - Math.exp((-perMinute * seconds) / 60));

/** A film's law, and times at which it is tested: four minutes, and more in any order. */
const films = fc.record({
  limit: fc.double({ min: 0.5, max: 3, noNaN: true }),
  perMinute: fc.double({ min: 0.04, max: 0.5, noNaN: true }),
  minutes: fc
    .uniqueArray(fc.integer({ min: 3, max: 12 }), { minLength: 2, maxLength: 7 })
    .map((all) => [...all.map((it) => 2 * it), 4]),
});

/** Tests of such a film, each off by no more than a densitometer's error, in any order. */
const noisyTests = films.chain(({ limit, perMinute, minutes }) =>
  fc
    .array(fc.double({ min: -0.02, max: 0.02, noNaN: true }), {
      minLength: minutes.length,
      maxLength: minutes.length,
    })
    .map((errors) =>
      minutes.map((it, i) => tested(it, law(limit, perMinute, 60 * it) + (errors[i] ?? 0))),
    ),
);

/** Whatever a worksheet may hold. */
const anyTests = fc.array(
  fc.record({
    seconds: fc.oneof(fc.integer({ min: 1, max: 86_400 }), fc.constantFrom(300, 420, 600)),
    gradient: fc.oneof(
      fc.double({ min: -1, max: 10, noNaN: true }),
      fc.integer({ min: 40, max: 80 }).map((it) => it / 100),
    ),
  }),
  { maxLength: 8 },
);

describe("the growth law (Mees, Jahrbuch 25, 1911, pp. 167, 170)", () => {
  test("comes back from tests that keep to it: limit and K to 1e-6, no misfit", () => {
    fc.assert(
      fc.property(films, ({ limit, perMinute, minutes }) => {
        const fit = fitted(minutes.map((it) => tested(it, law(limit, perMinute, 60 * it))));
        expect(fit.limit / limit).toBeCloseTo(1, 6);
        expect(fit.perMinute / perMinute).toBeCloseTo(1, 6);
        expect(fit.misfit).toBeLessThan(1e-9);
      }),
    );
  });

  test("derived: 0.45 after 5 min and 0.70 after 10 give K 0.11756 per minute (5e-6) and a limit of 1.0125 (5e-5)", () => {
    const fit = fitted([tested(5, 0.45), tested(10, 0.7)]);
    expect(fit.perMinute).toBeCloseTo(0.11756, 5);
    expect(fit.limit).toBeCloseTo(1.0125, 4);
    expect([fit.from, fit.to]).toEqual([300, 600]);
  });

  test("derived: of that pair 0.60 falls at 7:38 (half a second), within the times tested", () => {
    const fit = fitted([tested(5, 0.45), tested(10, 0.7)]);
    expect(timeForGradient(fit, 0.6)).toMatchObject({ kind: "time", within: true });
    expect(Math.abs(secondsFor(fit, 0.6) - 458)).toBeLessThan(0.5);
  });

  test("a pair at t and 2t has a closed form, recomputed in 40 digits: r = γ2/γ1 − 1, K = −ln r / t, limit = γ1 / (1 − r) (1e-9)", () => {
    const Digits = Decimal.clone({ precision: 40 });
    fc.assert(
      fc.property(
        fc.integer({ min: 60, max: 3600 }),
        fc.double({ min: 0.1, max: 2, noNaN: true }),
        fc.double({ min: 0.02, max: 0.95, noNaN: true }),
        (seconds, first, more) => {
          const tests = [
            { seconds, gradient: first },
            { seconds: 2 * seconds, gradient: first * (1 + more) },
          ];
          const r = new Digits(first * (1 + more)).div(first).minus(1);
          const perMinute = r.ln().neg().div(seconds).times(60).toNumber();
          const limit = new Digits(first).div(new Digits(1).minus(r)).toNumber();
          const fit = fitted(tests);
          expect(fit.perMinute / perMinute).toBeCloseTo(1, 9);
          expect(fit.limit / limit).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  test("is fitted so that Levenberg and Marquardt's method finds no smaller sum of squares (1e-9), from the fit nor from elsewhere", () => {
    const squares = (tests: readonly ContrastTest[], limit: number, perMinute: number) =>
      tests.reduce((sum, it) => sum + (it.gradient - law(limit, perMinute, it.seconds)) ** 2, 0);
    const starts = fc.record({
      limit: fc.double({ min: 0.5, max: 3, noNaN: true }),
      perMinute: fc.double({ min: 0.04, max: 0.5, noNaN: true }),
    });
    let compared = 0;
    fc.assert(
      fc.property(noisyTests, starts, (tests, start) => {
        const fit = fitContrast(tests);
        if (fit.kind === "unfit") return;
        compared += 1;
        const own = squares(tests, fit.limit, fit.perMinute);
        expect(fit.misfit).toBeCloseTo(Math.sqrt(own / tests.length), 9);
        for (const from of [start, fit]) {
          const { parameterValues } = levenbergMarquardt(
            { x: tests.map((it) => it.seconds), y: tests.map((it) => it.gradient) },
            ([limit = 0, perMinute = 0]) =>
              (seconds) =>
                law(limit, perMinute, seconds),
            {
              initialValues: [from.limit, from.perMinute],
              minValues: [0.01, 0.001],
              maxValues: [100, 10],
              errorTolerance: 1e-14,
              maxIterations: 200,
              jacobianFunction:
                ([limit = 0, perMinute = 0]) =>
                (seconds) => {
                  const left = Math.exp((-perMinute * seconds) / 60);
                  return [1 - left, (limit * seconds * left) / 60];
                },
            },
          );
          const [limit = 0, perMinute = 0] = parameterValues;
          expect(own).toBeLessThanOrEqual(squares(tests, limit, perMinute) + 1e-9);
        }
      }),
    );
    expect(compared).toBeGreaterThan(50);
  });

  test("does not depend on the order in which the tests were typed", () => {
    fc.assert(
      fc.property(
        anyTests.chain((tests) =>
          fc.tuple(
            fc.constant(tests),
            fc.shuffledSubarray(tests, { minLength: tests.length, maxLength: tests.length }),
          ),
        ),
        ([tests, shuffled]) => {
          expect(fitContrast(shuffled)).toEqual(fitContrast(tests));
        },
      ),
    );
  });

  test("takes a time typed twice for two tests, and runs between them (0.005)", () => {
    const fit = fitted([tested(5, 0.44), tested(5, 0.46), tested(10, 0.69), tested(10, 0.71)]);
    expect(gradientAt(fit, 300)).toBeCloseTo(0.45, 2);
    expect(gradientAt(fit, 600)).toBeCloseTo(0.7, 2);
    expect(fit.misfit).toBeCloseTo(0.01, 9);
  });

  test("is finite and above 0 in all its numbers, for whatever tests it is fitted to", () => {
    fc.assert(
      fc.property(anyTests, (tests) => {
        const fit = fitContrast(tests);
        fc.pre(fit.kind === "fitted");
        const numbers = [fit.limit, fit.perMinute, fit.from, fit.to];
        for (const it of numbers) expect(it > 0 && Number.isFinite(it)).toBe(true);
        expect(fit.misfit >= 0 && Number.isFinite(fit.misfit)).toBe(true);
        expect(fit.limit).toBeLessThan(25 * Math.max(...tests.map((it) => it.gradient)));
      }),
      { numRuns: 500 },
    );
  });

  test("runs from wedges to a time: two strips read, and the time for the standard's 0.615 between them", () => {
    const strip = (minutes: number, gradient: number): ContrastTest => {
      const densities = Array.from({ length: 21 }, (_, i) => 0.3 + i * 0.15 * gradient);
      const reading = readWedge({ baseFog: 0.3, stepLog: 0.15, firstLog: null, densities });
      if (reading.kind === "unread") throw new Error(reading.why);
      return tested(minutes, reading.gradient);
    };
    const fit = fitted([strip(5, 0.45), strip(10, 0.7)]);
    const seconds = secondsFor(fit, 0.8 / 1.3);
    expect(seconds).toBeGreaterThan(458);
    expect(seconds).toBeLessThan(600);
  });
});

describe("the time for a gradient", () => {
  test("is the time at which the law has that gradient (1e-6 of it)", () => {
    fc.assert(
      fc.property(
        films,
        fc.double({ min: 10, max: 2400, noNaN: true }),
        ({ limit, perMinute, minutes }, seconds) => {
          const fit = fitted(minutes.map((it) => tested(it, law(limit, perMinute, 60 * it))));
          expect(secondsFor(fit, gradientAt(fit, seconds)) / seconds).toBeCloseTo(1, 6);
        },
      ),
    );
  });

  test("is longer for a higher gradient, and the gradient higher after a longer time", () => {
    const fit = fitted([tested(5, 0.45), tested(10, 0.7)]);
    const seconds = fc.integer({ min: 0, max: 3600 });
    fc.assert(
      fc.property(seconds, seconds, (a, b) => {
        fc.pre(a < b);
        const [low, high] = [gradientAt(fit, a), gradientAt(fit, b)];
        expect(low).toBeLessThan(high);
        expect(high).toBeLessThan(fit.limit);
        expect(secondsFor(fit, low)).toBeLessThan(secondsFor(fit, high));
      }),
    );
    expect(gradientAt(fit, 0)).toBe(0);
    expect(secondsFor(fit, 0)).toBeCloseTo(0, 12);
  });

  test("says whether it lies within the times tested, to the half second", () => {
    const fit = fitted([tested(5, 0.45), tested(10, 0.7)]);
    const within = (seconds: number) => timeForGradient(fit, gradientAt(fit, seconds));
    expect(within(299.4)).toMatchObject({ within: false });
    expect(within(299.6)).toMatchObject({ within: true });
    expect(within(600.4)).toMatchObject({ within: true });
    expect(within(600.6)).toMatchObject({ within: false });
    expect(timeForGradient(fit, 0.45)).toMatchObject({ within: true });
    expect(timeForGradient(fit, 0.7)).toMatchObject({ within: true });
  });

  test("is none from the limit on, however near the limit a finite one may be", () => {
    const fit = fitted([tested(5, 0.45), tested(10, 0.7)]);
    expect(timeForGradient(fit, fit.limit)).toEqual({ kind: "beyond-limit", limit: fit.limit });
    expect(timeForGradient(fit, 2)).toEqual({ kind: "beyond-limit", limit: fit.limit });
    expect(Number.isFinite(secondsFor(fit, fit.limit * (1 - 2 ** -52)))).toBe(true);
  });
});

describe("the gradient for stops of contrast more or less", () => {
  test("practice: N+1 is × 1.30 / (1.30 − 0.30), N−1 × 1.30 / (1.30 + 0.30) (0.003, a stop being log10 2)", () => {
    expect(Math.abs((gradientForStops(1, 1) ?? 0) - 1.3)).toBeLessThan(0.003);
    expect(Math.abs((gradientForStops(1, -1) ?? 0) - 1.3 / 1.6)).toBeLessThan(0.003);
    expect(gradientForStops(0.615, 0)).toBeCloseTo(0.615, 12);
  });

  test("gives the shortened range the density that the usual one had (1e-9)", () => {
    const stops = fc.double({ min: -4, max: 3, noNaN: true });
    fc.assert(
      fc.property(stops, fc.double({ min: 0.1, max: 2, noNaN: true }), (more, gradient) => {
        const range = 1.3 - more * Math.log10(2);
        expect((gradientForStops(gradient, more) ?? 0) * range).toBeCloseTo(gradient * 1.3, 9);
      }),
    );
  });

  test("is given from −4 to +3 stops, both in, and not beyond", () => {
    expect(gradientForStops(0.6, -4)).toBeGreaterThan(0);
    expect(gradientForStops(0.6, 3)).toBeLessThan(2);
    expect(gradientForStops(0.6, -4.001)).toBeNull();
    expect(gradientForStops(0.6, 3.001)).toBeNull();
    expect(gradientForStops(0.6, Number.NaN)).toBeNull();
  });
});
