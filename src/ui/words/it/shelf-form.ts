// The words of what is written down about a bottle, and of the labels printed from it, in Italian.

export const bottleForm = {
  name: "Nome sull’etichetta",
  kind: "A che cosa serve",
  state: "Come si usa",
  strength: "Diluita",
  mixedOn: "Preparata il",
  by: "Da chi, iniziali",
  from: "Con che cosa",
  volume: "Quanta",
  keeps: "Quanto si conserva, secondo la scheda del produttore",
  full: "Piena, dalla preparazione",
  half: "Piena a metà o meno",
  opened: "Una volta aperta",
  unit: "contato in",
  units: { days: "giorni", weeks: "settimane", months: "mesi" },
  spanMay: (most: string) => `un numero intero da 1 a ${most}`,
  filmsPerLitre: "Pellicole per litro",
  filmsHint: "In pellicole da 80 pollici quadrati (516 cm²): una 135-36, una 120, quattro 4x5in.",
  addPerFilm: "Tempo in più per ogni pellicola prima, %",
  hazards: "Indicazioni di pericolo",
  hazardsHint:
    "Copiale parola per parola dalla scheda del produttore; qui non se ne inventa nessuna. Mai usare una bottiglia in cui c’era da mangiare o da bere.",
  on: "Giorno",
  size: "Formato",
  count: "Quante",
  time: "Chiarificata in",
  film: "Pellicola del ritaglio",
  freshFirst:
    "La prima prova vuole il bagno fresco, prima di ogni pellicola: le altre si confrontano con quella. Usa sempre la stessa pellicola.",
  wanted: "Questo serve.",
  add: "Metti sullo scaffale",
  correct: "Conserva la correzione",
  writeDown: "Annota",
  cancel: "Lascia stare",
};

export const bottleLabels = {
  title: "Etichette da stampare",
  lead: "Le indicazioni di pericolo stanno sull’etichetta solo come le hai copiate dalla scheda del produttore. Mai usare una bottiglia in cui c’era da mangiare o da bere.",
  print: (count: number) => (count === 1 ? "Stampa 1 etichetta" : `Stampa ${count} etichette`),
  mixed: "Preparata",
  by: "Da",
  due: "Scade",
  films: "Pellicole",
  hazards: "Pericoli, dalla scheda del produttore:",
  each: (films: string) => `Una casella vale ${films} pellicole.`,
};

export const fixerWords = {
  title: "Conto e prova",
  tally: "Il conto delle pellicole dice",
  test: "La prova di chiarificazione dice",
  tallySays: {
    good: (served: string, serves: string) => `buono: ${served} su ${serves}`,
    spent: (served: string, serves: string) => `esaurito: ${served} su ${serves}`,
    silent: "niente: non è annotato quante ne serve",
  },
  testSays: {
    good: (times: string) => `buono: ${times} volte il valore fresco`,
    spent: (times: string) => `esaurito: ${times} volte il valore fresco`,
    silent: "niente: il bagno fresco non è stato provato con questa pellicola",
  },
  rule: "Regola: un fissaggio è esaurito quando un ritaglio impiega il doppio a chiarificarsi rispetto al bagno fresco (NAVEDTRA 14209).",
  disagree: "I due non vanno d’accordo.",
  trust: {
    test: "Fidati della prova: è stata fatta in questo bagno, e le pellicole non vi lasciano tutte lo stesso. Non usarlo più.",
    tally:
      "Fidati del conto: un bagno può chiarificare ancora in fretta e avere già troppo argento perché il lavaggio lo porti via. Non usarlo più.",
  },
  since: (films: string) => `Da quella prova: ${films} pellicole.`,
  on: "Giorno",
  film: "Pellicola",
  cleared: "Chiarificata in",
  filmsBy: "Pellicole fino ad allora",
  picture: "Tempo di chiarificazione nella vita del bagno",
  across: "pellicole passate nel bagno",
  up: "tempo di chiarificazione",
  twice: "esaurito: il doppio del fresco",
  capacity: "capacità",
  says: (tests: number, last: string) =>
    tests === 1 ? `Una prova: ${last}.` : `${tests} prove, l’ultima ${last}.`,
};
