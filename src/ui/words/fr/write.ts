// The words of Write up, in French.

export const write = {
  lead: "Chaque séance laisse ici sa trace, d’elle-même.",
  onItsWay: "On cherche vos séances…",
  empty:
    "Pas encore de séance. Dès qu’une a commencé, elle s’inscrit ici d’elle-même : la fiche, le moment de chaque appui, et de la place pour ce qu’elle a donné.",
  toLightsOut: "Aller à « Faire le noir »",
  refused:
    "Ce navigateur ne garde rien d’une visite à l’autre : les séances passées ne peuvent pas être montrées, et celles d’en dessous s’en vont quand on ferme la page. Enregistrez-les dans un fichier.",
  onlyHere: (count: number) =>
    count < 2
      ? "Ce navigateur n’a pas gardé l’une de ces séances, ou ce qui en a été dit : cela s’en va quand on ferme la page. Enregistrez tout dans un fichier."
      : `Ce navigateur n’a pas gardé ${count} de ces séances, ou ce qui en a été dit : cela s’en va quand on ferme la page. Enregistrez tout dans un fichier.`,
  unread: (count: number) =>
    count < 2
      ? "Une autre séance a été gardée par une autre version et ne peut pas être montrée. Elle reste telle quelle."
      : `${count} autres séances ont été gardées par une autre version et ne peuvent pas être montrées. Elles restent telles quelles.`,
  saveAll: "Tout enregistrer",
  saved: (name: string) => `Enregistré sous le nom ${name}.`,
  file: "tankside-seances.json",
  untitled: "Une séance sans nom",
  films: "Films",
  film: (label: string, size: string, count: number) =>
    count === 1 ? `${label}, ${size}` : `${count} × ${label}, ${size}`,
  rating: (at: number, box: number | undefined) =>
    box === undefined || box === at
      ? `exposé à ${at}`
      : `exposé à ${at}, sensibilité nominale ${box}`,
  rated: (film: string, rating: string) => `${film}, ${rating}`,
  developer: "Révélateur",
  stock: "non dilué",
  developed: "Développé pendant",
  bath: (time: string, temperature: string) => `${time} à ${temperature}`,
  ended: "Fin",
  endings: {
    done: "menée jusqu’au bout",
    left: (after: string) => `quittée après : ${after}`,
    leftAtOnce: "quittée avant le premier appui",
    open: "pas encore, ou interrompue",
  },
  presses: (count: number) => (count < 2 ? `${count} appui` : `${count} appuis`),
  step: "Étape",
  at: "Appui à",
  after: "Après le précédent",
  note: "Ce que ça a donné",
  noteHint: "Trop léger, bon, trop dense ? Régulier ? Que changeriez-vous ?",
  noteKept: "C’est gardé.",
  noteNotKept:
    "Ce navigateur n’a pas gardé la note. Enregistrez tout dans un fichier avant de partir.",
  again: "Refaire la même",
  takeOut: "Retirer",
  takenOut: (title: string) => `La séance « ${title} » est retirée.`,
  notTakenOut: (title: string) =>
    `Ce navigateur n’a pas pu retirer la séance « ${title} ». Elle est encore ici.`,
  notPutBack: (title: string) =>
    `Ce navigateur n’a pas pu remettre la séance « ${title} » avec ses images. On peut réessayer tant que la page reste ouverte.`,
  undo: "Annuler",
  of: (title: string, begun: string) => ` (${title}, ${begun})`,
};

/** Steps that are no bath, by id. */
export const steps = {
  "lay-out": "Mise en place",
  dry: "Spires sèches",
  "wet-side": "Le côté humide",
  temper: "Température",
  quiet: "Mode avion",
  lamps: "Lampes masquées",
  volume: "Volume sonore",
  screen: "Écran",
  "lights-out": "Noir total",
  wait: "Chercher la lumière",
  open: "Ouverture du film",
  cut: "Coupe de l’amorce",
  feed: "Engager le film",
  wind: "Mise sur spire",
  spool: "Hors de la bobine",
  tape: "L’adhésif",
  others: "Les autres spires",
  count: "Compter les plans-films",
  holders: "Plans-films en place",
  core: "Axe et spires",
  close: "Fermeture de la cuve",
  everyone: "Tout le monde a fini",
  light: "Retour de la lumière",
  "stay-dark": "Toujours dans le noir",
  hang: "Séchage",
};
