// A language in, all that writes numbers out, with that language's decimal mark.
// Alone, so that one value goes through the plan and the screens, and no line mixes two ways of writing.
import { type Language, usualLanguage } from "./language.ts";
import { type Dilution, writeDilution } from "./parts.ts";
import {
  degreesOf,
  type Temperature,
  writeDegrees,
  writeTemperature,
  writeTenths,
} from "./temperature.ts";
import { type Volume, writeMillilitres, writeVolume } from "./volume.ts";
import { type WriteNumber, writeNumber } from "./written-number.ts";

/** Units, minus sign and clock times are the same in every language. */
export interface Writing {
  /** At most so many decimals, 2 where none are named: `"9.5"` or `"9,5"`. */
  readonly number: WriteNumber;
  /** Every digit that was typed. */
  readonly typed: (value: number) => string;
  readonly temperature: (temperature: Temperature) => string;
  /** A difference of so many °C in the unit of a temperature. */
  readonly degrees: (like: Temperature, celsius: number) => string;
  /** So many °C in the unit of a temperature, to a tenth. */
  readonly tenths: (like: Temperature, celsius: number) => string;
  /** The bare number of that. */
  readonly degreesOf: (like: Temperature, celsius: number) => string;
  readonly volume: (volume: Volume) => string;
  /** So many ml in the unit of a volume. */
  readonly millilitres: (like: Volume, millilitres: number) => string;
  /** `"1+3"`, or the word for stock used as it is. */
  readonly dilution: (parts: Dilution, undiluted: string) => string;
  /** Figures one after another: by semicolons where the comma is the decimal mark. */
  readonly list: (items: readonly string[]) => string;
}

/** A decimal comma in all languages but English. */
export function writingIn(language: Language): Writing {
  const comma = language !== usualLanguage;
  const marked = (digits: string) => (comma ? digits.replace(".", ",") : digits);
  const number: WriteNumber = (value, decimals) => marked(writeNumber(value, decimals));
  return {
    number,
    typed: (value) => marked(String(value)),
    temperature: (temperature) => writeTemperature(temperature, number),
    degrees: (like, celsius) => writeDegrees(like, celsius, number),
    tenths: (like, celsius) => writeTenths(like, celsius, number),
    degreesOf: (like, celsius) => degreesOf(like, celsius, number),
    volume: (volume) => writeVolume(volume, number),
    millilitres: (like, millilitres) => writeMillilitres(like, millilitres, number),
    dilution: (parts, undiluted) => writeDilution(parts, undiluted, number),
    list: (items) => items.join(comma ? "; " : ", "),
  };
}
