// What the drawings of curves show and say. Numbers come ready written, with their units.

/** `"2 rijen"`, and one of them in the singular. */
const counted = (count: number, one: string, many: string) =>
  `${count} ${count === 1 ? one : many}`;

/** `"temperatuur, °F"`. */
const temperatureIn = (unit: string) => `temperatuur, ${unit}`;

export const curve = {
  /** What stands for a drawing with those who do not see it. */
  picture: (title: string, says: string) => `${title}. ${says}`,
};

export const leafletCurve = {
  title: "Ontwikkeltijd per temperatuur",
  across: temperatureIn,
  up: "tijd",
  leaflet: "bijsluiter",
  thisFilm: "deze film",
  outOfLine: "wijkt af",
  at: (time: string, temperature: string) => `${time} bij ${temperature}`,
  least: (time: string) => `${time}, het minste`,
  rows: (count: number) => `${counted(count, "rij", "rijen")} uit de bijsluiter`,
  from: (rows: string, cold: string, warm: string) => `${rows}, van ${cold} tot ${warm}.`,
  alone: (row: string, at: string) => `${row}: ${at}.`,
  odd: (count: number) => `${counted(count, "rij wijkt", "rijen wijken")} af van de andere.`,
  times: (factor: string) =>
    `Deze film heeft ${factor} keer zo veel tijd nodig als de bijsluiter zegt.`,
  today: (at: string) => `Vandaag: ${at}.`,
  beyond: "Dat ligt buiten de rijen van de bijsluiter.",
  sought: (at: string) => `Gezocht: ${at}.`,
};

export const temperingCurve = {
  title: "Temperatuurverloop",
  across: "vanaf de eerste meting",
  up: temperatureIn,
  wanted: (temperature: string) => `${temperature} gewenst`,
  settles: "blijft hier staan",
  between: (from: string, to: string) => `${from} tot ${to}`,
  since: (from: string) => `vanaf ${from}`,
  none: "Nog geen meting.",
  one: (temperature: string) => `Eén meting: ${temperature}.`,
  readings: (count: number, first: string, last: string, time: string) =>
    `${counted(count, "meting", "metingen")}, van ${first} naar ${last} in ${time}.`,
  reaches: (temperature: string, at: string, when: string) =>
    `Na ${at} is het ${temperature}, waarschijnlijk ${when}.`,
  settling: (from: string, to: string) => `Het blijft staan tussen ${from} en ${to}.`,
};

export const contrastCurve = {
  title: "Contrast per ontwikkeltijd",
  across: "ontwikkeltijd",
  up: "gemiddelde gradiënt",
  at: (gradient: string, time: string) => `${gradient} bij ${time}`,
  limit: (gradient: string) => `${gradient}, de grens`,
  tests: (count: number) => counted(count, "test", "tests"),
  from: (tests: string, first: string, last: string) => `${tests}, van ${first} tot ${last}.`,
  alone: (tests: string, only: string) => `${tests}: ${only}.`,
  none: "Nog geen test.",
  wanted: (at: string) => `Gewenst: ${at}.`,
  beyond: "Dat ligt buiten de geteste tijden.",
  most: (gradient: string) => `Geen enkele tijd komt boven ${gradient} uit.`,
};

export const wedgeCurve = {
  title: "Dichtheid per belichting",
  across: "log. belichting, luxseconden",
  fromFirst: "log. belichting vanaf de eerste trap",
  up: "dichtheid",
  speed: "gevoeligheidspunt",
  speeds: "gevoeligheidspunten",
  span: (length: string) => `over ${length}`,
  films: (count: number) => `${counted(count, "testfilm", "testfilms")}.`,
  rises: (label: string, low: string, high: string) =>
    `${label}: dichtheid van ${low} tot ${high}.`,
  speedPoint: (label: string, at: string) => `Gevoeligheidspunt van ${label} bij ${at}.`,
};
