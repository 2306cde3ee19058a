// What the fields of the bench are called, by the pattern of their paths, and why they are asked.

const bathFields = {
  "baths.*.clearing.time": {
    label: "Ein Schnipsel klärt in",
    why: "Ein Schnipsel unentwickelter Film, bei Licht ins Fixierbad gelegt, bis er klar ist. Daraus folgt die Fixierzeit, wenn keine eingetragen ist.",
  },
  "baths.*.clearing.fresh": {
    label: "Frisch angesetzt in",
    why: "Was dieselbe Probe im frischen Bad gebraucht hat. Beim Doppelten davon ist das Fixierbad erschöpft.",
  },
  "baths.*.clearing.times": { label: "Fixieren für" },
  "baths.*.carryOver": {
    label: "Rest nach jedem Ausgießen",
    why: "Flüssigkeit, die in Dose, Spiralen und Film hängen bleibt. Wie immer ausgießen, dann die Dose wiegen: Ein Gramm ist ein Milliliter.",
  },
  "baths.*.flow": {
    label: "Fließendes Wasser je Minute",
    why: "Wie viel in einer Minute durchläuft: einen Messzylinder zehn Sekunden unter den Schlauch halten, mal sechs.",
  },
  "baths.*.thiosulfate": {
    label: "Thiosulfat im Fixierbad, g/l",
    why: "Leer gilt 108, ein einfaches Fixierbad aus 240 g Kristallen je Liter.",
  },
  "baths.*.filmsPerLitre": {
    label: "Filme je Liter",
    why: "In Filmen von 80 Quadratzoll (516 cm²), nach Angabe des Herstellers.",
  },
  "baths.*.filmsBefore": { label: "Filme, die schon durch sind" },
  "baths.*.bottle": { label: "Flasche aus dem Regal" },
  "baths.*.kept": {
    label: "Wie viel davon da ist",
    why: "Leer gilt so viel, wie den Film bedeckt.",
  },
};

export const benchFields = {
  ...bathFields,
  process: { label: "Prozess" },
  "developer.soughtTime": {
    label: "Temperatur gesucht für",
    why: "Eine Wunschzeit. Aus dem Datenblatt folgt, bei welcher Temperatur sie herauskommt, und bei welcher die kürzeste ratsame, 5:00.",
  },
  "developer.readings[].at": {
    label: "Um",
    why: "Auf der Uhr des Entwicklers. Die Messungen treten an die Stelle des berechneten Temperaturgangs und verschieben das Ende.",
  },
  "developer.readings[].temperature": { label: "In der Dose" },
  "developer.filmsPerLitre": bathFields["baths.*.filmsPerLitre"],
  "developer.kept": bathFields["baths.*.kept"],
  "developer.bottle": bathFields["baths.*.bottle"],
  "developer.replenishPerFilm": { label: "Regenerator für jeden Film" },
  "tank.label": {
    label: "Name dieser Dose",
    why: "Zum Beispiel „Stahl, zwei Spiralen“. Unter diesem Namen werden ihr Volumen und die eigenen Zeiten mit ihr gemerkt.",
  },
  "tank.measured.pourIn": { label: "Einfüllen dauerte, s" },
  "tank.measured.pourOut": { label: "Ausgießen dauerte, s" },
  "tank.measured.perInversion": { label: "Hin und zurück dauerte, s" },
  "mixing.target": { label: "Der Ansatz soll haben" },
  "mixing.stock": { label: "Die Vorrats\u00adlösung hat" },
  "mixing.cold": { label: "Kalt aus dem Hahn" },
  "mixing.hot": { label: "Heiß aus dem Hahn" },
  "mixing.mark": {
    label: "Teilung des Mess\u00adzylinders",
    why: "Von einem Strich zum nächsten. Leer gilt 5 ml oder eine Viertel-Flüssigunze.",
  },
  "tempering.target": { label: "Er soll haben" },
  "tempering.bath": {
    label: "Das Wasserbad hat",
    why: "Damit genügen zwei Messungen, ohne sind es drei. Umrühren und mit demselben Thermometer messen.",
  },
  "tempering.bathVolume": { label: "Wasser im Bad", why: "Für das Eis, falls Eis nötig ist." },
  "tempering.readings[].at": {
    label: "Um",
    why: "Auf einer eigenen Uhr, die mit der ersten Messung beginnt, zum Beispiel 3:30.",
  },
  "tempering.readings[].temperature": { label: "Im Entwickler" },
  "tempering.began": { label: "Uhrzeit bei 0:00" },
  "contrast.tests[].time": { label: "Entwickelt für" },
  "contrast.tests[].gradient": {
    label: "Mittlerer Gradient",
    why: "Dichtezunahme durch Zunahme der log. Belichtung, wie das Densitometer oder ein Stufenkeil sie ergab.",
  },
  "contrast.tests[].densities": {
    label: "Oder die Dichten des Keils",
    why: "Mit Grundschleier, die am wenigsten belichtete Stufe zuerst, mit Leerzeichen dazwischen.",
  },
  "contrast.tests[].baseFog": {
    label: "Grund\u00adschleier",
    why: "Unterlage und Schleier zusammen: die Dichte von Film, der entwickelt, aber nie belichtet wurde.",
  },
  "contrast.wanted": {
    label: "Gewünschter Gradient",
    why: "Leer gilt 0,615, das ist 0,80 durch 1,30 wie in ISO 6.",
  },
  "contrast.stepLog": {
    label: "Log. Belichtung je Stufe",
    why: "0,15 für halbe Blenden, 0,30 für ganze.",
  },
  "contrast.firstLog": {
    label: "Log. Belichtung der ersten Stufe",
    why: "Zehnerlogarithmus der Luxsekunden, falls bekannt: Dann ergibt sich eine Empfindlichkeit.",
  },
};
