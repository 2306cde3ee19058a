// A number of films in, the words for it out. Alone, because lines and warnings count films alike.
import type { PlanWords } from "./words/words.ts";

/** `"1 film"`, `"2.5 films"`, to a hundredth. */
export function filmCount({ mix, writes }: PlanWords, films: number): string {
  return mix.film.count({ films: writes.number(films), count: Math.round(films * 100) / 100 });
}
