// One grammar for fingers, keys, knocks and buttons: every order of contacts, by a clock that is moved by hand.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { onlyWhileHeard } from "../../src/live/presser.ts";
import { presserByHand } from "./presser-by-hand.ts";

const short = fc.double({ min: 0.005, max: 0.2, noNaN: true });
const source = fc.constantFrom("finger", "key Enter", "mouse");

describe("Presses in a row", () => {
  test("are once, twice and three times, by whatever they come; a fourth is answered and means no more", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(short, source), { minLength: 1, maxLength: 5 }),
        fc.double({ min: 0.09, max: 0.2, noNaN: true }),
        (presses, between) => {
          const here = presserByHand();
          for (const [seconds, id] of presses) {
            here.touch(seconds, id);
            here.pass(between);
          }
          expect(here.kinds()).toEqual([1, 2, 3].slice(0, presses.length));
          expect(here.felt).toHaveLength(presses.length);
        },
      ),
    );
  });

  test("further apart than 0.45 s begin anew", () => {
    const here = presserByHand();
    here.touch(0.1);
    here.pass(0.36);
    here.touch(0.1);
    here.pass(0.34);
    here.touch(0.1);
    expect(here.kinds()).toEqual([1, 1, 2]);
  });

  test("of something that knows no letting go are presses all the same", () => {
    const here = presserByHand();
    for (let i = 0; i < 3; i += 1) {
      here.presser.tap(here.now());
      here.pass(0.3);
    }
    expect(here.kinds()).toEqual([1, 2, 3]);
    expect(here.felt).toHaveLength(3);
  });
});

describe("A press that is held", () => {
  test("is felt within 60 ms of going down, and means one thing, 0.75 s after it, once", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.76, max: 30, noNaN: true }), source, (seconds, id) => {
        const here = presserByHand();
        here.touch(seconds, id);
        here.pass(2);
        expect(here.kinds()).toEqual(["hold"]);
        expect(here.meant[0]?.at).toBe(100);
        expect(here.felt).toHaveLength(1);
        expect((here.felt[0] ?? 0) - 100).toBeLessThanOrEqual(0.06);
      }),
    );
  });

  test("is no second press of the one before it, nor the first of the one after", () => {
    const here = presserByHand();
    here.touch(0.1);
    here.pass(0.1);
    here.touch(1);
    here.pass(0.1);
    here.touch(0.1);
    expect(here.kinds()).toEqual([1, "hold", 1]);
  });

  test("is told by its own times, though the page hears of both ends of it late", () => {
    const here = presserByHand();
    here.presser.down("finger", here.now());
    here.pass(1, true);
    here.pass(0);
    here.presser.up("finger", 100.2);
    here.pass(1);
    expect(here.kinds()).toEqual([1]);
    const other = presserByHand();
    other.presser.down("finger", other.now());
    other.pass(2, true);
    other.presser.up("finger", 101.2);
    expect(other.kinds()).toEqual(["hold"]);
  });
});

describe("What is no press", () => {
  test("does nothing: several fingers at once, until all are up", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 5 }),
        fc.double({ min: 0, max: 0.7, noNaN: true }),
        fc.double({ min: 0.01, max: 3, noNaN: true }),
        (fingers, apart, held) => {
          const here = presserByHand();
          for (let i = 0; i < fingers; i += 1) {
            here.presser.down(`${i}`, here.now());
            here.pass(i === 0 ? apart : 0.01);
          }
          here.pass(held);
          for (let i = 0; i < fingers; i += 1) {
            here.presser.up(`${i}`, here.now());
            here.pass(0.01);
          }
          here.pass(2);
          expect(here.kinds()).toEqual([]);
          here.touch(0.1);
          expect(here.kinds()).toEqual([1]);
        },
      ),
    );
  });

  test("does nothing: a contact that is called off, and a bounce within 80 ms", () => {
    const here = presserByHand();
    here.presser.down("finger", here.now());
    here.pass(0.3);
    here.presser.cancel("finger", here.now());
    here.pass(2);
    expect(here.kinds()).toEqual([]);
    here.touch(0.1);
    for (let bounce = 0; bounce < 4; bounce += 1) {
      here.pass(0.04);
      here.touch(0.02, bounce % 2 === 0 ? "finger" : "other");
    }
    here.pass(1);
    expect(here.kinds()).toEqual([1]);
    expect(here.felt).toHaveLength(2);
  });

  test("does nothing: a knock that is the sound of a finger on the screen, however short, late or long that is", () => {
    for (const held of [0.03, 0.2, 0.9]) {
      for (const off of [-0.02, 0, 0.01]) {
        const here = presserByHand();
        const down = here.now();
        here.presser.down("finger", down);
        here.pass(0.056);
        if (held > 0.056) {
          here.presser.knock(down + off);
          here.pass(held - 0.056);
        }
        here.presser.up("finger", down + held);
        if (held < 0.056) here.presser.knock(down + off);
        // It leaves as loudly as it came.
        here.pass(0.06);
        here.presser.knock(down + held + off);
        expect(here.kinds(), `${held} ${off}`).toEqual([held > 0.75 ? "hold" : 1]);
        expect(here.felt).toHaveLength(1);
        here.pass(0.5);
        here.presser.knock(here.now() - 0.056);
        expect(here.kinds(), `${held} ${off}`).toEqual([held > 0.75 ? "hold" : 1, 1]);
      }
    }
  });

  test("does nothing: a finger of which the page hears only after its knock", () => {
    const here = presserByHand();
    const at = here.now();
    here.pass(0.06);
    here.presser.knock(at);
    here.presser.down("finger", at + 0.01);
    here.presser.up("finger", at + 0.05);
    here.pass(1);
    expect(here.kinds()).toEqual([1]);
  });

  test("asks for sound where nothing is heard: a headset's button, a knock", () => {
    const here = presserByHand();
    let [heard, woken] = [false, 0];
    const presser = onlyWhileHeard(
      here.presser,
      () => heard,
      () => {
        woken += 1;
      },
    );
    presser.tap(here.now());
    here.pass(1);
    presser.knock(here.now());
    expect([here.kinds(), here.felt, woken]).toEqual([[], [], 2]);
    heard = true;
    presser.tap(here.now());
    here.pass(1);
    presser.knock(here.now());
    expect([here.kinds(), woken]).toEqual([[1, 1], 2]);
  });

  test("locks nobody out: a finger whose leaving was missed is forgotten after 10 s", () => {
    for (const held of [0.02, 0.3, 1, 5]) {
      const here = presserByHand();
      here.presser.down("lost", here.now());
      here.pass(held);
      here.presser.down("other", here.now());
      here.pass(0.2);
      here.presser.up("other", here.now());
      here.pass(11);
      const before = here.meant.length;
      here.touch(0.1, "third");
      here.pass(0.3);
      expect(here.kinds().slice(before)).toEqual([1]);
    }
  });
});

test("Whatever the order of contacts: no gesture without an answer of its own, and none from thin air", () => {
  const contact = fc.record({
    kind: fc.constantFrom("down", "up", "cancel", "tap"),
    id: fc.constantFrom("a", "b", "c"),
    wait: fc.oneof(short, fc.double({ min: 0, max: 12, noNaN: true })),
  });
  fc.assert(
    fc.property(fc.array(contact, { maxLength: 40 }), (contacts) => {
      const here = presserByHand();
      const downs: number[] = [];
      for (const { kind, id, wait } of contacts) {
        if (kind === "down" || kind === "tap") downs.push(here.now());
        if (kind === "tap") here.presser.tap(here.now());
        else here.presser[kind](id, here.now());
        here.pass(wait);
      }
      here.pass(20);
      here.meant.forEach(({ at }, i) => {
        expect(downs).toContain(at);
        expect(here.answered[i]).toBeGreaterThanOrEqual(i + 1);
      });
      for (const felt of here.felt) {
        expect(downs.some((down) => felt >= down && felt - down <= 0.06)).toBe(true);
      }
    }),
    { numRuns: 500 },
  );
});
