import { describe, expect, test } from "vitest";
import { nominalFilmArea, readFilmSize } from "../../src/units/film-size.ts";

describe("a film's size", () => {
  test("80 sq in are 516.128 cm² (exact; tolerance of the arithmetic, 1e-9)", () => {
    expect(nominalFilmArea).toBeCloseTo(516.128, 9);
  });

  // "One 135-36 = one 120 = half a 220 = four 4×5 = one 8×10 = 80 sq in": a fixer-capacity note.
  test.each([
    ["135-36", 1],
    ["120", 1],
    ["220", 2],
    ["4x5in", 1 / 4],
    ["8x10in", 1],
  ])("%s is %d films of 80 sq in", (typed, films) => {
    expect(readFilmSize(typed)).toEqual({ kind: "read", size: typed, films });
  });

  test("shorter lengths of 135 are in proportion to their frames", () => {
    expect(readFilmSize("135-24")).toEqual({ kind: "read", size: "135-24", films: 24 / 36 });
  });

  test("centimetres and inches agree (4×5 in = 129.032 cm², exact; 1e-9)", () => {
    const films = (typed: string) => {
      const reading = readFilmSize(typed);
      return reading.kind === "read" ? reading.films : Number.NaN;
    };
    expect(films("10.16x12.7cm")).toBeCloseTo(films("4x5in"), 9);
    expect(films("10.16x12.7cm") * nominalFilmArea).toBeCloseTo(129.032, 9);
  });

  test.each([
    ["4 × 5 IN", "4x5in"],
    ["9 X 12 cm", "9x12cm"],
    ["6,5x9cm", "6.5x9cm"],
    ["１２０", "120"],
  ])("%j is brought to the form a worksheet holds: %s", (typed, size) => {
    expect(readFilmSize(typed)).toHaveProperty("size", size);
  });

  test.each(["", "135", "35mm", "4x5", "0x5in", "135-0", "135-100", "١٢٠", "4x5x6in"])(
    "%j is refused, with sizes that would do",
    (typed) => {
      expect(readFilmSize(typed)).toHaveProperty("may", expect.stringContaining('"135-36"'));
    },
  );
});
