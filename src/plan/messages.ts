// Every warning about the time, the mix and the voice: its name, how grave it is, the figures in it.
// Apart from the code that finds them, so that each can be read and tested in any language's words. The
// other warnings stand by their topic in bath-messages.ts, warmth-messages.ts and contrast-messages.ts. It
// goes past 200 lines because each message is told from figures of its own.
import { writeClockTime } from "../units/clock-time.ts";
import { inDegreesOf, type Temperature } from "../units/temperature.ts";
import type { Volume } from "../units/volume.ts";
import { filmCount } from "./film-count.ts";
import { evenFrom, gentleStep } from "./limits.ts";
import type { Warning } from "./line.ts";
import type { PlanWords } from "./words/words.ts";
import type { LeafletRow } from "./worksheet.ts";

/** °C by which a bath lies outside the leaflet's rows, and the row it is nearest to. */
export interface Beyond {
  readonly bath: Temperature;
  readonly nearest: number;
  readonly degrees: number;
}

export function extrapolated(words: PlanWords, beyond: Beyond, tooFar: boolean): Warning {
  return {
    id: "extrapolated",
    severity: tooFar ? "stop" : "caution",
    text: words.warnings.extrapolated({
      ...offBy(words, beyond),
      bath: words.writes.temperature(beyond.bath),
      tooFar,
    }),
  };
}

export function driftExtrapolated(words: PlanWords, beyond: Beyond, endsAt: number): Warning {
  const { bath } = beyond;
  return {
    id: "drift-extrapolated",
    severity: "caution",
    text: words.warnings.driftExtrapolated({
      ...offBy(words, beyond),
      end: words.writes.temperature(inDegreesOf(bath, endsAt)),
      bath: words.writes.temperature(bath),
    }),
  };
}

function offBy({ writes }: PlanWords, { bath, nearest, degrees }: Beyond) {
  return {
    by: writes.degrees(inDegreesOf(bath, nearest), Math.abs(degrees)),
    row: writes.temperature(inDegreesOf(bath, nearest)),
    warmer: degrees > 0,
  };
}

/** Below: Wellington Photographic Handbook, p. 130. Above: US Army course SS0509, pp. 13–14. */
export function temperatureRange(
  { warnings, writes }: PlanWords,
  bath: Temperature,
  side: "below" | "above",
): Warning {
  const at = { bath: writes.temperature(bath) };
  return {
    id: "temperature-range",
    severity: "caution",
    text: side === "below" ? warnings.tooCold(at) : warnings.tooWarm(at),
  };
}

/** `evenAt`: the temperature at which it takes 5:00; null where the leaflet has none that would do. */
export function shortDevelopment(
  { warnings }: PlanWords,
  seconds: number,
  evenAt: string | null,
): Warning {
  const least = writeClockTime(evenFrom);
  const short = warnings.shortDevelopment({ time: writeClockTime(seconds), least });
  return {
    id: "short-development",
    severity: "caution",
    text: evenAt === null ? short : `${short} ${warnings.leastAt({ least, temperature: evenAt })}`,
  };
}

/** A row, what stands there, and the time that the others would have for it. */
export function rowOutOfLine(
  { warnings, writes }: PlanWords,
  row: LeafletRow,
  expected: number,
): Warning {
  return {
    id: "row-out-of-line",
    severity: "caution",
    text: warnings.rowOutOfLine({
      time: row.time,
      temperature: writes.temperature(row.temperature),
      expected: writeClockTime(Math.round(expected / 5) * 5),
    }),
  };
}

export function soughtNowhere({ warnings }: PlanWords, time: string): Warning {
  return { id: "sought-nowhere", severity: "note", text: warnings.soughtNowhere({ time }) };
}

/** `degrees`: °C beyond the nearest row. */
export function soughtBeyond(
  { warnings, writes }: PlanWords,
  time: string,
  temperature: string,
  like: Temperature,
  degrees: number,
): Warning {
  return {
    id: "sought-beyond",
    severity: "caution",
    text: warnings.soughtBeyond({ time, temperature, by: writes.degrees(like, degrees) }),
  };
}

/** Clock times: when it was done, and when it was still being read. */
export function readingsPastEnd({ warnings }: PlanWords, done: string, read: string): Warning {
  return {
    id: "readings-past-end",
    severity: "caution",
    text: warnings.readingsPastEnd({ done, read }),
  };
}

/** A reading in the tank that lies outside the leaflet's rows; `bath` is that reading. */
export function readingExtrapolated(words: PlanWords, beyond: Beyond): Warning {
  return {
    id: "reading-extrapolated",
    severity: "caution",
    text: words.warnings.readingExtrapolated({
      ...offBy(words, beyond),
      reading: words.writes.temperature(beyond.bath),
    }),
  };
}

/** Hours past which nobody wants the number. */
const mostHours = 1000;

export function longerThanADay({ warnings }: PlanWords, exact: number): Warning {
  const count = Math.ceil(exact / 3600);
  const hours =
    count > mostHours ? warnings.moreHours({ count: mostHours }) : warnings.hours({ count });
  return { id: "longer-than-a-day", severity: "stop", text: warnings.longerThanADay({ hours }) };
}

/** Each film as `"Gullrock 125" at 250`. */
export function mixedRatings(
  { warnings, writes }: PlanWords,
  films: readonly string[],
  first: string,
): Warning {
  return {
    id: "mixed-ratings",
    severity: "stop",
    text: warnings.mixedRatings({ films: writes.list(films), first }),
  };
}

export function leafletBackwards(
  { time, warnings, writes }: PlanWords,
  colder: LeafletRow,
  warmer: LeafletRow,
): Warning {
  const row = (it: LeafletRow) =>
    time.leaflet.row({ time: it.time, temperature: writes.temperature(it.temperature) });
  return {
    id: "leaflet-backwards",
    severity: "stop",
    text: warnings.leafletBackwards({ warmer: row(warmer), colder: row(colder) }),
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

export function stockShort(words: PlanWords, it: ShortStock): Warning {
  const volume = (millilitres: number) => words.writes.millilitres(it.tank, millilitres);
  return {
    id: "stock-short",
    severity: "stop",
    text: words.warnings.stockShort({
      tank: words.writes.volume(it.tank),
      dilution: it.dilution,
      stock: volume(it.stock),
      needed: volume(it.needed),
      films: filmCount(words, it.films),
      wanted: volume(it.wanted),
      served: filmCount(words, it.served),
    }),
  };
}

/** Seconds: what the bath has, and what pouring takes of them. */
export function bathTooShort(
  { warnings, writes }: PlanWords,
  bath: string,
  seconds: number,
  pouring: number,
): Warning {
  return {
    id: "bath-too-short",
    severity: "stop",
    text: warnings.bathTooShort({
      bath,
      time: writeClockTime(seconds),
      pouring: `${writes.number(pouring, 1)} s`,
      least: writeClockTime(Math.ceil(pouring)),
    }),
  };
}

export function temperatureStep(
  { warnings, writes }: PlanWords,
  label: string,
  bath: Temperature,
  celsius: number,
): Warning {
  return {
    id: "temperature-step",
    severity: "caution",
    text: warnings.temperatureStep({
      bath: label,
      temperature: writes.temperature(bath),
      by: writes.degrees(bath, Math.abs(celsius)),
      most: writes.degrees(bath, gentleStep),
      warmer: celsius > 0,
    }),
  };
}

export function languageUnavailable({ warnings }: PlanWords, language: string): Warning {
  return {
    id: "language-unavailable",
    severity: "note",
    text: warnings.languageUnavailable({ language }),
  };
}
