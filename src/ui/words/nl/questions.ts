// What Work out asks: its questions, what they disclose, the rows that can be added, what can be chosen,
// and the cautions.
import { theBath } from "./baths.ts";

export const rows = {
  films: { all: "Films", one: (n: number) => `Film ${n}`, add: "Nog een film" },
  "developer.leaflet": {
    all: "Rijen uit de bijsluiter",
    one: (n: number) => `Rij ${n}`,
    add: "Nog een rij uit de bijsluiter",
  },
  "developer.readings": {
    all: "Metingen in de tank",
    one: (n: number) => `Meting ${n}`,
    add: "Nog een meting in de tank",
  },
  "tempering.readings": {
    all: "Metingen in het waterbad",
    one: (n: number) => `Meting ${n}`,
    add: "Nog een meting",
  },
  "contrast.tests": {
    all: "Testfilms",
    one: (n: number) => `Test ${n}`,
    add: "Nog een testfilm",
  },
  remove: "Weghalen",
};

export const questions = {
  films: "Welke films?",
  developer: "Wat zegt de bijsluiter?",
  tank: "Welke tank, en hoeveel gaat erin?",
  hands: "Hoe beweeg je de tank?",
  clock: "Hoe tel je de tijd?",
  baths: "Welke baden nog meer?",
  voice: "Hoe moet de stem spreken?",
  safety: "Voordat je een fles opent",
  warmth: "Hoe komt de ontwikkelaar op temperatuur?",
  contrast: "Wat lieten je testfilms zien?",
};

export const more = {
  leaflet: "Pushen, pullen, gebruikte ontwikkelaar, maar één rij",
  tank: "Schaal, trommel of temperatuur die verloopt",
  /** @param bath its id */
  bath: (bath: string) => `Meer over ${theBath(bath)}`,
  ownAgitation: "Eigen beweging; wat leeg blijft, gaat zoals bij de ontwikkelaar",
  inTank: "Metingen in de tank tijdens het ontwikkelen",
  capacity: "Hoeveel films het aankan; regenerator",
  mixing: "Op temperatuur mengen met twee kranen",
  tempering: "In een waterbad zetten en de thermometer aflezen",
  contrast: "Gradiënten, of de dichtheden van een grijswig",
  measured: "Je eigen tijden, zoals gemeten",
};

export const choices = {
  "tank.method": {
    inversion: "Met de hand kantelen",
    twist: "Roerstaaf draaien",
    rotary: "Trommel, draait steeds door",
    tray: "Schaal",
    hanger: "Vlakfilmhangers",
  },
  "clock.starts": { "pour-in": "bij de eerste druppel", full: "als de tank vol is" },
  "clock.ends": { "pour-out": "als je begint uit te gieten", empty: "als de tank leeg is" },
  loading: { "": "moet nog in de tank, stap voor stap", done: "zit al in de gesloten tank" },
  "baths.*.afterwards": {
    "": "zoals gewoonlijk",
    drain: "door de gootsteen",
    waste: "bij het chemisch afval",
    return: "terug in dezelfde beker",
  },
  "voice.detail": {
    "": "Zoals gewoonlijk",
    full: "Hele zinnen",
    brief: "Weinig woorden",
    tones: "Alleen tonen",
  },
  "baths.*.clearing.times": {
    "": "gewoonlijk twee keer zo lang",
    "2": "twee keer zo lang",
    "3": "drie keer zo lang",
  },
};

/** Sources: the general cautions of the trade; the particular ones beside their figures in the tests. */
export const cautions: readonly string[] = [
  "Het veiligheidsblad van de fabrikant en de huisregels gaan voor.",
  "Handschoenen en een veiligheidsbril, van de eerste fles tot de laatste keer afspoelen.",
  "Giet zuur bij water, nooit water bij zuur.",
  "Laat fixeer of sulfiet nooit met zuur in aanraking komen: daarbij komt zwaveldioxide vrij.",
  "Zorg dat de lucht ververst wordt. Niet eten of drinken in de ruimte.",
  "Glas breekt en een natte vloer is glad: veeg wat je morst meteen op.",
  "Aan de natte kant alleen apparaten die op een batterij of accu werken.",
];
