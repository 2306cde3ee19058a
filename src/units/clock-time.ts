// Times as people write and type them in, seconds out, and back again.
// Alone, so that worksheet, form and sheet agree on what "9:30" means.
import { filled, readersMay } from "./may.ts";
import { numberFrom, plainText, type Reading, typedNumber } from "./typed-text.ts";

export type TimeReading = Reading<{ readonly seconds: number }>;

/** No bath lasts longer: a day, in seconds. */
export const longestSeconds = 86_400;

/** `"m:ss"` or `"h:mm:ss"`, the forms a worksheet holds. */
export const clockTimePattern = /^(?:\d{1,4}:[0-5]\d|\d{1,2}:[0-5]\d:[0-5]\d)$/;

export const clockTimeMay = 'a clock time such as "9:30" or "1:02:00"';
export const typedTimeMay = 'a time such as "9:30", "9 min 30 s", "9.5 min" or "90 s"';

/** Reads `"m:ss"` or `"h:mm:ss"`, up to 24 hours, into whole seconds. */
export function readClockTime(text: string): TimeReading {
  if (!clockTimePattern.test(text)) {
    const plain = plainText(text, clockTimeMay);
    return plain.kind === "unread" ? plain : { kind: "unread", may: clockTimeMay };
  }
  const seconds = text.split(":").reduce((sum, part) => sum * 60 + Number(part), 0);
  return seconds <= longestSeconds
    ? { kind: "read", seconds }
    : { kind: "unread", may: filled(readersMay.aDay, { may: clockTimeMay }) };
}

/** To ten seconds, to the minute from half an hour on: what a thermometer's answer is good for. 0 at least. */
export function writeAboutTime(seconds: number): string {
  const step = seconds < 1800 ? 10 : 60;
  return writeClockTime(Math.max(Math.round(seconds / step) * step, 0));
}

/** `"h:mm"` or `"h:mm:ss"` by the 24-hour clock. */
export const timeOfDayPattern = /^(?:[01]?\d|2[0-3]):[0-5]\d(?::[0-5]\d)?$/;

export const timeOfDayMay = 'a time of day such as "19:05" or "19:05:30"';

/** Reads a time of day into seconds since midnight. */
export function readTimeOfDay(text: string): TimeReading {
  const plain = plainText(text, timeOfDayMay);
  if (plain.kind === "unread") return plain;
  if (!timeOfDayPattern.test(plain.text)) return { kind: "unread", may: timeOfDayMay };
  const [hours = 0, minutes = 0, seconds = 0] = plain.text.split(":").map(Number);
  return { kind: "read", seconds: hours * 3600 + minutes * 60 + seconds };
}

/** `"19:05:30"`; days over and under are taken off. */
export function writeTimeOfDay(seconds: number): string {
  const whole = Math.floor(seconds + 0.5);
  const inDay = ((whole % 86_400) + 86_400) % 86_400;
  const two = (part: number) => String(part).padStart(2, "0");
  return `${Math.floor(inDay / 3600)}:${two(Math.floor(inDay / 60) % 60)}:${two(inDay % 60)}`;
}

const withUnits = new RegExp(
  `^(?:(${typedNumber}) ?(?:h|hrs?|hours?))? ?` +
    `(?:(${typedNumber}) ?(?:m|mins?|minutes?|'))? ?` +
    `(?:(${typedNumber}) ?(?:s|secs?|seconds?|"))?$`,
);

/**
 * Reads a time as typed into a form, up to 24 hours, into seconds (a fraction where one was typed).
 *
 * A number without a unit is refused: `"9.30"` is nine and a half minutes to one person and 9.3 to
 * another, and `"90"` may be either unit.
 */
export function readTypedTime(typed: string): TimeReading {
  const plain = plainText(typed, typedTimeMay);
  if (plain.kind === "unread") return plain;
  if (clockTimePattern.test(plain.text)) return readClockTime(plain.text);

  const [, hours, minutes, seconds] = withUnits.exec(plain.text) ?? [];
  const parts = [
    { typed: hours, unit: 3600 },
    { typed: minutes, unit: 60 },
    { typed: seconds, unit: 1 },
  ].flatMap((part) =>
    part.typed === undefined ? [] : [{ unit: part.unit, value: numberFrom(part.typed) }],
  );
  const total = parts.reduce((sum, part) => sum + part.value * part.unit, 0);
  // Only the last part may be broken, and none after the first may reach the unit before it.
  const wellMade = parts.every(
    (part, index) =>
      (index === parts.length - 1 || Number.isInteger(part.value)) &&
      (index === 0 || part.value < 60),
  );
  return parts.length > 0 && wellMade && total <= longestSeconds
    ? { kind: "read", seconds: total }
    : { kind: "unread", may: typedTimeMay };
}

/** `"9:29"`, `"1:02:00"`: whole seconds, half up. */
export function writeClockTime(seconds: number): string {
  const whole = Math.floor(seconds + 0.5);
  const two = (part: number) => String(part).padStart(2, "0");
  const [hours, minutes] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60];
  return hours > 0
    ? `${hours}:${two(minutes)}:${two(whole % 60)}`
    : `${minutes}:${two(whole % 60)}`;
}
