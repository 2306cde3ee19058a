// The words, in French, of "Who speaks" and of the sheet on which a voice is recorded.
import type { LateWords } from "../words.ts";

export const speaker: LateWords["speaker"] = {
  who: "Qui parle sur cet appareil",
  bundled: "La voix fournie avec Tankside",
  own: (recorded: number, of: number) =>
    `Ma propre voix (phrases enregistrées : ${recorded} sur ${of})`,
  ownHint:
    "Une phrase est dite par votre voix dès qu’elle est enregistrée en entier ; d’ici là, par la voix fournie avec Tankside.",
  packName: "Ma propre voix",
  record: "Enregistrer votre voix",
  goOn: "Continuer l’enregistrement",
  export: "Sauvegarder dans un fichier",
  import: "Ouvrir un fichier de voix",
  removeAll: "Supprimer tous les enregistrements",
  undo: "Annuler",
  choiceNotKept: "Ce navigateur ne garde pas ce choix : il vaut jusqu’à la fermeture de la page.",
  opening: "Chargement des phrases…",
  notOpened:
    "Les phrases n’ont pas pu être chargées. Il faut le réseau une fois, la toute première.",
  saved: (name: string) => `Voix sauvegardée sous le nom ${name}.`,
  nothingToSave: "Rien n’est encore enregistré.",
  imported: (clips: number, unknown: readonly string[]) =>
    clips < 2
      ? `${clips} phrase ajoutée. ${leftOut(unknown)}« Annuler » revient en arrière.`
      : `${clips} phrases ajoutées. ${leftOut(unknown)}« Annuler » revient en arrière.`,
  removedAll: "Tous les enregistrements sont supprimés. « Annuler » les ramène.",
  undone: "C’est annulé.",
  notKept:
    "Ce navigateur ne garde pas ce changement : il s’en va quand on ferme la page. Avant cela, sauvegardez votre voix dans un fichier.",
  notRead: "Vos enregistrements précédents n’ont pas pu être relus dans ce navigateur.",
};

function leftOut(unknown: readonly string[]): string {
  if (unknown.length === 0) return "";
  const named = unknown
    .slice(0, 3)
    .map((text) => `« ${text} »`)
    .join(", ");
  return unknown.length <= 3
    ? `Écarté, car ce n’est jamais dit ici : ${named}. `
    : `${unknown.length} phrases écartées, car jamais dites ici : ${named} et d’autres. `;
}

export const deviceVoice: LateWords["deviceVoice"] = {
  device: "Une voix de cet appareil",
  hint: "Elle parle à son rythme, et seulement tant que cette page est affichée. Si elle échoue deux fois de suite, la voix fournie avec Tankside prend le relais. Les signaux ne dépendent jamais d’elle.",
  which: "Laquelle",
  measure: "Écouter et mesurer",
  measuring: "Elle dit quelques phrases, le temps de la mesurer…",
  first: "Il faut l’écouter et la mesurer avant qu’elle puisse guider une séance.",
  runOn: "Une séance est en cours. La mesure attendra qu’elle soit finie.",
  measured: (delay: string, letters: number) =>
    `Commence au bout de ${delay}, dit ${letters} lettres par seconde.`,
  refused: {
    "never-starts":
      "Cette voix n’a pas commencé à parler dans les 3 secondes : elle ne peut guider aucune séance.",
    "never-ends":
      "Cette voix ne signale pas quand elle a fini : elle ne peut guider aucune séance, car elle risquerait de couvrir un moment décisif.",
    failed: "Cette voix n’a pas pu parler.",
    "too-slow":
      "Cette voix met plus de 10 secondes à dire une phrase : elle ne peut guider aucune séance.",
  },
};

export const recording: LateWords["recording"] = {
  name: "Enregistrer votre voix",
  progress: (recorded: number, of: number) => `${recorded} sur ${of}`,
  recorded: "enregistrées",
  forWorksheet: (recorded: number, of: number) =>
    recorded === of
      ? "Tout ce que dit la fiche de la page est enregistré."
      : `De ce que dit la fiche de la page : ${recorded} sur ${of}.`,
  say: "À dire",
  isRecorded: "Cette phrase est enregistrée.",
  level: "Niveau",
  levels: { none: "aucun son", soft: "faible", good: "bon", loud: "très fort" },
  record: "Enregistrer",
  stop: "Arrêter",
  keep: "Garder et continuer",
  again: "Recommencer",
  hear: "Écouter",
  sayIt: "Me la lire",
  back: "Précédente",
  skip: "Suivante",
  remove: "Supprimer",
  undo: "Annuler",
  leave: "Quitter",
  keys: {
    press: "Espace",
    keep: "Entrée",
    hear: "H",
    say: "R",
    back: "←",
    skip: "→",
    remove: "Suppr",
    undo: "U",
    leave: "Échap",
  },
  opening: "Demande d’accès au micro…",
  ready:
    "Parlez comme à quelqu’un à côté de vous, à une largeur de main du micro. Si un lecteur d’écran vous parle, mettez des écouteurs : il serait enregistré aussi.",
  recording: "Ça enregistre. Dites la phrase, puis arrêtez.",
  taken: (seconds: string) => `Enregistré : ${seconds}. Écoutez, gardez ou recommencez.`,
  told: {
    kept: "C’est gardé.",
    "not-kept":
      "Ce navigateur ne garde pas cet enregistrement : il s’en va quand on ferme la page. Avant cela, sauvegardez votre voix dans un fichier.",
    removed: "C’est supprimé. « Annuler » ramène l’enregistrement.",
    undone: "C’est annulé.",
    "run-on": "Une séance est en cours. L’enregistrement attendra qu’elle soit finie.",
    "no-sound": "Aucun son n’a pu être lancé.",
  },
};

/** Why there is nothing to keep of what was recorded. */
export const unusable: LateWords["unusable"] = {
  "too-quiet":
    "Trop faible pour servir. Rapprochez-vous du micro ou montez son niveau, puis recommencez.",
  clipped:
    "Trop fort pour le micro : ça sature. Reculez un peu ou baissez son niveau, puis recommencez.",
  noise:
    "Les mots ne ressortent pas du bruit de la pièce. Rapprochez-vous, ou trouvez un endroit plus calme, puis recommencez.",
  "too-short":
    "Trop court pour être la phrase. Appuyez, parlez, et appuyez de nouveau quand vous avez fini.",
  "too-long": (lasts: string, most: string) =>
    `Cela dure ${lasts}, et il n’y a de place que pour ${most}. Recommencez en parlant plus vite.`,
};

export const microphone: LateWords["microphone"] = {
  denied:
    "Le micro n’est pas autorisé ici. Autorisez-le pour cette page dans les réglages du navigateur, puis appuyez de nouveau.",
  none: "Aucun micro trouvé. Branchez-en un, puis appuyez de nouveau.",
  busy: "Le micro n’est pas libre : un autre programme s’en sert peut-être. Fermez-le, puis appuyez de nouveau.",
  unable: "Ce navigateur ne peut pas enregistrer sur cette page.",
};

/** Why a voice's file was refused; `name` is the file's own. */
export const noPack: LateWords["noPack"] = {
  foreign: (name: string) =>
    `${name} n’est pas une voix sauvegardée par Tankside. Rien n’a changé.`,
  "other-version": (name: string) =>
    `${name} vient d’une version plus récente de Tankside, que celle-ci ne sait pas lire. Rien n’a changé.`,
  damaged: (name: string) =>
    `${name} est abîmé : il y manque quelque chose, ou le contenu a été altéré. Rien n’a changé.`,
  "too-large": (name: string) =>
    `${name} contient plus qu’une voix ne peut contenir. Rien n’a changé.`,
  "other-language": (name: string, language: string) =>
    `${name} parle une autre langue (${language}). Rien n’a changé.`,
  "other-sound": (name: string, file: string) =>
    `${file}, dans ${name}, n’est pas un simple WAV à 24 kHz, 16 bits, un canal. Rien n’a changé.`,
};
