// Worksheet and plan in, what a person should know before pouring out.
// Alone, because each rule is a limit of the trade that someone will want to check by itself.
import { filmsServed, stockSuffices } from "../trade/capacity.ts";
import { totalHolding } from "../trade/dilution.ts";
import { beyond, sameTemperature } from "../trade/time-temperature.ts";
import { longestSeconds } from "../units/clock-time.ts";
import { writeDilution } from "../units/parts.ts";
import { toCelsius } from "../units/temperature.ts";
import { mlPerFlOz, toMillilitres } from "../units/volume.ts";
import { baseTimeFor, byRating, effectiveRating, type LeafletPoint } from "./base-time.ts";
import type { Development } from "./development.ts";
import { pouringSeconds } from "./fills.ts";
import { nominalFilms } from "./film-area.ts";
import * as messages from "./messages.ts";
import type { Plan, Warning } from "./plan.ts";
import { dilutionOf } from "./planned-baths.ts";
import type { Film, Worksheet } from "./worksheet.ts";

/** °C outside the leaflet's rows up to which the slope may be followed with care. */
const carefulBeyond = 2;

/** °C. Below, hydroquinone loses power; above, gelatin softens. Sources stand with the messages. */
const workableRange = { from: 15.6, to: 26.7 };

/** Seconds under which development is uneven; common practice. */
const evenFrom = 300;

/** °C between developer and another bath that gelatin bears; common practice. */
const gentleStep = 3;

/** What the warnings look at beside the worksheet. */
export type Planned = Pick<Plan, "developmentSeconds" | "mix" | "baths">;

/** In order: what makes the time wrong, then the mix, then the baths, then the voice. */
export function warningsFor(
  worksheet: Worksheet,
  development: Development,
  planned: Planned,
): readonly Warning[] {
  return [
    ...leafletWarnings(development),
    ...ratingWarnings(worksheet.films, development.leaflet),
    ...temperatureWarnings(worksheet, development),
    ...lengthWarnings(development),
    ...stockWarnings(worksheet, planned),
    ...bathWarnings(worksheet, planned),
    ...languageWarnings(worksheet),
  ];
}

/** The rows used are compared among themselves, the others within their rating; each with the next warmer. */
function leafletWarnings({ base, leaflet }: Development): readonly Warning[] {
  const others = byRating(leaflet.filter((point) => !base.rows.includes(point)));
  return [base.rows, ...others.map(({ rows }) => rows)].flatMap((rows) =>
    rows.flatMap((warmer, index) => {
      const colder = rows[index - 1];
      return colder && colder.seconds < warmer.seconds && !sameDegree(colder, warmer)
        ? [messages.leafletBackwards(colder.row, warmer.row)]
        : [];
    }),
  );
}

function sameDegree(a: LeafletPoint, b: LeafletPoint): boolean {
  return Math.abs(a.celsius - b.celsius) <= sameTemperature;
}

/** Films share a time when they were metered alike and the same stops are left to be made up. */
function ratingWarnings(
  films: readonly Film[],
  leaflet: readonly LeafletPoint[],
): readonly Warning[] {
  const needs = films.map((film) => ({
    rating: effectiveRating(film),
    stops: baseTimeFor(film, leaflet).stops,
  }));
  const [first] = needs;
  const alike = needs.every((it) => it.rating === first?.rating && it.stops === first?.stops);
  return alike ? [] : [messages.mixedRatings(films.map(ratingWords), films[0]?.label ?? "")];
}

function ratingWords(film: Film): string {
  const { label, boxSpeed } = film;
  const rating = effectiveRating(film);
  if (rating === undefined) return `"${label}" with no speed given`;
  const box = boxSpeed === undefined || boxSpeed === rating ? "" : ` (box speed ${boxSpeed})`;
  return `"${label}" at ${rating}${box}`;
}

function temperatureWarnings(
  { process, developer }: Worksheet,
  { base, celsius, drifting }: Development,
): readonly Warning[] {
  const bath = developer.temperature;
  const found: Warning[] = [];
  const outside = beyond(base.rows, celsius);
  if (outside) {
    const tooFar = outside.degrees > carefulBeyond + sameTemperature;
    const degrees = celsius - outside.nearest;
    found.push(messages.extrapolated({ bath, nearest: outside.nearest, degrees }, tooFar));
  }
  const endsAt = drifting?.points[2].celsius ?? celsius;
  const end = beyond(base.rows, endsAt);
  if (end && end.degrees > Math.max(carefulBeyond, outside?.degrees ?? 0) + sameTemperature) {
    const degrees = endsAt - end.nearest;
    found.push(messages.driftExtrapolated({ bath, nearest: end.nearest, degrees }, endsAt));
  }
  if (process === "bw-negative" && celsius < workableRange.from) {
    found.push(messages.temperatureRange(bath, "below"));
  }
  if (process === "bw-negative" && celsius > workableRange.to) {
    found.push(messages.temperatureRange(bath, "above"));
  }
  return found;
}

function lengthWarnings({ seconds, exact }: Development): readonly Warning[] {
  if (exact > longestSeconds + 0.5) return [messages.longerThanADay(exact)];
  return seconds < evenFrom ? [messages.shortDevelopment(seconds)] : [];
}

function stockWarnings(
  { developer, films, tank }: Worksheet,
  { mix }: Planned,
): readonly Warning[] {
  if (developer.stockPerFilm === undefined) return [];
  const perFilm = toMillilitres(developer.stockPerFilm);
  const count = nominalFilms(films);
  if (stockSuffices(mix.stock, perFilm, count)) return [];
  const dilution = dilutionOf(developer);
  const needed = perFilm * count;
  return [
    messages.stockShort({
      tank: tank.volume,
      dilution: writeDilution(dilution),
      stock: mix.stock,
      needed,
      wanted: roundedUp(totalHolding(needed, dilution), "ml" in tank.volume ? 1 : mlPerFlOz / 10),
      films: count,
      served: filmsServed(mix.stock, perFilm),
    }),
  ];
}

/** Up to a step that can be measured out, so that the volume named is enough. */
function roundedUp(millilitres: number, step: number): number {
  return Math.ceil(millilitres / step - 1e-9) * step;
}

function bathWarnings(worksheet: Worksheet, { baths }: Planned): readonly Warning[] {
  const developer = toCelsius(worksheet.developer.temperature);
  const pouring = pouringSeconds(worksheet);
  return baths.flatMap((bath) => {
    const wish = worksheet.baths?.[bath.id];
    // A fill of the wash has its pouring added, so it is never too short.
    const tooShort = wish?.fills === undefined && bath.seconds < pouring - 1e-9;
    const step = (bath.temperature ?? developer) - developer;
    const tooFar = wish?.temperature && Math.abs(step) > gentleStep + sameTemperature;
    return [
      ...(tooShort ? [messages.bathTooShort(bath.label, bath.seconds, pouring)] : []),
      ...(tooFar ? [messages.temperatureStep(bath.label, wish.temperature, step)] : []),
    ];
  });
}

/** The voice speaks English, whatever the region. */
function languageWarnings({ language = "en" }: Worksheet): readonly Warning[] {
  const spoken = language.split("-")[0]?.toLowerCase();
  return spoken === "en" ? [] : [messages.languageUnavailable(language)];
}
