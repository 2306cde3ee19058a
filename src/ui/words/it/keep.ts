// The words of what the page says about itself: a newer version, standing among the programs, what is kept.

export const news = {
  ready: "È pronta una versione nuova. La pagina si ricarica; quello che hai scritto resta.",
  takenElsewhere:
    "Un’altra scheda del browser è passata a una versione nuova. A questa pagina possono mancare delle parti finché non si ricarica.",
  takeIt: "Prendila adesso",
  loadAnew: "Ricarica",
  /** Said of the version, where something is in the way of it. */
  waits: {
    "run-is-on": "Aspetta che lo sviluppo sia finito.",
    "other-pages": "Prima chiudi le altre pagine di Tankside: usano ancora la versione di prima.",
    failed:
      "Adesso non è stato possibile. Arriva da sola quando tutte le pagine di Tankside sono state chiuse.",
  },
};

export const install = {
  offer: "Tankside può stare tra i programmi di questo dispositivo.",
  install: "Installa",
};

export const keeping = {
  /** Before a run, this and the next. */
  nothing:
    "Questo browser non conserva niente di uno sviluppo: se la pagina si chiude, non ritrova più il punto in cui era, e non ne resta traccia. Succede nelle finestre private e con certe impostazioni.",
  noRoom:
    "Non c’è più spazio per conservare uno sviluppo: se la pagina si chiude, non ritrova più il punto in cui era, e non ne resta traccia. Prima fai posto su questo dispositivo.",
  /** Beside the records. */
  noMoreRoom:
    "Qui non c’è più spazio per un altro sviluppo. Fai posto su questo dispositivo, oppure salva gli sviluppi in un file e togline qualcuno.",
  mayBeCleared:
    "Questo browser può cancellare quello che conserva qui: una finestra privata quando si chiude, le altre quando il disco si riempie. Salva in un file gli sviluppi che contano.",
};
