// What is said of a field: what it may hold, how it was read, what is at fault or wanting.

export const faults = {
  holds: (typed: string, may: string) => `“${typed}” kan hier niet. Hier past: ${may}.`,
  list: (may: string) => `Wat hier staat is niet genoeg. Hier past: ${may}.`,
  needed: (may: string) => `Hier ontbreekt: ${may}.`,
  readAs: (meaning: string) => `Gelezen als ${meaning}.`,
  lent: (meaning: string) =>
    `Gelezen als ${meaning}, met de eenheid die je het laatst gebruikte. Zet er een andere achter als je die bedoelt.`,
  /** Of a file: where in it, what stands there, what may. */
  inFile: (path: string, holds: string, may: string) =>
    `${path}: hier staat ${holds}; hier past: ${may}`,
  nothing: "niets",
  number: "een getal zoals “2” of “2,5”",
  seconds: "seconden, zoals “10” of “10 s”, of “1:30”",
  numbers: "getallen met spaties ertussen, zoals “0,12 0,2 0,35”",
  minutes: "minuten, zoals “30” of “30 min”",
  perCent: "procent, zoals “10”",
  counts: "hoe vaak je bij elke vulling kantelt, zoals “5, 10, 20”",
  why: "waarom?",
  spoken: (faults: number, wanting: number) =>
    `Nog geen antwoord. Te verbeteren: ${faults}. In te vullen: ${wanting}.`,
  summary: (faults: number) =>
    faults === 1 ? "1 veld te verbeteren:" : `${faults} velden te verbeteren:`,
  wanted: (count: number) =>
    count === 1 ? "1 veld in te vullen:" : `${count} velden in te vullen:`,
};

/** What fields are called when something is said of them. */
export const names = {
  /** `"Film 2: Formaat"`, `"Fixeer: Tijd"`. */
  within: (part: string, field: string) => `${part}: ${field}`,
  quoted: (name: string) => `“${name}”`,
};
