// The words for what the hands use beside the one press, in French: a thermometer, a pedal, a knock.

export const reading = {
  name: "Thermomètre",
  typed: "Température dans la cuve",
  taken: (temperature: string) => `Relevé : ${temperature}.`,
  range: (least: string, most: string) =>
    `Un révélateur en cuve est entre ${least} et ${most}. Rien n’a changé.`,
  connect: "Connecter un thermomètre",
  hint: "S’il a le Bluetooth, il déplace la fin tout seul. On peut toujours s’en passer.",
  connecting: "Recherche d’un thermomètre…",
  disconnect: "Le déconnecter",
  nameless: "Thermomètre",
  on: (name: string, temperature: string) => `${name} : ${temperature}.`,
  nothingYet: (name: string) => `${name} : connecté, pas encore de relevé.`,
  out: (name: string, temperature: string) =>
    `${name} : ${temperature}. Il semble hors de la cuve, on n’en tient donc pas compte.`,
  lost: (name: string) => `${name} : connexion perdue, recherche en cours.`,
  last: (temperature: string) => `Dernier relevé : ${temperature}.`,
  refused: {
    none: "Aucun thermomètre choisi. Allumez-le, approchez-le, puis appuyez de nouveau.",
    denied:
      "Le Bluetooth n’est pas autorisé ici. Autorisez-le dans les réglages, puis appuyez de nouveau.",
    unreachable:
      "Le thermomètre n’a pas répondu. Approchez-le ou libérez-le d’un autre appareil, puis appuyez de nouveau.",
    unfit: "Celui-ci ne donne pas de température lisible ici.",
    unable: "Ce navigateur ne peut pas utiliser le Bluetooth sur cette page.",
  },
};

export const pedal = {
  name: "Tourne-page, pédale ou autre bouton",
  hint: "Tout ce qui envoie des touches à cet appareil peut servir d’appui pendant une séance. On l’apprend en appuyant dessus.",
  learn: "En apprendre un",
  capture:
    "Appuyez maintenant : une fois brièvement, puis encore une fois pendant une seconde. La touche Échap annule.",
  again: "Reçu. Encore une fois, pendant une seconde.",
  calledOff: "Rien n’a été appris.",
  nothing: "Aucune touche n’est arrivée. Est-il allumé, et appairé avec cet appareil ?",
  learnt: "C’est appris.",
  notKept: "Ce navigateur ne peut pas le garder : cela tient jusqu’à la fermeture de la page.",
  known: "Appris jusqu’ici",
  holds: (key: string) => `${key} : appui bref ou maintenu`,
  taps: (key: string) => `${key} : appui bref, pas maintenu`,
  keyboard:
    "Pendant une séance, ces touches comptent comme un appui d’où qu’elles viennent, d’un clavier aussi.",
  refused: {
    moves:
      "Tabulation et Échap restent ce qu’elles sont : il les faut pour se déplacer au clavier.",
    modifier: "Cette touche seule ne veut rien dire, elle ne peut donc pas servir d’appui.",
    nameless: "Cette touche n’a pas de nom auquel la reconnaître.",
  },
  try: "Essayer",
  trying: "Appuyez comme pendant une séance. La touche Échap termine l’essai.",
  meanings: {
    once: "Une fois : continue, ou dit où on en est.",
    twice: "Deux fois : dit où on en est.",
    thrice: "Trois fois : fait taire la voix, ou la fait reparler.",
    held: "Maintenu : annule, ou propose ce qu’on peut faire d’autre.",
  },
  tried: "L’essai est terminé.",
  forget: (key: string) => `Oublier ${key}`,
  forgotten: "Oublié.",
  keys: {
    space: "Espace",
    enter: "Entrée",
    pageUp: "Page précédente",
    pageDown: "Page suivante",
  },
};

export const knocks = {
  hear: "Écouter les coups frappés sur la table (micro)",
  hint: "Ce qui est entendu n’est pas gardé et ne quitte jamais cet appareil. On peut toujours s’en passer : un appui fait pareil.",
};
