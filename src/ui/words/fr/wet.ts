// What is shown in French to someone with wet hands: pressing along, and reading the thermometer at the sink.

type Measured = "pour-in" | "pour-out" | "inversion";

const begin: { readonly [what in Measured]: string } = {
  "pour-in": "Appuyez à la première goutte",
  "pour-out": "Appuyez quand vous commencez à pencher",
  inversion: "Appuyez, puis retournez la cuve quatre fois, aller et retour",
};
const end: { readonly [what in Measured]: string } = {
  "pour-in": "Appuyez quand la cuve est pleine",
  "pour-out": "Appuyez quand elle est vide",
  inversion: "Appuyez quand elle est droite pour la quatrième fois",
};

const ordinals = ["Premier", "Deuxième", "Troisième"];

export const pressAlong = {
  name: {
    "pour-in": "Combien de temps prend le remplissage",
    "pour-out": "Combien de temps prend la vidange",
    inversion: "Combien de temps prend un retournement",
  },
  advice: {
    "pour-in": "Avec de l’eau, en pleine lumière.",
    "pour-out": "Avec de l’eau, en pleine lumière, en partant d’une cuve pleine.",
    inversion: "Avec de l’eau dans la cuve et le couvercle mis, en pleine lumière.",
  },
  begin,
  end,
  turn: (turn: number, of: number) => `${ordinals[turn - 1]} essai sur ${of}`,
  seconds: (time: string) => `${time} s`,
  /** Told to those who listen to the page, after each press; `last` is the time just taken. */
  status: {
    begin: (last: string, what: Measured) => `${last}. ${begin[what]}.`,
    end: (what: Measured) => `${end[what]}.`,
    done: (last: string) => `${last}. C’était le troisième.`,
  },
  times: "Temps relevés",
  measured: { "pour-in": "Remplissage", "pour-out": "Vidange", inversion: "Un retournement" },
  none: "–",
  median: (time: string) => `Médian : ${time}`,
  alike: "Les trois sont pareils.",
  even: (apart: string) =>
    `Il y a ${apart} entre le plus court et le plus long. C’est assez régulier.`,
  uneven: (apart: string) =>
    `Il y a ${apart} entre le plus court et le plus long. C’est beaucoup : trois de plus diraient mieux.`,
  keep: (time: string) => `Garder ${time}`,
  again: "Encore",
  takeBack: "Annuler",
  leave: "Quitter",
};

export const sink = {
  shown: "Le thermomètre indique",
  less: "Un demi-degré de moins",
  more: "Un demi-degré de plus",
  read: (temperature: string) => `${temperature}, maintenant`,
  readings: "Relevés faits",
  noReadings: "Pas encore de relevé.",
  reading: (clock: string, temperature: string) => `${clock} ${temperature}`,
  takeBack: "Retirer le dernier",
  done: "Terminé",
};
