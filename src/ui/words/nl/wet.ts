// What is shown to someone with wet hands: pressing along, and reading the thermometer at the sink.

type Measured = "pour-in" | "pour-out" | "inversion";

const begin: { readonly [what in Measured]: string } = {
  "pour-in": "Druk als de eerste druppel erin gaat",
  "pour-out": "Druk als je begint uit te gieten",
  inversion: "Druk, en kantel de tank dan vier keer heen en terug",
};
const end: { readonly [what in Measured]: string } = {
  "pour-in": "Druk als de tank vol is",
  "pour-out": "Druk als hij leeg is",
  inversion: "Druk zodra hij voor de vierde keer rechtop staat",
};

const ordinals = ["Eerste", "Tweede", "Derde"];

export const pressAlong = {
  name: {
    "pour-in": "Hoe lang ingieten duurt",
    "pour-out": "Hoe lang uitgieten duurt",
    inversion: "Hoe lang één keer kantelen duurt",
  },
  advice: {
    "pour-in": "Met water, bij licht.",
    "pour-out": "Met water, bij licht, vanuit een volle tank.",
    inversion: "Met water in de tank en het deksel erop, bij licht.",
  },
  begin,
  end,
  turn: (turn: number, of: number) => `${ordinals[turn - 1]} keer van ${of}`,
  seconds: (time: string) => `${time} s`,
  /** Told to those who listen to the page, after each press; `last` is the time just taken. */
  status: {
    begin: (last: string, what: Measured) => `${last}. ${begin[what]}.`,
    end: (what: Measured) => `${end[what]}.`,
    done: (last: string) => `${last}. Dat was de derde keer.`,
  },
  times: "Tijden tot nu toe",
  measured: { "pour-in": "Ingieten", "pour-out": "Uitgieten", inversion: "Eén keer kantelen" },
  /** Shown where a time is still to come. */
  none: "–",
  median: (time: string) => `Middelste ${time}`,
  alike: "Alle drie zijn gelijk.",
  even: (apart: string) => `Kortste en langste schelen ${apart}. Dat is gelijkmatig genoeg.`,
  uneven: (apart: string) =>
    `Kortste en langste schelen ${apart}. Dat is veel: met nog drie keer weet je het beter.`,
  keep: (time: string) => `${time} bewaren`,
  again: "Nog eens",
  takeBack: "Terugnemen",
  leave: "Sluiten",
};

export const sink = {
  shown: "De thermometer wijst aan",
  less: "Een halve graad minder",
  more: "Een halve graad meer",
  read: (temperature: string) => `Nu ${temperature} afgelezen`,
  readings: "Metingen tot nu toe",
  noReadings: "Nog geen meting.",
  reading: (clock: string, temperature: string) => `${clock} ${temperature}`,
  takeBack: "De laatste terugnemen",
  done: "Klaar",
};
