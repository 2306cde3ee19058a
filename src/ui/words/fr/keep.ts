// The words of what the page says about itself: a newer version, standing among the programs, what is kept.

export const news = {
  ready: "Une nouvelle version est prête. La page se recharge ; ce que vous avez saisi reste.",
  takenElsewhere:
    "Un autre onglet est passé à une nouvelle version. Il peut manquer des parties à cette page tant qu’elle n’est pas rechargée.",
  takeIt: "La prendre maintenant",
  loadAnew: "Recharger",
  /** Said of the version, where something is in the way of it. */
  waits: {
    "run-is-on": "Elle attend la fin de la séance.",
    "other-pages":
      "Fermez d’abord les autres onglets et fenêtres de Tankside : ils se servent encore de la version d’avant.",
    failed:
      "Elle n’a pas pu être prise maintenant. Elle viendra d’elle-même quand tous les onglets de Tankside auront été fermés.",
  },
};

export const install = {
  offer: "Tankside peut se ranger parmi les programmes de cet appareil.",
  install: "Installer",
};

export const keeping = {
  /** Before a run, this and the next. */
  nothing:
    "Ce navigateur ne garde rien d’une séance : si la page est fermée, elle ne retrouve plus où elle en était, et il n’en reste aucune trace. C’est le cas des fenêtres privées et de certains réglages.",
  noRoom:
    "Il n’y a plus de place pour garder une séance : si la page est fermée, elle ne retrouve plus où elle en était, et il n’en reste aucune trace. Faites d’abord de la place sur cet appareil.",
  /** Beside the records. */
  noMoreRoom:
    "Il n’y a plus de place ici pour une séance de plus. Faites de la place sur cet appareil, ou enregistrez les séances dans un fichier et retirez-en quelques-unes.",
  mayBeCleared:
    "Ce navigateur peut effacer ce qu’il garde ici : une fenêtre privée quand on la ferme, les autres quand le disque est plein. Enregistrez dans un fichier les séances qui comptent.",
};
