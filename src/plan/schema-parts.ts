// The kinds of field a worksheet is made of, each with the words for what it may hold.
// Alone, so that a field's bounds and its words are one thing: the words go to faults and JSON Schema.
import {
  number as anyNumber,
  array,
  check,
  description,
  type GenericSchema,
  integer,
  maxLength,
  maxValue,
  minLength,
  minValue,
  type ObjectEntries,
  picklist,
  pipe,
  regex,
  strictObject,
  string,
  union,
} from "valibot";
import { clockTimePattern, readClockTime } from "../units/clock-time.ts";
import { filled } from "../units/may.ts";
import { fahrenheitFromCelsius } from "../units/temperature.ts";
import type { Reading } from "../units/typed-text.ts";
import { mlPerFlOz } from "../units/volume.ts";
import { writeNumber } from "../units/written-number.ts";
import { partsMay } from "./mays.ts";

/** A number with both ends included. `of` says what it measures. */
export function number(from: number, to: number, of: string) {
  return pipe(
    anyNumber(),
    minValue(from),
    maxValue(to),
    description(filled(partsMay.number, { from: writeNumber(from), to: writeNumber(to), of })),
  );
}

export function whole(from: number, to: number, of: string) {
  return pipe(
    anyNumber(),
    integer(),
    minValue(from),
    maxValue(to),
    description(filled(partsMay.whole, { from: writeNumber(from), to: writeNumber(to), of })),
  );
}

/** One line of text that a person would call something. */
export function label(of: string) {
  return pipe(
    string(),
    regex(/^.*\S.*$/),
    minLength(1),
    maxLength(200),
    description(filled(partsMay.label, { of })),
  );
}

export function choice<const Choices extends readonly string[]>(choices: Choices, of: string) {
  const quoted = choices.map((it) => `"${it}"`);
  const words = [quoted.slice(0, -1).join(", "), quoted.at(-1)].filter(Boolean).join(" or ");
  return pipe(picklist(choices), description(`${words}: ${of}`));
}

/** A clock time above 0, up to a day. */
export function clockTime(of: string) {
  const may = filled(partsMay.clockTime, { of });
  const read = (text: string): Reading<object> => {
    const time = readClockTime(text);
    return time.kind === "read" && time.seconds === 0 ? { kind: "unread", may } : time;
  };
  return written(clockTimePattern, read, may);
}

/** A clock time on a clock that was started: 0:00 to a day. */
export function clockReading(of: string) {
  const may = filled(partsMay.clockReading, { of });
  return written(clockTimePattern, readClockTime, may);
}

/** Text in one form. Where the reader refuses it, the fault is in the reader's words. */
export function written(pattern: RegExp, read: (text: string) => Reading<object>, may: string) {
  const refusal = (text: string) => {
    const reading = read(text);
    return reading.kind === "unread" ? reading.may : may;
  };
  return pipe(
    string(),
    regex(pattern),
    maxLength(100),
    check(
      (text) => read(text).kind === "read",
      (issue) => refusal(issue.input),
    ),
    description(may),
  );
}

/** °C from and to; the bounds in °F are the same temperatures. */
export function temperature(from: number, to: number, of: string) {
  const [fromF, toF] = [fahrenheitFromCelsius(from), fahrenheitFromCelsius(to)];
  return pipe(
    union([
      strictObject({ c: number(from, to, "degrees Celsius") }),
      strictObject({ f: number(fromF, toF, "degrees Fahrenheit") }),
    ]),
    description(
      filled(partsMay.temperature, {
        from: writeNumber(from),
        to: writeNumber(to),
        fromF: writeNumber(fromF),
        toF: writeNumber(toF),
        of,
      }),
    ),
  );
}

/** ml from and to; the bounds in US fluid ounces are the nearest round ones within. */
export function volume(from: number, to: number, of: string) {
  const fromOz = Math.ceil((from / mlPerFlOz) * 100) / 100;
  const toOz = Math.floor(to / mlPerFlOz);
  return pipe(
    union([
      strictObject({ ml: number(from, to, "millilitres") }),
      strictObject({ flOz: number(fromOz, toOz, "US fluid ounces") }),
    ]),
    description(
      filled(partsMay.volume, {
        from: writeNumber(from),
        to: writeNumber(to),
        fromOz: writeNumber(fromOz),
        toOz: writeNumber(toOz),
        of,
      }),
    ),
  );
}

/** An object with these fields and no others. */
export function fields<Entries extends ObjectEntries>(of: string, entries: Entries) {
  return pipe(strictObject(entries), description(filled(partsMay.object, { of })));
}

export function list<Item extends GenericSchema>(from: number, to: number, item: Item, of: string) {
  return pipe(
    array(item),
    minLength(from),
    maxLength(to),
    description(filled(partsMay.list, { from, to, of })),
  );
}
