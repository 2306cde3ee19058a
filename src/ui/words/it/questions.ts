// What Work out asks in Italian: its questions, what they disclose, the rows that can be added, what can be
// chosen, and the cautions.
import { aboutBath } from "./baths.ts";

export const rows = {
  films: {
    all: "Pellicole",
    one: (n: number) => `Pellicola ${n}`,
    add: "Aggiungi una pellicola",
  },
  "developer.leaflet": {
    all: "Righe del foglietto",
    one: (n: number) => `Riga ${n}`,
    add: "Aggiungi una riga del foglietto",
  },
  "developer.readings": {
    all: "Letture nella tank",
    one: (n: number) => `Lettura ${n}`,
    add: "Aggiungi una lettura nella tank",
  },
  "tempering.readings": {
    all: "Letture a bagnomaria",
    one: (n: number) => `Lettura ${n}`,
    add: "Aggiungi una lettura",
  },
  "contrast.tests": {
    all: "Pellicole di prova",
    one: (n: number) => `Prova ${n}`,
    add: "Aggiungi una prova",
  },
  remove: "Togli",
};

export const questions = {
  films: "Quali pellicole?",
  developer: "Che cosa dice il foglietto?",
  tank: "Quale tank, e quanto liquido la riempie?",
  hands: "Come la muovono le tue mani?",
  clock: "Come conti il tempo?",
  baths: "Quali altri bagni?",
  voice: "Come deve parlare?",
  safety: "Prima di aprire una bottiglia",
  warmth: "Come arriva in temperatura?",
  contrast: "Che cosa dicono le tue pellicole di prova?",
};

export const more = {
  leaflet: "Tirare, ridurre, bagno già usato, una riga sola",
  tank: "Bacinella, tamburo o temperatura che cambia",
  /** @param bath its id */
  bath: (bath: string) => `Altro ${aboutBath(bath)}`,
  ownAgitation: "Agitazione propria; quello che resta vuoto va come per il rivelatore",
  inTank: "Letture nella tank durante lo sviluppo",
  capacity: "Per quante pellicole basta; rigeneratore",
  mixing: "Portalo in temperatura con acqua calda e fredda",
  tempering: "Mettilo a bagnomaria, e leggi il termometro",
  contrast: "Gradienti, o le densità di un cuneo a gradini",
  measured: "I tuoi tempi, misurati",
};

export const choices = {
  "tank.method": {
    inversion: "Capovolta a mano",
    twist: "Agitatore girato",
    rotary: "Tamburo, sempre in moto",
    tray: "Bacinella",
    hanger: "Telaietti",
  },
  "clock.starts": { "pour-in": "con la prima goccia", full: "quando la tank è piena" },
  "clock.ends": {
    "pour-out": "quando cominci a svuotare",
    empty: "quando la tank è vuota",
  },
  loading: { "": "da caricare, passo per passo", done: "è già nella tank chiusa" },
  "baths.*.afterwards": {
    "": "dove va di solito",
    drain: "nello scarico",
    waste: "nel bidone degli esausti",
    return: "di nuovo nel suo recipiente",
  },
  "voice.detail": {
    "": "Come di solito",
    full: "Frasi intere",
    brief: "Poche parole",
    tones: "Solo suoni",
  },
  "baths.*.clearing.times": {
    "": "il doppio, come di solito",
    "2": "il doppio",
    "3": "il triplo",
  },
};

/** Sources: the general cautions of the trade; the particular ones beside their figures in the tests. */
export const cautions: readonly string[] = [
  "Prima di tutto vengono la scheda di sicurezza del produttore e le regole del laboratorio.",
  "Guanti e occhiali di protezione, dalla prima bottiglia all’ultimo risciacquo.",
  "L’acido nell’acqua, mai l’acqua nell’acido.",
  "Fissaggio e solfito non devono mai incontrare un acido: si libera anidride solforosa.",
  "Aria che circola. Niente cibo né bevande nella stanza.",
  "Il vetro si rompe e sul bagnato si scivola: asciuga subito quello che si versa.",
  "Sul lato bagnato, solo quello che va a batteria.",
];
