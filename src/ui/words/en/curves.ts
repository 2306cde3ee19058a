// What the drawings of curves show and say. Numbers come ready written, with their units.

/** `"2 rows"`, and one of them without the s. */
const counted = (count: number, one: string, many: string) =>
  `${count} ${count === 1 ? one : many}`;

/** `"temperature, °F"`. */
const temperatureIn = (unit: string) => `temperature, ${unit}`;

export const curve = {
  /** What stands for a drawing with those who do not see it. */
  picture: (title: string, says: string) => `${title}. ${says}`,
};

export const leafletCurve = {
  title: "Development time by temperature",
  across: temperatureIn,
  up: "time",
  leaflet: "leaflet",
  thisFilm: "this film",
  outOfLine: "out of line",
  at: (time: string, temperature: string) => `${time} at ${temperature}`,
  least: (time: string) => `${time}, the least`,
  rows: (count: number) => `${counted(count, "row", "rows")} of the leaflet`,
  from: (rows: string, cold: string, warm: string) => `${rows}, from ${cold} to ${warm}.`,
  alone: (row: string, at: string) => `${row}: ${at}.`,
  odd: (count: number) => `${counted(count, "row is", "rows are")} out of line with the others.`,
  times: (factor: string) => `This film takes ${factor} times as long as the leaflet says.`,
  today: (at: string) => `Today: ${at}.`,
  beyond: "That is beyond the leaflet's rows.",
  sought: (at: string) => `Sought: ${at}.`,
};

export const temperingCurve = {
  title: "Temperature by time",
  across: "from the first reading",
  up: temperatureIn,
  wanted: (temperature: string) => `${temperature} wanted`,
  settles: "settles here",
  between: (from: string, to: string) => `${from} to ${to}`,
  since: (from: string) => `from ${from}`,
  none: "No reading yet.",
  one: (temperature: string) => `One reading: ${temperature}.`,
  readings: (count: number, first: string, last: string, time: string) =>
    `${count} readings, from ${first} to ${last} in ${time}.`,
  reaches: (temperature: string, at: string, when: string) =>
    `It is at ${temperature} after ${at}, likely ${when}.`,
  settling: (from: string, to: string) => `It settles between ${from} and ${to}.`,
};

export const contrastCurve = {
  title: "Contrast by development time",
  across: "development time",
  up: "mean gradient",
  at: (gradient: string, time: string) => `${gradient} at ${time}`,
  limit: (gradient: string) => `${gradient}, the limit`,
  tests: (count: number) => counted(count, "test", "tests"),
  from: (tests: string, first: string, last: string) => `${tests}, from ${first} to ${last}.`,
  alone: (tests: string, only: string) => `${tests}: ${only}.`,
  none: "No test yet.",
  wanted: (at: string) => `Wanted: ${at}.`,
  beyond: "That is beyond the tested times.",
  most: (gradient: string) => `No time gets beyond ${gradient}.`,
};

export const wedgeCurve = {
  title: "Density by exposure",
  across: "log exposure, lux seconds",
  fromFirst: "log exposure from the first step",
  up: "density",
  speed: "speed point",
  speeds: "speed points",
  span: (length: string) => `over ${length}`,
  films: (count: number) => `${counted(count, "test film", "test films")}.`,
  rises: (label: string, low: string, high: string) => `${label}: density from ${low} to ${high}.`,
  speedPoint: (label: string, at: string) => `Speed point of ${label} at ${at}.`,
};
