// The words of what is written down about a bottle, and of the labels printed from it, in Dutch.

export const bottleForm = {
  name: "Naam op het etiket",
  kind: "Waarvoor",
  state: "Hoe gebruikt",
  strength: "Verdund",
  mixedOn: "Aangemaakt op",
  by: "Door wie, initialen",
  from: "Waaruit",
  volume: "Hoeveel",
  keeps: "Hoe lang het goed blijft, volgens het blad van de fabrikant",
  full: "Vol, vanaf het aanmaken",
  half: "Halfvol of minder",
  opened: "Eenmaal geopend",
  unit: "geteld in",
  units: { days: "dagen", weeks: "weken", months: "maanden" },
  spanMay: (most: string) => `een heel getal van 1 tot en met ${most}`,
  filmsPerLitre: "Films per liter",
  filmsHint: "In films van 80 vierkante inch (516 cm²): één 135-36, één 120, vier 4x5in.",
  addPerFilm: "Extra tijd per film ervoor, %",
  hazards: "Gevarenaanduidingen",
  hazardsHint:
    "Neem ze woord voor woord over van het blad van de fabrikant; hier wordt er geen bedacht. Gebruik nooit een fles waar eten of drinken in zat.",
  on: "Dag",
  size: "Filmformaat",
  count: "Hoeveel films",
  time: "Geklaard in",
  film: "Film van het snippertje",
  freshFirst:
    "De eerste proef wil het verse bad, voordat er een film door gaat: latere worden ernaast gelegd. Neem steeds dezelfde film.",
  wanted: "Dit is nodig.",
  add: "Op de plank zetten",
  correct: "Verbetering bewaren",
  writeDown: "Opschrijven",
  cancel: "Laat maar",
};

export const bottleLabels = {
  title: "Etiketten om af te drukken",
  lead: "Gevarenaanduidingen staan op een etiket alleen zoals ze van het blad van de fabrikant zijn overgenomen. Gebruik nooit een fles waar eten of drinken in zat.",
  print: (count: number) => (count === 1 ? "1 etiket afdrukken" : `${count} etiketten afdrukken`),
  mixed: "Aangemaakt",
  by: "Door",
  due: "Houdbaar tot",
  films: "Films",
  hazards: "Gevaren, van het blad van de fabrikant:",
  each: (films: string) => `Een hokje is ${films} films.`,
};

export const fixerWords = {
  title: "Turflijst en proef",
  tally: "De turflijst van films zegt",
  test: "De klaringsproef zegt",
  tallySays: {
    good: (served: string, serves: string) => `goed: ${served} van ${serves}`,
    spent: (served: string, serves: string) => `uitgeput: ${served} van ${serves}`,
    silent: "niets: hoeveel films het aankan is niet opgeschreven",
  },
  testSays: {
    good: (times: string) => `goed: ${times} keer de verse waarde`,
    spent: (times: string) => `uitgeput: ${times} keer de verse waarde`,
    silent: "niets: het verse bad is niet met deze film beproefd",
  },
  rule: "Regel: fixeer is uitgeput als een snippertje er twee keer zo lang over doet om te klaren als in het verse bad (NAVEDTRA 14209).",
  disagree: "De twee spreken elkaar tegen.",
  trust: {
    test: "Vertrouw de proef: die is in dit bad gedaan, en niet elke film laat er evenveel in achter. Gebruik het niet meer.",
    tally:
      "Vertrouw de turflijst: een bad kan nog vlug klaren en al te veel zilver bevatten om uit te spoelen. Gebruik het niet meer.",
  },
  since: (films: string) => `Sinds die proef: ${films} films.`,
  on: "Dag",
  film: "Film",
  cleared: "Geklaard in",
  filmsBy: "Films tot dan",
  picture: "Klaringstijd over het leven van het bad",
  across: "films door het bad",
  up: "klaringstijd",
  twice: "uitgeput: twee keer vers",
  capacity: "zoveel kan het aan",
  says: (tests: number, last: string) =>
    tests === 1 ? `Eén proef: ${last}.` : `${tests} proeven, de laatste ${last}.`,
};
