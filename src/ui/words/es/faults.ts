// What is said of a field: what it may hold, how it was read, what is at fault or wanting.

export const faults = {
  holds: (typed: string, may: string) => `«${typed}» no sirve. Aquí vale ${may}.`,
  list: (may: string) => `Con lo que hay aquí no basta. Aquí vale ${may}.`,
  needed: (may: string) => `Hace falta ${may}.`,
  readAs: (meaning: string) => `Leído como ${meaning}.`,
  lent: (meaning: string) =>
    `Leído como ${meaning}, la última unidad que usaste. Si quieres otra, escríbela al lado.`,
  /** Of a file: where in it, what stands there, what may. */
  inFile: (path: string, holds: string, may: string) => `En ${path}: ${holds}; ahí vale ${may}`,
  nothing: "nada",
  number: "un número; por ejemplo, «2» o «2,5»",
  seconds: "un tiempo en segundos, «10» o «10 s», o también «1:30»",
  numbers: "una serie de números separados por espacios, como «0,12 0,2 0,35»",
  minutes: "un tiempo en minutos, «30» o «30 min»",
  perCent: "un tanto por ciento; por ejemplo, «10»",
  counts: "un número de inversiones por cada carga de agua, como «5, 10, 20»",
  why: "ayuda",
  spoken: (faults: number, wanting: number) =>
    `Aún no hay respuesta. Por corregir: ${faults}; por rellenar: ${wanting}.`,
  summary: (faults: number) =>
    faults === 1 ? "1 casilla por corregir:" : `${faults} casillas por corregir:`,
  wanted: (count: number) =>
    count === 1 ? "1 casilla por rellenar:" : `${count} casillas por rellenar:`,
};

/** What fields are called when something is said of them. */
export const names = {
  /** `"Película 2: Formato"`, `"Fijador: Tiempo"`. */
  within: (part: string, field: string) => `${part}: ${field}`,
  quoted: (name: string) => `«${name}»`,
};
