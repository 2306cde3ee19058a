// The words of Walk through in Italian, the score's own among them. What is spoken, and the names of the
// steps, come with the timeline.
import type { Method } from "../../../trade/method.ts";
import { bathWithin, theBath } from "./baths.ts";

export const walk = {
  noWorksheet: "Non c’è niente da ripassare finché la scheda non si può calcolare.",
  toWorkOut: "Vai a «Calcola»",
  onItsWay: "Si mettono insieme i passi…",
  failed: "Non si sono potuti mettere insieme i passi: qui le parole e i suoni non sono arrivati.",
  again: "Riprova",
  stops: "Guarda prima questo",
  stop: "Alt",
  stopsAfter: "I passi si vedono lo stesso.",
  lead: "Tutto quanto, dalla scheda al filo per asciugare. Da qui non comincia nessuno sviluppo.",
  steps: "Passi",
  print: "Stampa tutta la partitura",
  total: (steps: number, clock: string) =>
    `${steps} passi. ${clock} di cronometro; per il resto si aspetta che tu prema.`,
  dark: "al buio",
  light: "alla luce",
  screenBlack: "Qui lo schermo è nero.",
  ownPace: "senza cronometro",
  /** Beneath a step's name. */
  hint: (light: string, lasts: string) => `${light}, ${lasts}`,
  spoken: (seconds: string) => `${seconds} di parole, poi si aspetta che tu prema.`,
  clocked: (time: string) => `${time} di cronometro.`,
  previous: "Passo precedente",
  next: "Passo seguente",
  step: (n: number, of: number) => `Passo ${n} di ${of}`,
  /** Read on from that, by those who listen to the page. */
  stepTitle: (title: string) => `: ${title}`,
  hear: "Ascolta questo passo",
  hearWhy: "Ascolta perché e come",
  stopHearing: "Ferma",
  hearing: (time: string, of: string) => `${time} di ${of}`,
  notHeard: "Qui non si è potuto avviare nessun suono.",
  runIsOn: "È in corso uno sviluppo, perciò qui non suona altro. Continua in",
  lightsOut: "Spegni la luce",
  /** What ends that sentence, behind the link. */
  runIsOnEnd: ".",
  inWords: "Lo stesso a parole",
  time: "Tempo",
  hands: "Mani",
  voice: "Voce",
  hearFrom: "ascolta",
  /** Read on from the word before it, by those who listen to the page. */
  from: (time: string) => `da ${time}`,
  left: (count: number) => (count === 1 ? "1 frase omessa" : `${count} frasi omesse`),
  leftWhy: "Quello che non ha trovato posto fra i segnali, e perché.",
  nothingLeft: "Tutto ciò che va detto trova posto.",
};

export const score = {
  /** Said of the whole picture; what it holds stands beside it in words. */
  picture: (title: string) => `Partitura: ${title}`,
  region: (title: string) => `Partitura: ${title}, si può scorrere di lato`,
  key: "Come si legge",
  keys: {
    words: "Una barra lunga quanto durano le parole, con le parole sopra.",
    count: "Tre battiti di attacco.",
    moment:
      "Un corno suona proprio nel momento: tre archi per versare, più marcati per svuotare, due per cominciare a muovere la tank.",
    beats: "Battiti per l’andata e il ritorno.",
    rest: "Un cerchio dove si posa la tank; un trattino dove un suono leggero dice che tutto va bene.",
    water:
      "Cinque linee sono il bagno: si aprono quando si versa, oscillano con la tank, sono piatte mentre riposa e si chiudono quando si svuota.",
    fold: "Un riposo lungo è ripiegato, con la durata scritta nello spazio vuoto.",
    clock:
      "Nero e bianco a turno: cinque secondi ciascuno; un secondo ciascuno dove ci sono solo parole.",
  },
  /** What stands for words, and for the length of a fold, where the signs are shown. */
  example: { words: "Pronti", fold: "17 s" },
  /** @param bath its id */
  bath: (bath: string) => bathWithin(bath),
  press: "premi",
  "pour-in": "versa",
  full: "è piena",
  rest: "riposo",
  "pour-out": "svuota",
  empty: "è vuota",
  tap: (count: number) => `batti ${count}`,
  still: (time: string) => time,
  moving: (count: number, time: string) => `×${count}, ${time}`,
};

/** A bout, short enough to stand under its notes. */
export const turnsInScore: { readonly [method in Method]: (count: number) => string } = {
  inversion: (count) => `capovolgi ${count}`,
  twist: (count) => `gira ${count}`,
  rotary: (count) => `ruota ${count}`,
  tray: (count) => `porta su ${count}`,
  hanger: (count) => `solleva ${count}`,
};

const times = (count: number) => (count === 1 ? "una volta" : `${count} volte`);

/** A bout, as a sentence's part. */
export const turnsInWords: { readonly [method in Method]: (count: number) => string } = {
  inversion: (count) => `capovolgi ${times(count)}`,
  twist: (count) => `gira l’agitatore ${times(count)}`,
  rotary: (count) => `ruota il tamburo ${times(count)}`,
  tray: (count) => `porta su la pellicola in fondo, ${times(count)}`,
  hanger: (count) => `solleva e inclina ${times(count)}`,
};

export const deeds = {
  /** @param bath its id, here and below */
  pourIn: (bath: string) => `versa ${theBath(bath)}`,
  full: "la tank è piena",
  until: (turns: string, time: string) => `${turns}, fino a ${time}`,
  rest: "riposo",
  tap: (count: number) => `batti ${times(count)}`,
  pourOut: (bath: string) => `svuota ${theBath(bath)}`,
  empty: "la tank è vuota",
  joined: (deeds: readonly string[]) => deeds.join(", "),
};
