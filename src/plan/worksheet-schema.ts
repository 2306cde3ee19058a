// What a worksheet may hold, field by field, as a valibot schema: the checker's and JSON Schema's source.
// Rules that span fields stand in cross-faults.ts, the baths in bath-schema.ts. A little past 200 lines, as the
// fields are read beside one another.
import {
  number as anyNumber,
  check,
  description,
  type GenericSchema,
  gtValue,
  literal,
  maxValue,
  exactOptional as optional,
  pipe,
  regex,
  string,
} from "valibot";
import { processBaths } from "../trade/baths.ts";
import { methods } from "../trade/method.ts";
import {
  clockTimePattern,
  readTimeOfDay,
  timeOfDayMay,
  timeOfDayPattern,
} from "../units/clock-time.ts";
import { filmSizeMay, filmSizePattern, readFilmSize } from "../units/film-size.ts";
import { dilutionMay, dilutionPattern, readDilution } from "../units/parts.ts";
import { agitation, baths, bathTemperature, bottle, filmsPerLitre, kept } from "./bath-schema.ts";
import { darkWaitMay, readDarkWait } from "./dark-wait.ts";
import {
  choice,
  clockReading,
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
import type { Worksheet } from "./worksheet.ts";

const speed = (of: string) => number(0.1, 1_000_000, of);

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

const thermometerRow = (clock: string, of: string) =>
  fields("a thermometer reading", {
    at: clockReading(`when it was read, ${clock}`),
    temperature: bathTemperature(of),
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
  soughtTime: optional(clockTime("a time for which the temperature is asked")),
  readings: optional(
    list(
      1,
      100,
      thermometerRow("on the developer's own clock", "what it said in the tank"),
      "thermometer readings taken while it develops",
    ),
  ),
  filmsPerLitre,
  kept,
  replenishPerFilm: optional(volume(0.1, 100_000, "replenisher due for each film of 80 sq in")),
  bottle,
});

const tries = (of: string) =>
  optional(list(1, 20, number(0.1, 600, "seconds"), `seconds, one entry a try: ${of}`));

const tank = fields("the tank", {
  label: optional(label("what you call the tank")),
  method: choice(methods, "how it is agitated"),
  volume: volume(1, 100_000, "what it takes to cover the film"),
  pourIn: number(1, 600, "seconds to fill it"),
  pourOut: number(1, 600, "seconds to empty it"),
  handover: optional(number(0, 600, "seconds from empty to the next pour-in")),
  timeFactor: optional(number(0.1, 5, "factor on the development time for this method")),
  room: optional(temperature(-40, 60, "what the tank drifts toward")),
  halfway: optional(number(0.1, 100_000, "minutes in which it goes half-way there")),
  measured: optional(
    fields("your own times with this tank, as measured", {
      pourIn: tries("to fill it"),
      pourOut: tries("to empty it"),
      perInversion: tries("for one inversion and back"),
    }),
  ),
});

const clock = fields("when a bath's time begins and ends", {
  starts: choice(["pour-in", "full"], "the first drop in, or a full tank"),
  ends: choice(["pour-out", "empty"], "the pour-out's beginning, or an empty tank"),
});

const mixing = fields("stock and two taps, to be mixed to a temperature", {
  target: bathTemperature("what the mix shall have"),
  stock: bathTemperature("the stock's"),
  cold: temperature(0, 100, "the cold tap's"),
  hot: temperature(0, 100, "the hot tap's"),
  mark: optional(volume(0.1, 1000, "from one mark of the graduate to the next")),
});

const tempering = fields("a developer in its water bath", {
  target: bathTemperature("what the developer shall come to"),
  readings: list(
    1,
    200,
    thermometerRow("on one clock from 0:00", "what it said in the developer"),
    "thermometer readings with their times",
  ),
  bath: optional(temperature(-10, 110, "the water bath's temperature")),
  bathVolume: optional(volume(10, 1_000_000, "the water in the water bath")),
  began: optional(written(timeOfDayPattern, readTimeOfDay, timeOfDayMay)),
});

const darkWait = written(clockTimePattern, readDarkWait, darkWaitMay);

const density = (of: string) => number(0, 6, of);

const testFilm = fields("a test film", {
  time: clockTime("how long it was developed"),
  gradient: optional(number(0.01, 5, "its mean gradient")),
  densities: optional(
    list(3, 60, density("a step's density"), "the wedge's densities, the least exposed step first"),
  ),
  baseFog: optional(density("the density of the unexposed, developed film")),
});

const contrast = fields("what test films showed", {
  tests: list(1, 30, testFilm, "test films"),
  wanted: optional(number(0.05, 5, "the mean gradient wanted")),
  stepLog: optional(number(0.01, 2, "log10 of the exposure from one step to the next")),
  firstLog: optional(number(-8, 4, "log10 of the first step's exposure in lux seconds")),
});

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
  darkWait: optional(darkWait),
  loading: optional(choice(["done"], "whether the film is in the closed tank already")),
  baths: optional(baths),
  mixing: optional(mixing),
  tempering: optional(tempering),
  contrast: optional(contrast),
  voice: optional(
    fields("how the voice speaks", {
      detail: optional(choice(["full", "brief", "tones"], "how much is said")),
      rate: optional(number(0.8, 1.6, "the pace of speech, 1 as recorded")),
    }),
  ),
});
