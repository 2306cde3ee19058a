// The words of what is written down about a bottle, and of the labels printed from it, in German.

export const bottleForm = {
  name: "Name auf dem Etikett",
  kind: "Wofür",
  state: "Wie benutzt",
  strength: "Verdünnt",
  mixedOn: "Angesetzt am",
  by: "Von wem, Kürzel",
  from: "Woraus",
  volume: "Wie viel",
  keeps: "Wie lange es hält, nach dem Blatt des Herstellers",
  full: "Voll, ab Ansatz",
  half: "Halb voll oder weniger",
  opened: "Nach dem Öffnen",
  unit: "gezählt in",
  units: { days: "Tagen", weeks: "Wochen", months: "Monaten" },
  spanMay: (most: string) => `eine ganze Zahl von 1 bis ${most}`,
  filmsPerLitre: "Filme je Liter",
  filmsHint: "In Filmen von 80 Quadratzoll (516 cm²): ein 135-36, ein 120, vier 4x5in.",
  addPerFilm: "Mehr Zeit je Film davor, %",
  hazards: "Gefahrenhinweise",
  hazardsHint:
    "Wort für Wort vom Blatt des Herstellers abschreiben; hier wird keiner erfunden. Nie eine Flasche nehmen, in der Essen oder Trinken war.",
  on: "Tag",
  size: "Filmformat",
  count: "Wie viele",
  time: "Geklärt in",
  film: "Film des Schnipsels",
  freshFirst:
    "Die erste Probe will das frische Bad, bevor ein Film hindurchgeht: spätere werden daran gemessen. Immer denselben Film nehmen.",
  wanted: "Das wird gebraucht.",
  add: "Ins Regal stellen",
  correct: "Berichtigung behalten",
  writeDown: "Aufschreiben",
  cancel: "Abbrechen",
};

export const bottleLabels = {
  title: "Etiketten zum Drucken",
  lead: "Gefahrenhinweise stehen auf einem Etikett nur, wie sie vom Blatt des Herstellers abgeschrieben wurden. Nie eine Flasche nehmen, in der Essen oder Trinken war.",
  print: (count: number) => (count === 1 ? "1 Etikett drucken" : `${count} Etiketten drucken`),
  mixed: "Angesetzt",
  by: "Von",
  due: "Fällig",
  films: "Filme",
  hazards: "Gefahren, vom Blatt des Herstellers:",
  each: (films: string) => `Ein Kästchen sind ${films} Filme.`,
};

export const fixerWords = {
  title: "Strichliste und Probe",
  tally: "Die Strichliste der Filme sagt",
  test: "Die Klärprobe sagt",
  tallySays: {
    good: (served: string, serves: string) => `gut: ${served} von ${serves}`,
    spent: (served: string, serves: string) => `erschöpft: ${served} von ${serves}`,
    silent: "nichts: wie viele Filme es verträgt, ist nicht aufgeschrieben",
  },
  testSays: {
    good: (times: string) => `gut: das ${times}-Fache des frischen Werts`,
    spent: (times: string) => `erschöpft: das ${times}-Fache des frischen Werts`,
    silent: "nichts: das frische Bad wurde nicht mit diesem Film geprüft",
  },
  rule: "Regel: Ein Fixierbad ist erschöpft, wenn ein Schnipsel doppelt so lange zum Klären braucht wie im frischen Bad (NAVEDTRA 14209).",
  disagree: "Die beiden widersprechen sich.",
  trust: {
    test: "Der Probe trauen: Sie wurde in diesem Bad gemacht, und Filme lassen Verschiedenes darin zurück. Nicht weiter benutzen.",
    tally:
      "Der Strichliste trauen: Ein Bad kann noch schnell klären und schon zu viel Silber enthalten, um es auszuwässern. Nicht weiter benutzen.",
  },
  since: (films: string) => `Seit dieser Probe: ${films} Filme.`,
  on: "Tag",
  film: "Film",
  cleared: "Geklärt in",
  filmsBy: "Filme bis dahin",
  picture: "Klärzeit über das Leben des Bades",
  across: "Filme durch das Bad",
  up: "Klärzeit",
  twice: "erschöpft: doppelt so lang wie frisch",
  capacity: "so viele verträgt es",
  says: (tests: number, last: string) =>
    tests === 1 ? `Eine Probe: ${last}.` : `${tests} Proben, die letzte ${last}.`,
};
