// The words of the house's lists, and of what stands at Gullrock Light, in German.

export const room = {
  title: "Die Listen des Raums",
  lead: "Aufmachen, Zumachen, und wohin Verbrauchtes kommt: vom Haus geschrieben, für das Haus.",
  lists: {
    opening: "Den Raum aufmachen",
    closing: "Den Raum zumachen",
    waste: "Wohin Verbrauchtes kommt",
  },
  invite: {
    opening:
      "Noch steht nichts da. Was wird eingeschaltet, nachgesehen und hingelegt, bevor jemand anfängt?",
    closing:
      "Noch steht nichts da. Was wird gespült, ausgeschaltet und abgeschlossen, bevor man geht?",
    waste:
      "Noch steht nichts da. Welches Gefäß nimmt was auf, und wer holt es ab? Die örtlichen Regeln und die Blätter der Hersteller entscheiden.",
  },
  edit: "Diese Liste schreiben",
  hint: "Eine Zeile für jeden Punkt.",
  keep: "Liste behalten",
  cancel: "Abbrechen",
  reset: "Alle Haken wegnehmen",
  print: "Listen drucken",
  demo: "Die Listen von Gullrock Light eintragen",
  kept: "Die Liste ist behalten.",
  notKept: "Dieser Browser wollte sie nicht behalten: Sie geht, wenn die Seite geschlossen wird.",
  ticked: (done: number, all: number) => `${done} von ${all} erledigt`,
};

export const gullrockRoom = {
  bottles: {
    stock: "Kelp MQ Vorrat",
    stop: "Stoppbad, brauner Krug",
    fixer: "Fixierbad B",
    powder: "Pulver für 1 l",
    concentrate: "Konzentrat",
  },
  opening: [
    "Lüfter an, Rollo herunter",
    "Glocke des Nebelsignals ausgehängt",
    "Nasse Seite: Wasserbad gefüllt, Handtücher bereit",
    "Türschild auf DUNKEL gedreht",
  ],
  closing: [
    "Brauchbare Bäder zurück in ihre Flaschen, Filme aufgeschrieben",
    "Schalen und Messzylinder gespült und umgedreht",
    "Wasser, Lüfter und Heizung aus",
    "Schlüssel an den Haken im Lampenraum",
  ],
  waste: [
    "Verbrauchtes Fixierbad: blauer Kanister an der Tür, mit Anfangsdatum",
    "Verbrauchter Entwickler: grauer Kanister; die Wärterin bringt beide an Land",
  ],
};
