// What the drawings of curves show and say. Numbers come ready written, with their units.

/** `"2 filas"`, and one of them without the s. */
const counted = (count: number, one: string, many: string) =>
  `${count} ${count === 1 ? one : many}`;

/** `"temperatura, °F"`. */
const temperatureIn = (unit: string) => `temperatura, ${unit}`;

export const curve = {
  /** What stands for a drawing with those who do not see it. */
  picture: (title: string, says: string) => `${title}. ${says}`,
};

export const leafletCurve = {
  title: "Tiempo de revelado según la temperatura",
  across: temperatureIn,
  up: "tiempo",
  leaflet: "ficha",
  thisFilm: "esta película",
  outOfLine: "no encaja",
  at: (time: string, temperature: string) => `${time} a ${temperature}`,
  least: (time: string) => `${time}, el mínimo`,
  rows: (count: number) => `${counted(count, "fila", "filas")} de la ficha`,
  from: (rows: string, cold: string, warm: string) => `${rows}, desde ${cold} hasta ${warm}.`,
  alone: (row: string, at: string) => `${row}: ${at}.`,
  odd: (count: number) => `${counted(count, "fila no encaja", "filas no encajan")} con las demás.`,
  times: (factor: string) => `Esta película tarda ${factor} veces lo que dice la ficha.`,
  today: (at: string) => `Hoy: ${at}.`,
  beyond: "Eso queda fuera de las filas de la ficha.",
  sought: (at: string) => `Buscado: ${at}.`,
};

export const temperingCurve = {
  title: "Temperatura según el tiempo",
  across: "desde la primera lectura",
  up: temperatureIn,
  wanted: (temperature: string) => `${temperature}, la buscada`,
  settles: "aquí se estabiliza",
  between: (from: string, to: string) => `de ${from} a ${to}`,
  since: (from: string) => `desde ${from}`,
  none: "Aún no hay lecturas.",
  one: (temperature: string) => `Una lectura: ${temperature}.`,
  readings: (count: number, first: string, last: string, time: string) =>
    `${count} lecturas, de ${first} a ${last} en ${time}.`,
  reaches: (temperature: string, at: string, when: string) =>
    `Llega a ${temperature} al cabo de ${at}, probablemente ${when}.`,
  settling: (from: string, to: string) => `Se estabiliza entre ${from} y ${to}.`,
};

export const contrastCurve = {
  title: "Contraste según el tiempo de revelado",
  across: "tiempo de revelado",
  up: "gradiente medio",
  at: (gradient: string, time: string) => `${gradient} con ${time}`,
  limit: (gradient: string) => `${gradient}, el límite`,
  tests: (count: number) => counted(count, "prueba", "pruebas"),
  from: (tests: string, first: string, last: string) => `${tests}, desde ${first} hasta ${last}.`,
  alone: (tests: string, only: string) => `${tests}: ${only}.`,
  none: "Aún no hay pruebas.",
  wanted: (at: string) => `Buscado: ${at}.`,
  beyond: "Eso queda fuera de los tiempos probados.",
  most: (gradient: string) => `Ningún tiempo pasa de ${gradient}.`,
};

export const wedgeCurve = {
  title: "Densidad según la exposición",
  across: "log exposición, lux segundo",
  fromFirst: "log exposición desde el primer escalón",
  up: "densidad",
  speed: "punto de sensibilidad",
  speeds: "puntos de sensibilidad",
  span: (length: string) => `en ${length}`,
  films: (count: number) => `${counted(count, "película de prueba", "películas de prueba")}.`,
  rises: (label: string, low: string, high: string) => `${label}: densidad de ${low} a ${high}.`,
  speedPoint: (label: string, at: string) => `Punto de sensibilidad de ${label} en ${at}.`,
};
