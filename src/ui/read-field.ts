// One field's text in, its value for the worksheet out, with how it was understood where that is not
// plain from the text. Alone because here a number without its unit is lent one, and says so.
import { readTypedTime, writeClockTime } from "../units/clock-time.ts";
import { readFilmSize } from "../units/film-size.ts";
import { readDilution, writeDilution } from "../units/parts.ts";
import { readTypedTemperature } from "../units/temperature.ts";
import { numberFrom, plainText, type Reading } from "../units/typed-text.ts";
import { readTypedVolume } from "../units/volume.ts";
import type { FieldKind } from "./fields.ts";
import { words, writing } from "./language.ts";

/** `meaning` is the value as this program writes it; `lent` says that its unit was not typed. */
export type FieldReading = Reading<{
  readonly value: unknown;
  readonly meaning: string;
  readonly lent: boolean;
}>;

/** What a number typed alone can be lent: the suffix that its reader takes. */
export const units = {
  temperature: { c: "°C", f: "°F" },
  volume: { ml: "ml", flOz: "fl oz" },
} as const;

/** The unit that a text was written with (`"c"`, `"flOz"`), or null: none, or not a measure at all. */
export function unitTyped(kind: keyof typeof units, typed: string): string | null {
  const reading = kind === "temperature" ? readTypedTemperature(typed) : readTypedVolume(typed);
  if (reading.kind === "unread") return null;
  const value: object = "temperature" in reading ? reading.temperature : reading.volume;
  return Object.keys(value)[0] ?? null;
}

/** @param lent unit for a number typed alone, as `unitTyped` names it; used by the two measures only. */
export function readField(kind: FieldKind, typed: string, lent: string): FieldReading {
  switch (kind) {
    case "text":
    case "choice":
    case "use":
      return read(typed.trim(), typed.trim());
    case "temperature": {
      const { reading, bare } = withUnitLent(readTypedTemperature, typed, unitSign(kind, lent));
      if (reading.kind === "unread") return reading;
      return read(reading.temperature, writing.value.temperature(reading.temperature), bare);
    }
    case "volume": {
      const { reading, bare } = withUnitLent(readTypedVolume, typed, unitSign(kind, lent));
      if (reading.kind === "unread") return reading;
      return read(reading.volume, writing.value.volume(reading.volume), bare);
    }
    case "time": {
      const reading = readTypedTime(typed);
      if (reading.kind === "unread") return reading;
      const time = writeClockTime(reading.seconds);
      return read(time, time);
    }
    case "seconds":
      return readSpan(typed, 1, "s", words.value.faults.seconds);
    case "minutes":
      return readSpan(typed, 60, "min", words.value.faults.minutes);
    case "number":
      return readNumber(typed, words.value.faults.number);
    case "signed":
      return readSigned(typed);
    case "numbers":
      return readNumbers(typed);
    case "number-choice":
      return read(Number(typed), typed.trim());
    case "per-cent": {
      const reading = readNumber(typed.replace(/ ?%$/, ""), words.value.faults.perCent);
      if (reading.kind === "unread") return reading;
      return read(Number(reading.value) / 100, `${reading.meaning} %`);
    }
    case "counts": {
      const counts = typed.split(/[\s,;+]+/).filter((part) => part !== "");
      return counts.every((part) => /^\d{1,3}$/.test(part))
        ? read(counts.map(Number), counts.join(", "))
        : { kind: "unread", may: words.value.faults.counts };
    }
    case "size": {
      const reading = readFilmSize(typed);
      return reading.kind === "read" ? read(reading.size, reading.size) : reading;
    }
    case "dilution": {
      const reading = readDilution(typed);
      if (reading.kind === "unread") return reading;
      const meaning = writing.value.dilution(reading.dilution, words.value.answers.stock);
      return read(writeDilution(reading.dilution), meaning);
    }
  }
}

function read(value: unknown, meaning: string, lent = false): FieldReading {
  return { kind: "read", value, meaning, lent };
}

function unitSign(kind: keyof typeof units, lent: string): string {
  const signs: { readonly [unit: string]: string } = units[kind];
  return signs[lent] ?? Object.values(signs)[0] ?? "";
}

/** Reads the text as it stands; failing that, with the unit behind it. */
function withUnitLent<T extends Reading<object>>(
  reader: (typed: string) => T,
  typed: string,
  unit: string,
): { readonly reading: T; readonly bare: boolean } {
  const asTyped = reader(typed);
  if (asTyped.kind === "read") return { reading: asTyped, bare: false };
  const lent = reader(`${typed} ${unit}`);
  // The refusal to show is the one about the text as typed.
  return lent.kind === "read" ? { reading: lent, bare: true } : { reading: asTyped, bare: false };
}

/** A number alone is in the field's own unit; anything else is read as a time. */
function readSpan(typed: string, unit: number, sign: string, may: string): FieldReading {
  const own = unit === 1 ? / ?s$/i : / ?min$/i;
  const alone = readNumber(typed.trim().replace(own, ""), may);
  if (alone.kind === "read") return read(alone.value, `${alone.meaning} ${sign}`);
  const time = readTypedTime(typed);
  if (time.kind === "unread") return { kind: "unread", may };
  const value = time.seconds / unit;
  return read(value, `${writing.value.number(value, 4)} ${sign}`);
}

/** A logarithm may lie below 0. */
function readSigned(typed: string): FieldReading {
  const below = /^\s*[-−–]/.test(typed);
  const size = readNumber(typed.replace(/^\s*[-−–+]/, ""), words.value.faults.number);
  if (size.kind === "unread" || !below || size.value === 0) return size;
  return read(-Number(size.value), `−${size.meaning}`);
}

/** Parted by spaces or semicolons, or by commas where those are not decimal ones. */
function readNumbers(typed: string): FieldReading {
  const parting = typed.includes(".") ? /[\s;,]+/ : /[\s;]+|,(?=\s)/;
  const readings = typed
    .split(parting)
    .filter((part) => part !== "")
    .map((part) => readNumber(part, words.value.faults.numbers));
  const fault = readings.find((it) => it.kind === "unread");
  if (fault) return fault;
  const all = readings.flatMap((it) => (it.kind === "read" ? [it] : []));
  return read(
    all.map(({ value }) => value),
    all.map(({ meaning }) => meaning).join(" "),
  );
}

function readNumber(typed: string, may: string): FieldReading {
  const plain = plainText(typed, may);
  if (plain.kind === "unread") return plain;
  const value = numberFrom(plain.text);
  return Number.isFinite(value)
    ? read(value, writing.value.number(value, 4))
    : { kind: "unread", may };
}
