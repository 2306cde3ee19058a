// The words of the frame around every place, of the greeting, and of what is done to the worksheet as a whole,
// in Italian.

export const frame = {
  /** The same in every language. */
  program: "Tankside",
  skip: "Vai alla pagina",
  places: "Luoghi",
  title: (place: string) => `${place} · Tankside`,
  opening: "Si apre…",
  notOpened: "Questa parte non si è potuta caricare. La scheda è al sicuro.",
  again: "Riprova",
  colophon:
    "Funziona senza rete, non manda niente a nessuno, conserva in questo browser quello che scrivi.",
  accessibility: "Accessibilità",
};

export const language = {
  choose: "Lingua",
  notFetched: (language: string) =>
    `${language}: non si è potuto caricare. La pagina resta com’era.`,
  notKept: "Questo browser non ricorda la scelta da una visita all’altra.",
  /** Said where the voice of the worksheet has gone along. */
  voiceToo: (language: string) =>
    `La voce di questa scheda adesso parla ${language}. Annulla la lascia com’era.`,
};

export const places = {
  "work-out": { name: "Calcola", hint: "il tempo e la miscela" },
  "walk-through": { name: "Ripassa", hint: "ogni passo, alla luce" },
  "lights-out": { name: "Spegni la luce", hint: "lo sviluppo, a orecchio" },
  "write-up": { name: "Annota", hint: "che cosa ne è venuto" },
};

export const greeting = {
  says: "Pellicola al buio, tutte e due le mani bagnate. Compila la pagina qui sotto, e una voce ti dirà che cosa fare e quando.",
  hear: "Senti come si versa",
  hearHint: "dieci secondi, dai tre battiti d’attacco al primo capovolgimento",
  hearing: "Ascolta…",
  notHeard: "Qui non si è potuto avviare nessun suono.",
  begin: "Comincia lo sviluppo",
  beginHint: "porta a «Spegni la luce»",
};

export const sheet = {
  tools: "Questa scheda",
  save: "Salva in un file",
  open: "Apri un file",
  demo: "Parti da Gullrock Light",
  demoPushed: "Parti da Foghorn 400",
  empty: "Scheda vuota",
  undo: "Annulla",
  redo: "Ripeti",
  dropHere: "Lascia qui per aprire questa scheda",
};

export const notices = {
  practice:
    "È già compilata una scheda di prova di Gullrock Light. Cambia quello che vuoi, o comincia da una scheda vuota.",
  demo: "È compilata la scheda di Gullrock Light. Annulla riporta la tua.",
  empty: "La pagina è vuota. Annulla riporta la scheda di prima.",
  opened: (name: string) => `${name} è aperto. Annulla riporta la scheda di prima.`,
  saved: (name: string) => `Salvato come ${name}.`,
  notSaved: "Non ancora salvata: in un file la scheda dev’essere completa. Prima questi campi:",
  notWorksheet: (name: string) =>
    `${name} non si può usare. Qui non è cambiato niente. Ecco che cosa contiene:`,
  notFile: "Non si è potuto leggere come file. Qui non è cambiato niente.",
  notKept:
    "Questo browser non conserva la scheda da una visita all’altra. Salvala in un file prima di uscire.",
  removed: (row: string) => `${row}: tolta. Annulla la riporta.`,
  undone: "Annullato.",
  redone: "Rifatto.",
};

/** What stands in the worksheets from Gullrock Light. */
export const demo = {
  gullrock: { title: "Gullrock Light, giovedì sera", tank: "acciaio, due spirali" },
  foghorn: { title: "Foghorn 400, sottoesposta di uno stop", tank: "acciaio, una spirale" },
};
