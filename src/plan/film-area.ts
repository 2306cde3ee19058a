// Films in, their area in films of 80 sq in out.
// Alone, because stock needed and the warning about it must count alike.
import { readFilmSize } from "../units/film-size.ts";
import type { Film } from "./worksheet.ts";

/** Films of 80 sq in that all the films of a worksheet come to. */
export function nominalFilms(films: readonly Pick<Film, "size" | "count">[]): number {
  return films.reduce((sum, { size, count }) => {
    const reading = readFilmSize(size);
    return sum + (reading.kind === "read" ? reading.films * count : 0);
  }, 0);
}
