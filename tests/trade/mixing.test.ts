import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { filmsServed, reuseFactor, stockSuffices } from "../../src/trade/capacity.ts";
import { mixOf, totalHolding } from "../../src/trade/dilution.ts";
import { usualMethodFactor } from "../../src/trade/method.ts";

const parts = fc.record({
  stock: fc.double({ min: 0.01, max: 10_000, noNaN: true }),
  water: fc.double({ min: 0, max: 10_000, noNaN: true }),
});
const total = fc.double({ min: 1, max: 100_000, noNaN: true });

describe("a dilution", () => {
  test("32 oz of stock and 64 oz of water make 96 oz (Practical Photography §§505–506)", () => {
    expect(mixOf(96, { stock: 1, water: 2 })).toEqual({ stock: 32, water: 64, total: 96 });
  });

  test("300 ml of stock and 300 ml of water make 600 ml of 1+1 (practice)", () => {
    expect(mixOf(600, { stock: 1, water: 1 })).toEqual({ stock: 300, water: 300, total: 600 });
  });

  test("makes nothing and loses nothing: stock and water are the total (1e-9)", () => {
    fc.assert(
      fc.property(total, parts, (volume, dilution) => {
        const { stock, water } = mixOf(volume, dilution);
        expect((stock + water) / volume).toBeCloseTo(1, 9);
        expect(water).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test("is the same whichever multiple its parts are written in: 2+6 is 1+3 (1e-9)", () => {
    fc.assert(
      fc.property(
        total,
        parts,
        fc.integer({ min: 2, max: 9 }),
        (volume, { stock, water }, times) => {
          const multiple = mixOf(volume, { stock: stock * times, water: water * times });
          expect(multiple.stock / mixOf(volume, { stock, water }).stock).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  test("turned round, gives the total that holds so much stock (1e-9)", () => {
    fc.assert(
      fc.property(total, parts, (volume, dilution) => {
        expect(totalHolding(mixOf(volume, dilution).stock, dilution) / volume).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe("capacity", () => {
  test("20 films of 80 sq in per litre of working fixer is 50 ml a film (The Darkroom Cookbook, 3rd ed., p. 108)", () => {
    expect(filmsServed(1000, 50)).toBe(20);
    expect(stockSuffices(1000, 50, 20)).toBe(true);
    expect(stockSuffices(999, 50, 20)).toBe(false);
  });

  test("a sum that is enough on paper is enough in binary: 0.1 + 0.2 ml for three films of 0.1", () => {
    expect(stockSuffices(0.3, 0.1, 3)).toBe(true);
    expect(filmsServed(0.3, 0.1)).toBe(3);
  });

  test("less than a film is counted in hundredths, for sheets", () => {
    expect(filmsServed(30, 100)).toBe(0.3);
  });

  test("each film before adds its fraction of the time", () => {
    expect(reuseFactor(4, 0.05)).toBeCloseTo(1.2, 12);
    expect(reuseFactor(0, 0.05)).toBe(1);
  });
});

test("memory, plausibility (ILFORD data sheets): rotary takes up to 15 % less, the other methods the leaflet's time", () => {
  expect(usualMethodFactor("rotary")).toBe(0.85);
  expect(usualMethodFactor("inversion")).toBe(1);
  expect(usualMethodFactor("tray")).toBe(1);
});
