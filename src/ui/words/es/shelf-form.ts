// The words of what is written down about a bottle, and of the labels printed from it, in Spanish.

export const bottleForm = {
  name: "Nombre en la etiqueta",
  kind: "Para qué es",
  state: "Cómo se usa",
  strength: "Diluida",
  mixedOn: "Preparada el",
  by: "Quién, iniciales",
  from: "De qué",
  volume: "Cuánto",
  keeps: "Cuánto se conserva, según la ficha del fabricante",
  full: "Llena, desde que se prepara",
  half: "Medio llena o menos",
  opened: "Una vez abierta",
  unit: "contado en",
  units: { days: "días", weeks: "semanas", months: "meses" },
  spanMay: (most: string) => `un número entero de 1 a ${most}`,
  filmsPerLitre: "Películas por litro",
  filmsHint: "En películas de 80 pulgadas cuadradas (516 cm²): una 135-36, una 120, cuatro 4x5in.",
  addPerFilm: "Tiempo añadido por película anterior, %",
  hazards: "Indicaciones de peligro",
  hazardsHint:
    "Cópialas palabra por palabra de la ficha del fabricante; aquí no se inventa ninguna. Nunca uses una botella que tuvo comida o bebida.",
  on: "Día",
  size: "Formato",
  count: "Cuántas",
  time: "Clarificó en",
  film: "Película del recorte",
  freshFirst:
    "La primera prueba pide el baño fresco, antes de que pase ninguna película: las siguientes se comparan con ella. Usa siempre la misma película.",
  wanted: "Esto hace falta.",
  add: "Poner en el estante",
  correct: "Guardar la corrección",
  writeDown: "Anotar",
  cancel: "Cancelar",
};

export const bottleLabels = {
  title: "Etiquetas para imprimir",
  lead: "Las indicaciones de peligro salen en la etiqueta solo como se copiaron de la ficha del fabricante. Nunca uses una botella que tuvo comida o bebida.",
  print: (count: number) => (count === 1 ? "Imprimir 1 etiqueta" : `Imprimir ${count} etiquetas`),
  mixed: "Preparada",
  by: "Por",
  due: "Vence",
  films: "Películas",
  hazards: "Peligros, de la ficha del fabricante:",
  each: (films: string) => `Una casilla son ${films} películas.`,
};

export const fixerWords = {
  title: "Cuenta y prueba",
  tally: "La cuenta de películas dice",
  test: "La prueba de clarificación dice",
  tallySays: {
    good: (served: string, serves: string) => `bien: ${served} de ${serves}`,
    spent: (served: string, serves: string) => `agotado: ${served} de ${serves}`,
    silent: "nada: no está anotado cuántas sirve",
  },
  testSays: {
    good: (times: string) => `bien: ${times} veces el valor fresco`,
    spent: (times: string) => `agotado: ${times} veces el valor fresco`,
    silent: "nada: el baño fresco no se probó con esta película",
  },
  rule: "Regla: un fijador está agotado cuando un recorte tarda el doble en clarificar que en el baño fresco (NAVEDTRA 14209).",
  disagree: "Las dos no coinciden.",
  trust: {
    test: "Fíate de la prueba: se hizo en este baño, y no todas las películas dejan lo mismo en él. No lo uses más.",
    tally:
      "Fíate de la cuenta: un baño puede clarificar deprisa y tener ya demasiada plata para que el lavado la saque. No lo uses más.",
  },
  since: (films: string) => `Desde esa prueba: ${films} películas.`,
  on: "Día",
  film: "Película",
  cleared: "Clarificó en",
  filmsBy: "Películas hasta entonces",
  picture: "Tiempo de clarificación en la vida del baño",
  across: "películas por el baño",
  up: "tiempo de clarificación",
  twice: "agotado: el doble que fresco",
  capacity: "capacidad",
  says: (tests: number, last: string) =>
    tests === 1 ? `Una prueba: ${last}.` : `${tests} pruebas, la última ${last}.`,
};
