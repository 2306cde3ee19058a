// The words of taking a session along, of a worksheet that comes with a link, and of a class that starts together.

export const take = {
  title: "À emporter",
  lead: "Toute la séance en fichiers : à écouter sur n’importe quel lecteur, à lire, à transmettre. Ils sont faits sur cet appareil et rien n’est envoyé. C’est la voix fournie qui parle, ou la vôtre là où vous l’avez enregistrée.",
  notDevice:
    "La voix de cet appareil, choisie ici, ne peut pas être mise dans un fichier : la voix fournie y parle à sa place.",
  track: "La piste",
  waits: "Là où il faudrait appuyer",
  /** Each with what a plain player makes of it. */
  kinds: {
    pass: "Elle continue seule après une attente",
    stay: "Elle attend, sur les lecteurs qui savent répéter un chapitre",
  },
  kindsHow: {
    pass: "On n’appuie pas sur un fichier. Il prévient une demi-minute et dix secondes avant de continuer ; qui a besoin de plus met le lecteur en pause.",
    stay: "Chaque attente est un chapitre à part et, dans un fichier WAV, une boucle. La plupart des lecteurs ne répètent rien d’eux-mêmes : ils continuent après l’attente sans le dire. Mettez le lecteur en pause à chaque attente, ou faites-lui répéter ce chapitre.",
  },
  gap: "Secondes d’attente",
  gapMay: (most: string) => `Peut contenir des secondes entières de 0 à ${most}.`,
  sizes:
    "Un fichier MP3 prend un demi-mégaoctet par minute, un fichier WAV trois. Les deux contiennent un chapitre par étape, et les paroles.",
  makes: {
    mp3: "Faire un fichier MP3",
    wav: "Faire un fichier WAV",
    vtt: "Sous-titres, WebVTT",
    srt: "Sous-titres, SubRip",
    ssml: "Le texte parlé, SSML",
    txt: "Le tout en texte, 40 colonnes",
    ics: "Entrée pour un agenda",
  },
  making: (share: string) => `En cours : ${share}`,
  cancel: "Annuler",
  cancelled: "Annulé. Rien n’a été enregistré.",
  saved: (name: string) => `Enregistré sous ${name}.`,
  failed: "Il n’a pas pu être fait ici.",
  tooLong: "C’est plus long que ne peut l’être un tel fichier : un jour environ.",
  texts: "À lire, et pour d’autres programmes",
  plannedFor: "Un jour et une heure pour cela",
  planned: "Jour et heure",
  wantsTime: "Choisissez d’abord le jour et l’heure.",
  isPast: "Cette heure est passée. Choisissez-en une à venir.",
  link: "En lien",
  linkLead:
    "Le lien contient toute la fiche, avec son titre et les noms de vos films : qui a le lien peut les lire. Il ne passe par aucun serveur et s’ouvre sans réseau sur un appareil qui a déjà ouvert Tankside.",
  together: "Un cours commence ensemble, au jour et à l’heure ci-dessus",
  togetherHow:
    "Chaque téléphone ouvre le lien, prend la fiche et appuie sur « Tout est prêt » dans « Faire le noir » ; à cette minute, sa première étape commence seule. Les horloges des téléphones diffèrent, couramment d’une ou deux secondes au plus.",
  copy: "Copier le lien",
  copied: "Copié.",
  notCopied: "Il n’a pas pu être copié. Le voici en entier :",
  share: "Transmettre le lien",
  code: "Le lien en code pour un appareil photo",
  codeTooLong:
    "Cette fiche est trop longue pour un code qu’un appareil photo puisse lire. Le lien la contient quand même.",
  linkTooLong:
    "Cette fiche est trop longue pour un lien. Enregistrez-la plutôt dans un fichier, dans « Calculer ».",
};

export const brought = {
  title: "Une fiche est venue avec le lien",
  named: (title: string) => `Elle s’appelle ${title}.`,
  starts: (time: string) => `Son cours commence à ${time}.`,
  keeps:
    "La vôtre reste telle quelle tant que vous ne prenez pas celle-ci ; ensuite, Annuler la ramène.",
  use: "Prendre cette fiche",
  leave: "La laisser",
  broken:
    "Le lien est coupé, a été modifié en route ou est d’une autre version. Rien n’a changé ici.",
  /** What a notice calls it. */
  name: "La fiche du lien",
};

export const classStart = {
  title: "Un cours commence ensemble",
  at: (time: string) => `Il commence à ${time}.`,
  left: (clock: string) => `encore ${clock}`,
  ready: "Tout est prêt",
  notReady: "Finalement non",
  putAside: "Ne pas attendre le cours",
  waits: "La première étape commence seule. Laissez cette page ouverte et en vue.",
  clocks:
    "Les horloges des téléphones diffèrent, couramment d’une ou deux secondes au plus : celle de chacun fait foi.",
  passed: "Cette heure est passée. Commencez comme d’habitude.",
  stopFirst: "Regardez d’abord l’arrêt ci-dessus, et acceptez-le.",
};
