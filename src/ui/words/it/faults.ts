// What is said of a field in Italian: what it may hold, how it was read, what is at fault or wanting.

export const faults = {
  holds: (typed: string, may: string) => `«${typed}» non va bene. Ci va: ${may}.`,
  list: (may: string) => `Quello che c’è qui non basta. Ci va: ${may}.`,
  needed: (may: string) => `Serve: ${may}.`,
  readAs: (meaning: string) => `Letto come ${meaning}.`,
  lent: (meaning: string) =>
    `Letto come ${meaning}, con l’ultima unità che hai usato. Per cambiarla scrivine un’altra accanto.`,
  /** Of a file: where in it, what stands there, what may. */
  inFile: (path: string, holds: string, may: string) => `In ${path} ora: ${holds}; ci va: ${may}`,
  nothing: "niente",
  number: "un numero, per esempio «2» o «2,5»",
  seconds: "secondi, per esempio «10» o «10 s», oppure «1:30»",
  numbers: "numeri separati da spazi, per esempio «0,12 0,2 0,35»",
  minutes: "minuti, per esempio «30» o «30 min»",
  perCent: "una percentuale, per esempio «10»",
  counts: "un numero di capovolgimenti per ogni ricambio, per esempio «5, 10, 20»",
  why: "cioè?",
  spoken: (faults: number, wanting: number) =>
    `Ancora nessuna risposta. ${faults} da correggere, ${wanting} da riempire.`,
  summary: (faults: number) =>
    faults === 1 ? "1 campo da correggere:" : `${faults} campi da correggere:`,
  wanted: (count: number) => (count === 1 ? "1 campo da riempire:" : `${count} campi da riempire:`),
};

/** What fields are called when something is said of them. */
export const names = {
  /** `"Pellicola 2: Formato"`, `"Fissaggio: Tempo"`. */
  within: (part: string, field: string) => `${part}: ${field}`,
  quoted: (name: string) => `«${name}»`,
};
