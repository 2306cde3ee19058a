// The lines of the hands and the baths, in Italian.
import type { BathWords, CapacityWords, FixerWords, HandsWords, WashWords } from "../bath-words.ts";

export const hands: HandsWords = {
  labels: { pourIn: "Riempimento", pourOut: "Svuotamento", perInversion: "Capovolgimento" },
  times: ({ times, spread, only }) =>
    `${times}: ${only ? "l’unico" : "quello di mezzo"}; ${spread} fra il più breve e il più lungo`,
};

export const baths: BathWords = {
  names: {
    prewet: "Prebagno",
    developer: "Rivelatore",
    stop: "Bagno d’arresto",
    fixer: "Fissaggio",
    rinse: "Risciacquo",
    "wash-aid": "Ausiliario di lavaggio",
    wash: "Lavaggio",
    "wetting-agent": "Imbibente",
  },
  unsaid: "il tempo solito, perché non ne è indicato nessuno",
  given: "come indicato",
  clears: ({ time, sum }) => `un pezzetto si chiarifica in ${time}: ${sum}`,
  clearsButGiven: ({ time, sum, result }) =>
    `come indicato; un pezzetto si chiarifica in ${time}: ${sum} darebbe ${result}`,
  fills: ({ fills, inversion, sum }) =>
    `acqua pulita con ${fills} capovolgimenti, ${inversion} a capovolgimento: ${sum}`,
  fillsPoured: ({ fills, inversion, pouring, sum }) =>
    `acqua pulita con ${fills} capovolgimenti, ${inversion} a capovolgimento e ogni volta ${pouring} per riempire e svuotare: ${sum}`,
};

export const fixer: FixerWords = {
  label: "Durata del fissaggio",
  cleared: ({ fresh, sum, spent }) =>
    `da fresco chiarificava in ${fresh}: ${sum}; a ${spent} volte è esaurito`,
  times: ({ times }) => `${times} volte`,
};

export const wash: WashWords = {
  carriedLabel: "Portato nel lavaggio",
  carried: ({ volume, strength, sum }) =>
    `${volume} di fissaggio con ${strength} di tiosolfato per litro: ${sum} sulla pellicola`,
  leftLabel: "Quello che lascia il lavaggio",
  left: ({ way, sum, limit }) =>
    `${way}, se ogni volta l’acqua arriva all’equilibrio con quella nella pellicola: ${sum}; il limite è ${limit}`,
  running: ({ fill, flow, time }) => `un riempimento di ${fill}, poi ${flow} al minuto per ${time}`,
  fills: ({ fill, count }) =>
    count === 1 ? `un ricambio di ${fill}` : `${count} ricambi di ${fill}`,
  lessThan: ({ residue }) => `meno di ${residue}`,
  minutesLabel: "Minuti che servono",
  minutes: ({ first, sum }) => `il primo riempimento lascia ${first}; ${sum}`,
  noMinutes: "nessuno",
  changesLabel: "Ricambi che servono",
  changes: ({ sum, fill }) => `${sum}, arrotondato per eccesso, con ricambi di ${fill}`,
  changeCount: ({ count }) => (count === 1 ? "1 ricambio" : `${count} ricambi`),
};

export const capacity: CapacityWords = {
  label: ({ bath }) => `${bath}: basta per`,
  sum: ({ volume, litres, perLitre, films, before, now }) =>
    `${volume} (${litres} l) × ${perLitre} pellicole per litro = ${films} da 80 in²; meno ${before} prima e ${now} adesso`,
  more: ({ films }) => `ancora ${films}`,
  replenisherLabel: "Rigeneratore dovuto",
  replenishedBefore: ({ films, each, due }) =>
    `${films} prima × ${each} = ${due}, se allora non è stato aggiunto`,
  replenishNow: ({ films, each }) => `${films} adesso × ${each}, dopo questo sviluppo`,
};
