// Every warning about the time, the mix and the voice: what is the matter, why it matters, what would do.
// Apart from the code that finds them, so that they are read, translated and tested as words. The other
// warnings stand by their topic in bath-messages.ts, warmth-messages.ts and contrast-messages.ts. It goes
// past 200 lines because each message is a sentence of its own.
import { writeClockTime } from "../units/clock-time.ts";
import {
  inDegreesOf,
  type Temperature,
  writeDegrees,
  writeTemperature,
} from "../units/temperature.ts";
import { type Volume, writeMillilitres, writeVolume } from "../units/volume.ts";
import { writeNumber } from "../units/written-number.ts";
import type { Warning } from "./line.ts";
import type { LeafletRow } from "./worksheet.ts";

/** °C by which a bath lies outside the leaflet's rows, and the row it is nearest to. */
export interface Beyond {
  readonly bath: Temperature;
  readonly nearest: number;
  readonly degrees: number;
}

export function extrapolated(beyond: Beyond, tooFar: boolean): Warning {
  const { bath, nearest } = beyond;
  const row = writeTemperature(inDegreesOf(bath, nearest));
  const why = tooFar
    ? "so far from the rows that the time cannot be trusted"
    : "so the time follows a slope that is not known there";
  return {
    id: "extrapolated",
    severity: tooFar ? "stop" : "caution",
    text: `The developer is ${offBy(beyond)} than the leaflet's nearest row (${row}), ${why}. Bring it nearer to ${row}, or add the leaflet's row for ${writeTemperature(bath)}.`,
  };
}

export function driftExtrapolated(beyond: Beyond, endsAt: number): Warning {
  const { bath, nearest } = beyond;
  const end = writeTemperature(inDegreesOf(bath, endsAt));
  const row = writeTemperature(inDegreesOf(bath, nearest));
  return {
    id: "drift-extrapolated",
    severity: "caution",
    text: `The tank drifts to ${end} by the end, ${offBy(beyond)} than the leaflet's nearest row (${row}), so the last part of the time follows a slope that is not known there. Stand the tank in water at ${writeTemperature(bath)}.`,
  };
}

function offBy({ bath, nearest, degrees }: Beyond): string {
  const warmer = degrees > 0;
  const by = writeDegrees(inDegreesOf(bath, nearest), Math.abs(degrees));
  return `${by} ${warmer ? "warmer" : "colder"}`;
}

/** Below: Wellington Photographic Handbook, p. 130. Above: US Army course SS0509, pp. 13–14. */
export function temperatureRange(bath: Temperature, side: "below" | "above"): Warning {
  const text =
    side === "below"
      ? "Below 15.6 °C (60 °F) a developer with hydroquinone rapidly loses power, and more time does not make up for it. Warm the bath."
      : "Above 26.7 °C (80 °F) the gelatin softens and the time is too short to keep well. Cool the bath.";
  return {
    id: "temperature-range",
    severity: "caution",
    text: `The developer is at ${writeTemperature(bath)}. ${text}`,
  };
}

/** `evenAt`: the temperature at which it takes 5:00; null where the leaflet has none that would do. */
export function shortDevelopment(seconds: number, evenAt: string | null): Warning {
  const cooler = evenAt === null ? "" : ` By this leaflet it takes 5:00 at ${evenAt}.`;
  return {
    id: "short-development",
    severity: "caution",
    text: `Development takes ${writeClockTime(seconds)}. In less than 5:00 the parts wetted first come out visibly denser. A weaker dilution or a cooler bath takes longer.${cooler}`,
  };
}

/** A row, what stands there, and the time that the others would have for it. */
export function rowOutOfLine(row: LeafletRow, expected: number): Warning {
  const at = writeTemperature(row.temperature);
  return {
    id: "row-out-of-line",
    severity: "caution",
    text: `One row of the leaflet is out of line with the others: ${row.time} at ${at}, where they point to about ${writeClockTime(Math.round(expected / 5) * 5)}. Look at it again: a digit is soon misread.`,
  };
}

export function soughtNowhere(time: string): Warning {
  return {
    id: "sought-nowhere",
    severity: "note",
    text: `No temperature can be named for ${time}: the leaflet's times do not fall all the way as it gets warmer.`,
  };
}

/** `degrees`: °C beyond the nearest row. */
export function soughtBeyond(
  time: string,
  at: string,
  like: Temperature,
  degrees: number,
): Warning {
  return {
    id: "sought-beyond",
    severity: "caution",
    text: `${time} would come at ${at}, but that is ${writeDegrees(like, degrees)} beyond the leaflet's rows, where its slope is not known.`,
  };
}

/** Clock times: when it was done, and when it was still being read. */
export function readingsPastEnd(done: string, read: string): Warning {
  return {
    id: "readings-past-end",
    severity: "caution",
    text: `By the readings in the tank the development was done at ${done}, before the reading at ${read}. A little over does little harm; pour out now and note it.`,
  };
}

/** A reading in the tank that lies outside the leaflet's rows; `reading` in place of the mixed bath. */
export function readingExtrapolated({ bath, nearest, degrees }: Beyond): Warning {
  const row = writeTemperature(inDegreesOf(bath, nearest));
  return {
    id: "reading-extrapolated",
    severity: "caution",
    text: `In the tank it was ${writeTemperature(bath)}, ${offBy({ bath, nearest, degrees })} than the leaflet's nearest row (${row}), so that part of the time follows a slope that is not known there.`,
  };
}

export function longerThanADay(exact: number): Warning {
  const hours = Math.ceil(exact / 3600);
  const length = hours > 1000 ? "more than 1000 hours" : `${hours} hours`;
  return {
    id: "longer-than-a-day",
    severity: "stop",
    text: `Development works out at ${length} and is cut to 24:00:00, which is not what was worked out. Look for a slip in the leaflet's rows, the temperatures or the ratings.`,
  };
}

/** Each film as `"Gullrock 125" at 250`. */
export function mixedRatings(films: readonly string[], first: string): Warning {
  return {
    id: "mixed-ratings",
    severity: "stop",
    text: `The films do not share one rating: ${films.join(", ")}. Each needs a time of its own, and a time between them is right for none; this plan is for "${first}" alone. Develop the others by themselves.`,
  };
}

export function leafletBackwards(colder: LeafletRow, warmer: LeafletRow): Warning {
  const row = (it: LeafletRow) => `${it.time} at ${writeTemperature(it.temperature)}`;
  return {
    id: "leaflet-backwards",
    severity: "stop",
    text: `The leaflet's times get shorter as it gets colder: ${row(warmer)}, but ${row(colder)}. A colder bath works more slowly, so one of the two was misread. Correct that row.`,
  };
}

export interface ShortStock {
  /** The tank's volume as typed; the other volumes are ml. */
  readonly tank: Volume;
  readonly dilution: string;
  readonly stock: number;
  readonly needed: number;
  /** The tank volume that would hold what is needed. */
  readonly wanted: number;
  /** Films of 80 sq in: in the tank, and as many as the stock serves. */
  readonly films: number;
  readonly served: number;
}

export function stockShort(it: ShortStock): Warning {
  const volume = (millilitres: number) => writeMillilitres(it.tank, millilitres);
  return {
    id: "stock-short",
    severity: "stop",
    text: `${writeVolume(it.tank)} of ${it.dilution} holds ${volume(it.stock)} of stock, but ${volume(it.needed)} is needed for ${filmCount(it.films)} of 80 sq in: the developer would be used up before the film is done. A tank volume of ${volume(it.wanted)} would do; ${writeVolume(it.tank)} serves ${filmCount(it.served)} of 80 sq in.`,
  };
}

/** `"1 film"`, `"2.5 films"`, to a hundredth. */
export function filmCount(films: number): string {
  return `${writeNumber(films)} ${Math.abs(films - 1) < 0.005 ? "film" : "films"}`;
}

/** Seconds: what the bath has, and what pouring takes of them. */
export function bathTooShort(label: string, seconds: number, pouring: number): Warning {
  return {
    id: "bath-too-short",
    severity: "stop",
    text: `${label}: in ${writeClockTime(seconds)} the pour-out would begin before the tank is full, since pouring takes ${writeNumber(pouring, 1)} s of that time. Give it ${writeClockTime(Math.ceil(pouring))} or more, pour faster, or count the time from a full tank.`,
  };
}

export function temperatureStep(label: string, bath: Temperature, celsius: number): Warning {
  const by = writeDegrees(bath, Math.abs(celsius));
  return {
    id: "temperature-step",
    severity: "caution",
    text: `${label} is at ${writeTemperature(bath)}, ${by} ${celsius > 0 ? "warmer" : "colder"} than the developer. A step of more than ${writeDegrees(bath, 3)} can wrinkle the gelatin. Bring the baths closer together.`,
  };
}

export function languageUnavailable(language: string): Warning {
  return {
    id: "language-unavailable",
    severity: "note",
    text: `There is no voice for the language "${language}" yet, so the voice speaks English.`,
  };
}
