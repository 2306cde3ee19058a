// A film's size as written in, its area in films of 80 sq in out: the measure that recipes use.
// Alone, because the 80 is nominal: a table of the trade, not a measurement.
import { plainText, type Reading } from "./typed-text.ts";

/** `size` is the form a worksheet holds; `films` is how many films of 80 sq in one of them is. */
export type FilmSizeReading = Reading<{ readonly size: string; readonly films: number }>;

/** cm² in the 80 sq in of one nominal film, exactly. */
export const nominalFilmArea = 80 * 2.54 ** 2;

export const filmSizePattern =
  /^(?:135-[1-9]\d?|120|220|\d{1,2}(?:\.\d{1,2})?x\d{1,2}(?:\.\d{1,2})?(?:in|cm))$/;

export const filmSizeMay = 'a size such as "135-36", "120", "220", "4x5in" or "9x12cm"';

/**
 * Reads `"135-36"`, `"120"`, `"220"`, or width and height in inches or centimetres.
 *
 * One 135-36, one 120, half a 220, four 4x5in and one 8x10in are each 80 sq in (a fixer's capacity
 * note); other lengths of 135 are in proportion to their frames.
 */
export function readFilmSize(typed: string): FilmSizeReading {
  const plain = plainText(typed, filmSizeMay);
  if (plain.kind === "unread") return plain;
  const size = plain.text.replaceAll(" ", "").replaceAll(",", ".");
  const films = filmSizePattern.test(size) ? nominalFilms(size) : 0;
  return films > 0 ? { kind: "read", size, films } : { kind: "unread", may: filmSizeMay };
}

function nominalFilms(size: string): number {
  if (size === "120") return 1;
  if (size === "220") return 2;
  if (size.startsWith("135-")) return Number(size.slice(4)) / 36;
  const [width = 0, height = 0] = size.slice(0, -2).split("x").map(Number);
  return size.endsWith("in") ? (width * height) / 80 : (width * height) / nominalFilmArea;
}
