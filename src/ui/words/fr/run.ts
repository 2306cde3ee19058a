// The words of Lights out, in French. What the voice says stands in audio-scripts/.
import type { Deed } from "../../../process/moments.ts";
import type { Method } from "../../../trade/method.ts";
import { bathWithin } from "./baths.ts";

/** What the hands are to do, large enough to read across a room; by method where hands differ. */
export const runDeeds: { readonly [deed in Deed]: string } = {
  "pour-in": "Versez",
  full: "Cuve pleine",
  agitate: "Retournez",
  invert: "Retournez",
  rest: "Repos",
  tap: "Tapez",
  "pour-out": "Videz",
  empty: "Cuve vide",
};

/** Moving the tank, by method. */
export const moves: { readonly [method in Method]: string } = {
  inversion: "Retournez",
  twist: "Tournez",
  rotary: "Rotation",
  tray: "Remontez",
  hanger: "Soulevez",
};

export const beforeRun = {
  noWorksheet: "La séance suit une fiche, et la vôtre n’est pas encore complète.",
  toWorkOut: "Aller à « Calculer »",
  ahead: "Ce qui sera guidé",
  develop: (films: string, time: string, temperature: string, developer: string) =>
    `${films} : ${time} à ${temperature}, ${developer}.`,
  films: (films: readonly string[]) => films.join(", "),
  mix: (mix: string) => `Mélange : ${mix}.`,
  how: "Comment on appuie",
  once: "Un appui n’importe où sur l’écran, ou sur n’importe quelle touche, fait passer à l’étape suivante.",
  twice:
    "Deux appuis de suite disent où on en est et ce qui vient. Un seul suffit pendant qu’un bain est en cours.",
  thrice:
    "Trois appuis de suite : la voix se tait, les signaux des moments continuent ; trois encore, et elle reparle.",
  held: "Maintenu une seconde : le reste à l’oreille, un choix après l’autre ; appuyez quand vient le vôtre. Maintenu dans les trois secondes après un appui, il l’annule ; la touche Retour arrière aussi.",
  reading:
    "Pendant le développement, les flèches haut et bas entrent une lecture du thermomètre, dite pas à pas ; un appui la fixe, et la fin se déplace d’autant.",
  clock: "Une fois le révélateur versé, rien n’attend : le chrono de la cuve ne s’arrête jamais.",
  dark: "De « Noir total » jusqu’au verrouillage du couvercle, l’écran est noir, pointeur compris. Noir ne veut pas dire éteint : gardez l’appareil sous un tissu noir, et glissez la main dessous pour appuyer.",
  volume: "Réglez le volume pour que les signaux couvrent le bruit de l’eau.",
  stops: "Avant de vous lancer",
  accept: "J’ai lu ceci, et je continue quand même.",
  begin: "Commencer",
  beginHint: "le premier appui ; ensuite la voix prend le relais",
  fetching: "Chargement de la voix…",
  failed:
    "La voix n’a pas pu être chargée, rien n’a donc commencé. Il faut le réseau une fois, la toute première.",
  elsewhere:
    "Une séance est déjà en cours dans un autre onglet ou une autre fenêtre de ce navigateur. Continuez-la là-bas, ou quittez-la d’abord.",
  again: "Réessayer",
};

export const duringRun = {
  name: "La séance",
  press: "Appuyez n’importe où pour continuer",
  where: "Où en est-on ?",
  /** By how much is said now: what a press makes of it. */
  say: { full: "Parler moins", brief: "Signaux seuls", tones: "Tout dire" },
  leave: "Quitter",
  leaveTimed: "Le chrono de la cuve continue sans vous. Quitter la séance ?",
  leaveWaiting: "Quitter la séance ? Ce qui a été fait reste dans « Noter ».",
  stay: "Rester",
  now: (deed: string) => `Maintenant : ${deed.toLowerCase()}`,
  next: "Ensuite",
  in: (time: string) => `dans ${time}`,
  after: (deed: string, time: string) => `puis ${deed.toLowerCase()}, dans ${time}`,
  /** @param bath its id */
  leftIn: (bath: string) => `encore dans ce bain : ${bathWithin(bath)}`,
  untilPour: "avant de verser",
  emptying: "jusqu’à cuve vide",
  waiting: "Appuyez",
  waitingFor: (title: string) => `pour commencer : ${title}`,
  said: "Ce qui a été dit",
  tookOver:
    "La voix de cet appareil a échoué deux fois de suite : la voix fournie avec Tankside prend le relais.",
  over: "Fini",
  overHint: "Le film sèche. Ce qui a été fait est dans « Noter ».",
  toWriteUp: "Aller à « Noter »",
};
