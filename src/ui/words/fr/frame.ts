// The words, in French, of the frame around every place, of the greeting, and of what is done to the
// worksheet as a whole.

export const frame = {
  program: "Tankside",
  skip: "Aller au contenu",
  places: "Rubriques",
  title: (place: string) => `${place} · Tankside`,
  opening: "Ouverture…",
  notOpened: "Cette rubrique n’a pas pu être chargée. La fiche est en sûreté.",
  again: "Réessayer",
  colophon:
    "Marche sans réseau, n’envoie rien nulle part, garde ce que vous écrivez dans ce navigateur.",
  accessibility: "Accessibilité",
};

export const language = {
  choose: "Langue",
  notFetched: (language: string) =>
    `${language} : ces mots n’ont pas pu être chargés. La page reste comme elle était.`,
  notKept: "Ce navigateur ne garde pas ce choix d’une visite à l’autre.",
  voiceToo: (language: string) =>
    `La voix de cette fiche change aussi : ${language}. « Annuler » la laisse comme elle était.`,
};

export const places = {
  "work-out": { name: "Calculer", hint: "le temps et le mélange" },
  "walk-through": { name: "Répéter", hint: "chaque étape, en pleine lumière" },
  "lights-out": { name: "Faire le noir", hint: "la séance, à l’oreille" },
  "write-up": { name: "Noter", hint: "ce que ça a donné" },
};

export const greeting = {
  says: "Un film dans le noir, les deux mains mouillées. Remplissez la page ci-dessous : une voix vous dira quoi faire, et quand.",
  hear: "Écouter un remplissage",
  hearHint: "dix secondes, du décompte au premier retournement",
  hearing: "Écoutez…",
  notHeard: "Aucun son n’a pu être lancé ici.",
  begin: "Commencer la séance",
  beginHint: "mène à « Faire le noir »",
};

export const sheet = {
  tools: "Cette fiche",
  save: "Enregistrer la fiche",
  open: "Ouvrir un fichier",
  demo: "Partir de Gullrock Light",
  demoPushed: "Partir de Foghorn 400",
  empty: "Partir de zéro",
  undo: "Annuler",
  redo: "Rétablir",
  dropHere: "Lâchez pour ouvrir cette fiche",
};

export const notices = {
  practice:
    "Une fiche d’exercice de Gullrock Light est remplie. Changez ce que vous voulez, ou partez de zéro.",
  demo: "La fiche de Gullrock Light est remplie. « Annuler » ramène la vôtre.",
  empty: "La page est vide. « Annuler » ramène la fiche précédente.",
  opened: (name: string) => `${name} est ouvert. « Annuler » ramène la fiche précédente.`,
  saved: (name: string) => `Enregistré sous le nom ${name}.`,
  notSaved: "Pas encore enregistré : un fichier doit être complet. D’abord ces champs :",
  notWorksheet: (name: string) =>
    `${name} ne convient pas. Rien n’a changé ici. Ce qui s’y trouve :`,
  notFile: "Ce fichier n’a pas pu être lu. Rien n’a changé ici.",
  notKept:
    "Ce navigateur ne garde pas la fiche d’une visite à l’autre. Enregistrez-la dans un fichier avant de partir.",
  removed: (row: string) => `Retiré : ${row}. « Annuler » revient en arrière.`,
  undone: "C’est annulé.",
  redone: "C’est rétabli.",
};

/** What stands in the worksheets from Gullrock Light. */
export const demo = {
  gullrock: { title: "Gullrock Light, jeudi soir", tank: "acier, deux spires" },
  foghorn: { title: "Foghorn 400, sous-exposé d’un diaphragme", tank: "acier, une spire" },
};
