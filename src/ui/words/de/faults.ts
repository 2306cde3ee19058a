// What is said of a field: what it may hold, how it was read, what is at fault or wanting.

export const faults = {
  holds: (typed: string, may: string) => `„${typed}“ geht hier nicht. Hier passt: ${may}.`,
  list: (may: string) => `Was hier steht, reicht nicht. Hier passt: ${may}.`,
  needed: (may: string) => `Hier fehlt: ${may}.`,
  readAs: (meaning: string) => `Gelesen als ${meaning}.`,
  lent: (meaning: string) =>
    `Gelesen als ${meaning}, mit der zuletzt benutzten Einheit. Soll es eine andere sein, sie dahinterschreiben.`,
  /** Of a file: where in it, what stands there, what may. */
  inFile: (path: string, holds: string, may: string) =>
    `${path}: Hier steht ${holds}; hier passt: ${may}`,
  nothing: "nichts",
  number: "eine Zahl wie „2“ oder „2,5“",
  seconds: "Sekunden, etwa „10“ oder „10 s“, oder „1:30“",
  numbers: "Zahlen mit Leerzeichen dazwischen, etwa „0,12 0,2 0,35“",
  minutes: "Minuten, etwa „30“ oder „30 min“",
  perCent: "Prozent, etwa „10“",
  counts: "für jede Füllung, wie oft gekippt wird, etwa „5, 10, 20“",
  why: "wozu?",
  spoken: (faults: number, wanting: number) =>
    `Noch keine Antwort. Zu berichtigen: ${faults}. Auszufüllen: ${wanting}.`,
  summary: (faults: number) =>
    faults === 1 ? "1 Feld zu berichtigen:" : `${faults} Felder zu berichtigen:`,
  wanted: (count: number) => (count === 1 ? "1 Feld auszufüllen:" : `${count} Felder auszufüllen:`),
};

/** What fields are called when something is said of them. */
export const names = {
  /** `"Film 2: Format"`, `"Fixierbad: Zeit"`. */
  within: (part: string, field: string) => `${part}: ${field}`,
  quoted: (name: string) => `„${name}“`,
};
