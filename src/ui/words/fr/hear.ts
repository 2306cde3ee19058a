// The French words of what is heard before a run: the test with the tap running, and headphones that play late.

export const hearFirst = {
  title: "Écoutez d’abord",
  how: "Ouvrez le robinet comme il le sera, et placez-vous là où vous travaillerez. Laissez couler l’eau pendant que vous écoutez.",
  ask: "Avez-vous tout entendu, robinet ouvert ?",
  play: "Écouter l’essai",
  playAgain: "Écouter encore",
  playHint: "quelques signaux et une phrase, aussi forts que pendant la séance",
  playing: "Lecture…",
  listen: "Écoutez maintenant, robinet ouvert.",
  failed:
    "L’essai n’a pas pu être joué. Il faut le réseau une fois, la toute première, pour la voix.",
  heard: "J’ai entendu",
  notHeard: "Je n’ai pas entendu",
  good: "Bien. La séance sera aussi forte que cela.",
  mend: "C’est alors le plus souvent l’une de ces choses ; ensuite, écoutez encore :",
  advice: [
    "Le volume : montez-le à la main, sur l’appareil et sur l’enceinte ou le casque.",
    "Le mode muet : certains appareils ont un interrupteur sur le côté, ou un mode silencieux.",
    "La sortie : une enceinte d’une autre pièce, ou un casque dans un tiroir, est peut-être connecté.",
    "L’eau : un filet plus mince, l’appareil plus près de vous, ou un casque.",
  ],
  begin: "Commencer sans avoir entendu",
  beginHint: "pour qui sent les signaux sur le corps, ou lit les paroles",
};

export const tapAlong = {
  ask: "Un casque sans fil ?",
  why: "Il joue en retard, souvent d’un quart de seconde, et le signal pour vider arrive en retard avec lui. Tapez en mesure sur quelques battements : tout ce qui sonne pendant la séance partira d’autant plus tôt.",
  kept: (delay: string) => `Sur cet appareil, le son part ${delay} plus tôt.`,
  noneKept: "Sur cet appareil, rien ne part plus tôt.",
  notKept: "Ce navigateur ne le gardera pas d’une visite à l’autre.",
  measure: "Mesurer en tapant en mesure",
  none: "Aucun retard",
  name: "De combien le casque joue en retard",
  advice:
    "Casque sur les oreilles. Trois battements et un silence, encore et encore, pendant vingt secondes.",
  start: "Appuyez pour entendre les battements",
  fetching: "Chargement des battements…",
  tap: "Tapez ici à chaque battement",
  tapHint: "ou sur la barre d’espace ; pas dans les silences",
  taps: (count: number) => `Coups tapés : ${count}`,
  failed:
    "Les battements n’ont pas pu être joués. Il faut le réseau une fois, la toute première. Appuyez pour réessayer.",
  late: (delay: string) => `${delay} de retard`,
  notLate: "Aucun retard qui compte",
  sure: (apart: string) => `La moitié des coups est à ${apart} de là au plus.`,
  keep: (delay: string) => `Garder ${delay}`,
  keepNone: "Rester sans retard",
  again: "Encore",
  leave: "Quitter",
  refused: {
    few: "Trop peu de coups pour en juger. Encore une fois : un coup à chaque battement.",
    uneven:
      "Les coups sont trop dispersés pour en juger. Encore une fois : prenez d’abord la mesure, puis tapez avec elle.",
    unclear:
      "Cela correspond à deux retards. Encore une fois : trois coups, et aucun dans le silence.",
    far: "C’est plus d’une seconde, plus qu’on ne peut rattraper. Un casque à fil, ou le haut-parleur de l’appareil, convient.",
  },
};

export const byEar = {
  open: "Calculer à l’oreille",
  name: "Calculer à l’oreille",
  hint: "N’importe quelle touche ou un toucher prend ce qui est proposé, ou continue. Haut et bas mènent d’un champ à l’autre, gauche et droite parcourent les valeurs au choix, Entrée en prend une ; les chiffres et les lettres d’un nom entrent comme vous les tapez, Entrée les fixe, C ou F, M ou O dans cette unité, une virgule sépare les remplissages d’un lavage, une espace les plages d’un coin, Retour arrière en ôte un, Échap ferme.",
  end: "L’ensemble",
  previous: "Précédent",
  next: "Suivant",
  close: "Fermer",
  notHeard: "La voix n’a pas pu être chargée. Cherchez un réseau et appuyez de nouveau.",
};
