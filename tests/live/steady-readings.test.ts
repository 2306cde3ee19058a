import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  nothingProbed,
  notTaken,
  type Probing,
  probed,
  type Steady,
} from "../../src/live/steady-readings.ts";

/** Readings a few seconds apart; what each came to, in short. */
function told(readings: readonly number[], every = 2, from: Steady = nothingProbed, at = 0) {
  let steady = from;
  const probings = readings.map((celsius, i) => {
    const result = probed(steady, celsius, at + i * every);
    steady = result.steady;
    return inShort(result.probing);
  });
  return { steady, probings };
}

const inShort = (probing: Probing) => (probing.kind === "worth" ? probing.celsius : probing.kind);

describe("A probe's readings", () => {
  test("are worth giving once there are three, as the middle of them", () => {
    expect(told([20.3, 20, 20.1]).probings).toEqual(["known", "known", 20.1]);
    expect(told([20, 21.5, 20.1]).probings).toEqual(["known", "known", 20.1]);
  });

  test("are worth giving again after a change of two tenths, and not at a flicker below that", () => {
    const { steady } = told([20, 20, 20]);
    expect(told([20.19, 20.19, 20.19], 2, steady, 6).probings).toEqual(["known", "known", "known"]);
    expect(told([20.2, 20.2], 2, steady, 6).probings).toEqual(["known", 20.2]);
    expect(told([19.8, 19.8, 19.8], 2, steady, 6).probings).toEqual(["known", 19.8, "known"]);
    expect(told([20, 22, 20, 20], 2, steady, 6).probings).not.toContain(22);
  });

  test("are worth giving when none was for two minutes, however little they changed", () => {
    const { steady } = told([20, 20, 20], 20);
    const after = told(Array(7).fill(20), 20, steady, 60);
    // The last was given at 40 s.
    expect(after.probings).toEqual(["known", "known", "known", "known", "known", 20, "known"]);
  });

  test("outside 10 to 45 °C are of a probe out of the tank, and those after them begin anew", () => {
    for (const celsius of [9.99, 45.01, -40, 100]) {
      expect(told([celsius]).probings).toEqual(["out"]);
    }
    for (const celsius of [10, 45]) expect(told([celsius]).probings).toEqual(["known"]);
    expect(told([11, 11, 9, 11, 11, 11]).probings).toEqual([
      "known",
      "known",
      "out",
      "known",
      "known",
      11,
    ]);
  });

  test("that jump by more than 3 °C in 5 s are left out, by small steps or at once", () => {
    const { steady } = told([20, 20, 20]);
    expect(told([23.01], 2, steady, 6).probings).toEqual(["out"]);
    expect(told([23], 2, steady, 6).probings).toEqual(["known"]);
    expect(told([21.6, 23.2, 24.8], 2, steady, 6).probings).toEqual(["known", "out", "out"]);
    // As slowly as that, a bath does change.
    expect(told([21, 22, 23, 24, 25, 26], 4, steady, 9).probings).not.toContain("out");
  });

  test("that jump from one to the next are left out where a probe is asked every 20 s, too", () => {
    const { steady } = told([20, 20, 20], 20);
    const after = told([26, 26, 26, 26, 20, 20, 20, 20], 20, steady, 60);
    // A probe that stays in warm water is believed in the end.
    expect(after.probings).toEqual(["out", "known", "known", 26, "out", "known", "known", 20]);
  });

  test("older than a minute and a half say nothing of now", () => {
    const { steady } = told([20, 20, 20]);
    expect(told([26, 26, 26], 2, steady, 100).probings).toEqual(["known", "known", 26]);
    expect(told([20, 20], 100).probings).toEqual(["known", "known"]);
    expect(told([20, 20, 20, 20], 91).probings).toEqual(Array(4).fill("known"));
  });

  test("which the run had no use for are as good as never given", () => {
    const { steady } = told([20, 20, 20]);
    expect(told([20], 2, notTaken(steady), 6).probings).toEqual([20]);
  });

  test("are given within what the probe told, inside the tank's bounds, and never too often", () => {
    const reading = fc.record({
      celsius: fc.double({ min: -20, max: 60, noNaN: true }),
      after: fc.double({ min: 0.1, max: 30, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(reading, { maxLength: 60 }), (readings) => {
        let steady = nothingProbed;
        let at = 0;
        let given: { readonly celsius: number; readonly at: number } | null = null;
        for (const { celsius, after } of readings) {
          at += after;
          const result = probed(steady, celsius, at);
          steady = result.steady;
          if (result.probing.kind !== "worth") continue;
          const { celsius: worth } = result.probing;
          expect(worth).toBeGreaterThanOrEqual(10);
          expect(worth).toBeLessThanOrEqual(45);
          expect(readings.some((each) => each.celsius === worth)).toBe(true);
          if (given !== null)
            expect(Math.abs(worth - given.celsius) >= 0.2 - 1e-6 || at - given.at >= 120).toBe(
              true,
            );
          given = { celsius: worth, at };
        }
      }),
    );
  });
});
