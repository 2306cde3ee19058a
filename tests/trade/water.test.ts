import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { mixedCelsius, waterDensity } from "../../src/trade/water.ts";

describe("The density of water", () => {
  // Derived from the formula of Tanaka et al., Metrologia 38 (2001) 301; to the 0.0001 kg/m³ given.
  test.each([
    [20, 998.2067],
    [24, 997.2988],
    [38, 992.9654],
  ])("at %d °C is %d kg/m³", (celsius, density) => {
    expect(waterDensity(celsius)).toBeCloseTo(density, 4);
  });

  test.each([
    [50, 988.04],
    [60, 983.2],
    [80, 971.8],
  ])("memory, plausibility (Kell's table): at %d °C is %d kg/m³ (0.05)", (celsius, density) => {
    expect(Math.abs((waterDensity(celsius) ?? 0) - density)).toBeLessThan(0.05);
  });

  test("does not jump where the two formulas meet, at 40 °C (0.02 kg/m³)", () => {
    const [below, above] = [40, 40 + 1e-9].map((at) => waterDensity(at) ?? 0) as [number, number];
    expect(Math.abs(below - above)).toBeLessThan(0.02);
  });

  test("gives no number outside 0 to 100 °C", () => {
    expect([-0.1, 100.1, Number.NaN].map(waterDensity)).toEqual([null, null, null]);
  });
});

describe("Waters poured together", () => {
  test("270 ml at 25 °C and 100 ml at 95 °C make 43.92 °C (a tutorial's worked example; to 0.005)", () => {
    const mixed = mixedCelsius([
      { amount: 270, celsius: 25 },
      { amount: 100, celsius: 95 },
    ]);
    expect(mixed).toBeCloseTo(43.92, 2);
  });

  test("are never colder than the coldest nor warmer than the warmest", () => {
    const part = fc.record({
      amount: fc.double({ min: 0.1, max: 5000, noNaN: true }),
      celsius: fc.double({ min: 0, max: 100, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 5 }), (parts) => {
        const mixed = mixedCelsius(parts) ?? Number.NaN;
        const degrees = parts.map(({ celsius }) => celsius);
        expect(mixed).toBeGreaterThanOrEqual(Math.min(...degrees) - 1e-9);
        expect(mixed).toBeLessThanOrEqual(Math.max(...degrees) + 1e-9);
      }),
    );
    expect(mixedCelsius([])).toBeNull();
  });
});
