// The lines of the hands and the baths, in Spanish.
import type { BathWords, CapacityWords, FixerWords, HandsWords, WashWords } from "../bath-words.ts";

export const hands: HandsWords = {
  labels: { pourIn: "Llenar", pourOut: "Vaciar", perInversion: "Una inversión" },
  times: ({ times, spread, only }) =>
    `${times}: ${only ? "el único" : "la mediana"}; ${spread} del más corto al más largo`,
};

export const baths: BathWords = {
  names: {
    prewet: "Prehumectado",
    developer: "Revelador",
    stop: "Baño de paro",
    fixer: "Fijador",
    rinse: "Enjuague",
    "wash-aid": "Auxiliar de lavado",
    wash: "Lavado",
    "wetting-agent": "Humectante",
  },
  unsaid: "el tiempo habitual, ya que no hay otro puesto",
  given: "el que está puesto",
  clears: ({ time, sum }) => `un recorte clarifica en ${time}: ${sum}`,
  clearsButGiven: ({ time, sum, result }) =>
    `el que está puesto; un recorte clarifica en ${time}: con ${sum} serían ${result}`,
  fills: ({ fills, inversion, sum }) =>
    `cargas de agua limpia con ${fills} inversiones, a ${inversion} por inversión: ${sum}`,
  fillsPoured: ({ fills, inversion, pouring, sum }) =>
    `cargas de agua limpia con ${fills} inversiones, a ${inversion} por inversión, más ${pouring} cada vez para llenar y vaciar: ${sum}`,
};

export const fixer: FixerWords = {
  label: "Vida del fijador",
  cleared: ({ fresh, sum, spent }) =>
    `recién preparado clarificaba en ${fresh}: ${sum}; al llegar a ${spent} veces está agotado`,
  times: ({ times }) => `${times} veces`,
};

export const wash: WashWords = {
  carriedLabel: "Arrastrado al lavado",
  carried: ({ volume, strength, sum }) =>
    `${volume} de fijador con ${strength} de tiosulfato por litro: ${sum} en la película`,
  leftLabel: "Queda tras el lavado",
  left: ({ way, sum, limit }) =>
    `${way}, si en cada remojo el agua y la película llegan al equilibrio: ${sum}; el límite es ${limit}`,
  running: ({ fill, flow, time }) =>
    `una carga de ${fill} y después ${flow} por minuto durante ${time}`,
  fills: ({ fill, count }) => (count === 1 ? `una carga de ${fill}` : `${count} cargas de ${fill}`),
  lessThan: ({ residue }) => `menos de ${residue}`,
  minutesLabel: "Minutos necesarios",
  minutes: ({ first, sum }) => `la primera carga deja ${first}; ${sum}`,
  noMinutes: "ninguno",
  changesLabel: "Cambios de agua necesarios",
  changes: ({ sum, fill }) => `${sum}, redondeado hacia arriba, con cargas de ${fill}`,
  changeCount: ({ count }) => (count === 1 ? "1 cambio" : `${count} cambios`),
};

export const capacity: CapacityWords = {
  label: ({ bath }) => `${bath}: aún da para`,
  sum: ({ volume, litres, perLitre, films, before, now }) =>
    `${volume} (${litres} l) × ${perLitre} películas por litro = ${films} de 80 pulg²; menos ${before} de antes y ${now} de ahora`,
  more: ({ films }) => `${films} más`,
  replenisherLabel: "Regenerador por añadir",
  replenishedBefore: ({ films, each, due }) =>
    `${films} de antes × ${each} = ${due}, si no se añadió entonces`,
  replenishNow: ({ films, each }) => `${films} de ahora × ${each}, después de esta sesión`,
};
