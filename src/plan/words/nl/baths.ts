// The lines of the hands and the baths, in Dutch.
import type { BathWords, CapacityWords, FixerWords, HandsWords, WashWords } from "../bath-words.ts";

export const hands: HandsWords = {
  labels: { pourIn: "Ingieten", pourOut: "Uitgieten", perInversion: "Eén keer kantelen" },
  times: ({ times, spread, only }) =>
    `${times}: ${only ? "de enige" : "de middelste"}; ${spread} tussen kortste en langste`,
};

export const baths: BathWords = {
  names: {
    prewet: "Voorweken",
    developer: "Ontwikkelaar",
    stop: "Stopbad",
    fixer: "Fixeer",
    rinse: "Tussenspoeling",
    "wash-aid": "Spoelhulp",
    wash: "Eindspoeling",
    "wetting-agent": "Bevochtiger",
  },
  unsaid: "de gebruikelijke tijd, want er is geen opgegeven",
  given: "zoals opgegeven",
  clears: ({ time, sum }) => `een filmsnipper wordt helder in ${time}: ${sum}`,
  clearsButGiven: ({ time, sum, result }) =>
    `zoals opgegeven; een filmsnipper wordt helder in ${time}: ${sum} zou ${result} zijn`,
  fills: ({ fills, inversion, sum }) =>
    `telkens vers water, met ${fills} keer kantelen à ${inversion}: ${sum}`,
  fillsPoured: ({ fills, inversion, pouring, sum }) =>
    `telkens vers water, met ${fills} keer kantelen à ${inversion}, en iedere keer ${pouring} om te gieten: ${sum}`,
};

export const fixer: FixerWords = {
  label: "Toestand van het fixeer",
  cleared: ({ fresh, sum, spent }) =>
    `vers maakte het de film helder in ${fresh}: ${sum}; bij ${spent} keer is het uitgewerkt`,
  times: ({ times }) => `${times} keer zo lang`,
};

export const wash: WashWords = {
  carriedLabel: "Meegenomen naar de spoeling",
  carried: ({ volume, strength, sum }) =>
    `${volume} fixeer met ${strength} thiosulfaat per liter: ${sum} op de film`,
  leftLabel: "Over na het spoelen",
  left: ({ way, sum, limit }) =>
    `${way}, als het water in de film telkens gelijk wordt aan het water eromheen: ${sum}; de grens is ${limit}`,
  running: ({ fill, flow, time }) => `één vulling van ${fill}, dan ${time} lang ${flow} per minuut`,
  fills: ({ fill, count }) =>
    count === 1 ? `één vulling van ${fill}` : `${count} vullingen van ${fill}`,
  lessThan: ({ residue }) => `minder dan ${residue}`,
  minutesLabel: "Minuten nodig",
  minutes: ({ first, sum }) => `na de eerste vulling blijft ${first} over; ${sum}`,
  noMinutes: "geen",
  changesLabel: "Waterwisselingen nodig",
  changes: ({ sum, fill }) => `${sum}, naar boven afgerond, met vullingen van ${fill}`,
  changeCount: ({ count }) => (count === 1 ? "1 waterwisseling" : `${count} waterwisselingen`),
};

export const capacity: CapacityWords = {
  label: ({ bath }) => `${bath}: nog goed voor`,
  sum: ({ volume, litres, perLitre, films, before, now }) =>
    `${volume} (${litres} l) × ${perLitre} films per liter = ${films} van 80 vierkante inch; min ${before} eerder en ${now} nu`,
  more: ({ films }) => films,
  replenisherLabel: "Regenerator toe te voegen",
  replenishedBefore: ({ films, each, due }) =>
    `${films} eerder × ${each} = ${due}, als die toen niet is toegevoegd`,
  replenishNow: ({ films, each }) => `${films} nu × ${each}, na deze sessie`,
};
