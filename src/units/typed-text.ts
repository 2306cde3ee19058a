// What a person typed in, the same text in plain signs out: the first step of every reader.
// Alone, so that digits and signs of other scripts are judged in one place.

import { filled, readersMay } from "./may.ts";

/** A reader's refusal. `may` says what the text may be, fit to follow "it may hold". */
interface Unread {
  readonly kind: "unread";
  readonly may: string;
}

export type Reading<T> = ({ readonly kind: "read" } & T) | Unread;

/** Nothing a person types in one of these fields is longer. */
const longest = 40;

/** What keyboards and other programs put for the plain sign. */
const plainSigns: { readonly [sign: string]: string } = {
  "\u00a0": " ",
  "\u202f": " ",
  "\u2009": " ",
  "\u3000": " ",
  "℃": "°c",
  "℉": "°f",
  º: "°",
  "˚": "°",
  "−": "-",
  "–": "-",
  "×": "x",
  "′": "'",
  "’": "'",
  "″": '"',
  "”": '"',
};

/** U+FF01 to U+FF5E are ASCII, drawn wide, in ASCII's order. */
const fullWidth = /[\uff01-\uff5e]/g;

/**
 * Lower case, plain signs, single spaces. `may` is what a refusal will say.
 *
 * Full-width digits have one meaning and are read. Digits of other scripts are refused by name, since
 * a mixed number is more likely a slip than a wish.
 */
export function plainText(typed: string, may: string): Reading<{ readonly text: string }> {
  if (typed.length > longest) return { kind: "unread", may };
  const text = typed
    .replace(fullWidth, (wide) => String.fromCharCode(wide.charCodeAt(0) - 0xfee0))
    .replace(/./gu, (sign) => plainSigns[sign] ?? sign)
    .toLowerCase()
    .replace(/\s+/g, " ")
    .trim();
  return /(?![0-9])\p{Nd}/u.test(text)
    ? { kind: "unread", may: filled(readersMay.digits, { may }) }
    : { kind: "read", text };
}

const fractions: { readonly [sign: string]: number } = {
  "½": 1 / 2,
  "¼": 1 / 4,
  "¾": 3 / 4,
  "⅓": 1 / 3,
  "⅔": 2 / 3,
};

/** A number as people type it, for use inside the readers' own patterns; no groups of its own. */
export const typedNumber = String.raw`(?:\d+ \d/\d|\d+ ?[½¼¾⅓⅔]|[½¼¾⅓⅔]|\d+(?:[.,]\d+)?)`;

/**
 * `"9.5"`, `"9,5"`, `"9½"`, `"9 1/2"`; NaN for what is not one number.
 *
 * `"1,000"` is a thousand to some and one to others, so it is no number here; `"0,125"` has one meaning.
 */
export function numberFrom(text: string): number {
  const mixed = /^(\d+) (\d)\/([1-9])$/.exec(text);
  if (mixed) return Number(mixed[1]) + Number(mixed[2]) / Number(mixed[3]);
  const vulgar = /^(\d*) ?([½¼¾⅓⅔])$/.exec(text);
  if (vulgar) return Number(vulgar[1]) + (fractions[vulgar[2] ?? ""] ?? Number.NaN);
  if (/^0*[1-9]\d*,\d{3}$/.test(text)) return Number.NaN;
  return /^\d+(?:[.,]\d+)?$/.test(text) ? Number(text.replace(",", ".")) : Number.NaN;
}
