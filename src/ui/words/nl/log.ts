// The words of what Write up does with many runs, and of what a person adds to one, in Dutch.

export const find = {
  search: "Zoeken",
  film: "Film",
  developer: "Ontwikkelaar",
  year: "Jaar",
  stars: "Sterren",
  /** No choice made. */
  all: "alle",
  /** A choice, and how many runs it would leave. */
  choice: (name: string, count: number) => `${name} (${count})`,
  count: (shown: number, all: number) => {
    const runs = all === 1 ? "1 sessie" : `${all} sessies`;
    return shown === all ? runs : `${shown} van ${runs}`;
  },
  none: "Zo’n sessie is er niet.",
  clear: "Alle sessies tonen",
  more: (count: number) => `Nog ${count} tonen`,
};

export const stars = {
  asks: "Hoe goed zijn de negatieven?",
  unsaid: "niets gezegd",
  words: {
    1: "niet af te drukken",
    2: "zwak",
    3: "bruikbaar",
    4: "goed",
    5: "zoals gewenst",
  },
  each: (stars: number, word: string) => `${stars}: ${word}`,
};

export const pictures = {
  name: (count: number) =>
    count === 0 ? "Foto’s van de negatieven" : `Foto’s van de negatieven: ${count}`,
  hint: "Ze worden verkleind, blijven in deze browser en verliezen plaats en tijd, die een camera erin schrijft.",
  add: "Foto’s toevoegen, van de camera of uit bestanden",
  alt: "Wat erop te zien is",
  unnamed: "Een foto die niemand beschreven heeft",
  remove: "Deze foto weghalen",
  removed: "De foto is weggehaald.",
  notRemoved: "Deze browser kon de foto niet weghalen. Hij staat er nog.",
  notPicture: (name: string) => `“${name}” is geen beeld dat deze browser kan lezen.`,
  noRoom: "Er is geen plaats meer voor de foto. Verder is er niets veranderd.",
  notKept: "Deze browser kon de foto niet bewaren.",
};

export const dictate = {
  start: "Dicteren",
  stop: "Stoppen met dicteren",
  listening: "Er wordt geluisterd. Wat verstaan wordt, komt achter wat er staat.",
  away: "Deze browser stuurt wat hij hoort misschien naar andere machines, waar het woorden worden. De microfoon blijft uit zolang je niet akkoord gaat.",
  agree: "Akkoord, dicteren",
  decline: "Liever niet",
  failed: "De browser luisterde niet of verstond niets. Wat er staat, blijft.",
};

export const again = {
  asks: "Temperatuur van de ontwikkelaar vandaag",
  hint: (was: string) =>
    `Toen was het ${was}. Bijsluiter, methode en tijden blijven; wat die dag gemeten is, valt weg.`,
  make: "Uitrekenen",
  leave: "Nu niet",
};

export const beside = {
  choose: "Vergelijken",
  chosen: "Gekozen om te vergelijken",
  hint: "Kies nog een sessie om te vergelijken.",
  name: "Naast elkaar",
  what: "Wat",
  differed: "Wat anders was",
  same: "Wat hetzelfde was",
  leave: "Sluiten",
  begun: "Begonnen",
  title: "Naam",
  temperature: "Temperatuur",
  planned: "Ontwikkeling gepland",
  done: "Ontwikkeling werkelijk",
  method: "Methode",
  tank: "Tank",
  agitated: "Beweging",
  pressed: "Gedrukt, geteld vanaf de eerste keer",
  agitation: (first: string, every: string, lasts: string) =>
    `eerst ${first}, daarna elke ${every} gedurende ${lasts}`,
};

export const overTime = {
  name: "Door de maanden heen",
  hint: "Een punt is het midden van de sessies van een maand; een streep loopt van de kleinste naar de grootste waarde.",
  temperature: "Temperatuur van de ontwikkelaar",
  late: (bath: string) => `${bath}: te laat geleegd met`,
  table: "Hetzelfde in tabellen",
  month: "Maand",
  runs: "Sessies",
  /** Heads the column of what the table is about. */
  figure: "Midden, en van kleinste tot grootste",
  span: (middle: string, least: string, most: string) => `${middle} (${least} tot ${most})`,
};

export const everything = {
  table: "Tabel van de sessies opslaan",
  tableFile: "tankside-sessies.csv",
  choose: "Bestand overnemen",
  hint: "In het bestand staan sessies, foto’s, tanks, flessen, de lijsten van de ruimte, de werkkaart en de keuzes van dit apparaat. Je eigen stem heeft een bestand apart.",
  notSaved:
    "Niet alles wat hier bewaard is, kon in een bestand; er is er geen opgeslagen. Er is niets veranderd.",
  unreadable: (name: string) => `Deze browser kon “${name}” niet lezen. Er is niets veranderd.`,
  foreign: (name: string) =>
    `“${name}” is geen bestand met sessies dat hier is opgeslagen. Er is niets veranderd.`,
  newer: (name: string) =>
    `“${name}” komt van een nieuwere versie, die meer kent. Er is niets veranderd.`,
  damaged: (name: string, path: string) =>
    `“${name}” is beschadigd bij ${path}, dus er wordt niets van gebruikt. Er is niets veranderd.`,
  nothingNew: (name: string) => `Alles uit “${name}” is hier al.`,
  offer: (name: string) => `“${name}” overnemen?`,
  rule: "Van twee die dezelfde sessie, foto of tank zijn, blijft de nieuwste; van een fles alles wat hier of daar is opgeschreven. De werkkaart, de lijsten van de ruimte en de keuzes van hier blijven.",
  kind: "Wat",
  adds: "nieuw",
  replaces: "vervangen door nieuwer",
  skips: "blijft zoals hier",
  kinds: {
    runs: "Sessies",
    pictures: "Foto’s",
    tanks: "Tanks",
    worksheets: "Werkkaart",
    bottles: "Flessen",
    rooms: "Lijsten van de ruimte",
    settings: "Keuzes",
  },
  take: "Overnemen",
  leave: "Laten",
  taken: "Het is overgenomen. De keuzes van het apparaat gelden vanaf het volgende bezoek.",
  takenBack: (stayed: number) =>
    stayed === 0
      ? "Ongedaan gemaakt: alles is zoals vóór het bestand."
      : stayed === 1
        ? "Ongedaan gemaakt, op één ding na dat sindsdien is veranderd."
        : `Ongedaan gemaakt, op ${stayed} dingen na die sindsdien zijn veranderd.`,
  notTakenBack: "Deze browser kon het niet ongedaan maken. Er is niets veranderd.",
  noRoom: "Er is in deze browser geen plaats voor. Er is niets veranderd.",
  refused: "Deze browser kon het niet overnemen. Er is niets veranderd.",
};
