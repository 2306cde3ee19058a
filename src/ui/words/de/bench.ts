// The words of what is measured and reckoned at the bench: a leaflet pasted, water mixed and tempered,
// hands timed, tanks kept.

export const paste = {
  more: "Tabelle des Datenblatts einfügen",
  label: "Die Zeilen, wie sie im Datenblatt stehen",
  why: "Je Zeile eine Temperatur und eine Zeit, in °C oder °F, mit Tabulator, Komma oder Leerzeichen. Gilt die Zeile für einen bestimmten Belichtungsindex, steht er hinter EI. Überschriften werden übergangen.",
  fill: "Diese Zeilen eintragen",
  nothing: "Da ist noch keine Zeile.",
  fault: (line: number, text: string, may: string) =>
    `Zeile ${line}: „${text}“ geht hier nicht. Hier passt: ${may}.`,
  filled: (rows: number) =>
    rows === 1
      ? "1 Zeile des Datenblatts ist eingetragen. „Rückgängig“ holt die anderen zurück."
      : `${rows} Zeilen des Datenblatts sind eingetragen. „Rückgängig“ holt die anderen zurück.`,
};

export const mixing = {
  take: "Zusammengießen",
  stock: (volume: string) => `${volume} Vorratslösung`,
  cold: (volume: string) => `${volume} kalt`,
  hot: (volume: string) => `${volume} heiß`,
};

export const tempering = {
  sink: "Am Becken ablesen",
  sinkHint: "große Tasten, und ein Druck hält die Zeit fest",
  title: "Der Entwickler im Wasserbad",
  noTarget: "Erst eintragen, auf welche Temperatur der Entwickler kommen soll.",
  hindered: (field: string) => `Zuerst „${field}“ berichtigen oder ausfüllen.`,
  afresh:
    "Neu begonnen: Die Messungen, die hier standen, hatten keine Uhrzeit. „Rückgängig“ holt sie zurück.",
};

export const hands = {
  measure: "Zeit nehmen",
  /** Read on from that, by those who listen to the page. */
  of: (label: string) => `: ${label}`,
  kept: (label: string, seconds: string) => `${label}: ${seconds}, der mittlere von drei Werten.`,
};

export const tanks = {
  choose: "Gemerkte Dosen",
  none: "auswählen",
  keep: "Diese Dose merken",
  forget: "Vergessen",
  isKept: (label: string) => `„${label}“ ist mit ihren Zeiten gemerkt.`,
  taken: (label: string) => `„${label}“ ist eingetragen. „Rückgängig“ holt die letzte Dose zurück.`,
  forgotten: (label: string) => `„${label}“ ist nicht mehr gemerkt.`,
  bringBack: (label: string) => `„${label}“ zurückholen`,
  needsName: "Der Dose erst einen Namen geben; unter dem wird sie gemerkt.",
  notKept:
    "Dieser Browser merkt sich Dosen nicht bis zum nächsten Mal. Das Arbeitsblatt stattdessen in eine Datei sichern.",
};

export const latePart = {
  notFetched: "Dieser Teil ließ sich nicht laden.",
};
