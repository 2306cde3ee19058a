// The words of Write up, in Italian.

export const write = {
  lead: "Ogni sviluppo lascia da solo la sua annotazione qui.",
  onItsWay: "Si cercano i tuoi sviluppi…",
  empty:
    "Ancora nessuno sviluppo. Appena ne comincia uno, si trova qui da solo: la scheda, quando hai premuto per ogni passo, e lo spazio per quello che ne è venuto.",
  toLightsOut: "Vai a «Spegni la luce»",
  refused:
    "Questo browser non conserva niente da una visita all’altra: gli sviluppi di prima non si possono mostrare, e quelli qui sotto si perdono quando chiudi la pagina. Salvali in un file.",
  onlyHere: (count: number) =>
    count === 1
      ? "Questo browser non ha conservato uno di questi sviluppi, o quel che ne è stato detto: si perde quando chiudi la pagina. Salva tutto in un file."
      : `Questo browser non ha conservato ${count} di questi sviluppi, o quel che ne è stato detto: si perde quando chiudi la pagina. Salva tutto in un file.`,
  unread: (count: number) =>
    count === 1
      ? "Un altro sviluppo è stato conservato da un’altra versione, e non si può mostrare. Resta com’è."
      : `Altri ${count} sviluppi sono stati conservati da un’altra versione, e non si possono mostrare. Restano come sono.`,
  saveAll: "Salva tutto in un file",
  saved: (name: string) => `Salvato come ${name}.`,
  file: "tankside-sviluppi.json",
  untitled: "Uno sviluppo senza nome",
  films: "Pellicole",
  film: (label: string, size: string, count: number) =>
    count === 1 ? `${label}, ${size}` : `${count} × ${label}, ${size}`,
  rating: (at: number, box: number | undefined) =>
    box === undefined || box === at ? `esposta a ${at}` : `esposta a ${at}, nominale ${box}`,
  /** A film, and what it was metered at. */
  rated: (film: string, rating: string) => `${film}, ${rating}`,
  developer: "Rivelatore",
  /** In place of a dilution. */
  stock: "stock",
  developed: "Sviluppato per",
  bath: (time: string, temperature: string) => `${time} a ${temperature}`,
  ended: "Come è finito",
  endings: {
    done: "portato fino in fondo",
    left: (after: string) => `lasciato dopo: ${after}`,
    leftAtOnce: "lasciato prima di premere",
    open: "non ancora, o interrotto",
  },
  presses: (count: number) => (count === 1 ? "premuto 1 volta" : `premuto ${count} volte`),
  step: "Passo",
  at: "Premuto a",
  after: "Dopo il precedente",
  note: "Che cosa ne è venuto",
  noteHint: "Debole, giusto, denso? Uniforme? Che cosa cambieresti?",
  noteKept: "Conservato.",
  noteNotKept: "Questo browser non lo conserva. Salva tutto in un file prima di uscire.",
  again: "Rifai questo",
  takeOut: "Togli",
  takenOut: (title: string) => `«${title}»: tolto.`,
  notTakenOut: (title: string) =>
    `Questo browser non è riuscito a togliere «${title}». È ancora qui.`,
  notPutBack: (title: string) =>
    `Questo browser non è riuscito a rimettere «${title}» con le sue immagini. Puoi riprovare finché la pagina resta aperta.`,
  undo: "Annulla",
  /** Read on from the words of a button, by those who listen to the page. */
  of: (title: string, begun: string) => ` (${title}, ${begun})`,
};

/** Steps that are no bath, by id. */
export const steps = {
  "lay-out": "Preparazione del banco",
  dry: "Spirali asciutte",
  "wet-side": "Il lato bagnato",
  temper: "Temperatura",
  quiet: "Modalità aereo",
  lamps: "Lampade coperte",
  volume: "Volume audio",
  screen: "Schermo",
  "lights-out": "Oscurità totale",
  wait: "Cerca la luce",
  open: "Estrazione della pellicola",
  cut: "Taglio della coda",
  feed: "Infilare il capo",
  wind: "Nella spirale",
  spool: "Via dal rocchetto",
  tape: "Il nastro",
  others: "Le altre spirali",
  count: "Conta delle pellicole",
  holders: "Pellicole a posto",
  core: "Tubo e spirali",
  close: "Chiusura della tank",
  everyone: "Tutti pronti",
  light: "Luce accesa",
  "stay-dark": "Ancora al buio",
  hang: "Asciugatura",
};
