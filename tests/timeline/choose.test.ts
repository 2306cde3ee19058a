import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { choose, PAUSE, type Window } from "../../src/timeline/choose.ts";
import { quietOf, type Stretch } from "../../src/timeline/quiet.ts";

/** Tries every choice of wordings, each placed as early as may be. */
function bestByTrying(wishes: readonly Window[], stretches: readonly Stretch[]): number {
  const quiet = quietOf(stretches);
  const from = (i: number, ended: number): number => {
    const wish = wishes[i];
    if (wish === undefined) return 0;
    let best = from(i + 1, ended);
    for (const { seconds, value } of wish.wordings) {
      const at = quiet.nextFree(Math.max(wish.earliest, ended + PAUSE), seconds);
      if (at + seconds <= wish.latestEnd + 1e-9) {
        best = Math.max(best, value + from(i + 1, at + seconds));
      }
    }
    return best;
  };
  return from(0, -PAUSE);
}

const half = (max: number) => fc.integer({ min: 0, max: max * 2 }).map((n) => n / 2);

const anyWindow: fc.Arbitrary<Window> = fc.record({
  earliest: half(30),
  latestEnd: half(40),
  prefer: half(40).map((liked) => () => liked),
  wordings: fc.array(
    fc.record({ seconds: half(5).map((s) => s + 0.5), value: fc.integer({ min: 1, max: 20 }) }),
    {
      minLength: 1,
      maxLength: 3,
    },
  ),
});
const windows = fc
  .array(anyWindow, { maxLength: 7 })
  .map((all) => all.toSorted((a, b) => a.latestEnd - b.latestEnd));
const stretches = fc.array(
  fc.tuple(half(40), half(6)).map(([from, length]) => ({ from, to: from + length })),
  { maxLength: 6 },
);

describe("The choice of what is said", () => {
  test("is worth as much as the best found by trying everything", () => {
    fc.assert(
      fc.property(windows, stretches, (wishes, quiet) => {
        const placed = choose(wishes, quietOf(quiet));
        const value = placed.reduce(
          (sum, place, i) =>
            sum + (place === null ? 0 : (wishes[i]?.wordings[place.wording]?.value ?? 0)),
          0,
        );
        expect(value).toBe(bestByTrying(wishes, quiet));
      }),
      { numRuns: 500 },
    );
  });

  test("keeps within windows, out of the quiet, and a pause apart", () => {
    fc.assert(
      fc.property(windows, stretches, (wishes, quiet) => {
        let ended = Number.NEGATIVE_INFINITY;
        for (const [i, place] of choose(wishes, quietOf(quiet)).entries()) {
          const wish = wishes[i];
          if (place === null || wish === undefined) continue;
          const until = place.at + (wish.wordings[place.wording]?.seconds ?? 0);
          expect(place.at).toBeGreaterThanOrEqual(Math.max(wish.earliest, ended + PAUSE) - 1e-6);
          expect(until).toBeLessThanOrEqual(wish.latestEnd + 1e-6);
          for (const { from, to } of quiet) {
            expect(until <= from + 1e-6 || place.at >= to - 1e-6 || to <= from).toBe(true);
          }
          ended = until;
        }
      }),
      { numRuns: 500 },
    );
  });

  test("a cue drifts to where it is liked best, as far as its neighbours let it", () => {
    const window = (liked: number, latestEnd: number): Window => ({
      earliest: 0,
      latestEnd,
      prefer: () => liked,
      wordings: [{ seconds: 2, value: 1 }],
    });
    const placed = choose([window(9, 20), window(10, 30)], quietOf([]));
    expect(placed.map((place) => place?.at)).toEqual([10 - PAUSE - 2, 10]);
  });
});
