// The shapes of what a field may hold that are made with gaps, and every sentence of the rules between fields.
// Alone, so that the checker fills in, and a language's table is looked up by, one and the same text.
import { clockTimeMay } from "../units/clock-time.ts";

/** What the parts of a schema say, `of` being what the field is. */
export const partsMay = {
  number: "a number from {from} to {to}: {of}",
  whole: "a whole number from {from} to {to}: {of}",
  label: "one line of 1 to 200 characters: {of}",
  clockTime: `${clockTimeMay}, above 0:00 and up to 24:00:00: {of}`,
  clockReading: `${clockTimeMay}, from 0:00 up to 24:00:00: {of}`,
  temperature:
    'a temperature, { "c": 20 } or { "f": 68 }, from {from} to {to} °C or {fromF} to {toF} °F: {of}',
  volume:
    'a volume, { "ml": 600 } or { "flOz": 20 }, from {from} to {to} ml or {fromOz} to {toOz} US fl oz: {of}',
  object: "an object: {of}",
  list: "a list of {from} to {to}: {of}",
} as const;

/** What is said of a field that nobody knows, and of a file that is no worksheet. */
export const fileMay = {
  meant: 'nothing: there is no such field; did you mean "{name}"?',
  noSuchField: "nothing: there is no such field here, only {names}",
  worksheet: 'a worksheet: a JSON object that begins with { "tankside": 1',
  jsonBreaks: "{may}; it stops being JSON on line {line}",
  noJson: "{may}; this is not JSON",
} as const;

/** The rules between fields. Names of fields stand as in the file. */
export const crossMay = {
  boxSpeed:
    "the ISO speed printed on the box, such as 125: the leaflet has no row for {rating}, so the stops are counted from the box speed",
  servingRow: 'at least one row that serves "{film}": a row without "exposureIndex"',
  servingRowOrFor:
    'at least one row that serves "{film}": a row without "exposureIndex" or for {box}',
  oneTime: '"{time}", as {path} gives for {temperature} too: one temperature has one time',
  halfway: "minutes, since tank.room is given: both or neither",
  room: 'a temperature such as { "c": 20 }, since tank.halfway is given: both or neither',
  foreignBath: 'nothing: "{process}" has no such bath, only {baths}',
  fillsTime: "nothing beside {path}, which make the time themselves",
  twoTemperatures: "nothing, since developer.temperature says {temperature}",
  fillsOrFlow: "nothing beside {path}: one or the other",
  carryOver: 'a volume such as { "ml": 20 }, since {path} is given',
  filmsPerLitre: "films of 80 sq in that a litre serves, such as 20, since {path} is given",
  oneTemperature: "{temperature}, as another reading at {at} says: one moment has one temperature",
  coldTap: "{temperature} or less, since mixing.hot is no warmer",
  waterBath: 'a temperature such as { "c": 20 }, since tempering.bathVolume is given',
  stepLog:
    "log10 of the exposure from one step to the next, such as 0.15, since densities are given",
  gradient: "its mean gradient such as 0.6, or densities",
  densities: "nothing beside densities, which give it",
  baseFog: "the density of the unexposed, developed film, such as 0.3, since densities are given",
} as const;

/** What is said of a line of a leaflet's text. */
export const leafletMay = {
  row: 'a temperature and a time, such as "68 °F 10:00", "20 °C 11½ min" or "20; 9:30; EI 400"',
  lines: "no more than {lines} lines",
  unit: '{may}; "{typed}" wants its unit, °C or °F',
  twoTemperatures: "{may}; the two temperatures on this line are not the same",
} as const;
