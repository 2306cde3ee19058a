// The text of a leaflet's table as someone copied or typed it in, its rows out, or what is wrong by line.
// Alone, because a leaflet writes the same row in many ways, and none of them may be read wrongly.
import { clockTimePattern, readTypedTime, writeClockTime } from "../units/clock-time.ts";
import { filled } from "../units/may.ts";
import { readTypedTemperature, type Temperature, toCelsius } from "../units/temperature.ts";
import { numberFrom, plainText, typedNumber } from "../units/typed-text.ts";
import { leafletMay } from "./mays.ts";
import type { LeafletRow } from "./worksheet.ts";

interface LineFault {
  /** From 1, blank lines counted. */
  readonly line: number;
  readonly text: string;
  /** What would do, fit to follow "it may hold". */
  readonly may: string;
}

interface LeafletText {
  readonly rows: readonly LeafletRow[];
  readonly faults: readonly LineFault[];
}

/** Lines more than this are no leaflet. */
const mostLines = 200;

const rowMay = leafletMay.row;

/** A number without its unit is °C up to 40 and °F from 50: no bath of the trade is in doubt, and between the two nobody develops. */
const bareCelsiusTo = 40;
const bareFahrenheitFrom = 50;

/** °C by which two temperatures on one line may differ and be one: leaflets round 20 °C to 68 °F and 24 to 75. */
const sameRow = 0.6;

/**
 * Every line is a row, a heading (no digits in it) or blank. On a row stand a temperature, or the same
 * one in both units, and a time, in either order; a rating behind "EI", "ISO" or "@" if it has one.
 */
export function readLeafletText(text: string): LeafletText {
  const lines = text.split(/\r\n|\r|\n/);
  if (lines.length > mostLines) {
    const may = filled(leafletMay.lines, { lines: mostLines });
    return { rows: [], faults: [{ line: mostLines + 1, text: "", may }] };
  }
  const rows: LeafletRow[] = [];
  const faults: LineFault[] = [];
  lines.forEach((typed, index) => {
    const reading = readLine(typed);
    if (reading.kind === "row") rows.push(reading.row);
    if (reading.kind === "fault") {
      faults.push({ line: index + 1, text: typed.trim(), may: reading.may });
    }
  });
  return { rows, faults };
}

type LineReading =
  | { readonly kind: "row"; readonly row: LeafletRow }
  | { readonly kind: "none" }
  | { readonly kind: "fault"; readonly may: string };

function readLine(typed: string): LineReading {
  if (typed.trim() === "" || !/\d/.test(typed)) return { kind: "none" };
  const plain = plainText(typed.replace(/\t/g, " ").replace(/ +/g, " ").trim(), rowMay);
  if (plain.kind === "unread") return { kind: "fault", may: plain.may };

  const rated = take(plain.text, /(?:\bei|\biso|@|\basa)[ :]*(\d+(?:[.,]\d+)?)/);
  const temperatures = takeTemperatures(rated.rest);
  const timed = takeTime(temperatures.rest);
  const found = [...temperatures.found];
  let rest = timed.rest;
  if (found.length === 0) {
    const bare = take(rest, new RegExp(`(-?${typedNumber})`));
    const temperature = bare.found && bareTemperature(bare.found);
    if (bare.found && !temperature) {
      const may = filled(leafletMay.unit, { may: rowMay, typed: bare.found });
      return { kind: "fault", may };
    }
    if (temperature) found.push(temperature);
    rest = bare.rest;
  }
  const time = timed.time ?? bareMinutes(rest);
  const left = timed.time === null && time !== null ? "" : rest;
  const [temperature, other] = found;
  if (!temperature || time === null || found.length > 2 || /\d/.test(left)) {
    return { kind: "fault", may: rowMay };
  }
  if (other && Math.abs(toCelsius(temperature) - toCelsius(other)) > sameRow) {
    return { kind: "fault", may: filled(leafletMay.twoTemperatures, { may: rowMay }) };
  }
  const rating = rated.found === null ? {} : { exposureIndex: numberFrom(rated.found) };
  return { kind: "row", row: { temperature, time: writeClockTime(time), ...rating } };
}

/** The first group of the first match, and the text with a gap in its place. */
function take(
  text: string,
  pattern: RegExp,
): { readonly found: string | null; readonly rest: string } {
  const match = pattern.exec(text);
  if (!match) return { found: null, rest: text };
  const rest = `${text.slice(0, match.index)} | ${text.slice(match.index + match[0].length)}`;
  return { found: match[1] ?? match[0], rest };
}

function takeTemperatures(text: string): {
  readonly found: readonly Temperature[];
  readonly rest: string;
} {
  const withUnit = new RegExp(`(-? ?${typedNumber} ?(?:°|deg|degrees)? ?[cf])(?![a-z])`);
  const found: Temperature[] = [];
  let rest = text;
  for (let taken = take(rest, withUnit); taken.found !== null; taken = take(rest, withUnit)) {
    const reading = readTypedTemperature(taken.found);
    if (reading.kind === "read") found.push(reading.temperature);
    rest = taken.rest;
  }
  return { found, rest };
}

/** Seconds of a clock time, or of numbers with their units. */
function takeTime(text: string): { readonly time: number | null; readonly rest: string } {
  const unit = `(?:h|hrs?|hours?|m|mins?|minutes?|'|s|secs?|seconds?|")(?![a-z])`;
  const patterns = [
    /(\d{1,3}:\d\d(?::\d\d)?)(?![\d:])/,
    new RegExp(`(${typedNumber} ?${unit}(?: ?${typedNumber} ?${unit}){0,2}\\.?)`),
  ];
  for (const pattern of patterns) {
    const { found, rest } = take(text, pattern);
    if (found === null) continue;
    const reading = readTypedTime(found.replace(/\.$/, ""));
    if (reading.kind === "read" && reading.seconds >= 1) return { time: reading.seconds, rest };
  }
  return { time: null, rest: text };
}

/** A number left alone on its line is minutes: `11½`, `9`, `9.5`; `9.30` is two things to two people. */
function bareMinutes(rest: string): number | null {
  const [only, another] = rest.match(new RegExp(typedNumber, "g")) ?? [];
  if (only === undefined || another !== undefined || /[.,]\d\d/.test(only)) return null;
  const minutes = numberFrom(only);
  const text = writeClockTime(minutes * 60);
  return minutes > 0 && clockTimePattern.test(text) ? minutes * 60 : null;
}

function bareTemperature(text: string): Temperature | null {
  const value = numberFrom(text.replace("-", ""));
  if (!Number.isFinite(value) || text.startsWith("-")) return null;
  if (value <= bareCelsiusTo) return { c: value };
  return value >= bareFahrenheitFrom ? { f: value } : null;
}
