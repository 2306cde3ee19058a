// Temperatures as typed in, kept in the unit typed, and °C out for the formulas.
// Alone, because 38 °C and 100 °F are not the same bath: nothing is converted before it must be.
import { numberFrom, plainText, type Reading, typedNumber } from "./typed-text.ts";
import { type WriteNumber, writeNumber } from "./written-number.ts";

export type Temperature = { readonly c: number } | { readonly f: number };

export type TemperatureReading = Reading<{ readonly temperature: Temperature }>;

/** °F to °C, by definition: 68 °F is 20 °C exactly. */
export function celsiusFromFahrenheit(fahrenheit: number): number {
  return ((fahrenheit - 32) * 5) / 9;
}

/** °C to °F, by definition. */
export function fahrenheitFromCelsius(celsius: number): number {
  return (celsius * 9) / 5 + 32;
}

/** °C, whatever was typed. */
export function toCelsius(temperature: Temperature): number {
  return "c" in temperature ? temperature.c : celsiusFromFahrenheit(temperature.f);
}

export const typedTemperatureMay =
  'a temperature with its unit, such as "20 °C", "20.5 C" or "68 °F"';

const withUnit = new RegExp(
  `^(-?) ?(${typedNumber}) ?(?:°|degrees?|deg)? ?([cf])(?:elsius|ahrenheit)?$`,
);

/** Reads `"68 °F"`, `"20C"`, `"20,5 °C"`. A number without its unit is refused. */
export function readTypedTemperature(typed: string): TemperatureReading {
  const plain = plainText(typed, typedTemperatureMay);
  if (plain.kind === "unread") return plain;
  const [, sign, digits = "", unit] = withUnit.exec(plain.text) ?? [];
  const size = numberFrom(digits);
  if (!Number.isFinite(size)) return { kind: "unread", may: typedTemperatureMay };
  const value = sign === "-" && size > 0 ? -size : size;
  return { kind: "read", temperature: unit === "f" ? { f: value } : { c: value } };
}

/** `"68 °F"`, `"20.5 °C"`: the unit typed, at most two decimals. */
export function writeTemperature(
  temperature: Temperature,
  number: WriteNumber = writeNumber,
): string {
  return "c" in temperature ? `${number(temperature.c)} °C` : `${number(temperature.f)} °F`;
}

/** So many °C as a temperature in the unit of another. */
export function inDegreesOf(like: Temperature, celsius: number): Temperature {
  return "c" in like ? { c: celsius } : { f: fahrenheitFromCelsius(celsius) };
}

/** A difference of so many °C, written in the unit of a temperature: `"1.5 °C"`, `"2.7 °F"`. */
export function writeDegrees(
  like: Temperature,
  celsius: number,
  number: WriteNumber = writeNumber,
): string {
  return "c" in like ? `${number(celsius)} °C` : `${number((celsius * 9) / 5)} °F`;
}

/** So many °C in the unit of another temperature, to a tenth: what a sum gives, a thermometer cannot. */
export function writeTenths(
  like: Temperature,
  celsius: number,
  number: WriteNumber = writeNumber,
): string {
  const own = inDegreesOf(like, celsius);
  return "c" in own ? `${number(own.c, 1)} °C` : `${number(own.f, 1)} °F`;
}

/** The bare number of that, for use in a sum whose unit is said elsewhere. */
export function degreesOf(
  like: Temperature,
  celsius: number,
  number: WriteNumber = writeNumber,
): string {
  return writeTenths(like, celsius, number).slice(0, -3);
}
