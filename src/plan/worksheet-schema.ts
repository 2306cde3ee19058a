// What a worksheet may hold, field by field, as a valibot schema: the checker's and JSON Schema's source.
// Rules that span fields stand in cross-faults.ts.
import {
  number as anyNumber,
  boolean,
  check,
  description,
  type GenericSchema,
  gtValue,
  literal,
  maxValue,
  never,
  exactOptional as optional,
  pipe,
  regex,
  string,
} from "valibot";
import { processBaths } from "../trade/baths.ts";
import { methods } from "../trade/method.ts";
import { filmSizeMay, filmSizePattern, readFilmSize } from "../units/film-size.ts";
import { dilutionMay, dilutionPattern, readDilution } from "../units/parts.ts";
import {
  choice,
  clockTime,
  fields,
  label,
  list,
  number,
  temperature,
  volume,
  whole,
  written,
} from "./schema-parts.ts";
import type { BathWish, Worksheet } from "./worksheet.ts";

const day = 86_400;

const bathTemperature = (of: string) => temperature(-10, 110, of);

const speed = (of: string) => number(0.1, 1_000_000, of);

const agitation = fields("how the film is agitated", {
  first: number(0, day, "seconds without a break once the tank is full"),
  every: number(0, day, "seconds from one bout's beginning to the next one's"),
  for: number(
    0,
    day,
    'seconds a bout lasts; 0 to let it stand, as many as "every" to go on throughout',
  ),
  perInversion: number(0.5, 60, "seconds for one inversion and back"),
  taps: whole(0, 20, "taps after each bout"),
});

const film = fields("a film, or several alike", {
  label: label("what you call the film"),
  size: written(filmSizePattern, readFilmSize, filmSizeMay),
  count: whole(1, 100, "how many of them"),
  boxSpeed: optional(speed("the ISO speed printed on the box")),
  exposureIndex: optional(speed("the speed it was metered at, if not the box speed")),
});

const leafletRow = fields("a time that the leaflet gives", {
  temperature: bathTemperature("the row's temperature"),
  time: clockTime("the row's time"),
  exposureIndex: optional(speed("the rating that the leaflet gives this row for")),
});

const developer = fields("the developer", {
  label: label("what you call the developer"),
  dilution: optional(written(dilutionPattern, readDilution, dilutionMay)),
  leaflet: list(1, 200, leafletRow, "times with their temperatures, read off the leaflet"),
  temperature: bathTemperature("measured in the mixed bath, now"),
  perDegree: optional(
    pipe(
      anyNumber(),
      gtValue(0),
      maxValue(1),
      description("a number above 0, up to 1: by how much ln(time) falls for each °C"),
    ),
  ),
  perStop: optional(
    fields('"pull" and "push", the fraction of the time for a stop', {
      pull: number(0, 0.9, "the fraction taken off for a stop over"),
      push: number(0, 5, "the fraction added for a stop under"),
    }),
  ),
  stockPerFilm: optional(volume(0.1, 100_000, "the least stock that 80 sq in of film needs")),
  filmsBefore: optional(
    number(0, 10_000, "films of 80 sq in that this solution has developed already"),
  ),
  perFilmBefore: optional(number(0, 10, "the fraction of the time added for each of those films")),
});

const tank = fields("the tank", {
  method: choice(methods, "how it is agitated"),
  volume: volume(1, 100_000, "what it takes to cover the film"),
  pourIn: number(1, 600, "seconds to fill it"),
  pourOut: number(1, 600, "seconds to empty it"),
  handover: optional(number(0, 600, "seconds from empty to the next pour-in")),
  timeFactor: optional(number(0.1, 5, "factor on the development time for this method")),
  room: optional(temperature(-40, 60, "what the tank drifts toward")),
  halfway: optional(number(0.1, 100_000, "minutes in which it goes half-way there")),
});

const clock = fields("when a bath's time begins and ends", {
  starts: choice(["pour-in", "full"], "the first drop in, or a full tank"),
  ends: choice(["pour-out", "empty"], "the pour-out's beginning, or an empty tank"),
});

const commonWishes = {
  temperature: optional(bathTemperature("the bath's temperature")),
  agitation: optional(agitation),
  afterwards: optional(choice(["drain", "waste", "return"], "where the bath goes afterwards")),
};

const timedWishes = {
  time: optional(clockTime("the bath's time")),
  skip: optional(pipe(boolean(), description("true or false: true leaves the bath out"))),
  ...commonWishes,
};

const bathWish = fields("what this bath shall be", timedWishes);

const washWish = fields("what the wash shall be", {
  ...timedWishes,
  fills: optional(
    list(
      1,
      20,
      whole(1, 200, "inversions in this fill"),
      "the inversions in each fill of fresh water",
    ),
  ),
});

const developerWish = fields("what the developer shall be, besides developer itself", {
  time: optional(
    pipe(never(), description("nothing: the developer's time comes from the leaflet")),
  ),
  skip: optional(pipe(never(), description("nothing: nothing develops without a developer"))),
  ...commonWishes,
});

function wishFor(bath: { readonly id: string; readonly seconds: number | null }) {
  const wish: GenericSchema<BathWish> =
    bath.seconds === null ? developerWish : bath.id === "wash" ? washWish : bathWish;
  return [bath.id, optional(wish)] as const;
}

// Valibot makes an optional entry under an unnamed key "or undefined", which an exact one never is.
const baths = fields(
  "baths by id, each with what it shall be",
  Object.fromEntries(Object.values(processBaths).flatMap((of) => of.map(wishFor))),
) as GenericSchema as GenericSchema<NonNullable<Worksheet["baths"]>>;

function wellFormedLanguage(tag: string): boolean {
  try {
    return Intl.getCanonicalLocales(tag).length === 1;
  } catch {
    return false;
  }
}

export const worksheetSchema: GenericSchema<Worksheet> = fields("a worksheet", {
  tankside: pipe(literal(1), description("1, the version of worksheet that this is")),
  title: optional(label("what you call this development")),
  language: optional(
    pipe(
      string(),
      regex(/^(?:[A-Za-z]{2,3}|[A-Za-z]{5,8})(?:-[A-Za-z0-9]{1,8}){0,8}$/),
      check(wellFormedLanguage),
      description('a language tag (BCP 47) such as "en" or "de-AT"'),
    ),
  ),
  process: choice(Object.keys(processBaths), "the process"),
  films: list(1, 50, film, "the films in the tank"),
  developer,
  tank,
  agitation,
  clock,
  baths: optional(baths),
  voice: optional(
    fields("how the voice speaks", {
      detail: optional(choice(["full", "brief", "tones"], "how much is said")),
      rate: optional(number(0.8, 1.6, "the pace of speech, 1 as recorded")),
    }),
  ),
});
