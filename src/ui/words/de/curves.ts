// What the drawings of curves show and say. Numbers come ready written, with their units.

/** `"2 Zeilen"`, and one of them in the singular. */
const counted = (count: number, one: string, many: string) =>
  `${count} ${count === 1 ? one : many}`;

/** `"Temperatur, °F"`. */
const temperatureIn = (unit: string) => `Temperatur, ${unit}`;

export const curve = {
  /** What stands for a drawing with those who do not see it. */
  picture: (title: string, says: string) => `${title}. ${says}`,
};

export const leafletCurve = {
  title: "Entwicklungs\u00adzeit nach Temperatur",
  across: temperatureIn,
  up: "Zeit",
  leaflet: "Datenblatt",
  thisFilm: "dieser Film",
  outOfLine: "aus der Reihe",
  at: (time: string, temperature: string) => `${time} bei ${temperature}`,
  least: (time: string) => `${time}, das Mindeste`,
  rows: (count: number) => `${counted(count, "Zeile", "Zeilen")} des Datenblatts`,
  from: (rows: string, cold: string, warm: string) => `${rows}, von ${cold} bis ${warm}.`,
  alone: (row: string, at: string) => `${row}: ${at}.`,
  odd: (count: number) => `${counted(count, "Zeile fällt", "Zeilen fallen")} aus der Reihe.`,
  times: (factor: string) => `Dieser Film braucht ${factor}-mal so lang, wie das Datenblatt sagt.`,
  today: (at: string) => `Heute: ${at}.`,
  beyond: "Das liegt außerhalb der Zeilen des Datenblatts.",
  sought: (at: string) => `Gesucht: ${at}.`,
};

export const temperingCurve = {
  title: "Temperatur im Lauf der Zeit",
  across: "ab der ersten Messung",
  up: temperatureIn,
  wanted: (temperature: string) => `${temperature} gewünscht`,
  settles: "bleibt hier stehen",
  between: (from: string, to: string) => `${from} bis ${to}`,
  since: (from: string) => `ab ${from}`,
  none: "Noch keine Messung.",
  one: (temperature: string) => `Eine Messung: ${temperature}.`,
  readings: (count: number, first: string, last: string, time: string) =>
    `${count} Messungen, von ${first} auf ${last} in ${time}.`,
  reaches: (temperature: string, at: string, when: string) =>
    `${temperature} sind nach ${at} erreicht, wahrscheinlich ${when}.`,
  settling: (from: string, to: string) => `Am Ende bleibt es zwischen ${from} und ${to} stehen.`,
};

export const contrastCurve = {
  title: "Kontrast nach Entwicklungs\u00adzeit",
  across: "Entwicklungszeit",
  up: "mittlerer Gradient",
  at: (gradient: string, time: string) => `${gradient} bei ${time}`,
  limit: (gradient: string) => `${gradient}, die Grenze`,
  tests: (count: number) => counted(count, "Test", "Tests"),
  from: (tests: string, first: string, last: string) => `${tests}, von ${first} bis ${last}.`,
  alone: (tests: string, only: string) => `${tests}: ${only}.`,
  none: "Noch kein Test.",
  wanted: (at: string) => `Gewünscht: ${at}.`,
  beyond: "Das liegt außerhalb der getesteten Zeiten.",
  most: (gradient: string) => `Keine Zeit führt über ${gradient} hinaus.`,
};

export const wedgeCurve = {
  title: "Dichte nach Belichtung",
  across: "log. Belichtung, Luxsekunden",
  fromFirst: "log. Belichtung ab der ersten Stufe",
  up: "Dichte",
  speed: "Empfindlichkeitspunkt",
  speeds: "Empfindlichkeitspunkte",
  span: (length: string) => `über ${length}`,
  films: (count: number) => `${counted(count, "Testfilm", "Testfilme")}.`,
  rises: (label: string, low: string, high: string) => `${label}: Dichte von ${low} bis ${high}.`,
  speedPoint: (label: string, at: string) => `Empfindlichkeitspunkt von ${label} bei ${at}.`,
};
