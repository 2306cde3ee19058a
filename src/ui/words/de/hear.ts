// The German words of what is heard before a run: the test with the tap running, and headphones that play late.

export const hearFirst = {
  title: "Zuerst anhören",
  how: "Den Hahn so aufdrehen, wie er nachher läuft, und sich dorthin stellen, wo gearbeitet wird. Das Wasser beim Hören laufen lassen.",
  ask: "War alles zu hören, bei laufendem Wasser?",
  play: "Probe abspielen",
  playAgain: "Noch einmal abspielen",
  playHint: "ein paar Töne und ein Satz, so laut wie im Durchgang",
  playing: "Läuft …",
  listen: "Jetzt hinhören, bei laufendem Wasser.",
  failed:
    "Die Probe ließ sich nicht abspielen. Ein Netz wird nur einmal gebraucht, beim ersten Mal, für die Stimme.",
  heard: "Gehört",
  notHeard: "Nicht gehört",
  good: "Gut. So laut wird auch der Durchgang.",
  mend: "Dann liegt es meist an einem hiervon; danach noch einmal abspielen:",
  advice: [
    "Die Lautstärke: von Hand höher stellen, am Gerät und am Lautsprecher oder Kopfhörer.",
    "Der Stummschalter: Manche Geräte haben ihn an der Seite, oder eine Betriebsart ohne Ton.",
    "Der Ausgang: Vielleicht ist ein Lautsprecher im Nebenzimmer verbunden oder ein Kopfhörer in der Schublade.",
    "Das Wasser: ein dünnerer Strahl, das Gerät näher heran, oder Kopfhörer.",
  ],
  begin: "Beginnen, ohne es gehört zu haben",
  beginHint: "für alle, die die Töne am Körper spüren oder die Worte mitlesen",
};

export const tapAlong = {
  ask: "Kopfhörer ohne Kabel?",
  why: "Sie spielen verspätet, oft um eine Viertelsekunde, und damit kommt auch der Ton zum Ausgießen zu spät. Hier zu ein paar Schlägen mittippen: Um so viel wird dann alles früher losgeschickt, was im Durchgang klingt.",
  kept: (delay: string) => `Auf diesem Gerät wird um ${delay} früher losgeschickt.`,
  noneKept: "Auf diesem Gerät wird nichts früher losgeschickt.",
  notKept: "Dieser Browser behält das nicht bis zum nächsten Besuch.",
  measure: "Durch Mittippen messen",
  none: "Keine Verspätung",
  name: "Wie spät die Kopfhörer spielen",
  advice: "Kopfhörer auf. Drei Schläge und eine Pause, immer wieder, zwanzig Sekunden lang.",
  start: "Drücken, um die Schläge zu hören",
  fetching: "Die Schläge werden geladen …",
  tap: "Bei jedem Schlag hier tippen",
  tapHint: "oder die Leertaste drücken; nicht in den Pausen",
  taps: (count: number) => `Getippt: ${count}-mal`,
  failed:
    "Die Schläge ließen sich nicht abspielen. Ein Netz wird nur einmal gebraucht, beim ersten Mal. Drücken, um es noch einmal zu versuchen.",
  late: (delay: string) => `${delay} zu spät`,
  notLate: "Keine Verspätung, die zählt",
  sure: (apart: string) => `Die Hälfte der Tipper liegt höchstens ${apart} davon entfernt.`,
  keep: (delay: string) => `${delay} behalten`,
  keepNone: "Ohne Verspätung weiter",
  again: "Noch einmal",
  leave: "Verlassen",
  refused: {
    few: "Zu wenige Tipper, um etwas zu sagen. Noch einmal: bei jedem Schlag tippen.",
    uneven:
      "Die Tipper liegen zu weit auseinander. Noch einmal: erst in den Takt kommen, dann mittippen.",
    unclear: "Das passt zu zwei Verspätungen. Noch einmal: dreimal tippen, in der Pause nicht.",
    far: "Das ist mehr als eine Sekunde, mehr als sich ausgleichen lässt. Mit Kopfhörern am Kabel oder dem Lautsprecher des Geräts geht es.",
  },
};

export const byEar = {
  open: "Nach Gehör ausrechnen",
  name: "Nach Gehör ausrechnen",
  hint: "Jede Taste oder Berührung nimmt, was gerade angeboten wird, oder geht weiter. Auf und ab führen von Feld zu Feld, links und rechts durch die Werte, die zur Wahl stehen, die Eingabetaste nimmt einen; Ziffern und die Buchstaben eines Namens gelten, wie sie getippt werden, die Eingabetaste übernimmt sie, C oder F, M oder O in dieser Einheit, ein Komma trennt die Füllungen einer Wässerung, ein Leerzeichen die Stufen eines Keils, die Rücktaste nimmt eine zurück, Escape schließt.",
  end: "Alles zusammen",
  previous: "Zurück",
  next: "Weiter",
  close: "Schließen",
  notHeard: "Die Stimme war nicht zu holen. Nach einem Netz sehen und noch einmal drücken.",
};
