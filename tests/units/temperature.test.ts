import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  celsiusFromFahrenheit,
  fahrenheitFromCelsius,
  readTypedTemperature,
  toCelsius,
  writeTemperature,
} from "../../src/units/temperature.ts";

describe("degrees", () => {
  test("68 °F is 20 °C exactly (by definition)", () => {
    expect(toCelsius({ f: 68 })).toBe(20);
    expect(toCelsius({ c: 20 })).toBe(20);
  });

  test.each([
    [65, 18.333],
    [70, 21.111],
    [75, 23.889],
    [100, 37.778],
  ])("%d °F is %d °C (by definition; to half of the last digit)", (fahrenheit, celsius) => {
    expect(Math.abs(celsiusFromFahrenheit(fahrenheit) - celsius)).toBeLessThanOrEqual(0.0005);
  });

  test("there and back again changes nothing (1e-9 °F)", () => {
    fc.assert(
      fc.property(fc.double({ min: -50, max: 300, noNaN: true }), (fahrenheit) => {
        const back = fahrenheitFromCelsius(celsiusFromFahrenheit(fahrenheit));
        expect(Math.abs(back - fahrenheit)).toBeLessThan(1e-9);
      }),
    );
  });
});

describe("a temperature typed in", () => {
  test.each([
    ["68 °F", { f: 68 }, "68 °F"],
    ["68f", { f: 68 }, "68 °F"],
    ["20C", { c: 20 }, "20 °C"],
    ["20,5 °C", { c: 20.5 }, "20.5 °C"],
    ["20½ °C", { c: 20.5 }, "20.5 °C"],
    ["20 ℃", { c: 20 }, "20 °C"],
    ["２０℃", { c: 20 }, "20 °C"],
    ["-5 °C", { c: -5 }, "−5 °C"],
    ["−5 degrees C", { c: -5 }, "−5 °C"],
    ["38 Celsius", { c: 38 }, "38 °C"],
  ])("%j keeps the unit typed", (typed, temperature, written) => {
    expect(readTypedTemperature(typed)).toEqual({ kind: "read", temperature });
    expect(writeTemperature(temperature)).toBe(written);
  });

  test.each(["", "20", "20 K", "warm", "20 C 5", "--5 C", "1,000 F"])("%j is refused", (typed) => {
    const reading = readTypedTemperature(typed);
    expect(reading).toHaveProperty("may", expect.stringContaining("with its unit"));
  });

  test("digits of another script are refused by name", () => {
    expect(readTypedTemperature("٢٠ °C")).toHaveProperty("may", expect.stringMatching(/0 to 9$/));
  });

  test("what is written is read back as the same temperature", () => {
    const hundredths = fc.integer({ min: -1000, max: 11_000 }).map((n) => n / 100);
    const temperature = fc.oneof(
      hundredths.map((c) => ({ c })),
      hundredths.map((f) => ({ f })),
    );
    fc.assert(
      fc.property(temperature, (it) => {
        expect(readTypedTemperature(writeTemperature(it))).toEqual({
          kind: "read",
          temperature: it,
        });
      }),
    );
  });
});
