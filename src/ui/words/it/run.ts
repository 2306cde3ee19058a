// The words of Lights out, in Italian. What the voice says stands in audio-scripts/.
import type { Deed } from "../../../process/moments.ts";
import type { Method } from "../../../trade/method.ts";
import { inBath } from "./baths.ts";

/** What the hands are to do, large enough to read across a room; by method where hands differ. */
export const runDeeds: { readonly [deed in Deed]: string } = {
  "pour-in": "Versa",
  full: "È piena",
  agitate: "Capovolgi",
  invert: "Capovolgi",
  rest: "Riposo",
  tap: "Batti",
  "pour-out": "Svuota",
  empty: "È vuota",
};

/** Moving the tank, by method. */
export const moves: { readonly [method in Method]: string } = {
  inversion: "Capovolgi",
  twist: "Gira",
  rotary: "Ruota",
  tray: "Porta su",
  hanger: "Solleva",
};

export const beforeRun = {
  noWorksheet: "Lo sviluppo segue una scheda, e la tua non è ancora completa.",
  toWorkOut: "Vai a «Calcola»",
  ahead: "Che cosa si farà",
  develop: (films: string, time: string, temperature: string, developer: string) =>
    `${films}: ${time} a ${temperature} in ${developer}.`,
  films: (films: readonly string[]) => films.join(", "),
  mix: (mix: string) => `Prepara ${mix}.`,
  how: "Come si preme",
  once: "Premi una volta, in un punto qualsiasi dello schermo o su un tasto qualsiasi, e si va al passo seguente.",
  twice:
    "Premi due volte di fila per sapere dove siamo e che cosa viene dopo. Mentre un bagno è in corso basta una volta.",
  thrice: "Tre volte di fila: la voce tace, i suoni dei momenti continuano; altre tre, e riparla.",
  held: "Tenuto premuto un secondo: il resto a orecchio, una scelta dopo l’altra; premi quando senti la tua. Tenuto entro tre secondi da una pressione, la annulla; lo fa anche il tasto Backspace.",
  reading:
    "Durante lo sviluppo le frecce su e giù inseriscono una lettura del termometro, detta passo per passo; una pressione la fissa, e la fine si sposta di conseguenza.",
  clock: "Una volta versato il rivelatore niente aspetta: nella tank il tempo non si ferma mai.",
  dark: "Da «Oscurità totale» finché il coperchio è bloccato lo schermo è nero, puntatore compreso. Nero non vuol dire spento: tieni il dispositivo sotto un panno scuro, e infila sotto la mano per premere.",
  volume: "Regola il volume in modo che i suoni coprano l’acqua che scorre.",
  stops: "Prima di cominciare",
  accept: "Ho letto, e vado avanti lo stesso.",
  begin: "Comincia",
  beginHint: "è la prima volta che premi; da qui guida la voce",
  fetching: "Si carica la voce…",
  failed:
    "La voce non si è potuta caricare, perciò non è cominciato niente. La rete serve una volta sola, la prima.",
  elsewhere:
    "Un’altra pagina di questo browser sta già guidando uno sviluppo. Continua lì, oppure prima lasciala.",
  again: "Riprova",
};

export const duringRun = {
  name: "Lo sviluppo",
  press: "Premi dove vuoi per andare avanti",
  where: "Dove siamo?",
  /** By how much is said now: what a press makes of it. */
  say: { full: "Parla meno", brief: "Solo suoni", tones: "Di’ tutto" },
  leave: "Lascia la guida",
  leaveTimed: "Nella tank il tempo corre anche senza di te. Vuoi lasciare la guida?",
  leaveWaiting: "Vuoi lasciare la guida? Quello che hai fatto finora resta in «Annota».",
  stay: "Resta",
  now: (deed: string) => `Adesso: ${deed}`,
  next: "Poi",
  in: (time: string) => `tra ${time}`,
  after: (deed: string, time: string) => `poi ${deed.toLowerCase()}, tra ${time}`,
  /** @param bath its id */
  leftIn: (bath: string) => `ancora ${inBath(bath)}`,
  untilPour: "prima di versare",
  emptying: "per svuotare",
  waiting: "Premi",
  waitingFor: (title: string) => `per cominciare: ${title}`,
  said: "Che cosa è stato detto",
  tookOver:
    "La voce di questo dispositivo non ha funzionato per due volte di fila: da qui in poi parla la voce inclusa in Tankside.",
  over: "Fatto",
  overHint: "La pellicola è appesa. Quello che hai fatto è in «Annota».",
  toWriteUp: "Vai a «Annota»",
};
