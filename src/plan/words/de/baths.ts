// The lines of the hands and the baths, in German.
import type { BathWords, CapacityWords, FixerWords, HandsWords, WashWords } from "../bath-words.ts";

export const hands: HandsWords = {
  labels: { pourIn: "Einfüllen", pourOut: "Ausgießen", perInversion: "Einmal Kippen" },
  times: ({ times, spread, only }) =>
    `${times}: ${only ? "der einzige Wert" : "der mittlere Wert"}; ${spread} zwischen kürzestem und längstem`,
};

export const baths: BathWords = {
  names: {
    prewet: "Vorwässerung",
    developer: "Entwickler",
    stop: "Stoppbad",
    fixer: "Fixierbad",
    rinse: "Zwischenwässerung",
    "wash-aid": "Wässerungshilfe",
    wash: "Schlusswässerung",
    "wetting-agent": "Netzmittel",
  },
  unsaid: "die übliche Zeit, weil keine angegeben ist",
  given: "wie angegeben",
  clears: ({ time, sum }) => `ein Schnipsel klärt in ${time}: ${sum}`,
  clearsButGiven: ({ time, sum, result }) =>
    `wie angegeben; ein Schnipsel klärt in ${time}: ${sum} ergäbe ${result}`,
  fills: ({ fills, inversion, sum }) =>
    `frisches Wasser, ${fills} Kippbewegungen zu je ${inversion}: ${sum}`,
  fillsPoured: ({ fills, inversion, pouring, sum }) =>
    `frisches Wasser, ${fills} Kippbewegungen zu je ${inversion}, und jedes Mal ${pouring} zum Gießen: ${sum}`,
};

export const fixer: FixerWords = {
  label: "Zustand des Fixierbads",
  cleared: ({ fresh, sum, spent }) =>
    `frisch klärte es in ${fresh}: ${sum}; beim ${spent}-Fachen ist es erschöpft`,
  times: ({ times }) => `${times}-mal so lang`,
};

export const wash: WashWords = {
  carriedLabel: "In die Wässerung verschleppt",
  carried: ({ volume, strength, sum }) =>
    `${volume} Fixierbad mit ${strength} Thiosulfat je Liter: ${sum} auf dem Film`,
  leftLabel: "Nach dem Wässern übrig",
  left: ({ way, sum, limit }) =>
    `${way}, wenn sich das Wasser im Film jedes Mal mit dem frischen ausgleicht: ${sum}; die Grenze ist ${limit}`,
  running: ({ fill, flow, time }) =>
    `eine Füllung von ${fill}, dann ${time} lang ${flow} je Minute`,
  fills: ({ fill, count }) =>
    count === 1 ? `eine Füllung von ${fill}` : `${count} Füllungen von ${fill}`,
  lessThan: ({ residue }) => `weniger als ${residue}`,
  minutesLabel: "Nötige Minuten",
  minutes: ({ first, sum }) => `nach der ersten Füllung bleiben ${first}; ${sum}`,
  noMinutes: "keine",
  changesLabel: "Nötige Wasserwechsel",
  changes: ({ sum, fill }) => `${sum}, aufgerundet, mit Füllungen von ${fill}`,
  /** The plural is the same. */
  changeCount: ({ count }) => `${count} Wasserwechsel`,
};

export const capacity: CapacityWords = {
  label: ({ bath }) => `${bath}: reicht noch für`,
  sum: ({ volume, litres, perLitre, films, before, now }) =>
    `${volume} (${litres} l) × ${perLitre} Filme je Liter = ${films} zu 80 Quadratzoll; minus ${before} vorher und ${now} jetzt`,
  more: ({ films }) => films,
  replenisherLabel: "Regenerator fällig",
  replenishedBefore: ({ films, each, due }) =>
    `${films} vorher × ${each} = ${due}, falls damals nicht zugegeben`,
  replenishNow: ({ films, each }) => `${films} jetzt × ${each}, nach diesem Durchgang`,
};
