// The words of what is written down about a bottle, and of the labels printed from it, in French.

export const bottleForm = {
  name: "Nom sur l’étiquette",
  kind: "À quoi elle sert",
  state: "Comment on l’emploie",
  strength: "Diluée",
  mixedOn: "Préparée le",
  by: "Par qui, initiales",
  from: "À partir de quoi",
  volume: "Combien",
  keeps: "Combien de temps elle se garde, selon la fiche du fabricant",
  full: "Pleine, depuis la préparation",
  half: "À moitié pleine ou moins",
  opened: "Une fois ouverte",
  unit: "compté en",
  units: { days: "jours", weeks: "semaines", months: "mois" },
  spanMay: (most: string) => `un nombre entier de 1 à ${most}`,
  filmsPerLitre: "Films par litre",
  filmsHint: "En films de 80 pouces carrés (516 cm²) : un 135-36, un 120, quatre 4x5in.",
  addPerFilm: "Temps ajouté par film précédent, %",
  hazards: "Mentions de danger",
  hazardsHint:
    "Recopiez-les mot pour mot de la fiche du fabricant ; ici, rien n’est inventé. N’utilisez jamais une bouteille qui a contenu à manger ou à boire.",
  on: "Jour",
  size: "Format",
  count: "Combien de films",
  time: "Éclairci en",
  film: "Film de l’essai",
  freshFirst:
    "Le premier essai veut le bain frais, avant tout film : les suivants lui sont comparés. Prenez chaque fois le même film.",
  wanted: "Ceci est nécessaire.",
  add: "Poser sur l’étagère",
  correct: "Garder la correction",
  writeDown: "Inscrire",
  cancel: "Renoncer",
};

export const bottleLabels = {
  title: "Étiquettes à imprimer",
  lead: "Les mentions de danger n’y figurent que recopiées de la fiche du fabricant. N’utilisez jamais une bouteille qui a contenu à manger ou à boire.",
  print: (count: number) =>
    count <= 1 ? `Imprimer ${count} étiquette` : `Imprimer ${count} étiquettes`,
  mixed: "Préparée",
  by: "Par",
  due: "Échéance",
  films: "Films",
  hazards: "Dangers, d’après la fiche du fabricant :",
  each: (films: string) => `Une case vaut ${films} films.`,
};

export const fixerWords = {
  title: "Compte et essai",
  tally: "Le compte des films dit",
  test: "L’essai d’éclaircissement dit",
  tallySays: {
    good: (served: string, serves: string) => `bon : ${served} sur ${serves}`,
    spent: (served: string, serves: string) => `épuisé : ${served} sur ${serves}`,
    silent: "rien : sa capacité n’est pas inscrite",
  },
  testSays: {
    good: (times: string) => `bon : ${times} fois la valeur fraîche`,
    spent: (times: string) => `épuisé : ${times} fois la valeur fraîche`,
    silent: "rien : le bain frais n’a pas été essayé avec ce film",
  },
  rule: "Règle : un fixateur est épuisé quand un bout de film met deux fois plus de temps à s’éclaircir que dans le bain frais (NAVEDTRA 14209).",
  disagree: "Les deux ne sont pas d’accord.",
  trust: {
    test: "Fiez-vous à l’essai : il a été fait dans ce bain, et les films n’y laissent pas tous autant. Ne l’employez plus.",
    tally:
      "Fiez-vous au compte : un bain peut encore éclaircir vite et contenir déjà trop d’argent pour que le lavage l’emporte. Ne l’employez plus.",
  },
  since: (films: string) => `Depuis cet essai : ${films} films.`,
  on: "Jour",
  film: "Film",
  cleared: "Éclairci en",
  filmsBy: "Films jusque-là",
  picture: "Temps d’éclaircissement au long de la vie du bain",
  across: "films passés dans le bain",
  up: "temps d’éclaircissement",
  twice: "épuisé : deux fois la valeur fraîche",
  capacity: "capacité",
  says: (tests: number, last: string) =>
    tests <= 1 ? `${tests} essai : ${last}.` : `${tests} essais, le dernier ${last}.`,
};
