// A number, a time, a size, a name in, how each is spoken out: sign by sign, since it can be any. Sentences of the
// script by key; apart from the fields that hold them (by-ear-said.ts).
import type { Saying, Takes } from "./by-ear-field.ts";

export const unitSaid = (name: string): Saying => ({ key: "ear.unit", slots: { unit: name } });
const digit = (name: string): Saying => ({ key: "ear.digit", slots: { digit: name } });

/**
 * As it is typed, so it is echoed: `":"` parts minutes from seconds, and hours from minutes in a time of day, `"."` the
 * whole from its parts, `","` fills or steps. A name goes by its letters, whatever their size.
 */
export function echoOf(typed: string, takes?: Takes): readonly Saying[] {
  return [...typed].map((sign, at): Saying => {
    if (sign === ".") return digit("point");
    if (takes?.kind === "text" && !/\d/.test(sign))
      return { key: "ear.letter", slots: { letter: sign.toLowerCase() } };
    if (sign === "-") return digit("minus");
    if (sign === ",")
      return { key: takes?.kind === "counts" && takes.decimals ? "ear.step" : "ear.fill" };
    if (sign !== ":") return digit(sign);
    return unitSaid(takes?.kind === "clock" && typed.indexOf(":") === at ? "hours" : "minutes");
  });
}

/** To the fourth place: factors of one's own are that fine. */
export const fine = (value: number): string => String(Math.round(value * 10_000) / 10_000);

export const numberSaid = (value: number): readonly Saying[] => echoOf(fine(value));

/** A time by its minutes and seconds. */
export function timeSaid(seconds: number): readonly Saying[] {
  const [minutes, rest] = [Math.floor(seconds / 60), Math.round(seconds % 60)];
  return [
    ...(minutes === 0 ? [] : [...numberSaid(minutes), unitSaid("minutes")]),
    ...(rest === 0 && minutes > 0 ? [] : [...numberSaid(rest), unitSaid("seconds")]),
  ];
}

/** `"135-36"` by its digits and its exposures, `"4x5in"` as four by five inches. */
export function sizeSaid(size: string): readonly Saying[] {
  const [film = "", exposures] = size.split("-");
  if (exposures !== undefined)
    return [...echoOf(film), ...echoOf(exposures), unitSaid("exposures")];
  const [width = "", height] = size.replace(/in$|cm$/, "").split("x");
  if (height === undefined) return echoOf(width);
  const measure = unitSaid(size.endsWith("cm") ? "cm" : "in");
  return [...echoOf(width), unitSaid("by"), ...echoOf(height), measure];
}
