// What can be typed into a field asked by ear, sign by sign: which signs are told one after another to whoever has one
// key, and which of a keyboard's are taken. Apart from what is said of them (by-ear-echo.ts).
import type { EarField, Takes } from "./by-ear-field.ts";
import { kindOf } from "./fields.ts";

/** Those of a keyboard's that any script can name. */
export const plainLetters: readonly string[] = [..."abcdefghijklmnopqrstuvwxyz", " "];

/** The signs that are told, in order. */
export const signsFor = (
  field: EarField,
  typed: string,
  letters: readonly string[],
): readonly string[] => [
  ...(field.takes.kind === "text" ? namesSigns(typed, letters) : []),
  ...(typed === "" && isSigned(field) ? ["-"] : []),
  ..."1234567890",
  ...partings(field, typed),
];

/** A name that is given by one key begins with a capital, and has small letters and spaces behind it. */
const namesSigns = (typed: string, letters: readonly string[]): readonly string[] =>
  typed === "" ? letters.filter((sign) => /\p{L}/u.test(sign)).map(capital) : letters;

/** Of a letter that has one: a sharp s would become two. */
const capital = (sign: string): string =>
  sign.toUpperCase().length === 1 ? sign.toUpperCase() : sign;

/** Whether a number may lie below 0. */
const isSigned = ({ takes }: EarField): boolean =>
  takes.kind === "number" && Object.values(takes.range ?? {}).some(([least]) => least < 0);

/** What may part the digits typed so far from those behind it. */
function partings({ path, takes }: EarField, typed: string): readonly string[] {
  if (typed === "" || takes.kind === "rows" || takes.kind === "text") return [];
  if (takes.kind === "counts") {
    const last = typed.split(",").at(-1) ?? "";
    const point = takes.decimals && last !== "" && !last.includes(".") ? ["."] : [];
    return last === "" ? [] : [...point, ","];
  }
  const parting = takes.kind === "clock" || kindOf(path) === "time" ? ":" : ".";
  return typed.includes(parting) ? [] : [parting];
}

/** Signs that are enough for any number, for twenty fills or sixty densities, and for a name: more are not taken. */
function longest(takes: Takes): number {
  if (takes.kind === "text") return 200;
  if (takes.kind === "counts") return takes.decimals ? 299 : 79;
  return 8;
}

/** Whole where there is something to lose track of; of what is long, the sign that came, or the number that it made. */
export function echoed({ takes }: EarField, typed: string): string {
  if (takes.kind === "text" || typed.endsWith(",")) return typed.slice(-1);
  return takes.kind === "counts" && takes.decimals ? (typed.split(",").at(-1) ?? "") : typed;
}

/** A sign as the field takes it; null where it does not. Fills are parted whatever the key. */
export function signFor(field: EarField, before: string, sign: string): string | null {
  const { takes } = field;
  if (before.length >= longest(takes)) return null;
  if (takes.kind === "text") return sign;
  if (sign === "-") return before === "" && isSigned(field) ? sign : null;
  if (takes.kind !== "counts" || /\d/.test(sign)) return sign;
  const last = before.split(",").at(-1) ?? "";
  if (takes.decimals && sign === ".") return last === "" || last.includes(".") ? null : sign;
  return last === "" ? null : ",";
}
