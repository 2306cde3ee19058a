// The words, in French, of what is measured and reckoned at the bench: a leaflet pasted, water mixed and
// tempered, hands timed, tanks kept.

export const paste = {
  more: "Coller le tableau de la notice",
  label: "Les lignes telles qu’elles sont dans la notice",
  why: "Une température et un temps par ligne, en °C ou en °F, séparés par des tabulations, des virgules ou des espaces. Si la ligne vaut pour un indice d’exposition, écrivez-le après EI. Les titres sont ignorés.",
  fill: "Remplir ces lignes",
  nothing: "Il n’y a encore aucune ligne dedans.",
  fault: (line: number, text: string, may: string) =>
    `Ligne ${line} : « ${text} » ne convient pas. Attendu : ${may}.`,
  filled: (rows: number) =>
    rows < 2
      ? `${rows} ligne de la notice est remplie. « Annuler » ramène les précédentes.`
      : `${rows} lignes de la notice sont remplies. « Annuler » ramène les précédentes.`,
};

export const mixing = {
  take: "Verser ensemble",
  stock: (volume: string) => `${volume} de solution de base`,
  cold: (volume: string) => `${volume} d’eau froide`,
  hot: (volume: string) => `${volume} d’eau chaude`,
};

export const tempering = {
  sink: "Relever à l’évier",
  sinkHint: "de grandes touches, et chaque appui note l’heure",
  title: "Le révélateur au bain-marie",
  noTarget: "Dites d’abord à combien il doit arriver.",
  hindered: (field: string) => `Corrigez ou remplissez d’abord « ${field} ».`,
  afresh:
    "On repart de zéro : les relevés qui étaient là n’avaient pas d’heure. « Annuler » les ramène.",
};

export const hands = {
  measure: "Chronométrer",
  of: (label: string) => ` : ${label}`,
  kept: (label: string, seconds: string) => `${label} : ${seconds}, le temps médian des trois.`,
};

export const tanks = {
  choose: "Cuves gardées",
  none: "choisir",
  keep: "Garder cette cuve",
  forget: "L’oublier",
  isKept: (label: string) => `La cuve « ${label} » est gardée avec ses temps.`,
  taken: (label: string) =>
    `La cuve « ${label} » est reprise ici. « Annuler » ramène la cuve précédente.`,
  forgotten: (label: string) => `La cuve « ${label} » n’est plus gardée.`,
  bringBack: (label: string) => `Ramener la cuve « ${label} »`,
  needsName: "Donnez d’abord un nom à la cuve : elle est gardée sous ce nom.",
  notKept:
    "Ce navigateur ne garde pas les cuves d’une visite à l’autre. Enregistrez plutôt la fiche dans un fichier.",
};

export const latePart = {
  notFetched: "Cette partie n’a pas pu être chargée.",
};
