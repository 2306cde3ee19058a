// The words of what comes up in the middle of a run, of a run that was left, and of what went otherwise than
// planned. Times and temperatures come ready written.

export const midRun = {
  more: "Altro",
  wrong: "Qualcosa non va",
  takeBack: "Annulla",
  hush: "Silenzio",
  speak: "Parla",
  poured: "Versato solo ora",
  emptied: "Vuota ora",
  /** To the other way, by which is gone now. */
  way: { room: "In tasca", pocket: "All’altoparlante" },
  silent: "Nessun suono",
  silentHint: "Premi dove vuoi per risentirlo. Nella tank il tempo corre.",
  notKept:
    "Questo browser non conserva nulla di questo sviluppo. Resta su questa pagina: se si chiude, non si ritrova più.",
};

export const leftRun = {
  title: (when: string) => `Uno sviluppo del ${when} non è mai finito`,
  hint: "La pagina si è chiusa a metà. Può riprendere da dove sarebbe adesso.",
  goOn: "Riprendi",
  drop: "Chiudilo",
  dropped: "È chiuso. Quello che hai fatto è in «Annota».",
};

export const otherwise = {
  title: "Che cosa è andato diversamente",
  /** Each stands behind the name of its bath. */
  pouredLate: (time: string) => `versato con ${time} di ritardo`,
  emptiedLate: (time: string) => `vuota con ${time} di ritardo`,
  emptiedEarly: (time: string) => `vuota con ${time} di anticipo`,
  read: (temperature: string, time: string) =>
    `${temperature} nella tank, ${time} dopo la pressione`,
  developed: (real: string, planned: string) =>
    `Sviluppato per ${real}; erano previsti ${planned}.`,
  lost: {
    closed: (time: string) => `Muto per ${time}: la pagina era chiusa.`,
    frozen: (time: string) => `Muto per ${time}: la pagina era ferma.`,
    asleep: (time: string) => `Muto per ${time}: il dispositivo dormiva.`,
    silent: (time: string) => `Muto per ${time}: il suono era fermo.`,
  },
  /** What was told of as wrong. */
  wrong: {
    eye: "Uno schizzo in un occhio.",
    light: "Si è accesa una luce.",
    bath: "È entrato un bagno sbagliato.",
    leak: "Il coperchio perdeva.",
    clock: "Si è perso il conto del tempo.",
  },
  clockSet: (time: string) => `L’orologio del dispositivo è stato spostato di ${time}.`,
};
