// A dilution as written in, parts of stock and of water out.
// Alone, because "1:4" is read both ways and must be caught before any sum is done with it.
import { filled, readersMay } from "./may.ts";
import { plainText, type Reading } from "./typed-text.ts";
import { type WriteNumber, writeNumber } from "./written-number.ts";

/** So many parts of stock to so many of water; `water` is 0 for stock used as it is. */
export interface Dilution {
  readonly stock: number;
  readonly water: number;
}

export type DilutionReading = Reading<{ readonly dilution: Dilution }>;

/** Undiluted. */
export const stockItself: Dilution = { stock: 1, water: 0 };

/** What people call it, in the languages of the page; a worksheet holds the first. */
const undiluted = [
  "stock",
  "undiluted",
  "unverdünnt",
  "vorratslösung",
  "sin diluir",
  "pur",
  "non dilué",
  "puro",
  "non diluito",
  "solução-mãe",
  "não diluído",
  "onverdund",
];

/** Most parts of either. */
const mostParts = 10_000;

/** The forms a worksheet holds. */
export const dilutionPattern = /^(?:stock|\d{1,5}(?:\.\d{1,4})? ?\+ ?\d{1,5}(?:\.\d{1,4})?)$/;

export const dilutionMay = '"stock", or parts of stock plus parts of water such as "1+3"';

/** Reads `"stock"` or another word for it, `"1+3"`, `"1+1.5"`. `"1:4"` is refused: some mean 1+4 by it, others 1+3. */
export function readDilution(typed: string): DilutionReading {
  const plain = plainText(typed, dilutionMay);
  if (plain.kind === "unread") return plain;
  const text = plain.text.replaceAll(",", ".");
  if (undiluted.includes(text.toLowerCase())) return { kind: "read", dilution: stockItself };
  const [, part, whole] = /^(\d+) ?[:/] ?(\d+)$/.exec(text) ?? [];
  if (part !== undefined && whole !== undefined) {
    const rest = Number(whole) - Number(part);
    const said = { may: dilutionMay, typed: typed.trim() };
    const [one, other] = [`${part}+${whole}`, `${part}+${rest}`];
    const may =
      rest > 0
        ? filled(readersMay.readAsTwo, { ...said, one, other })
        : filled(readersMay.readTwoWays, said);
    return { kind: "unread", may };
  }
  const [stock = 0, water = 0] = dilutionPattern.test(text) ? text.split("+").map(Number) : [];
  const usable = [stock, water].every((parts) => parts > 0 && parts <= mostParts);
  return usable
    ? { kind: "read", dilution: { stock, water } }
    : { kind: "unread", may: dilutionMay };
}

/** `"stock"`, `"1+3"`; `undiluted` is what a language calls the first. */
export function writeDilution(
  { stock, water }: Dilution,
  undiluted = "stock",
  number: WriteNumber = writeNumber,
): string {
  return water === 0 ? undiluted : `${number(stock, 4)}+${number(water, 4)}`;
}
