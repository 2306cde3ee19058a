// The words of the frame around every place, of the greeting, and of what is done to the worksheet as a whole.

export const frame = {
  /** The same in every language. */
  program: "Tankside",
  skip: "Direct naar de pagina",
  places: "Onderdelen",
  title: (place: string) => `${place} · Tankside`,
  opening: "Wordt geopend…",
  notOpened: "Dit onderdeel kon niet worden opgehaald. De werkkaart is veilig.",
  again: "Opnieuw proberen",
  colophon: "Werkt zonder netwerk, stuurt niets weg en bewaart wat je invult in deze browser.",
  accessibility: "Toegankelijkheid",
};

export const language = {
  choose: "Taal",
  notFetched: (language: string) =>
    `${language} kon niet worden opgehaald. De pagina is niet veranderd.`,
  notKept: "Deze browser onthoudt de keuze niet tot de volgende keer.",
  /** Said where the voice of the worksheet has gone along. */
  voiceToo: (language: string) =>
    `De stem van deze werkkaart spreekt nu ${language}. “Ongedaan maken” zet dat terug.`,
};

export const places = {
  "work-out": { name: "Uitrekenen", hint: "de tijd en het mengsel" },
  "walk-through": { name: "Doornemen", hint: "elke stap, bij licht" },
  "lights-out": { name: "Licht uit", hint: "de sessie, op gehoor" },
  "write-up": { name: "Opschrijven", hint: "wat ervan kwam" },
};

export const greeting = {
  says: "Film in het donker, allebei je handen nat. Vul de pagina hieronder in, dan zegt een stem je wat je moet doen en wanneer.",
  hear: "Hoor het ingieten",
  hearHint: "tien seconden, van het aftellen tot de eerste keer kantelen",
  hearing: "Luister…",
  notHeard: "Er kon hier geen geluid worden gestart.",
  begin: "Sessie beginnen",
  beginHint: "gaat naar “Licht uit”",
};

export const sheet = {
  tools: "Deze werkkaart",
  save: "In bestand opslaan",
  open: "Bestand openen",
  demo: "Begin met Gullrock Light",
  demoPushed: "Begin met Foghorn 400",
  empty: "Leeg beginnen",
  undo: "Ongedaan maken",
  redo: "Opnieuw doen",
  dropHere: "Laat los om deze werkkaart te openen",
};

export const notices = {
  practice: "Een oefenkaart van Gullrock Light is ingevuld. Verander wat je wilt, of begin leeg.",
  demo: "De werkkaart van Gullrock Light is ingevuld. “Ongedaan maken” haalt die van jou terug.",
  empty: "De pagina is leeg. “Ongedaan maken” haalt de vorige werkkaart terug.",
  opened: (name: string) => `${name} is geopend. “Ongedaan maken” haalt de vorige werkkaart terug.`,
  saved: (name: string) => `Opgeslagen als ${name}.`,
  notSaved: "Nog niet opgeslagen: een bestand moet volledig zijn. Eerst graag deze velden:",
  notWorksheet: (name: string) =>
    `${name} is niet bruikbaar. Hier is niets veranderd. Dit staat erin:`,
  notFile: "Dat kon niet als bestand worden gelezen. Hier is niets veranderd.",
  notKept:
    "Deze browser bewaart de werkkaart niet tot de volgende keer. Sla hem op in een bestand voordat je weggaat.",
  removed: (row: string) => `${row} is weggehaald. “Ongedaan maken” haalt die terug.`,
  undone: "Ongedaan gemaakt.",
  redone: "Opnieuw gedaan.",
};

/** What stands in the worksheets from Gullrock Light. */
export const demo = {
  gullrock: { title: "Gullrock Light, donderdagavond", tank: "staal, twee spiralen" },
  foghorn: { title: "Foghorn 400, één stop onderbelicht", tank: "staal, één spiraal" },
};
