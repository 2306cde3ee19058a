// The words of what Write up does with many runs, and of what a person adds to one, in German.

export const find = {
  search: "Suche",
  film: "Film",
  developer: "Entwickler",
  year: "Jahr",
  stars: "Sterne",
  /** No choice made. */
  all: "alle",
  /** A choice, and how many runs it would leave. */
  choice: (name: string, count: number) => `${name} (${count})`,
  count: (shown: number, all: number) =>
    shown === all
      ? all === 1
        ? "1 Durchgang"
        : `${all} Durchgänge`
      : `${shown} von ${all} Durchgängen`,
  none: "So ein Durchgang ist nicht dabei.",
  clear: "Alle Durchgänge zeigen",
  more: (count: number) => (count === 1 ? "1 weiteren zeigen" : `${count} weitere zeigen`),
};

export const stars = {
  asks: "Wie gut sind die Negative?",
  unsaid: "nichts gesagt",
  words: {
    1: "nicht zu vergrößern",
    2: "schwach",
    3: "brauchbar",
    4: "gut",
    5: "wie gewünscht",
  },
  each: (stars: number, word: string) => `${stars}: ${word}`,
};

export const pictures = {
  name: (count: number) => (count === 0 ? "Bilder der Negative" : `Bilder der Negative: ${count}`),
  hint: "Sie werden verkleinert, bleiben in diesem Browser und verlieren Ort und Zeit, die eine Kamera hineinschreibt.",
  add: "Bilder hinzufügen, von der Kamera oder aus Dateien",
  alt: "Was darauf zu sehen ist",
  unnamed: "Ein Bild, das niemand beschrieben hat",
  remove: "Dieses Bild streichen",
  removed: "Das Bild ist gestrichen.",
  notRemoved: "Das Bild ließ sich in diesem Browser nicht streichen und ist noch hier.",
  notPicture: (name: string) => `„${name}“ ist kein Bild, das dieser Browser lesen kann.`,
  noRoom: "Für das Bild ist kein Platz mehr. Sonst hat sich nichts geändert.",
  notKept: "Dieser Browser hat das Bild nicht behalten.",
};

export const dictate = {
  start: "Diktieren",
  stop: "Diktat beenden",
  listening: "Es wird zugehört. Was verstanden wird, kommt hinter das Geschriebene.",
  away: "Dieser Browser schickt das Gehörte womöglich an andere Rechner, wo es zu Wörtern wird. Das Mikrofon bleibt aus, solange nicht zugestimmt wird.",
  agree: "Zustimmen und diktieren",
  decline: "Lieber nicht",
  failed: "Der Browser hat nicht zugehört oder nichts verstanden. Das Geschriebene bleibt.",
};

export const again = {
  asks: "Temperatur des Entwicklers heute",
  hint: (was: string) =>
    `Damals waren es ${was}. Beipackzettel, Verfahren und Zeiten bleiben; was an jenem Tag gemessen wurde, fällt weg.`,
  make: "Ausrechnen",
  leave: "Jetzt nicht",
};

export const beside = {
  choose: "Vergleichen",
  chosen: "Zum Vergleich gewählt",
  hint: "Noch einen Durchgang zum Vergleichen wählen.",
  name: "Nebeneinander",
  what: "Was",
  differed: "Was anders war",
  same: "Was gleich war",
  leave: "Schließen",
  begun: "Begonnen",
  title: "Name",
  temperature: "Temperatur",
  planned: "Entwicklung geplant",
  done: "Entwicklung wirklich",
  method: "Verfahren",
  tank: "Dose",
  agitated: "Bewegung",
  pressed: "Gedrückt, gezählt vom ersten Mal an",
  agitation: (first: string, every: string, lasts: string) =>
    `anfangs ${first}, dann alle ${every} für ${lasts}`,
};

export const overTime = {
  name: "Über die Monate",
  hint: "Ein Punkt ist die Mitte der Durchgänge eines Monats, ein Strich reicht vom kleinsten zum größten Wert.",
  temperature: "Temperatur des Entwicklers",
  late: (bath: string) => `${bath}: zu spät geleert um`,
  table: "Dasselbe als Tabellen",
  month: "Monat",
  runs: "Durchgänge",
  /** Heads the column of what the table is about. */
  figure: "Mitte, und vom kleinsten zum größten",
  span: (middle: string, least: string, most: string) => `${middle} (${least} bis ${most})`,
};

export const everything = {
  table: "Tabelle der Durchgänge sichern",
  tableFile: "tankside-durchgaenge.csv",
  choose: "Datei übernehmen",
  hint: "Die Datei enthält Durchgänge, Bilder, Dosen, Flaschen, die Listen für den Raum, das Arbeitsblatt und die Einstellungen dieses Geräts. Die eigene Stimme hat eine Datei für sich.",
  notSaved:
    "Nicht alles, was hier aufbewahrt ist, ließ sich in eine Datei schreiben; es wurde keine gesichert. Nichts ist geändert.",
  unreadable: (name: string) => `Dieser Browser konnte „${name}“ nicht lesen. Nichts ist geändert.`,
  foreign: (name: string) =>
    `„${name}“ ist keine Datei mit Durchgängen, die hier gesichert wurde. Es bleibt alles, wie es ist.`,
  newer: (name: string) =>
    `„${name}“ stammt von einer neueren Fassung, die mehr kennt. Es bleibt alles, wie es ist.`,
  damaged: (name: string, path: string) =>
    `„${name}“ ist beschädigt, und zwar bei ${path}; deshalb wird nichts daraus verwendet. Es bleibt alles, wie es ist.`,
  nothingNew: (name: string) => `Alles aus „${name}“ ist schon hier.`,
  offer: (name: string) => `„${name}“ übernehmen?`,
  rule: "Von zweien, die derselbe Durchgang, dasselbe Bild oder dieselbe Dose sind, bleibt das Neuere; von einer Flasche alles, was hier oder dort aufgeschrieben ist. Das Arbeitsblatt, die Listen für den Raum und die Einstellungen von hier bleiben.",
  kind: "Was",
  adds: "neu",
  replaces: "durch Neueres ersetzt",
  skips: "bleibt wie hier",
  kinds: {
    runs: "Durchgänge",
    pictures: "Bilder",
    tanks: "Dosen",
    worksheets: "Arbeitsblatt",
    bottles: "Flaschen",
    rooms: "Listen für den Raum",
    settings: "Einstellungen",
  },
  take: "Übernehmen",
  leave: "Nicht übernehmen",
  taken: "Es ist übernommen. Die Einstellungen des Geräts gelten vom nächsten Besuch an.",
  takenBack: (stayed: number) =>
    stayed === 0
      ? "Das ist rückgängig gemacht: alles ist, wie es vor der Datei war."
      : stayed === 1
        ? "Das ist rückgängig gemacht, bis auf einen Eintrag, der seither geändert wurde."
        : `Das ist rückgängig gemacht, bis auf ${stayed} Einträge, die seither geändert wurden.`,
  notTakenBack: "Dieser Browser hat es nicht rückgängig gemacht. Es bleibt alles, wie es ist.",
  noRoom: "In diesem Browser ist kein Platz dafür. Es bleibt alles, wie es ist.",
  refused: "Dieser Browser hat es nicht übernommen. Es bleibt alles, wie es ist.",
};
