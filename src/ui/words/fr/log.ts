// The words of what Write up does with many runs, and of what a person adds to one, in French.

export const find = {
  search: "Rechercher",
  film: "Film",
  developer: "Révélateur",
  year: "Année",
  stars: "Étoiles",
  /** No choice made. */
  all: "tout",
  /** A choice, and how many runs it would leave. */
  choice: (name: string, count: number) => `${name} (${count})`,
  count: (shown: number, all: number) => {
    const runs = all < 2 ? `${all} séance` : `${all} séances`;
    return shown === all ? runs : `${shown} sur ${runs}`;
  },
  none: "Aucune séance n’est ainsi.",
  clear: "Montrer toutes les séances",
  more: (count: number) => `En montrer ${count} de plus`,
};

export const stars = {
  asks: "Que valent les négatifs ?",
  unsaid: "rien de dit",
  words: {
    1: "impossibles à tirer",
    2: "faibles",
    3: "utilisables",
    4: "bons",
    5: "comme voulus",
  },
  each: (stars: number, word: string) => `${stars} : ${word}`,
};

export const pictures = {
  name: (count: number) => (count === 0 ? "Photos des négatifs" : `Photos des négatifs : ${count}`),
  hint: "Elles sont réduites, gardées dans ce navigateur, et perdent le lieu et l’heure qu’un appareil y inscrit.",
  add: "Ajouter des photos, de l’appareil ou de fichiers",
  alt: "Ce qu’on y voit",
  unnamed: "Une photo que personne n’a décrite",
  remove: "Retirer cette photo",
  removed: "La photo est retirée.",
  notRemoved: "Ce navigateur n’a pas pu retirer la photo. Elle est encore ici.",
  notPicture: (name: string) => `« ${name} » n’est pas une image que ce navigateur sache lire.`,
  noRoom: "Il n’y a plus de place pour la photo. Rien d’autre n’a changé.",
  notKept: "Ce navigateur n’a pas gardé la photo.",
};

export const dictate = {
  start: "Dicter",
  stop: "Arrêter la dictée",
  listening: "On écoute. Ce qui est compris vient après ce qui est écrit.",
  away: "Ce navigateur peut envoyer ce qu’il entend à d’autres machines, où cela devient des mots. Le micro reste coupé tant que vous n’êtes pas d’accord.",
  agree: "D’accord, dicter",
  decline: "Plutôt pas",
  failed: "Le navigateur n’a pas écouté, ou n’a rien compris. Ce qui est écrit reste.",
};

export const again = {
  asks: "Température du révélateur aujourd’hui",
  hint: (was: string) =>
    `Elle était de ${was}. Notice, méthode et durées restent ; ce qui fut mesuré ce jour-là est laissé de côté.`,
  make: "Calculer",
  leave: "Pas maintenant",
};

export const beside = {
  choose: "Comparer",
  chosen: "Choisie pour comparer",
  hint: "Choisissez une autre séance à comparer.",
  name: "Côte à côte",
  what: "Quoi",
  differed: "Ce qui différait",
  same: "Ce qui était pareil",
  leave: "Fermer",
  begun: "Commencée",
  title: "Nom",
  temperature: "Température",
  planned: "Développement prévu",
  done: "Développement réel",
  method: "Méthode",
  tank: "Cuve",
  agitated: "Agitation",
  pressed: "Appuis, comptés depuis le premier",
  agitation: (first: string, every: string, lasts: string) =>
    `d’abord ${first}, puis toutes les ${every} pendant ${lasts}`,
};

export const overTime = {
  name: "Au fil des mois",
  hint: "Un point est le milieu des séances d’un mois ; un trait va de la plus petite valeur à la plus grande.",
  temperature: "Température du révélateur",
  late: (bath: string) => `${bath} : vidé en retard de`,
  table: "La même chose en tableaux",
  month: "Mois",
  runs: "Séances",
  /** Heads the column of what the table is about. */
  figure: "Milieu, et du plus petit au plus grand",
  span: (middle: string, least: string, most: string) => `${middle} (de ${least} à ${most})`,
};

export const everything = {
  table: "Enregistrer un tableau des séances",
  tableFile: "tankside-seances.csv",
  choose: "Reprendre un fichier",
  hint: "Le fichier contient séances, photos, cuves, flacons, les listes du labo, la fiche et les réglages de cet appareil. Votre propre voix a un fichier à elle.",
  notSaved:
    "Tout ce qui est gardé ici n’a pas pu être mis dans un fichier : aucun n’a été enregistré. Rien n’a changé.",
  unreadable: (name: string) => `Ce navigateur n’a pas pu lire « ${name} ». Rien n’a changé.`,
  foreign: (name: string) =>
    `« ${name} » n’est pas un fichier de séances enregistré ici. Rien n’a changé.`,
  newer: (name: string) =>
    `« ${name} » vient d’une version plus récente, qui en sait plus. Rien n’a changé.`,
  damaged: (name: string, path: string) =>
    `« ${name} » est abîmé à l’endroit ${path} : rien n’en est utilisé. Rien n’a changé.`,
  nothingNew: (name: string) => `Tout ce que contient « ${name} » est déjà ici.`,
  offer: (name: string) => `Reprendre « ${name} » ?`,
  rule: "De deux qui sont la même séance, la même photo ou la même cuve, le plus récent reste ; d’un flacon, tout ce qui est noté ici ou là. La fiche, les listes du labo et les réglages d’ici restent.",
  kind: "Quoi",
  adds: "nouveau",
  replaces: "remplacé par plus récent",
  skips: "reste tel qu’ici",
  kinds: {
    runs: "Séances",
    pictures: "Photos",
    tanks: "Cuves",
    worksheets: "Fiche",
    bottles: "Flacons",
    rooms: "Listes du labo",
    settings: "Réglages",
  },
  take: "Le reprendre",
  leave: "Le laisser",
  taken: "C’est repris. Les réglages de l’appareil valent à partir de la prochaine visite.",
  takenBack: (stayed: number) =>
    stayed === 0
      ? "C’est annulé : tout est comme avant le fichier."
      : stayed === 1
        ? "C’est annulé, sauf un élément qui a changé depuis."
        : `C’est annulé, sauf ${stayed} éléments qui ont changé depuis.`,
  notTakenBack: "Ce navigateur n’a pas pu l’annuler. Rien n’a changé.",
  noRoom: "Il n’y a pas de place pour cela dans ce navigateur. Rien n’a changé.",
  refused: "Ce navigateur n’a pas pu le reprendre. Rien n’a changé.",
};
