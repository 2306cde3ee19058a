import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { delayOf, mostDelay, rhythm } from "../../src/live/latency.ts";

/** A bar of beats that begins at any time on the clock. */
const beatsFrom = (start: number) => rhythm.map((beat) => start + beat);
const refused = (why: string) => ({ kind: "refused", why });

/** Numbers of a bell curve about 0, the same ones every time. */
function bell(seed: number): () => number {
  let state = seed;
  const next = () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
  return () => Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next());
}

/** Who taps a little early or late, misses a few beats, and bounces now and then. */
const tapper = fc.record({
  start: fc.double({ min: 0, max: 10_000, noNaN: true }),
  delay: fc.double({ min: 0.085, max: 0.975, noNaN: true }),
  slips: fc.array(fc.double({ min: -0.0195, max: 0.0195, noNaN: true }), {
    minLength: rhythm.length,
    maxLength: rhythm.length,
  }),
  bounces: fc.array(fc.option(fc.double({ min: 0.02, max: 0.2, noNaN: true })), {
    minLength: rhythm.length,
    maxLength: rhythm.length,
  }),
});
const missing = (most: number) =>
  fc.uniqueArray(fc.nat({ max: rhythm.length - 1 }), { maxLength: most });

type Tapper = typeof tapper extends fc.Arbitrary<infer It> ? It : never;

const tapsOf = ({ start, delay, slips, bounces }: Tapper, missed: readonly number[]) =>
  rhythm.flatMap((beat, i) => {
    if (missed.includes(i)) return [];
    const tap = start + beat + delay + (slips[i] ?? 0);
    const bounce = bounces[i] ?? null;
    return bounce === null ? [tap] : [tap, tap + bounce];
  });

describe("The delay of headphones", () => {
  test("is found to 0.02 s for whoever keeps time to that, misses three beats and bounces", () => {
    fc.assert(
      fc.property(tapper, missing(3), (it, missed) => {
        const found = delayOf(beatsFrom(it.start), tapsOf(it, missed));
        expect(found.kind).toBe("measured");
        if (found.kind === "measured") {
          expect(Math.abs(found.delay - it.delay)).toBeLessThan(0.02);
          expect(found.spread).toBeLessThan(0.04);
        }
      }),
    );
  });

  test("is found or refused, but never a whole beat off, however many beats are missed", () => {
    let found = 0;
    fc.assert(
      fc.property(tapper, missing(rhythm.length), (it, missed) => {
        const measured = delayOf(beatsFrom(it.start), tapsOf(it, missed));
        if (measured.kind === "refused") return;
        found += 1;
        expect(Math.abs(measured.delay - it.delay)).toBeLessThan(0.02);
      }),
    );
    expect(found).toBeGreaterThan(10);
  });

  test("is found to 0.02 s for nineteen in twenty of those whose taps scatter as people's do", () => {
    // About 4 % of the time between two beats, from memory.
    const slip = bell(20_260);
    let near = 0;
    for (let each = 0; each < 400; each += 1) {
      const delay = 0.1 + (0.8 * each) / 400;
      const found = delayOf(
        rhythm,
        rhythm.map((beat) => beat + delay + 0.03 * slip()),
      );
      if (found.kind === "measured" && Math.abs(found.delay - delay) < 0.02) near += 1;
      if (found.kind === "measured") expect(Math.abs(found.delay - delay)).toBeLessThan(0.05);
    }
    expect(near).toBeGreaterThan(380);
  });

  test("leaves out the first two taps, by which one finds the beat", () => {
    const taps = rhythm.map((beat, i) => beat + 0.2 + (i < 2 ? 0.3 : 0));
    const found = delayOf(rhythm, taps);
    expect(found).toMatchObject({ kind: "measured" });
    if (found.kind === "measured") expect(found.spread).toBeCloseTo(0, 9);
  });

  test("is none below 0.06 s, and none for those who tap ahead of the beat", () => {
    for (const early of [0.055, 0.02, 0, -0.03, -0.08]) {
      const found = delayOf(
        rhythm,
        rhythm.map((beat) => beat + early),
      );
      expect(found).toMatchObject({ kind: "measured", delay: 0 });
    }
    const found = delayOf(
      rhythm,
      rhythm.map((beat) => beat + 0.065),
    );
    expect(found).toMatchObject({ kind: "measured", delay: expect.closeTo(0.065, 9) });
  });

  test("is refused where there are fewer than six taps beside the first two", () => {
    const taps = rhythm.map((beat) => beat + 0.3);
    for (const count of [0, 1, 2, 7]) {
      expect(delayOf(rhythm, taps.slice(0, count))).toEqual(refused("few"));
    }
    expect(delayOf(rhythm, taps.slice(0, 8)).kind).toBe("measured");
    // A bounce is no tap of its own.
    const bouncing = taps.slice(0, 7).flatMap((tap) => [tap, tap + 0.1]);
    expect(delayOf(rhythm, bouncing)).toEqual(refused("few"));
  });

  test("is refused where the taps lie more than 0.06 s apart by their median deviation", () => {
    const swaying = (by: number) => rhythm.map((beat, i) => beat + 0.3 + by * ((i % 3) - 1));
    expect(delayOf(rhythm, swaying(0.055)).kind).toBe("measured");
    expect(delayOf(rhythm, swaying(0.07))).toEqual(refused("uneven"));
    const anyhow = Array.from({ length: 24 }, (_, i) => i * 0.79 + 0.1 * ((i * 7) % 4));
    expect(delayOf(rhythm, anyhow).kind).toBe("refused");
  });

  test("is refused where the rests were tapped too: it could be a beat more", () => {
    const through = Array.from({ length: 26 }, (_, i) => i * 0.75 + 0.5);
    expect(delayOf(rhythm, through)).toEqual(refused("unclear"));
  });

  test("is refused beyond a second, and never taken for a short one", () => {
    for (const delay of [1.02, 1.3, 1.5, 1.8, 2.25, 2.4]) {
      const taps = rhythm.map((beat) => beat + delay);
      expect(delayOf(rhythm, taps), String(delay)).toEqual(refused("far"));
    }
  });

  test("is from 0 to a second whatever is tapped, and 0 or worth mending", () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -5, max: 30, noNaN: true })), (taps) => {
        const found = delayOf(rhythm, taps);
        if (found.kind === "refused") return;
        expect(found.delay === 0 || found.delay >= 0.06).toBe(true);
        expect(found.delay).toBeLessThanOrEqual(mostDelay);
      }),
    );
  });
});

describe("The rhythm to tap along to", () => {
  test("begins at once, takes less than half a minute, and leaves out every fourth beat", () => {
    expect(rhythm[0]).toBe(0);
    expect(rhythm.at(-1)).toBeLessThan(30);
    expect(rhythm.slice(0, 7)).toEqual([0, 0.75, 1.5, 3, 3.75, 4.5, 6]);
  });
});
