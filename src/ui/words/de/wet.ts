// What is shown to someone with wet hands: pressing along, and reading the thermometer at the sink.

type Measured = "pour-in" | "pour-out" | "inversion";

const begin: { readonly [what in Measured]: string } = {
  "pour-in": "Drücken, wenn der erste Tropfen hineinfließt",
  "pour-out": "Drücken, wenn das Ausgießen beginnt",
  inversion: "Drücken, dann die Dose viermal hin und zurück kippen",
};
const end: { readonly [what in Measured]: string } = {
  "pour-in": "Drücken, wenn die Dose voll ist",
  "pour-out": "Drücken, wenn sie leer ist",
  inversion: "Drücken, sobald sie zum vierten Mal aufrecht steht",
};

const ordinals = ["Das erste", "Das zweite", "Das dritte"];

export const pressAlong = {
  name: {
    "pour-in": "Wie lange das Einfüllen dauert",
    "pour-out": "Wie lange das Ausgießen dauert",
    inversion: "Wie lange einmal Kippen dauert",
  },
  advice: {
    "pour-in": "Mit Wasser, bei Licht.",
    "pour-out": "Mit Wasser, bei Licht, aus einer vollen Dose.",
    inversion: "Mit Wasser in der Dose und dem Deckel darauf, bei Licht.",
  },
  begin,
  end,
  turn: (turn: number, of: number) => `${ordinals[turn - 1]} von ${of} Malen`,
  seconds: (time: string) => `${time} s`,
  /** Told to those who listen to the page, after each press; `last` is the time just taken. */
  status: {
    begin: (last: string, what: Measured) => `${last}. ${begin[what]}.`,
    end: (what: Measured) => `${end[what]}.`,
    done: (last: string) => `${last}. Das war das dritte Mal.`,
  },
  times: "Zeiten bisher",
  measured: { "pour-in": "Einfüllen", "pour-out": "Ausgießen", inversion: "Einmal Kippen" },
  /** Shown where a time is still to come. */
  none: "–",
  median: (time: string) => `In der Mitte ${time}`,
  alike: "Alle drei sind gleich.",
  even: (apart: string) =>
    `Kürzestes und längstes liegen ${apart} auseinander. Das ist gleichmäßig genug.`,
  uneven: (apart: string) =>
    `Kürzestes und längstes liegen ${apart} auseinander. Das ist viel: Dreimal mehr gäbe ein besseres Bild.`,
  keep: (time: string) => `${time} behalten`,
  again: "Noch einmal",
  takeBack: "Zurücknehmen",
  leave: "Verlassen",
};

export const sink = {
  shown: "Das Thermometer zeigt",
  less: "Ein halbes Grad weniger",
  more: "Ein halbes Grad mehr",
  read: (temperature: string) => `Jetzt ${temperature} abgelesen`,
  readings: "Messungen bisher",
  noReadings: "Noch keine Messung.",
  reading: (clock: string, temperature: string) => `${clock} ${temperature}`,
  takeBack: "Die letzte zurücknehmen",
  done: "Fertig",
};
