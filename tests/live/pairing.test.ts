// Sounds are asked for on the steady clock and lie on the audio clock, whose pace is another: how far they stray.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  audioAt,
  type Known,
  knownWith,
  nothingKnown,
  type Pairing,
  paired,
} from "../../src/live/pairing.ts";

/** Seconds; as long as the longest development with its washes. */
const NINETY_MINUTES = 90 * 60;
/** As far ahead as sounds are placed, seconds. */
const AHEAD = 45;

/** A generator of its own, so that a failure can be looked at again: uniform in [−1, 1). */
function scatterFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return (2 * state) / 2147483647 - 1;
  };
}

/**
 * The clocks read about every second of a run. Audio is mixed in blocks: its clock goes in steps, and a reading
 * pairs the last step with when it was, give or take the scatter.
 * @param ppm parts in a million by which the audio clock is fast.
 * @returns the errors of sounds asked for from `from` on, some now and some as far ahead as can be, seconds.
 */
function errors(ppm: number, seed: number, from = 60, scatter = 0.003, step = 0.01) {
  const next = scatterFrom(seed);
  const audio = (steady: number) => 17 + (steady - 5) * (1 + ppm / 1e6);
  const steadyOf = (at: number) => 5 + (at - 17) / (1 + ppm / 1e6);
  let pairing: Pairing = [];
  const found: { readonly at: number; readonly error: number }[] = [];
  for (let now = 5; now < NINETY_MINUTES; now += 1 + 0.1 * next()) {
    const read = Math.floor(audio(now) / step) * step;
    pairing = paired(pairing, { audio: read, steady: steadyOf(read) + scatter * next() });
    if (now < from) continue;
    for (const ahead of [0, 10, AHEAD]) {
      found.push({ at: now, error: Math.abs(audioAt(pairing, now + ahead) - audio(now + ahead)) });
    }
  }
  return found;
}

const worst = (found: ReturnType<typeof errors>) => Math.max(...found.map(({ error }) => error));

describe("Over ninety minutes of an audio clock that is off by 100 parts in a million", () => {
  test("every sound lies within 5 ms of its time from the first minute to the last", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(-100, -30, 0, 30, 100),
        fc.integer({ min: 1, max: 1e9 }),
        (ppm, seed) => {
          expect(worst(errors(ppm, seed))).toBeLessThan(0.005);
        },
      ),
      { numRuns: 4 },
    );
  });

  test("at the end it lies within 2 ms, where by the first reading alone it would be half a second off", () => {
    for (const ppm of [-100, 100]) {
      const last = errors(ppm, 7, NINETY_MINUTES - 300);
      expect(worst(last)).toBeLessThan(0.002);
      const first = (ppm / 1e6) * NINETY_MINUTES;
      expect(Math.abs(first)).toBeGreaterThan(0.5);
    }
  });

  test("before there is enough to tell the pace by, what was read is believed, and no more", () => {
    const one = paired([], { steady: 10, audio: 3 });
    expect(audioAt(one, 30)).toBe(23);
    const two = paired(one, { steady: 11, audio: 4.006 });
    expect(audioAt(two, 31)).toBeCloseTo(24.003, 9);
    expect(audioAt([], 5)).toBe(0);
  });

  test("no reading, however wrong, makes a clock go at a pace that none has", () => {
    fc.assert(
      fc.property(fc.double({ min: -1, max: 1, noNaN: true }), (wrong) => {
        let pairing: Pairing = [];
        for (let at = 0; at < 100; at += 1) pairing = paired(pairing, { steady: at, audio: at });
        pairing = paired(pairing, { steady: 100, audio: 100 + wrong });
        const pace = (audioAt(pairing, 145) - audioAt(pairing, 100)) / 45;
        expect(Math.abs(pace - 1)).toBeLessThanOrEqual(5e-4 + 1e-9);
      }),
    );
  });

  test("sound that stood still too shortly to be told of is put right by the second reading after it", () => {
    const next = scatterFrom(11);
    for (const still of [0.06, 0.15, 0.24]) {
      let pairing: Pairing = [];
      const audio = (at: number) => at * 1.0001 - (at > 300 ? still : 0);
      for (let at = 0; at < 900; at += 1) {
        pairing = paired(pairing, { steady: at, audio: audio(at) + 0.003 * next() });
        const from = at > 300 ? 302 : 60;
        if (at < from || (at <= 300 && at > 255)) continue;
        expect(Math.abs(audioAt(pairing, at + 40) - audio(at + 40))).toBeLessThan(0.012);
        if (at < from + 60) continue;
        expect(Math.abs(audioAt(pairing, at + 40) - audio(at + 40))).toBeLessThan(0.005);
      }
    }
  });

  test("one reading that is wrong is not believed", () => {
    let pairing: Pairing = [];
    for (let at = 0; at < 120; at += 1) {
      pairing = paired(pairing, { steady: at, audio: at === 110 ? at + 0.2 : at });
    }
    expect(Math.abs(audioAt(pairing, 150) - 150)).toBeLessThan(0.01);
  });

  test("what was read more than three minutes ago is forgotten", () => {
    let pairing: Pairing = [];
    for (let at = 0; at < 600; at += 1) pairing = paired(pairing, { steady: at, audio: at });
    expect(pairing[0]?.steady).toBeGreaterThan(600 - 182);
    expect(pairing.at(-1)?.steady).toBe(599);
  });
});

/** What is known once readings came, one a second, each so many seconds behind the first. */
const knownFrom = (behind: readonly number[]): Known =>
  behind.reduce<Known>(
    (known, by, at) => knownWith(known, { steady: at, audio: at - by }),
    nothingKnown,
  );
const behindIn = ({ pairing }: Known): number => 1000 - audioAt(pairing, 1000);

describe("A reading that shows the audio clock behind", () => {
  test("is believed when the next one says the same, and until then only doubted", () => {
    const once = knownFrom([0, 0, 0, 0.01]);
    expect(once.doubted).not.toBeNull();
    expect(behindIn(once)).toBeCloseTo(0, 9);
    const twice = knownFrom([0, 0, 0, 0.01, 0.01]);
    expect(twice.doubted).toBeNull();
    expect(behindIn(twice)).toBeCloseTo(0.01, 9);
  });

  test("is forgotten when the next one does not, as when one block was mixed late", () => {
    const known = knownFrom([0, 0, 0, 0.03, 0]);
    expect(known.doubted).toBeNull();
    expect(behindIn(known)).toBeCloseTo(0, 9);
  });

  test("is taken for what both show, where each shows something else besides", () => {
    expect(behindIn(knownFrom([0, 0, 0.01, 0.025]))).toBeCloseTo(0.01, 9);
    expect(behindIn(knownFrom([0, 0, 0.025, 0.01]))).toBeCloseTo(0.01, 9);
  });

  test("at the very beginning is put right by the first that shows less", () => {
    expect(behindIn(knownFrom([0.013, 0]))).toBeCloseTo(0, 9);
  });

  test("by no more than readings scatter is evened out with the others, and doubted by nobody", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 0.0015, noNaN: true }), { minLength: 2, maxLength: 20 }),
        (behind) => {
          const known = knownFrom(behind);
          expect(known.doubted).toBeNull();
          expect(known.pairing).toHaveLength(behind.length);
          expect(behindIn(known)).toBeLessThanOrEqual(Math.max(...behind) + 1e-9);
        },
      ),
    );
  });
});
