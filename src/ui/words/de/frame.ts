// The words of the frame around every place, of the greeting, and of what is done to the worksheet as a whole.

export const frame = {
  /** The same in every language. */
  program: "Tankside",
  skip: "Direkt zur Seite",
  places: "Bereiche",
  title: (place: string) => `${place} · Tankside`,
  opening: "Wird geöffnet …",
  notOpened: "Dieser Bereich ließ sich nicht laden. Das Arbeitsblatt ist unversehrt.",
  again: "Noch einmal versuchen",
  colophon:
    "Braucht kein Netz, sendet nichts, und was hier eingetragen wird, bleibt in diesem Browser.",
  accessibility: "Barrierefreiheit",
};

export const language = {
  choose: "Sprache",
  notFetched: (language: string) =>
    `${language} ließ sich nicht laden. Die Seite bleibt, wie sie war.`,
  notKept: "Dieser Browser merkt sich die Wahl nicht bis zum nächsten Mal.",
  /** Said where the voice of the worksheet has gone along. */
  voiceToo: (language: string) =>
    `Die Stimme dieses Arbeitsblatts spricht jetzt ${language}. „Rückgängig“ lässt sie, wie sie war.`,
};

export const places = {
  "work-out": { name: "Ausrechnen", hint: "Zeit und Ansatz" },
  "walk-through": { name: "Durchspielen", hint: "jeder Schritt, bei Licht" },
  "lights-out": { name: "Licht aus", hint: "der Durchgang, nach Gehör" },
  "write-up": { name: "Aufschreiben", hint: "was daraus wurde" },
};

export const greeting = {
  says: "Film im Dunkeln, beide Hände nass. Einfach die Seite unten ausfüllen, dann sagt eine Stimme, was wann zu tun ist.",
  hear: "Ein Einfüllen anhören",
  hearHint: "zehn Sekunden, vom Einzählen bis zum ersten Kippen",
  hearing: "Läuft …",
  notHeard: "Hier ließ sich kein Ton starten.",
  begin: "Durchgang beginnen",
  beginHint: "führt zu „Licht aus“",
};

export const sheet = {
  tools: "Dieses Arbeitsblatt",
  save: "In Datei sichern",
  open: "Datei öffnen",
  demo: "Mit Gullrock Light beginnen",
  demoPushed: "Mit Foghorn 400 beginnen",
  empty: "Leer beginnen",
  undo: "Rückgängig",
  redo: "Wiederholen",
  dropHere: "Loslassen, um dieses Arbeitsblatt zu öffnen",
};

export const notices = {
  practice:
    "Ein Übungsblatt von Gullrock Light ist eingetragen. Alles lässt sich ändern; oder leer beginnen.",
  demo: "Das Arbeitsblatt von Gullrock Light ist eingetragen. „Rückgängig“ holt das eigene zurück.",
  empty: "Die Seite ist leer. „Rückgängig“ holt das letzte Arbeitsblatt zurück.",
  opened: (name: string) =>
    `${name} ist geöffnet. „Rückgängig“ holt das letzte Arbeitsblatt zurück.`,
  saved: (name: string) => `Gesichert als ${name}.`,
  notSaved: "Noch nicht gesichert: Eine Datei muss vollständig sein. Bitte zuerst diese Felder:",
  notWorksheet: (name: string) =>
    `${name} ist nicht zu gebrauchen. Hier hat sich nichts geändert. Das fiel auf:`,
  notFile: "Das war nicht als Datei zu lesen. Hier hat sich nichts geändert.",
  notKept:
    "Dieser Browser behält das Arbeitsblatt nicht bis zum nächsten Mal. Vor dem Verlassen in eine Datei sichern.",
  removed: (row: string) => `${row} ist gestrichen. „Rückgängig“ holt die Zeile zurück.`,
  undone: "Rückgängig gemacht.",
  redone: "Wiederholt.",
};

/** What stands in the worksheets from Gullrock Light. */
export const demo = {
  gullrock: { title: "Gullrock Light, Donnerstagabend", tank: "Stahldose, zwei Spiralen" },
  foghorn: { title: "Foghorn 400, eine Blende unterbelichtet", tank: "Stahldose, eine Spirale" },
};
