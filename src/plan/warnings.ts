// Worksheet and plan in, what a person should know before pouring out.
// Alone, because each rule is a limit of the trade that someone will want to check by itself.
import { filmsServed, stockSuffices } from "../trade/capacity.ts";
import { totalHolding } from "../trade/dilution.ts";
import { beyond, sameTemperature } from "../trade/time-temperature.ts";
import { longestSeconds } from "../units/clock-time.ts";
import { languageOf, usualLanguage } from "../units/language.ts";
import { inDegreesOf, toCelsius } from "../units/temperature.ts";
import { mlPerFlOz, toMillilitres } from "../units/volume.ts";
import { celsiusFor, soughtWarnings } from "./backwards.ts";
import { capacityWarnings } from "./capacity.ts";
import type { Development } from "./development.ts";
import { pouringSeconds } from "./fills.ts";
import { nominalFilms } from "./film-area.ts";
import { fixerWarnings } from "./fixing.ts";
import { handsWarnings } from "./hands.ts";
import { leafletWarnings, outOfLineWarnings, ratingWarnings } from "./leaflet-warnings.ts";
import { evenFrom, gentleStep } from "./limits.ts";
import { about, type Warning } from "./line.ts";
import { measuredWarnings } from "./measured-lines.ts";
import * as messages from "./messages.ts";
import type { Plan } from "./plan.ts";
import { dilutionOf } from "./planned-baths.ts";
import { washWarnings } from "./washing.ts";
import type { PlanWords } from "./words/words.ts";
import type { Worksheet } from "./worksheet.ts";

/** °C outside the leaflet's rows up to which the slope may be followed with care. */
const carefulBeyond = 2;

/** °C. Below, hydroquinone loses power; above, gelatin softens. Sources stand with the messages. */
const workableRange = { from: 15.6, to: 26.7 };

/** What the warnings look at beside the worksheet. */
export type Planned = Pick<Plan, "developmentSeconds" | "mix" | "baths">;

/** In order: what makes the time wrong, then the mix, what else was asked, the baths, the voice. */
export function warningsFor(
  words: PlanWords,
  worksheet: Worksheet,
  development: Development,
  planned: Planned,
  beside: Plan["warnings"],
): Plan["warnings"] {
  const { developer, films } = worksheet;
  return [
    ...about("time", [
      ...leafletWarnings(words, development),
      ...outOfLineWarnings(words, development),
      ...ratingWarnings(words, films, development.leaflet),
      ...temperatureWarnings(words, worksheet, development),
      ...measuredWarnings(words, development),
      ...lengthWarnings(words, worksheet, development),
      ...soughtWarnings(words, developer, development),
    ]),
    ...about("mix", stockWarnings(words, worksheet, planned)),
    ...beside,
    ...about("hands", handsWarnings(words, worksheet)),
    ...about("baths", [
      ...bathWarnings(words, worksheet, planned),
      ...fixerWarnings(words, worksheet),
      ...washWarnings(words, worksheet, planned.baths),
      ...capacityWarnings(words, worksheet, planned.baths),
      ...languageWarnings(words, worksheet),
    ]),
  ];
}

function temperatureWarnings(
  words: PlanWords,
  { process, developer }: Worksheet,
  { base, celsius, drifting, measured }: Development,
): readonly Warning[] {
  const bath = developer.temperature;
  const found: Warning[] = [];
  const outside = beyond(base.rows, celsius);
  if (outside) {
    const tooFar = outside.degrees > carefulBeyond + sameTemperature;
    const degrees = celsius - outside.nearest;
    found.push(messages.extrapolated(words, { bath, nearest: outside.nearest, degrees }, tooFar));
  }
  const endsAt = drifting?.points[2].celsius ?? celsius;
  const end = beyond(base.rows, endsAt);
  if (end && end.degrees > Math.max(carefulBeyond, outside?.degrees ?? 0) + sameTemperature) {
    const degrees = endsAt - end.nearest;
    found.push(messages.driftExtrapolated(words, { bath, nearest: end.nearest, degrees }, endsAt));
  }
  // The first is the mixed bath's own, of which more has been said above.
  for (const { celsius: read } of measured?.readings.slice(1) ?? []) {
    const off = beyond(base.rows, read);
    const borne = Math.max(carefulBeyond, outside?.degrees ?? 0) + sameTemperature;
    if (!off || off.degrees <= borne) continue;
    const degrees = read - off.nearest;
    const inTank = inDegreesOf(bath, read);
    found.push(
      messages.readingExtrapolated(words, { bath: inTank, nearest: off.nearest, degrees }),
    );
    break;
  }
  if (process === "bw-negative" && celsius < workableRange.from) {
    found.push(messages.temperatureRange(words, bath, "below"));
  }
  if (process === "bw-negative" && celsius > workableRange.to) {
    found.push(messages.temperatureRange(words, bath, "above"));
  }
  return found;
}

function lengthWarnings(
  words: PlanWords,
  { developer }: Worksheet,
  development: Development,
): readonly Warning[] {
  const { seconds, exact, base } = development;
  if (exact > longestSeconds + 0.5) return [messages.longerThanADay(words, exact)];
  if (seconds >= evenFrom) return [];
  const evenAt = celsiusFor(development, evenFrom);
  const fits =
    evenAt !== null && evenAt >= workableRange.from && beyond(base.rows, evenAt) === null;
  return [
    messages.shortDevelopment(
      words,
      seconds,
      fits ? words.writes.tenths(developer.temperature, evenAt) : null,
    ),
  ];
}

function stockWarnings(
  words: PlanWords,
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
    messages.stockShort(words, {
      tank: tank.volume,
      dilution: words.writes.dilution(dilution, words.mix.undiluted),
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

function bathWarnings(
  words: PlanWords,
  worksheet: Worksheet,
  { baths }: Planned,
): readonly Warning[] {
  const developer = toCelsius(worksheet.developer.temperature);
  const pouring = pouringSeconds(worksheet);
  return baths.flatMap((bath) => {
    const wish = worksheet.baths?.[bath.id];
    // A fill of the wash has its pouring added, so it is never too short.
    const tooShort = wish?.fills === undefined && bath.seconds < pouring - 1e-9;
    const step = (bath.temperature ?? developer) - developer;
    const tooFar = wish?.temperature && Math.abs(step) > gentleStep + sameTemperature;
    return [
      ...(tooShort ? [messages.bathTooShort(words, bath.label, bath.seconds, pouring)] : []),
      ...(tooFar ? [messages.temperatureStep(words, bath.label, wish.temperature, step)] : []),
    ];
  });
}

/** A language is spoken whatever the region. */
function languageWarnings(
  words: PlanWords,
  { language = usualLanguage }: Worksheet,
): readonly Warning[] {
  return languageOf(language) === null ? [messages.languageUnavailable(words, language)] : [];
}
