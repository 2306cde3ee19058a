// How much film a solution has to serve in, how much stock it needs and how much longer it takes out.
// Alone, because capacity is counted in films of 80 sq in and nowhere by the piece.

/** Volumes that differ by less than this fraction are the same: rounding of binary numbers, no more. */
const rounding = 1e-9;

/** Whether so much stock is enough for so many films of 80 sq in. Both volumes in one unit. */
export function stockSuffices(stock: number, perFilm: number, films: number): boolean {
  return stock >= perFilm * films * (1 - rounding);
}

/** How many films of 80 sq in so much stock serves: whole films, or hundredths below one. */
export function filmsServed(stock: number, perFilm: number): number {
  const films = (stock / perFilm) * (1 + rounding);
  return films >= 1 ? Math.floor(films) : Math.floor(films * 100) / 100;
}

/**
 * Factor on the time for a solution that has developed films of 80 sq in before: 1 + p · n.
 * `perFilm` is the fraction of the time that each of them adds, from the leaflet.
 */
export function reuseFactor(filmsBefore: number, perFilm: number): number {
  return 1 + perFilm * filmsBefore;
}

/** Films of 80 sq in that so many ml still serve, where a litre serves `perLitre` in all; never below 0. */
export function filmsLeft(millilitres: number, perLitre: number, filmsBefore: number): number {
  return Math.max((millilitres / 1000) * perLitre - filmsBefore, 0);
}

/** Replenisher due for so many films of 80 sq in, in the unit of what is due for one. */
export function replenisherDue(perFilm: number, films: number): number {
  return perFilm * films;
}
