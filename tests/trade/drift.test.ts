import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Drift, driftedSeconds, temperatureAfter } from "../../src/trade/drift.ts";
import { curveThrough, type TimeCurve, timeAt } from "../../src/trade/time-temperature.ts";

const leaflet = curveThrough([
  { celsius: 18, seconds: 750 },
  { celsius: 20, seconds: 600 },
  { celsius: 22, seconds: 510 },
  { celsius: 24, seconds: 450 },
]);

/** The same integral by the plainest of rules, in steps of a thousandth of a second. */
function bruteForce(curve: TimeCurve, drift: Drift): number {
  const step = 0.001;
  let [done, steps] = [0, 0];
  while (done < 1) {
    done += step / timeAt(curve, temperatureAfter(drift, (steps + 0.5) * step));
    steps += 1;
  }
  return steps * step;
}

describe("a tank that drifts", () => {
  test("is half-way to the room after the half-way time, and three quarters after two (1e-9 °C)", () => {
    const drift = { start: 24, room: 16, halfway: 30 };
    expect(temperatureAfter(drift, 0)).toBe(24);
    expect(temperatureAfter(drift, 30 * 60)).toBeCloseTo(20, 9);
    expect(temperatureAfter(drift, 60 * 60)).toBeCloseTo(18, 9);
  });

  test("memory, plausibility (Trench, Elementary Differential Equations §4.2): 400 °C that is 200 °C after 4 min in a 25 °C room is 106.67 °C after 8 min (0.005 °C)", () => {
    const halfway = (4 * Math.LN2) / Math.log((400 - 25) / (200 - 25));
    expect(temperatureAfter({ start: 400, room: 25, halfway }, 480)).toBeCloseTo(106.67, 2);
  });

  test.each([
    { start: 20, room: 16, halfway: 30 },
    { start: 20, room: 26, halfway: 15 },
    { start: 23.5, room: 12, halfway: 4 },
    { start: 18, room: 20, halfway: 1 },
    { start: 21, room: 17, halfway: 400 },
  ])(
    "$start → $room °C, half-way in $halfway min: agrees with the plainest sum to 0.01 s",
    (drift) => {
      expect(Math.abs(driftedSeconds(leaflet, drift) - bruteForce(leaflet, drift))).toBeLessThan(
        0.01,
      );
    },
  );

  test("that is at the room's temperature does not drift", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 40, noNaN: true }),
        fc.double({ min: 0.1, max: 1e5, noNaN: true }),
        (celsius, halfway) => {
          const drift = { start: celsius, room: celsius, halfway };
          expect(driftedSeconds(leaflet, drift)).toBe(timeAt(leaflet, celsius));
        },
      ),
    );
  });

  test("hardly drifts in a tank that takes for ever (0.01 s)", () => {
    const seconds = driftedSeconds(leaflet, { start: 20, room: 15, halfway: 1e8 });
    expect(Math.abs(seconds - 600)).toBeLessThan(0.01);
  });

  test("takes a time between those of its first and its last temperature", () => {
    const degrees = fc.double({ min: 15, max: 27, noNaN: true });
    fc.assert(
      fc.property(
        degrees,
        degrees,
        fc.double({ min: 0.5, max: 500, noNaN: true }),
        (start, room, halfway) => {
          const drift = { start, room, halfway };
          const seconds = driftedSeconds(leaflet, drift);
          const ends = [start, temperatureAfter(drift, seconds)].map((it) => timeAt(leaflet, it));
          expect(seconds).toBeGreaterThanOrEqual(Math.min(...ends) - 0.001);
          expect(seconds).toBeLessThanOrEqual(Math.max(...ends) + 0.001);
        },
      ),
    );
  });

  test("ends in a finite time for the steepest rows that a worksheet may hold", () => {
    const degrees = fc.double({ min: -40, max: 110, noNaN: true });
    const time = fc.integer({ min: 1, max: 86_400 });
    fc.assert(
      fc.property(
        degrees,
        degrees,
        time,
        time,
        fc.double({ min: 0.1, max: 1e5, noNaN: true }),
        (start, room, a, b, halfway) => {
          const steep = curveThrough([
            { celsius: 20, seconds: a },
            { celsius: 20.01, seconds: b },
          ]);
          const seconds = driftedSeconds(steep, { start, room, halfway });
          expect(seconds).toSatisfy((it: number) => it >= 0 && Number.isFinite(it));
        },
      ),
    );
  });
});
