import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { filmsLeft, replenisherDue } from "../../src/trade/capacity.ts";
import { fixingSeconds, isSpent, slowing } from "../../src/trade/clearing.ts";
import {
  carriedResidue,
  changesFor,
  leftByChanges,
  leftByFlow,
  minutesFor,
  residueLimit,
  usualThiosulfate,
} from "../../src/trade/washing.ts";

describe("clearing time", () => {
  test("twice it is the time to fix (NAVEDTRA 14209); three times by the rule of other books (a course page)", () => {
    expect(fixingSeconds(75, 2)).toBe(150);
    expect(fixingSeconds(75, 3)).toBe(225);
  });

  test("a fixer is spent when it has doubled (NAVEDTRA 14209)", () => {
    expect(isSpent(90, 45)).toBe(true);
    expect(isSpent(89, 45)).toBe(false);
    expect(slowing(60, 40)).toBe(1.5);
  });
});

describe("capacity", () => {
  test("a litre of rapid fixer 1+4 serves 20 films of 80 sq in acid, 25 alkaline (The Darkroom Cookbook, 3rd ed., p. 108)", () => {
    expect(filmsLeft(1000, 20, 0)).toBe(20);
    expect(filmsLeft(600, 25, 12)).toBe(3);
    expect(filmsLeft(600, 20, 30)).toBe(0);
  });

  test("replenisher is due by the film", () => expect(replenisherDue(22.5, 4)).toBe(90));
});

describe("washing by exchange", () => {
  test("10 ml kept back of 500 ml fills leave (10 / 510)³ = 7.54e-6 after three changes (derived; 0.01e-6)", () => {
    expect(Math.abs(leftByChanges(10, 500, 3) - 7.54e-6)).toBeLessThan(0.01e-6);
  });

  test("the limit is 0.014 g/m², which is 1.4 µg/cm² (Nishimura, Conservation DistList 1997/1157, citing ANSI IT9.1-1996)", () => {
    expect((residueLimit * 1e6) / 1e4).toBeCloseTo(1.4, 9);
  });

  test("240 g of crystals a litre, 112.1 of 248.2 by weight thiosulfate, is 108 g/l (practice; 0.5)", () => {
    expect(Math.abs((240 * 112.1) / 248.2 - usualThiosulfate)).toBeLessThan(0.5);
  });

  test("10 ml at 108 g/l on 80 sq in is 20.9 g/m² before the first change (1.08 g over 516.128 cm²; 0.1)", () => {
    const carried = carriedResidue({ kept: 10, thiosulfate: 108, area: 516.128 });
    expect(Math.abs(carried - 20.9)).toBeLessThan(0.1);
  });

  const volumes = fc.record({
    kept: fc.double({ min: 0.5, max: 100, noNaN: true }),
    fill: fc.double({ min: 100, max: 3000, noNaN: true }),
    carried: fc.double({ min: 0.001, max: 1000, noNaN: true }),
  });

  test("the number of changes named is enough, and one fewer is not", () => {
    fc.assert(
      fc.property(volumes, ({ kept, fill, carried }) => {
        const changes = changesFor(kept, fill, carried, residueLimit);
        const left = (count: number) => carried * leftByChanges(kept, fill, count);
        expect(left(changes)).toBeLessThanOrEqual(residueLimit * (1 + 1e-6));
        if (changes > 0) expect(left(changes - 1)).toBeGreaterThan(residueLimit * (1 - 1e-6));
      }),
    );
  });

  test("a change counted one by one, by what is poured away, comes to the same (1e-12)", () => {
    fc.assert(
      fc.property(volumes, fc.integer({ min: 0, max: 12 }), ({ kept, fill }, changes) => {
        let amount = 1;
        for (let i = 0; i < changes; i += 1) amount -= (amount / (kept + fill)) * fill;
        expect(Math.abs(amount - leftByChanges(kept, fill, changes))).toBeLessThan(1e-12);
      }),
    );
  });

  test("running water is what ever more, ever smaller changes come to (1e-3 of it)", () => {
    const [kept, fill, flow, minutes] = [20, 480, 1000, 3];
    const steps = 200_000;
    let left = leftByChanges(kept, fill, 1);
    const volume = (flow * minutes) / steps;
    for (let i = 0; i < steps; i += 1) left *= (kept + fill) / (kept + fill + volume);
    expect(left / leftByFlow(kept, fill, flow, minutes)).toBeCloseTo(1, 3);
  });

  test("the minutes named bring it to the limit (1e-9), and none are where the first fill does", () => {
    fc.assert(
      fc.property(
        volumes,
        fc.double({ min: 50, max: 5000, noNaN: true }),
        ({ kept, fill, carried }, flow) => {
          const minutes = minutesFor(kept, fill, flow, carried, residueLimit);
          const left = carried * leftByFlow(kept, fill, flow, minutes);
          if (minutes > 0) expect(left / residueLimit).toBeCloseTo(1, 9);
          else expect(left).toBeLessThanOrEqual(residueLimit);
        },
      ),
    );
  });

  test("30 minutes of running water, emptied every 3 (US Army SS0509), is far under the limit", () => {
    const carried = carriedResidue({ kept: 20, thiosulfate: usualThiosulfate, area: 1032 });
    let left = carried;
    for (let i = 0; i < 10; i += 1) left *= leftByFlow(20, 480, 1000, 3);
    expect(left).toBeLessThan(residueLimit / 1000);
  });
});
