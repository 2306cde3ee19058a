import fc from "fast-check";
import { Solver } from "odex";
import { describe, expect, test } from "vitest";
import { driftedSeconds, temperatureAfter } from "../../src/trade/drift.ts";
import { measuredDevelopment } from "../../src/trade/measured-development.ts";
import { curveThrough, timeAt } from "../../src/trade/time-temperature.ts";

const leaflet = curveThrough([
  { celsius: 18, seconds: 750 },
  { celsius: 20, seconds: 600 },
  { celsius: 22, seconds: 510 },
  { celsius: 24, seconds: 450 },
]);

/** What is developed after so many seconds by an integrator of differential equations, started anew wherever the rate bends. */
function developed(
  temperature: (seconds: number) => number,
  bends: readonly number[],
  until: number,
): number {
  const solver = new Solver(1);
  solver.absoluteTolerance = 1e-12;
  solver.relativeTolerance = 1e-12;
  const rate = (seconds: number) => [1 / timeAt(leaflet, temperature(seconds))];
  const ends = [...bends.filter((at) => at > 0 && at < until).sort((a, b) => a - b), until];
  let [from, done] = [0, 0];
  for (const to of ends) {
    done = solver.solve(rate, from, [done], to).y[0] ?? Number.NaN;
    from = to;
  }
  return done;
}

const degrees = fc.double({ min: 16, max: 26, noNaN: true });

describe("a tank that drifts", () => {
  test("is done when an independent integrator has come to 1 (odex; 1e-6)", () => {
    const minutes = fc.double({ min: 2, max: 200, noNaN: true });
    fc.assert(
      fc.property(degrees, degrees, minutes, (start, room, halfway) => {
        const drift = { start, room, halfway };
        const seconds = driftedSeconds(leaflet, drift);
        const bends = leaflet.points.map(
          ({ celsius }) => -60 * halfway * Math.log2((celsius - room) / (start - room)),
        );
        const done = developed(
          (at) => temperatureAfter(drift, at),
          bends.filter(Number.isFinite),
          seconds,
        );
        expect(Math.abs(done - 1)).toBeLessThan(1e-6);
      }),
      { numRuns: 60 },
    );
  });
});

describe("a tank that is measured while it develops", () => {
  test("is done when an independent integrator has come to 1 along the readings (odex; 1e-6)", () => {
    const readings = fc
      .uniqueArray(fc.integer({ min: 1, max: 900 }), { minLength: 1, maxLength: 5 })
      .chain((times) =>
        fc
          .array(degrees, { minLength: times.length + 1, maxLength: times.length + 1 })
          .map((all) => all.map((celsius, i) => ({ seconds: times[i - 1] ?? 0, celsius }))),
      );
    fc.assert(
      fc.property(readings, (path) => {
        const { seconds } = measuredDevelopment(leaflet, path, null);
        const sorted = [...path].sort((a, b) => a.seconds - b.seconds);
        const temperature = (at: number) => {
          const next = sorted.findIndex((it) => it.seconds > at);
          const to = sorted[next];
          const from = to ? sorted[next - 1] : sorted.at(-1);
          if (!from) throw new Error("the first reading is at 0 s");
          if (!to) return from.celsius;
          const part = (at - from.seconds) / (to.seconds - from.seconds);
          return from.celsius + part * (to.celsius - from.celsius);
        };
        const bends = sorted.flatMap((from, i) => {
          const to = sorted[i + 1];
          if (!to) return [from.seconds];
          return [
            from.seconds,
            ...leaflet.points.map(({ celsius }) => {
              const part = (celsius - from.celsius) / (to.celsius - from.celsius);
              return part > 0 && part < 1
                ? from.seconds + part * (to.seconds - from.seconds)
                : from.seconds;
            }),
          ];
        });
        expect(Math.abs(developed(temperature, bends, seconds) - 1)).toBeLessThan(1e-6);
      }),
      { numRuns: 60 },
    );
  });

  test("that stays where it started takes the leaflet's time, however often it is read (1e-9)", () => {
    fc.assert(
      fc.property(
        degrees,
        fc.array(fc.integer({ min: 1, max: 2000 }), { maxLength: 8 }),
        (celsius, times) => {
          const path = [0, ...times].map((seconds) => ({ seconds, celsius }));
          const { seconds } = measuredDevelopment(leaflet, path, null);
          expect(seconds / timeAt(leaflet, celsius)).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  test("goes on toward the room after the last reading, where the room is known: with a first reading alone it is the plain drift (1e-6 s)", () => {
    const after = { room: 16, halfway: 30 };
    const { seconds } = measuredDevelopment(leaflet, [{ seconds: 0, celsius: 21 }], after);
    expect(seconds).toBeCloseTo(driftedSeconds(leaflet, { start: 21, ...after }), 6);
  });

  test("is done between two readings where the second came too late, and says so by what is left", () => {
    const late = measuredDevelopment(
      leaflet,
      [
        { seconds: 0, celsius: 20 },
        { seconds: 900, celsius: 20 },
      ],
      null,
    );
    expect(late.seconds).toBeCloseTo(600, 9);
    expect(late.left).toBe(0);
    expect(late.stretches[0]?.to.seconds).toBeCloseTo(600, 9);
  });

  test("takes longer when any reading is colder", () => {
    fc.assert(
      fc.property(
        degrees,
        degrees,
        fc.double({ min: 0.1, max: 4, noNaN: true }),
        fc.integer({ min: 1, max: 400 }),
        (start, then, colder, at) => {
          const read = (celsius: number) =>
            measuredDevelopment(
              leaflet,
              [
                { seconds: 0, celsius: start },
                { seconds: at, celsius },
              ],
              null,
            ).seconds;
          expect(read(then - colder)).toBeGreaterThan(read(then));
        },
      ),
    );
  });

  test("what was done on each stretch and what was left are the whole (1e-12)", () => {
    const path = [0, 120, 300].map((seconds, i) => ({ seconds, celsius: 20 - i }));
    const { stretches, left } = measuredDevelopment(leaflet, path, null);
    const done = stretches.reduce((sum, stretch) => sum + stretch.done, 0);
    expect(done + left).toBeCloseTo(1, 12);
    expect(stretches).toHaveLength(2);
  });
});
