// The words of the frame around every place, of the greeting, and of what is done to the worksheet as a whole.

export const frame = {
  /** The same in every language. */
  program: "Tankside",
  skip: "Saltar a la página",
  places: "Apartados",
  title: (place: string) => `${place} · Tankside`,
  opening: "Abriendo…",
  notOpened: "No se ha podido traer este apartado. La hoja de trabajo está a salvo.",
  again: "Reintentar",
  colophon:
    "Funciona sin red, no envía nada a ninguna parte y guarda lo que escribes en este navegador.",
  accessibility: "Accesibilidad",
};

export const language = {
  choose: "Idioma",
  notFetched: (language: string) =>
    `No se ha podido traer este idioma: ${language}. La página sigue como estaba.`,
  notKept: "Este navegador no guarda la elección de una visita a otra.",
  /** Said where the voice of the worksheet has gone along. */
  voiceToo: (language: string) =>
    `También la voz de esta hoja cambia de idioma: ${language}. «Deshacer» la deja como estaba.`,
};

export const places = {
  "work-out": { name: "Calcular", hint: "tiempo y mezcla" },
  "walk-through": { name: "Repasar", hint: "cada paso, con luz" },
  "lights-out": { name: "Apagar la luz", hint: "la sesión, de oído" },
  "write-up": { name: "Anotar", hint: "qué ha salido" },
};

export const greeting = {
  says: "Película a oscuras y las dos manos mojadas. Rellena esta página y una voz te dirá qué hacer y cuándo.",
  hear: "Oír cómo se llena",
  hearHint: "diez segundos, desde los toques de entrada hasta la primera inversión",
  hearing: "Escucha…",
  notHeard: "Aquí no se ha podido iniciar el sonido.",
  begin: "Empezar la sesión",
  beginHint: "lleva a Apagar la luz",
};

export const sheet = {
  tools: "Esta hoja",
  save: "Guardar en un archivo",
  open: "Abrir un archivo",
  demo: "Empezar con Gullrock Light",
  demoPushed: "Empezar con Foghorn 400",
  empty: "Empezar en blanco",
  undo: "Deshacer",
  redo: "Rehacer",
  dropHere: "Suelta para abrir esta hoja",
};

export const notices = {
  practice:
    "Está puesta una hoja de práctica, de Gullrock Light. Cambia lo que quieras o empieza en blanco.",
  demo: "Está puesta la hoja de Gullrock Light. «Deshacer» devuelve la tuya.",
  empty: "La página está en blanco. «Deshacer» devuelve la hoja anterior.",
  opened: (name: string) => `${name} está abierto. «Deshacer» devuelve la hoja anterior.`,
  saved: (name: string) => `Guardado como ${name}.`,
  notSaved:
    "Aún no se ha guardado: un archivo tiene que estar completo. Antes, por favor, estas casillas:",
  notWorksheet: (name: string) => `${name} no sirve. Aquí no ha cambiado nada. Lo que contiene:`,
  notFile: "No se ha podido leer como archivo. Aquí no ha cambiado nada.",
  notKept:
    "Este navegador no guarda la hoja de una visita a otra. Guárdala en un archivo antes de salir.",
  removed: (row: string) => `Quitada: ${row}. «Deshacer» la devuelve.`,
  undone: "Deshecho.",
  redone: "Rehecho.",
};

/** What stands in the worksheets from Gullrock Light. */
export const demo = {
  gullrock: { title: "Gullrock Light, jueves por la tarde", tank: "acero, dos espirales" },
  foghorn: { title: "Foghorn 400, subexpuesta un paso", tank: "acero, una espiral" },
};
