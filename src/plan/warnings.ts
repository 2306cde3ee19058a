// Worksheet and plan in, what a person should know before pouring out.
// Alone, because each rule is a limit of the trade that someone will want to check by itself.
import { filmsServed, stockSuffices } from "../trade/capacity.ts";
import { totalHolding } from "../trade/dilution.ts";
import { beyond, sameTemperature } from "../trade/time-temperature.ts";
import { longestSeconds } from "../units/clock-time.ts";
import { writeDilution } from "../units/parts.ts";
import { inDegreesOf, toCelsius, writeTenths } from "../units/temperature.ts";
import { mlPerFlOz, toMillilitres } from "../units/volume.ts";
import { celsiusFor, evenFrom, soughtWarnings } from "./backwards.ts";
import { capacityWarnings } from "./capacity.ts";
import type { Development } from "./development.ts";
import { pouringSeconds } from "./fills.ts";
import { nominalFilms } from "./film-area.ts";
import { fixerWarnings } from "./fixing.ts";
import { handsWarnings } from "./hands.ts";
import { leafletWarnings, outOfLineWarnings, ratingWarnings } from "./leaflet-warnings.ts";
import { about, type Warning } from "./line.ts";
import { measuredWarnings } from "./measured-lines.ts";
import * as messages from "./messages.ts";
import type { Plan } from "./plan.ts";
import { dilutionOf } from "./planned-baths.ts";
import { washWarnings } from "./washing.ts";
import type { Worksheet } from "./worksheet.ts";

/** °C outside the leaflet's rows up to which the slope may be followed with care. */
const carefulBeyond = 2;

/** °C. Below, hydroquinone loses power; above, gelatin softens. Sources stand with the messages. */
const workableRange = { from: 15.6, to: 26.7 };

/** °C between developer and another bath that gelatin bears; common practice. */
const gentleStep = 3;

/** What the warnings look at beside the worksheet. */
export type Planned = Pick<Plan, "developmentSeconds" | "mix" | "baths">;

/** In order: what makes the time wrong, then the mix, what else was asked, the baths, the voice. */
export function warningsFor(
  worksheet: Worksheet,
  development: Development,
  planned: Planned,
  beside: Plan["warnings"],
): Plan["warnings"] {
  const { developer, films } = worksheet;
  return [
    ...about("time", [
      ...leafletWarnings(development),
      ...outOfLineWarnings(development),
      ...ratingWarnings(films, development.leaflet),
      ...temperatureWarnings(worksheet, development),
      ...measuredWarnings(development),
      ...lengthWarnings(worksheet, development),
      ...soughtWarnings(developer, development),
    ]),
    ...about("mix", stockWarnings(worksheet, planned)),
    ...beside,
    ...about("hands", handsWarnings(worksheet)),
    ...about("baths", [
      ...bathWarnings(worksheet, planned),
      ...fixerWarnings(worksheet),
      ...washWarnings(worksheet, planned.baths),
      ...capacityWarnings(worksheet, planned.baths),
      ...languageWarnings(worksheet),
    ]),
  ];
}

function temperatureWarnings(
  { process, developer }: Worksheet,
  { base, celsius, drifting, measured }: Development,
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
  // The first is the mixed bath's own, of which more has been said above.
  for (const { celsius: read } of measured?.readings.slice(1) ?? []) {
    const off = beyond(base.rows, read);
    const borne = Math.max(carefulBeyond, outside?.degrees ?? 0) + sameTemperature;
    if (!off || off.degrees <= borne) continue;
    const degrees = read - off.nearest;
    const inTank = inDegreesOf(bath, read);
    found.push(messages.readingExtrapolated({ bath: inTank, nearest: off.nearest, degrees }));
    break;
  }
  if (process === "bw-negative" && celsius < workableRange.from) {
    found.push(messages.temperatureRange(bath, "below"));
  }
  if (process === "bw-negative" && celsius > workableRange.to) {
    found.push(messages.temperatureRange(bath, "above"));
  }
  return found;
}

function lengthWarnings({ developer }: Worksheet, development: Development): readonly Warning[] {
  const { seconds, exact, base } = development;
  if (exact > longestSeconds + 0.5) return [messages.longerThanADay(exact)];
  if (seconds >= evenFrom) return [];
  const evenAt = celsiusFor(development, evenFrom);
  const fits =
    evenAt !== null && evenAt >= workableRange.from && beyond(base.rows, evenAt) === null;
  return [
    messages.shortDevelopment(seconds, fits ? writeTenths(developer.temperature, evenAt) : null),
  ];
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
