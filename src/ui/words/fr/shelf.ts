// The words of the shelf of bottles, in French.

export const shelf = {
  title: "L’étagère aux bouteilles",
  poursFrom: "Bouteilles",
  lead: "Ce qui a été préparé, ouvert et usé. Une séance versée d’une bouteille y inscrit ses films d’elle-même.",
  looking: "On regarde l’étagère…",
  refused:
    "Ce navigateur ne garde rien d’une visite à l’autre : rien ne peut rester sur l’étagère.",
  unread: (count: number) =>
    count <= 1
      ? `${count} autre bouteille a été gardée par une autre version et ne peut être montrée. Elle reste telle quelle.`
      : `${count} autres bouteilles ont été gardées par une autre version et ne peuvent être montrées. Elles restent telles quelles.`,
  empty: "Il n’y a encore rien dessus.",
  demo: "Y poser les bouteilles de Gullrock Light",
  add: "Ajouter une bouteille",
  poured: (count: number) => `Jetées : ${count}`,
  removed: (count: number) => `Supprimées : ${count}`,
  states: { working: "solution de travail", stock: "solution de base, à diluer" },
  facts: {
    what: "Ce que c’est",
    mixed: "Préparée",
    left: "Il reste",
    films: "Films traités",
    due: "Échéance",
    stands: "Où elle est",
  },
  by: (initials: string) => `par ${initials}`,
  from: (what: string) => `à partir de ${what}`,
  outOf: (some: string, all: string) => `${some} sur ${all}`,
  films: (films: string, sizes: string) => `${films} (${sizes})`,
  counted: (films: string) => `ce qui reste compte pour ${films}`,
  dueBy: {
    full: (since: string) => `préparée le ${since}`,
    half: (since: string) => `à moitié pleine ou moins depuis le ${since}`,
    opened: (since: string) => `ouverte le ${since}`,
  },
  past: "date dépassée",
  notSaid: "non précisé",
  aside: "mise de côté, à ne pas utiliser",
  awaySince: (day: string) => `jetée le ${day}`,
  history: (count: number) =>
    count <= 1 ? `Historique : ${count} ligne` : `Historique : ${count} lignes`,
  told: {
    mixed: (volume: string) => `préparée, ${volume}`,
    corrected: "corrigée",
    films: (films: string) => `films traités : ${films}`,
    drawn: (bath: string, films: string) => `une séance, ${bath} : ${films}`,
    took: (bath: string, volume: string) => `une séance, ${bath} : ${volume} usés`,
    taken: (volume: string) => `${volume} retirés`,
    added: (volume: string) => `${volume} ajoutés`,
    tested: (time: string, film: string) => `éclairci en ${time} : ${film}`,
    opened: "ouverte",
    "set-aside": "mise de côté",
    "taken-up": "revenue sur l’étagère",
    "poured-away": "jetée",
    removed: "supprimée",
  },
  takenBack: "annulé",
  acts: {
    films: "Films traités",
    tested: "Essai d’éclaircissement",
    opened: "Ouverte",
    taken: "On en a retiré",
    added: "On en a ajouté",
    "set-aside": "Mettre de côté",
    "taken-up": "Remettre sur l’étagère",
    "poured-away": "Jetée",
    corrected: "Corriger",
    removed: "Supprimer",
  },
  undo: "Annuler la ligne",
  redo: "Rétablir la ligne",
  undoLast: "Annuler",
  of: (name: string) => ` (${name})`,
  kept: (name: string) => `« ${name} » : c’est inscrit.`,
  taken: (name: string) => `« ${name} » : c’est annulé.`,
  notKept: "Ce navigateur n’a pas voulu le garder. Rien n’a changé.",
  refusals: {
    "more-than-left": "Il n’en reste pas autant.",
    "opened-already": "Elle a déjà été ouverte.",
    "poured-away": "Elle a été jetée. Annulez cela d’abord.",
    "before-mixed": "Elle a été préparée après ce jour.",
    "name-taken": "Une autre bouteille de l’étagère porte ce nom. Deux pareilles se confondent.",
  },
};

export const pick = {
  none: "aucune",
  taken: (name: string) =>
    `Rempli d’après l’étagère : ${name}. Annuler ramène ce qui s’y trouvait.`,
  putBack: "La bouteille est reposée. Ce qu’elle a rempli reste là.",
  gone: (name: string) =>
    `Aucune bouteille « ${name} » sur cette étagère. La séance ne sera inscrite nulle part.`,
  mixed: (day: string, days: string) => `préparée le ${day}, il y a ${days}`,
  days: (count: number) => (count <= 1 ? `${count} jour` : `${count} jours`),
  past: (day: string) =>
    `Son échéance était le ${day}. Prenez-en une fraîche, ou essayez-la d’abord.`,
  aside: "Elle est mise de côté : à ne pas utiliser.",
  little: (left: string, wanted: string) =>
    `Elle contient ${left} ; cette séance en demande ${wanted}.`,
  spent: "D’après son essai d’éclaircissement, elle est épuisée.",
  again: "Remplir selon son état actuel",
};
