// The words of the house's lists, and of what stands at Gullrock Light, in French.

export const room = {
  title: "Les listes de la pièce",
  lead: "Ouvrir, fermer, et où va ce qui est usé : écrites par la maison, pour la maison.",
  lists: {
    opening: "Ouvrir la pièce",
    closing: "Fermer la pièce",
    waste: "Où va ce qui est usé",
  },
  invite: {
    opening:
      "Rien n’est encore écrit. Qu’est-ce qu’on allume, vérifie et dispose avant que quiconque commence ?",
    closing: "Rien n’est encore écrit. Qu’est-ce qu’on lave, éteint et ferme avant de partir ?",
    waste:
      "Rien n’est encore écrit. Quel récipient reçoit quoi, et qui l’emporte ? Les règles du lieu et les fiches des fabricants décident.",
  },
  edit: "Écrire cette liste",
  hint: "Une ligne par point.",
  keep: "Garder la liste",
  cancel: "Renoncer",
  reset: "Enlever toutes les coches",
  print: "Imprimer les listes",
  demo: "Remplir avec les listes de Gullrock Light",
  kept: "La liste est gardée.",
  notKept: "Ce navigateur n’a pas voulu la garder : elle s’en va avec la page.",
  ticked: (done: number, all: number) => `${done} sur ${all} faits`,
};

export const gullrockRoom = {
  bottles: {
    stock: "Kelp MQ de base",
    stop: "Bain d’arrêt, cruche brune",
    fixer: "Fixateur B",
    powder: "poudre pour 1 l",
    concentrate: "concentré",
  },
  opening: [
    "Ventilateur en marche, store baissé",
    "Cloche du signal de brume décrochée",
    "Côté humide : bain d’eau rempli, serviettes prêtes",
    "Carton de la porte tourné sur NOIR",
  ],
  closing: [
    "Bains encore bons remis en bouteille, films inscrits",
    "Cuvettes et éprouvettes rincées, retournées",
    "Robinets, ventilateur et chauffage coupés",
    "Clé au crochet de la chambre de la lampe",
  ],
  waste: [
    "Fixateur usé : bidon bleu près de la porte, avec la date du début",
    "Révélateur usé : bidon gris ; la gardienne porte les deux à terre",
  ],
};
