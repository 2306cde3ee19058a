// The words of Lights out. What the voice says stands in audio-scripts/.
import type { Deed } from "../../../process/moments.ts";
import type { Method } from "../../../trade/method.ts";
import { theBath } from "./baths.ts";

/** What the hands are to do, large enough to read across a room; by method where hands differ. */
export const runDeeds: { readonly [deed in Deed]: string } = {
  "pour-in": "Ingieten",
  full: "Vol",
  agitate: "Kantelen",
  invert: "Kantelen",
  rest: "Rust",
  tap: "Tikken",
  "pour-out": "Uitgieten",
  empty: "Leeg",
};

/** Moving the tank, by method. */
export const moves: { readonly [method in Method]: string } = {
  inversion: "Kantelen",
  twist: "Draaien",
  rotary: "Rollen",
  tray: "Omstapelen",
  hanger: "Optillen",
};

export const beforeRun = {
  noWorksheet: "De sessie volgt een werkkaart, en die van jou is nog niet volledig.",
  toWorkOut: "Naar “Uitrekenen”",
  ahead: "Wat je gaat doen",
  develop: (films: string, time: string, temperature: string, developer: string) =>
    `${films}: ${time} bij ${temperature} in ${developer}.`,
  films: (films: readonly string[]) => films.join(", "),
  mix: (mix: string) => `Mengsel: ${mix}.`,
  how: "Hoe je drukt",
  once: "Eén druk, waar dan ook op het scherm of op een willekeurige toets, brengt je naar de volgende stap.",
  twice:
    "Druk twee keer kort na elkaar en de stem zegt waar we zijn en wat er hierna komt. Terwijl een bad loopt, is één keer genoeg.",
  thrice:
    "Drie keer kort na elkaar: de stem zwijgt en de tonen van de handelingen gaan door; nog eens drie, en ze spreekt weer.",
  held: "Een seconde ingedrukt houden: de rest op het gehoor, de ene keuze na de andere; druk als je de jouwe hoort. Binnen drie seconden na een druk ingedrukt gehouden neemt het die druk terug; de Backspace-toets doet dat ook.",
  reading:
    "Terwijl de film ontwikkelt, voeren de pijltoetsen omhoog en omlaag een temperatuur in, stap voor stap uitgesproken; een druk legt haar vast, en het einde schuift mee.",
  clock: "Zodra de ontwikkelaar erin zit, wacht niets meer: de klok in de tank staat nooit stil.",
  dark: "Van “Licht uit” tot het deksel vastzit is het scherm zwart en de muisaanwijzer weg. Zwart is niet uit: leg het apparaat onder een donkere doek en steek je hand eronder om te drukken.",
  volume: "Zet het geluid zo hard dat je de tonen boven stromend water uit hoort.",
  stops: "Voordat je begint",
  accept: "Ik heb dit gelezen en ga toch door.",
  begin: "Beginnen",
  beginHint: "de eerste druk; vanaf hier neemt de stem het over",
  fetching: "De stem wordt opgehaald…",
  failed:
    "De stem kon niet worden opgehaald, dus er is niets begonnen. Je hebt maar één keer een netwerk nodig, de eerste keer.",
  elsewhere:
    "Er loopt al een sessie in een ander tabblad of venster van deze browser. Ga daar verder, of verlaat die eerst.",
  again: "Opnieuw proberen",
};

export const duringRun = {
  name: "De sessie",
  press: "Druk ergens om door te gaan",
  where: "Waar zijn we?",
  /** By how much is said now: what a press makes of it. */
  say: { full: "Minder zeggen", brief: "Alleen tonen", tones: "Alles zeggen" },
  leave: "Sessie afbreken",
  leaveTimed: "De klok in de tank loopt zonder jou door. De sessie afbreken?",
  leaveWaiting: "De sessie afbreken? Wat er tot nu toe gedaan is, blijft bewaard in “Opschrijven”.",
  stay: "Blijven",
  now: (deed: string) => `Nu: ${deed}`,
  next: "Hierna",
  in: (time: string) => `over ${time}`,
  after: (deed: string, time: string) => `daarna ${deed.toLowerCase()}, over ${time}`,
  /** @param bath its id */
  leftIn: (bath: string) => `nog in ${theBath(bath)}`,
  untilPour: "tot het ingieten",
  emptying: "tot hij leeg is",
  waiting: "Druk",
  waitingFor: (title: string) => `dan begint: ${title}`,
  said: "Wat er gezegd is",
  tookOver:
    "De stem van dit apparaat liet het twee keer achter elkaar afweten: vanaf hier spreekt de stem die bij Tankside hoort.",
  over: "Klaar",
  overHint: "De film hangt. Wat er gedaan is, staat in “Opschrijven”.",
  toWriteUp: "Naar “Opschrijven”",
};
