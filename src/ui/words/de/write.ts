// The words of Write up.

export const write = {
  lead: "Jeder Durchgang hält sich hier von selbst fest.",
  onItsWay: "Die Durchgänge werden gesucht …",
  empty:
    "Noch kein Durchgang. Sobald einer begonnen hat, steht er von selbst hier: das Arbeitsblatt, wann für jeden Schritt gedrückt wurde, und Platz für das, was daraus wurde.",
  toLightsOut: "Zu „Licht aus“",
  refused:
    "Dieser Browser behält nichts bis zum nächsten Mal. Frühere Durchgänge lassen sich deshalb nicht zeigen, und die unten stehenden gehen verloren, wenn die Seite geschlossen wird. Am besten in eine Datei sichern.",
  onlyHere: (count: number) =>
    count === 1
      ? "Einen dieser Durchgänge, oder was dazu gesagt wurde, hat der Browser nicht behalten: Das geht verloren, wenn die Seite geschlossen wird. Alles in eine Datei sichern."
      : `${count} dieser Durchgänge, oder was dazu gesagt wurde, hat der Browser nicht behalten: Das geht verloren, wenn die Seite geschlossen wird. Alles in eine Datei sichern.`,
  unread: (count: number) =>
    count === 1
      ? "Ein weiterer Durchgang stammt von einer anderen Fassung des Programms und lässt sich nicht zeigen. Er bleibt, wie er ist."
      : `${count} weitere Durchgänge stammen von einer anderen Fassung des Programms und lassen sich nicht zeigen. Sie bleiben, wie sie sind.`,
  saveAll: "Alles in Datei sichern",
  saved: (name: string) => `Gesichert als ${name}.`,
  file: "tankside-durchgaenge.json",
  untitled: "Durchgang ohne Namen",
  films: "Filme",
  film: (label: string, size: string, count: number) =>
    count === 1 ? `${label}, ${size}` : `${count} × ${label}, ${size}`,
  rating: (at: number, box: number | undefined) =>
    box === undefined || box === at
      ? `belichtet auf ${at}`
      : `belichtet auf ${at}, Nennempfindlichkeit ${box}`,
  /** A film, and what it was metered at. */
  rated: (film: string, rating: string) => `${film}, ${rating}`,
  developer: "Entwickler",
  /** In place of a dilution. */
  stock: "Vorratslösung",
  developed: "Entwickelt",
  bath: (time: string, temperature: string) => `${time} bei ${temperature}`,
  ended: "Ende",
  endings: {
    done: "ganz durchgeführt",
    left: (after: string) => `abgebrochen nach: ${after}`,
    leftAtOnce: "vor dem ersten Druck abgebrochen",
    open: "noch nicht, oder unterbrochen",
  },
  presses: (count: number) => `${count}-mal gedrückt`,
  step: "Schritt",
  at: "Gedrückt um",
  after: "Nach dem vorigen",
  note: "Was daraus wurde",
  noteHint: "Dünn, gut, dicht? Gleichmäßig? Was nächstes Mal anders?",
  noteKept: "Behalten.",
  noteNotKept:
    "Dieser Browser hat es nicht behalten. Vor dem Verlassen alles in eine Datei sichern.",
  again: "Noch einmal so",
  takeOut: "Streichen",
  takenOut: (title: string) => `„${title}“ ist gestrichen.`,
  notTakenOut: (title: string) =>
    `„${title}“ ließ sich in diesem Browser nicht streichen und steht noch hier.`,
  notPutBack: (title: string) =>
    `„${title}“ ließ sich in diesem Browser nicht mit den Bildern zurücklegen. Solange die Seite offen ist, lässt es sich noch einmal versuchen.`,
  undo: "Rückgängig",
  /** Read on from the words of a button, by those who listen to the page. */
  of: (title: string, begun: string) => ` (${title}, ${begun})`,
};

/** Steps that are no bath, by id. */
export const steps = {
  "lay-out": "Bereitlegen",
  dry: "Trockene Spiralen",
  "wet-side": "Die Nassseite",
  temper: "Temperatur",
  quiet: "Flugmodus",
  lamps: "Lampen abdecken",
  volume: "Lautstärke",
  screen: "Bildschirm",
  "lights-out": "Licht aus",
  wait: "Nach Licht suchen",
  open: "Film herausholen",
  cut: "Anschneiden",
  feed: "Einführen",
  wind: "Auf die Spirale",
  spool: "Vom Spulenkern",
  tape: "Der Klebestreifen",
  others: "Die anderen Spiralen",
  count: "Planfilme zählen",
  holders: "Planfilme einlegen",
  core: "Achse und Spiralen",
  close: "Dose schließen",
  everyone: "Alle fertig",
  light: "Licht an",
  "stay-dark": "Noch dunkel",
  hang: "Zum Trocknen aufhängen",
};
