// What is shown to someone with wet hands, in Italian: pressing along, and reading the thermometer at the sink.

type Measured = "pour-in" | "pour-out" | "inversion";

const begin: { readonly [what in Measured]: string } = {
  "pour-in": "Premi quando entra la prima goccia",
  "pour-out": "Premi quando cominci a inclinare",
  inversion: "Premi, poi capovolgi la tank e riportala su quattro volte",
};
const end: { readonly [what in Measured]: string } = {
  "pour-in": "Premi quando la tank è piena",
  "pour-out": "Premi quando è vuota",
  inversion: "Premi quando è di nuovo dritta per la quarta volta",
};

const ordinals = ["Prima", "Seconda", "Terza"];

export const pressAlong = {
  name: {
    "pour-in": "Quanto ci vuole a riempire",
    "pour-out": "Quanto ci vuole a svuotare",
    inversion: "Quanto dura un capovolgimento",
  },
  advice: {
    "pour-in": "Con l’acqua, alla luce.",
    "pour-out": "Con l’acqua, alla luce, partendo da una tank piena.",
    inversion: "Con l’acqua nella tank e il coperchio chiuso, alla luce.",
  },
  begin,
  end,
  turn: (turn: number, of: number) => `${ordinals[turn - 1]} prova di ${of}`,
  seconds: (time: string) => `${time} s`,
  /** Told to those who listen to the page, after each press; `last` is the time just taken. */
  status: {
    begin: (last: string, what: Measured) => `${last}. ${begin[what]}.`,
    end: (what: Measured) => `${end[what]}.`,
    done: (last: string) => `${last}. Era la terza.`,
  },
  times: "I tempi finora",
  measured: { "pour-in": "Riempimento", "pour-out": "Svuotamento", inversion: "Un capovolgimento" },
  /** Shown where a time is still to come. */
  none: "–",
  median: (time: string) => `Mediana ${time}`,
  alike: "Sono uguali tutte e tre.",
  even: (apart: string) =>
    `Fra la più breve e la più lunga ci sono ${apart}. È abbastanza regolare.`,
  uneven: (apart: string) =>
    `Fra la più breve e la più lunga ci sono ${apart}. È molto: altre tre direbbero di più.`,
  keep: (time: string) => `Tieni ${time}`,
  again: "Di nuovo",
  takeBack: "Togli l’ultima",
  leave: "Esci",
};

export const sink = {
  shown: "Il termometro segna",
  less: "Mezzo grado in meno",
  more: "Mezzo grado in più",
  read: (temperature: string) => `Segna ${temperature} adesso`,
  readings: "Le letture finora",
  noReadings: "Ancora nessuna lettura.",
  reading: (clock: string, temperature: string) => `${clock} ${temperature}`,
  takeBack: "Togli l’ultima",
  done: "Fatto",
};
