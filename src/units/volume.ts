// Volumes as typed in, kept in the unit typed, and ml out for the formulas.
// Alone, so that a recipe in ounces is read back in ounces.
import { numberFrom, plainText, type Reading, typedNumber } from "./typed-text.ts";
import { type WriteNumber, writeNumber } from "./written-number.ts";

export type Volume = { readonly ml: number } | { readonly flOz: number };

export type VolumeReading = Reading<{ readonly volume: Volume }>;

/** ml in a US fluid ounce: 1/128 of a gallon of 231 cubic inches, exactly. */
export const mlPerFlOz = 29.5735295625;

/** ml, whatever was typed. */
export function toMillilitres(volume: Volume): number {
  return "ml" in volume ? volume.ml : volume.flOz * mlPerFlOz;
}

/** So many ml, in the unit of another volume. */
export function inUnitOf(volume: Volume, millilitres: number): Volume {
  return "ml" in volume ? { ml: millilitres } : { flOz: millilitres / mlPerFlOz };
}

export const typedVolumeMay =
  'a volume with its unit, such as "600 ml", "0.6 l" or "20 fl oz" (US)';

const withUnit = new RegExp(
  `^(${typedNumber}) ?(?:(?:m ?l|millilit(?:re|er)s?|cc)|(cl)|(l|lit(?:re|er)s?)|` +
    `((?:us )?(?:fl\\.? ?oz\\.?|oz\\.?|(?:fluid )?ounces?)))$`,
);

/** Reads `"600 ml"`, `"0,6 l"`, `"20 fl oz"`; ounces are US fluid ounces. */
export function readTypedVolume(typed: string): VolumeReading {
  const plain = plainText(typed, typedVolumeMay);
  if (plain.kind === "unread") return plain;
  const [, digits = "", centilitres, litres, ounces] = withUnit.exec(plain.text) ?? [];
  const value = numberFrom(digits);
  if (!Number.isFinite(value)) return { kind: "unread", may: typedVolumeMay };
  if (ounces) return { kind: "read", volume: { flOz: value } };
  return { kind: "read", volume: { ml: value * (litres ? 1000 : centilitres ? 10 : 1) } };
}

/** `"600 ml"`, `"20.5 fl oz"`: the unit typed, at most one decimal (two of an ounce). */
export function writeVolume(volume: Volume, number: WriteNumber = writeNumber): string {
  return "ml" in volume ? `${number(volume.ml, 1)} ml` : `${number(volume.flOz, 2)} fl oz`;
}

/** So many ml, written in the unit of another volume. */
export function writeMillilitres(
  like: Volume,
  millilitres: number,
  number: WriteNumber = writeNumber,
): string {
  return writeVolume(inUnitOf(like, millilitres), number);
}
