// What is shown to someone with wet hands: pressing along, and reading the thermometer at the sink.

type Measured = "pour-in" | "pour-out" | "inversion";

const begin: { readonly [what in Measured]: string } = {
  "pour-in": "Pulsa al caer la primera gota",
  "pour-out": "Pulsa al empezar a inclinar",
  inversion: "Pulsa y lleva el tanque de ida y vuelta cuatro veces",
};
const end: { readonly [what in Measured]: string } = {
  "pour-in": "Pulsa cuando el tanque esté lleno",
  "pour-out": "Pulsa cuando esté vacío",
  inversion: "Pulsa cuando esté derecho por cuarta vez",
};

const ordinals = ["Primera", "Segunda", "Tercera"];

const between = (apart: string) => `Entre la más corta y la más larga hay ${apart}.`;

export const pressAlong = {
  name: {
    "pour-in": "Cuánto lleva llenar",
    "pour-out": "Cuánto lleva vaciar",
    inversion: "Cuánto dura una inversión",
  },
  advice: {
    "pour-in": "Con agua y con luz.",
    "pour-out": "Con agua y con luz, desde el tanque lleno.",
    inversion: "Con agua en el tanque, la tapa puesta y con luz.",
  },
  begin,
  end,
  turn: (turn: number, of: number) => `${ordinals[turn - 1]} de ${of}`,
  seconds: (time: string) => `${time} s`,
  /** Told to those who listen to the page, after each press; `last` is the time just taken. */
  status: {
    begin: (last: string, what: Measured) => `${last}. ${begin[what]}.`,
    end: (what: Measured) => `${end[what]}.`,
    done: (last: string) => `${last}. Era la tercera.`,
  },
  times: "Medidas hasta ahora",
  measured: { "pour-in": "Llenar", "pour-out": "Vaciar", inversion: "Una inversión" },
  /** Shown where a time is still to come. */
  none: "–",
  median: (time: string) => `Mediana: ${time}`,
  alike: "Las tres son iguales.",
  even: (apart: string) => `${between(apart)} Es bastante parejo.`,
  uneven: (apart: string) => `${between(apart)} Es mucho: otras tres lo dirían mejor.`,
  keep: (time: string) => `Guardar ${time}`,
  again: "Repetir",
  takeBack: "Deshacer",
  leave: "Salir",
};

export const sink = {
  shown: "El termómetro marca",
  less: "Medio grado menos",
  more: "Medio grado más",
  read: (temperature: string) => `Apuntar ${temperature} ahora`,
  readings: "Lecturas hasta ahora",
  noReadings: "Aún no hay lecturas.",
  reading: (clock: string, temperature: string) => `${clock} ${temperature}`,
  takeBack: "Quitar la última",
  done: "Listo",
};
