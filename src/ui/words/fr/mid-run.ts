// The words of what comes up in the middle of a run, of a run that was left, and of what went otherwise than
// planned. Times and temperatures come ready written.

export const midRun = {
  more: "Plus",
  wrong: "Quelque chose ne va pas",
  takeBack: "Annuler",
  hush: "Silence",
  speak: "Parler",
  poured: "Versé seulement maintenant",
  emptied: "Vide maintenant",
  /** To the other way, by which is gone now. */
  way: { room: "Dans la poche", pocket: "Sur le haut-parleur" },
  silent: "Pas de son",
  silentHint: "Appuyez n’importe où pour l’entendre à nouveau. Le chrono de la cuve continue.",
  notKept:
    "Ce navigateur ne garde rien de cette séance. Restez sur cette page : fermée, la séance est perdue.",
};

export const leftRun = {
  title: (when: string) => `Une séance du ${when} n’a pas été finie`,
  hint: "La page s’est fermée au milieu. Elle peut reprendre là où elle en serait.",
  goOn: "Reprendre",
  drop: "La clore",
  dropped: "Elle est close. Ce qui a été fait est dans « Noter ».",
};

export const otherwise = {
  title: "Ce qui s’est passé autrement",
  /** Each stands behind the name of its bath. */
  pouredLate: (time: string) => `versé avec ${time} de retard`,
  emptiedLate: (time: string) => `vide avec ${time} de retard`,
  emptiedEarly: (time: string) => `vide avec ${time} d’avance`,
  read: (temperature: string, time: string) => `${temperature} dans la cuve, ${time} après l’appui`,
  developed: (real: string, planned: string) =>
    `Développé pendant ${real} ; ${planned} étaient prévus.`,
  lost: {
    closed: (time: string) => `Rien entendu pendant ${time} : la page était fermée.`,
    frozen: (time: string) => `Rien entendu pendant ${time} : la page était figée.`,
    asleep: (time: string) => `Rien entendu pendant ${time} : l’appareil dormait.`,
    silent: (time: string) => `Rien entendu pendant ${time} : le son était figé.`,
  },
  /** What was told of as wrong. */
  wrong: {
    eye: "Un œil a été éclaboussé.",
    light: "Une lumière s’est allumée.",
    bath: "Un mauvais bain est entré.",
    leak: "Le couvercle fuyait.",
    clock: "Le fil du temps était perdu.",
  },
  clockSet: (time: string) => `L’horloge de l’appareil a été décalée de ${time}.`,
};
