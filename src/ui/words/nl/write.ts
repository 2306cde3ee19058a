// The words of Write up.

export const write = {
  lead: "Elke sessie laat hier vanzelf een verslag achter.",
  onItsWay: "Je sessies worden opgezocht…",
  empty:
    "Nog geen sessie. Zodra er een begonnen is, staat die hier vanzelf: de werkkaart, wanneer er voor elke stap gedrukt is, en ruimte voor wat ervan kwam.",
  toLightsOut: "Naar “Licht uit”",
  refused:
    "Deze browser bewaart niets tot de volgende keer. Eerdere sessies zijn dus niet te zien, en wat hieronder staat verdwijnt als je de pagina sluit. Sla alles op in een bestand.",
  onlyHere: (count: number) =>
    count === 1
      ? "Eén van deze sessies, of wat ervan gezegd is, kon deze browser niet bewaren: dat verdwijnt als je de pagina sluit. Sla alles op in een bestand."
      : `${count} van deze sessies, of wat ervan gezegd is, kon deze browser niet bewaren: dat verdwijnt als je de pagina sluit. Sla alles op in een bestand.`,
  unread: (count: number) =>
    count === 1
      ? "Nog één sessie is bewaard door een andere versie van het programma en is hier niet te zien. Er verandert niets aan."
      : `Nog ${count} sessies zijn bewaard door een andere versie van het programma en zijn hier niet te zien. Er verandert niets aan.`,
  saveAll: "Alles in bestand opslaan",
  saved: (name: string) => `Opgeslagen als ${name}.`,
  file: "tankside-sessies.json",
  untitled: "Sessie zonder naam",
  films: "Films",
  film: (label: string, size: string, count: number) =>
    count === 1 ? `${label}, ${size}` : `${count} × ${label}, ${size}`,
  rating: (at: number, box: number | undefined) =>
    box === undefined || box === at
      ? `belicht op ${at}`
      : `belicht op ${at}, ISO ${box} op het doosje`,
  /** A film, and what it was metered at. */
  rated: (film: string, rating: string) => `${film}, ${rating}`,
  developer: "Ontwikkelaar",
  /** In place of a dilution. */
  stock: "onverdund",
  developed: "Ontwikkeld",
  bath: (time: string, temperature: string) => `${time} bij ${temperature}`,
  ended: "Afloop",
  endings: {
    done: "helemaal doorlopen",
    left: (after: string) => `afgebroken na: ${after}`,
    leftAtOnce: "afgebroken voor de eerste druk",
    open: "nog niet, of onderbroken",
  },
  presses: (count: number) => `${count} keer gedrukt`,
  step: "Stap",
  at: "Gedrukt om",
  after: "Na de vorige",
  note: "Wat ervan kwam",
  noteHint: "Dun, goed, dicht? Gelijkmatig? Wat doe je de volgende keer anders?",
  noteKept: "Bewaard.",
  noteNotKept: "Deze browser kon het niet bewaren. Sla alles op in een bestand voordat je weggaat.",
  again: "Nog eens zo",
  takeOut: "Weghalen",
  takenOut: (title: string) => `“${title}” is weggehaald.`,
  notTakenOut: (title: string) =>
    `Deze browser kon “${title}” niet weghalen. De sessie staat er nog.`,
  notPutBack: (title: string) =>
    `Deze browser kon “${title}” niet met de foto’s terugzetten. Het kan opnieuw zolang de pagina open is.`,
  undo: "Ongedaan maken",
  /** Read on from the words of a button, by those who listen to the page. */
  of: (title: string, begun: string) => ` (${title}, ${begun})`,
};

/** Steps that are no bath, by id. */
export const steps = {
  "lay-out": "Klaarleggen",
  dry: "Droge spiralen",
  "wet-side": "De natte kant",
  temper: "Temperatuur",
  quiet: "Vliegtuigstand",
  lamps: "Lampen afdekken",
  volume: "Geluidssterkte",
  screen: "Scherm",
  "lights-out": "Licht uit",
  wait: "Licht zoeken",
  open: "Film eruit halen",
  cut: "Recht afknippen",
  feed: "Invoeren",
  wind: "Op de spiraal",
  spool: "Van de kern",
  tape: "Het plakband",
  others: "De andere spiralen",
  count: "Vellen tellen",
  holders: "Vellen plaatsen",
  core: "Middenas en spiralen",
  close: "Tank sluiten",
  everyone: "Iedereen klaar",
  light: "Licht aan",
  "stay-dark": "Nog donker",
  hang: "Ophangen om te drogen",
};
