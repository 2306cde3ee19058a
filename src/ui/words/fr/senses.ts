// The words of how a run reaches a person (heard, read out, felt, read), and of the statement on accessibility.

export const senses = {
  title: "Qui parle ?",
  why: "Deux voix se couperaient la parole : il n’y en a donc qu’une. On peut en changer ici avant chaque séance.",
  hear: "Écouter la question",
  hearHint: "ou répondez tout de suite : touches 1, 2 et 3",
  notHeard: "La voix n’a pas pu être chargée. Il faut un réseau une fois, la première.",
  names: {
    program: "Le programme parle",
    reader: "Mon lecteur d’écran parle",
    tones: "Les signaux seuls",
  },
  hints: {
    program:
      "Ce qu’il faut dire ne vient que de cette page ; pendant une séance, elle ne donne rien à dire au lecteur d’écran.",
    reader:
      "Pendant une séance, les mots arrivent à leur heure, en texte, au lecteur d’écran ; les signaux restent.",
    tones: "La séance donne ses signaux et ne dit rien tant qu’on ne le lui demande pas.",
  },
  change: "Changer",
  also: "À sentir et à lire",
  vibrates: "Vibrer à chaque signal",
  vibratesHint:
    "Dans le noir aussi. Portez l’appareil sur vous et essayez ici : cette page ne peut pas savoir s’il a un moteur.",
  noMotor: "Ce navigateur ne peut pas faire vibrer un appareil.",
  feel: "Sentir les signaux",
  captions: "Écrire ce qui est dit",
  captionsHint:
    "En grand sur l’écran de la séance tant qu’il y a de la lumière. Ce qui sera dit dans le noir y figure avant l’extinction.",
  darkAhead: "Dans le noir, il sera dit :",
  /** The two halves of a turn, as large as the beat is short. */
  turns: { over: "Aller", back: "Retour" },
};

export const statement = {
  built: (standard: string, point: string) =>
    `Tankside est fait selon ${standard} : le niveau AA en entier, et le niveau AAA sauf sur un point, le temps (${point}).`,
  time: "L’horloge d’une cuve ne peut être ni arrêtée ni allongée. À la place :",
  instead: [
    "Chaque moment est annoncé, décompté puis signalé, et peut aussi se sentir et se lire.",
    "Entre les étapes minutées, la séance attend votre appui aussi longtemps que vous voulez.",
    "Un appui peut être repris pendant trois secondes, et un retard peut se dire : la suite est recalculée.",
    "La durée de vos versements et le débit de la voix se règlent.",
  ],
  ways: "Une séance peut se faire à l’oreille, au lecteur d’écran, aux signaux, à la vibration ou, tant qu’il y a de la lumière, en lisant ; avec une touche, un doigt ou une pédale. Tout ce qui se tient appuyé ou s’appuie deux ou trois fois a aussi son bouton.",
  measured:
    "Des tests mesurent à chaque changement : le texte sur son fond à 7 pour 1 ou mieux, sur les deux papiers ; les boutons d’une séance à 88 pixels au moins ; des pages larges de 320 pixels sans défilement latéral ; un texte espacé ; les couleurs forcées ; et qu’axe-core ne trouve rien nulle part.",
  limits:
    "Limites connues : un lecteur d’écran garde son débit et peut parler encore quand vient un signal ; en poche, sur un appareil verrouillé, il n’a rien à lire et seuls les signaux s’entendent.",
  trials:
    "Il n’y a pas eu d’essais avec des personnes aveugles, sourdes ou travaillant d’une main. Ce qui est ici suit les normes, et s’offre à l’essai.",
};
