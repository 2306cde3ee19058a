// The words of what Write up does with many runs, and of what a person adds to one, in Italian.

export const find = {
  search: "Cerca",
  film: "Pellicola",
  developer: "Rivelatore",
  year: "Anno",
  stars: "Stelle",
  /** No choice made. */
  all: "tutto",
  /** A choice, and how many runs it would leave. */
  choice: (name: string, count: number) => `${name} (${count})`,
  count: (shown: number, all: number) =>
    shown === all ? (all === 1 ? "1 sviluppo" : `${all} sviluppi`) : `${shown} di ${all} sviluppi`,
  none: "Nessuno sviluppo è così.",
  clear: "Mostra tutti gli sviluppi",
  more: (count: number) => (count === 1 ? "Mostrane un altro" : `Mostrane altri ${count}`),
};

export const stars = {
  asks: "Come sono i negativi?",
  unsaid: "non detto",
  words: {
    1: "non stampabili",
    2: "scarsi",
    3: "usabili",
    4: "buoni",
    5: "come li volevi",
  },
  each: (stars: number, word: string) => `${stars}: ${word}`,
};

export const pictures = {
  name: (count: number) => (count === 0 ? "Foto dei negativi" : `Foto dei negativi: ${count}`),
  hint: "Si rimpiccioliscono, restano in questo browser e perdono il luogo e l’ora che una fotocamera vi scrive.",
  add: "Aggiungi foto, dalla fotocamera o da file",
  alt: "Che cosa vi si vede",
  unnamed: "Una foto che nessuno ha descritto",
  remove: "Togli questa foto",
  removed: "La foto è tolta.",
  notRemoved: "Questo browser non è riuscito a togliere la foto. È ancora qui.",
  notPicture: (name: string) => `«${name}» non è un’immagine che questo browser sappia leggere.`,
  noRoom: "Non c’è più posto per la foto. Nient’altro è cambiato.",
  notKept: "Questo browser non ha conservato la foto.",
};

export const dictate = {
  start: "Detta",
  stop: "Smetti di dettare",
  listening: "In ascolto. Quello che si capisce va dietro a quello che è scritto.",
  away: "Questo browser può mandare quello che sente ad altre macchine, dove diventa parole. Il microfono resta spento se non sei d’accordo.",
  agree: "D’accordo, detta",
  decline: "Meglio di no",
  failed: "Il browser non ha ascoltato, o non ha capito niente. Quello che è scritto resta.",
};

export const again = {
  asks: "Temperatura del rivelatore oggi",
  hint: (was: string) =>
    `Allora era ${was}. Foglietto, metodo e tempi restano; quello che fu misurato quel giorno si lascia fuori.`,
  make: "Calcola",
  leave: "Non ora",
};

export const beside = {
  choose: "Confronta",
  chosen: "Scelto per il confronto",
  hint: "Scegli un altro sviluppo da confrontare.",
  name: "Fianco a fianco",
  what: "Che cosa",
  differed: "Che cosa era diverso",
  same: "Che cosa era uguale",
  leave: "Chiudi",
  begun: "Cominciato",
  title: "Nome",
  temperature: "Temperatura",
  planned: "Sviluppo previsto",
  done: "Sviluppo effettivo",
  method: "Metodo",
  tank: "Tank",
  agitated: "Agitazione",
  pressed: "Premuto, contando dalla prima volta",
  agitation: (first: string, every: string, lasts: string) =>
    `prima ${first}, dopo ogni ${every} per ${lasts}`,
};

export const overTime = {
  name: "Lungo i mesi",
  hint: "Un punto è il centro degli sviluppi di un mese; un tratto va dal valore minore al maggiore.",
  temperature: "Temperatura del rivelatore",
  late: (bath: string) => `${bath}: svuotato in ritardo di`,
  table: "Lo stesso in tabelle",
  month: "Mese",
  runs: "Sviluppi",
  /** Heads the column of what the table is about. */
  figure: "Centro, e dal minore al maggiore",
  span: (middle: string, least: string, most: string) => `${middle} (da ${least} a ${most})`,
};

export const everything = {
  table: "Salva una tabella degli sviluppi",
  tableFile: "tankside-sviluppi.csv",
  choose: "Prendi da un file",
  hint: "Il file contiene sviluppi, foto, tank, bottiglie, gli elenchi della stanza, la scheda e le scelte di questo dispositivo. La tua voce ha un file suo.",
  notSaved:
    "Non tutto ciò che è conservato qui si è potuto mettere in un file: non ne è stato salvato nessuno. Non è cambiato niente.",
  unreadable: (name: string) =>
    `Questo browser non è riuscito a leggere «${name}». Non è cambiato niente.`,
  foreign: (name: string) =>
    `«${name}» non è un file di sviluppi salvato qui. Non è cambiato niente.`,
  newer: (name: string) =>
    `«${name}» viene da una versione più nuova, che sa di più. Non è cambiato niente.`,
  damaged: (name: string, path: string) =>
    `«${name}» è guasto in ${path}, perciò non se ne usa niente. Non è cambiato niente.`,
  nothingNew: (name: string) => `Tutto quello che c’è in «${name}» è già qui.`,
  offer: (name: string) => `Prendere «${name}»?`,
  rule: "Di due che sono lo stesso sviluppo, la stessa foto o la stessa tank resta il più nuovo; di una bottiglia, tutto ciò che è scritto qui o là. La scheda, gli elenchi della stanza e le scelte di qui restano.",
  kind: "Che cosa",
  adds: "nuovo",
  replaces: "sostituito dal più nuovo",
  skips: "resta com’è qui",
  kinds: {
    runs: "Sviluppi",
    pictures: "Foto",
    tanks: "Tank",
    worksheets: "Scheda",
    bottles: "Bottiglie",
    rooms: "Elenchi della stanza",
    settings: "Scelte",
  },
  take: "Prendilo",
  leave: "Lascialo",
  taken: "È preso. Le scelte del dispositivo valgono dalla prossima visita.",
  takenBack: (stayed: number) =>
    stayed === 0
      ? "Annullato: tutto è come prima del file."
      : stayed === 1
        ? "Annullato, tranne una cosa che nel frattempo è cambiata."
        : `Annullato, tranne ${stayed} cose che nel frattempo sono cambiate.`,
  notTakenBack: "Questo browser non è riuscito ad annullarlo. Non è cambiato niente.",
  noRoom: "In questo browser non c’è posto. Non è cambiato niente.",
  refused: "Questo browser non è riuscito a prenderlo. Non è cambiato niente.",
};
