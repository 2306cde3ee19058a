// What is said of a field, in French: what it may hold, how it was read, what is at fault or wanting.

export const faults = {
  holds: (typed: string, may: string) => `« ${typed} » ne convient pas. Attendu : ${may}.`,
  list: (may: string) => `Ce qui est écrit là ne suffit pas. Attendu : ${may}.`,
  needed: (may: string) => `À remplir : ${may}.`,
  readAs: (meaning: string) => `Lu comme ${meaning}.`,
  lent: (meaning: string) =>
    `Lu comme ${meaning}, l’unité de la dernière fois. Pour changer, écrivez-en une autre à côté.`,
  /** Of a file: where in it, what stands there, what may. */
  inFile: (path: string, holds: string, may: string) => `${path} : ${holds} ; attendu : ${may}`,
  nothing: "rien",
  number: "un nombre tel que « 2 » ou « 2,5 »",
  seconds: "des secondes, comme « 10 » ou « 10 s », ou « 1:30 »",
  numbers: "des nombres séparés par des espaces, comme « 0,12 0,2 0,35 »",
  minutes: "des minutes, comme « 30 » ou « 30 min »",
  perCent: "un pourcentage, comme « 10 »",
  counts: "le nombre de retournements de chaque remplissage, comme « 5, 10, 20 »",
  why: "aide",
  spoken: (faults: number, wanting: number) =>
    `Pas encore de réponse. À corriger : ${faults}. À remplir : ${wanting}.`,
  summary: (faults: number) =>
    faults < 2 ? `${faults} champ à corriger :` : `${faults} champs à corriger :`,
  wanted: (count: number) =>
    count < 2 ? `${count} champ à remplir :` : `${count} champs à remplir :`,
};

/** What fields are called when something is said of them. */
export const names = {
  /** `"Film 2 : Format"`, `"Fixateur : Temps"`. */
  within: (part: string, field: string) => `${part} : ${field}`,
  quoted: (name: string) => `« ${name} »`,
};
