// What Work out asks: its questions, what they disclose, the rows that can be added, what can be chosen,
// and the cautions.
import { onBath } from "./baths.ts";

export const rows = {
  films: { all: "Filme", one: (n: number) => `Film ${n}`, add: "Noch ein Film" },
  "developer.leaflet": {
    all: "Zeilen des Datenblatts",
    one: (n: number) => `Zeile ${n}`,
    add: "Noch eine Zeile vom Datenblatt",
  },
  "developer.readings": {
    all: "Messungen in der Dose",
    one: (n: number) => `Messung ${n}`,
    add: "Noch eine Messung in der Dose",
  },
  "tempering.readings": {
    all: "Messungen im Entwickler",
    one: (n: number) => `Messung ${n}`,
    add: "Noch eine Messung",
  },
  "contrast.tests": {
    all: "Testfilme",
    one: (n: number) => `Test ${n}`,
    add: "Noch ein Testfilm",
  },
  remove: "Streichen",
};

export const questions = {
  films: "Welche Filme?",
  developer: "Was sagt das Datenblatt?",
  tank: "Welche Dose, und wie viel füllt sie?",
  hands: "Wie wird von Hand bewegt?",
  clock: "Wie wird die Zeit gezählt?",
  baths: "Welche Bäder sonst noch?",
  voice: "Wie soll die Stimme sprechen?",
  safety: "Bevor die erste Flasche aufgeht",
  warmth: "Wie kommt der Entwickler auf Temperatur?",
  contrast: "Was haben die Testfilme gezeigt?",
};

export const more = {
  leaflet: "Pushen, pullen, gebrauchter Entwickler, eine einzelne Zeile",
  tank: "Schale, Trommel oder wandernde Temperatur",
  /** @param bath its id */
  bath: (bath: string) => `Mehr ${onBath(bath)}`,
  ownAgitation: "Eigene Bewegung; was leer bleibt, geht wie beim Entwickler",
  inTank: "Messungen in der Dose während des Entwickelns",
  capacity: "Ergiebigkeit und Regenerator",
  mixing: "Mit zwei Wasserhähnen auf Temperatur mischen",
  tempering: "Ins Wasserbad stellen und das Thermometer ablesen",
  contrast: "Gradienten oder die Dichten eines Stufenkeils",
  measured: "Die eigenen Zeiten, wie gemessen",
};

export const choices = {
  "tank.method": {
    inversion: "Kippen von Hand",
    twist: "Drehen mit dem Drehstab",
    rotary: "Trommel, ständig gedreht",
    tray: "Schale",
    hanger: "Planfilmhänger",
  },
  "clock.starts": { "pour-in": "beim ersten Tropfen", full: "wenn die Dose voll ist" },
  "clock.ends": { "pour-out": "wenn das Ausgießen beginnt", empty: "wenn die Dose leer ist" },
  loading: {
    "": "wird eingelegt, Schritt für Schritt",
    done: "ist schon in der geschlossenen Dose",
  },
  "baths.*.afterwards": {
    "": "wie üblich",
    drain: "in den Ausguss",
    waste: "in den Sammelbehälter",
    return: "zurück ins selbe Gefäß",
  },
  "voice.detail": {
    "": "Wie üblich",
    full: "Ganze Sätze",
    brief: "Wenige Worte",
    tones: "Nur Töne",
  },
  "baths.*.clearing.times": {
    "": "doppelte Klärzeit, wie üblich",
    "2": "doppelte Klärzeit",
    "3": "dreifache Klärzeit",
  },
};

/** Sources: the general cautions of the trade; the particular ones beside their figures in the tests. */
export const cautions: readonly string[] = [
  "Das Sicherheitsdatenblatt des Herstellers und die Hausregeln gehen vor.",
  "Handschuhe und Schutzbrille, von der ersten Flasche bis zum letzten Ausspülen.",
  "Säure ins Wasser gießen, niemals Wasser in Säure.",
  "Fixierbad und Sulfit niemals mit Säure zusammenbringen: Dabei wird Schwefeldioxid frei.",
  "Für frische, bewegte Luft sorgen. Nichts zu essen und nichts zu trinken im Raum.",
  "Glas zerbricht, und ein nasser Boden ist glatt: Verschüttetes sofort aufwischen.",
  "Auf der Nassseite nur Geräte mit Batterie oder Akku.",
];
