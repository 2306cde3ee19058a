// What the drawings of curves show and say, in Italian. Numbers come ready written, with their units.

/** `"2 righe"`, and one of them in the singular. */
const counted = (count: number, one: string, many: string) =>
  `${count} ${count === 1 ? one : many}`;

/** `"temperatura, °F"`. */
const temperatureIn = (unit: string) => `temperatura, ${unit}`;

export const curve = {
  /** What stands for a drawing with those who do not see it. */
  picture: (title: string, says: string) => `${title}. ${says}`,
};

export const leafletCurve = {
  title: "Tempo di sviluppo secondo la temperatura",
  across: temperatureIn,
  up: "tempo",
  leaflet: "foglietto",
  thisFilm: "questa pellicola",
  outOfLine: "fuori curva",
  at: (time: string, temperature: string) => `${time} a ${temperature}`,
  least: (time: string) => `${time}, il minimo`,
  rows: (count: number) => `${counted(count, "riga", "righe")} del foglietto`,
  from: (rows: string, cold: string, warm: string) => `${rows}, da ${cold} a ${warm}.`,
  alone: (row: string, at: string) => `${row}: ${at}.`,
  odd: (count: number) =>
    `${counted(count, "riga non concorda", "righe non concordano")} con le altre.`,
  times: (factor: string) => `Per questa pellicola: il tempo del foglietto × ${factor}.`,
  today: (at: string) => `Oggi: ${at}.`,
  beyond: "È oltre le righe del foglietto.",
  sought: (at: string) => `Cercato: ${at}.`,
};

export const temperingCurve = {
  title: "Temperatura nel tempo",
  across: "dalla prima lettura",
  up: temperatureIn,
  wanted: (temperature: string) => `${temperature} voluti`,
  settles: "si ferma qui",
  between: (from: string, to: string) => `tra ${from} e ${to}`,
  since: (from: string) => `da ${from} in poi`,
  none: "Ancora nessuna lettura.",
  one: (temperature: string) => `Una lettura: ${temperature}.`,
  readings: (count: number, first: string, last: string, time: string) =>
    `${count} letture, da ${first} a ${last} in ${time}.`,
  reaches: (temperature: string, at: string, when: string) =>
    `Arriva a ${temperature} dopo ${at}, probabilmente ${when}.`,
  settling: (from: string, to: string) => `Si ferma tra ${from} e ${to}.`,
};

export const contrastCurve = {
  title: "Contrasto secondo il tempo di sviluppo",
  across: "tempo di sviluppo",
  up: "gradiente medio",
  at: (gradient: string, time: string) => `${gradient} a ${time}`,
  limit: (gradient: string) => `${gradient}, il limite`,
  tests: (count: number) => counted(count, "prova", "prove"),
  from: (tests: string, first: string, last: string) => `${tests}, da ${first} a ${last}.`,
  alone: (tests: string, only: string) => `${tests}: ${only}.`,
  none: "Ancora nessuna prova.",
  wanted: (at: string) => `Voluto: ${at}.`,
  beyond: "È oltre i tempi provati.",
  most: (gradient: string) => `Nessun tempo va oltre ${gradient}.`,
};

export const wedgeCurve = {
  title: "Densità secondo l’esposizione",
  across: "log H, lux per secondo",
  fromFirst: "log H dal primo gradino",
  up: "densità",
  speed: "punto di sensibilità",
  speeds: "punti di sensibilità",
  span: (length: string) => `su ${length}`,
  films: (count: number) => `${counted(count, "pellicola", "pellicole")} di prova.`,
  rises: (label: string, low: string, high: string) => `${label}: densità da ${low} a ${high}.`,
  speedPoint: (label: string, at: string) => `Punto di sensibilità di ${label} a ${at}.`,
};
