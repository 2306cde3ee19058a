// The leaflet and the films in, what is wrong between rows and between films out.
// Apart from the other warnings, because each of these compares what was typed with itself.
import { rowOutOfLine } from "../trade/out-of-line.ts";
import { sameTemperature } from "../trade/time-temperature.ts";
import { baseTimeFor, byRating, effectiveRating, type LeafletPoint } from "./base-time.ts";
import type { Development } from "./development.ts";
import type { Warning } from "./line.ts";
import * as messages from "./messages.ts";
import type { PlanWords } from "./words/words.ts";
import type { Film } from "./worksheet.ts";

/** The rows used are compared among themselves, the others within their rating; each with the next warmer. */
export function leafletWarnings(
  words: PlanWords,
  { base, leaflet }: Development,
): readonly Warning[] {
  const others = byRating(leaflet.filter((point) => !base.rows.includes(point)));
  return [base.rows, ...others.map(({ rows }) => rows)].flatMap((rows) =>
    rows.flatMap((warmer, index) => {
      const colder = rows[index - 1];
      return colder && colder.seconds < warmer.seconds && !sameDegree(colder, warmer)
        ? [messages.leafletBackwards(words, colder.row, warmer.row)]
        : [];
    }),
  );
}

/** A row that the leaflet's others contradict, within each rating; none where they fall backwards, which says more. */
export function outOfLineWarnings(words: PlanWords, development: Development): readonly Warning[] {
  if (leafletWarnings(words, development).length > 0) return [];
  return byRating(development.leaflet).flatMap(({ rows }) => {
    const odd = rowOutOfLine(rows);
    const row = odd && rows[odd.index];
    return row ? [messages.rowOutOfLine(words, row.row, odd.expected)] : [];
  });
}

function sameDegree(a: LeafletPoint, b: LeafletPoint): boolean {
  return Math.abs(a.celsius - b.celsius) <= sameTemperature;
}

/** Films share a time when they were metered alike and the same stops are left to be made up. */
export function ratingWarnings(
  words: PlanWords,
  films: readonly Film[],
  leaflet: readonly LeafletPoint[],
): readonly Warning[] {
  const needs = films.map((film) => ({
    rating: effectiveRating(film),
    stops: baseTimeFor(film, leaflet).stops,
  }));
  const [first] = needs;
  const alike = needs.every((it) => it.rating === first?.rating && it.stops === first?.stops);
  if (alike) return [];
  const rated = films.map((film) => ratingWords(words, film));
  return [messages.mixedRatings(words, rated, films[0]?.label ?? "")];
}

function ratingWords({ warnings, writes }: PlanWords, film: Film): string {
  const { label, boxSpeed } = film;
  const rating = effectiveRating(film);
  if (rating === undefined) return warnings.unratedFilm({ film: label });
  const rated = { film: label, rating: writes.typed(rating) };
  return boxSpeed === undefined || boxSpeed === rating
    ? warnings.ratedFilm(rated)
    : warnings.ratedFilmOfSpeed({ ...rated, box: writes.typed(boxSpeed) });
}
