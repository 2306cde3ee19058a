// The words of Walk through, in French, the score's own among them. What is spoken, and the names of the
// steps, come with the timeline.
import type { Method } from "../../../trade/method.ts";
import { bathPoured, bathWithin } from "./baths.ts";

export const walk = {
  noWorksheet: "Il n’y a rien à répéter tant que la fiche ne peut pas être calculée.",
  toWorkOut: "Aller à « Calculer »",
  onItsWay: "Les étapes se mettent en place…",
  failed:
    "Les étapes n’ont pas pu être mises en place : les mots et les sons n’ont pas pu être chargés ici.",
  again: "Réessayer",
  stops: "À voir d’abord",
  stop: "Halte",
  stopsAfter: "Les étapes sont montrées quand même.",
  lead: "Toute la séance, de la fiche au fil de séchage. Rien ici ne la lance.",
  steps: "Étapes",
  print: "Imprimer toute la partition",
  total: (steps: number, clock: string) =>
    `${steps} ${steps < 2 ? "étape" : "étapes"}. ${clock} au chrono ; le reste attend que vous appuyiez.`,
  dark: "dans le noir",
  light: "en lumière",
  screenBlack: "Ici, l’écran est noir.",
  ownPace: "sans chrono",
  hint: (light: string, lasts: string) => `${light}, ${lasts}`,
  spoken: (seconds: string) => `${seconds} de paroles, puis on attend que vous appuyiez.`,
  clocked: (time: string) => `${time} au chrono.`,
  previous: "Étape précédente",
  next: "Étape suivante",
  step: (n: number, of: number) => `Étape ${n} sur ${of}`,
  stepTitle: (title: string) => ` : ${title}`,
  hear: "Écouter cette étape",
  hearWhy: "Écouter pourquoi et comment",
  stopHearing: "Arrêter",
  hearing: (time: string, of: string) => `${time} sur ${of}`,
  notHeard: "Aucun son n’a pu être lancé ici.",
  runIsOn: "Une séance est en cours, rien d’autre ne sonne. Pour la retrouver :",
  lightsOut: "Faire le noir",
  runIsOnEnd: ".",
  inWords: "La même chose en mots",
  time: "Temps",
  hands: "Mains",
  voice: "Voix",
  hearFrom: "écouter",
  from: (time: string) => `à partir de ${time}`,
  left: (count: number) => (count < 2 ? `${count} phrase omise` : `${count} phrases omises`),
  leftWhy: "Ce qui n’a pas trouvé place entre les signaux, et pourquoi.",
  nothingLeft: "Tout ce qui doit être dit trouve sa place.",
};

export const score = {
  picture: (title: string) => `Partition : ${title}`,
  region: (title: string) => `Partition : ${title}, se fait défiler de côté`,
  key: "Comment la lire",
  keys: {
    words: "Une barre aussi longue que les paroles, et les mots au-dessus.",
    count: "Trois battements donnent le départ.",
    moment:
      "Un cor sonne au moment même : trois arcs pour verser, trois plus épais pour vider, deux pour commencer à agiter.",
    beats: "Les battements de l’aller et du retour.",
    rest: "Un anneau quand on pose la cuve ; un tiret quand un son doux dit que tout va bien.",
    water:
      "Cinq lignes figurent le bain : elles s’ouvrent quand on verse, se balancent avec la cuve, restent plates au repos, et se referment quand on vide.",
    fold: "Un long repos est replié, sa durée est écrite dans l’intervalle.",
    clock:
      "Noir et blanc tour à tour : cinq secondes chacun ; une seconde chacun là où il n’y a que des paroles.",
  },
  example: { words: "On verse", fold: "17 s" },
  /** @param bath its id */
  bath: (bath: string) => bathWithin(bath),
  press: "appui",
  "pour-in": "verser",
  full: "pleine",
  rest: "repos",
  "pour-out": "vider",
  empty: "vide",
  tap: (count: number) => `taper ${count}`,
  still: (time: string) => time,
  moving: (count: number, time: string) => `×${count}, ${time}`,
};

/** A bout, short enough to stand under its notes. */
export const turnsInScore: { readonly [method in Method]: (count: number) => string } = {
  inversion: (count) => `retourner ${count}`,
  twist: (count) => `tourner ${count}`,
  rotary: (count) => `rouler ${count}`,
  tray: (count) => `remonter ${count}`,
  hanger: (count) => `soulever ${count}`,
};

/** "Fois" never changes; small counts are written out. */
const times = (count: number) =>
  count === 1 ? "une fois" : count === 2 ? "deux fois" : `${count} fois`;

/** A bout, as a sentence's part. */
export const turnsInWords: { readonly [method in Method]: (count: number) => string } = {
  inversion: (count) => `retourner ${times(count)}`,
  twist: (count) => `tourner l’agitateur ${times(count)}`,
  rotary: (count) => `tourner le tambour ${times(count)}`,
  tray: (count) => `remonter le film ${times(count)}`,
  hanger: (count) => `soulever et incliner ${times(count)}`,
};

export const deeds = {
  /** @param bath its id, here and below */
  pourIn: (bath: string) => `verser ${bathPoured(bath)}`,
  full: "cuve pleine",
  until: (turns: string, time: string) => `${turns}, jusqu’à ${time}`,
  rest: "repos",
  tap: (count: number) => `taper ${times(count)}`,
  pourOut: (bath: string) => `vider ${bathPoured(bath)}`,
  empty: "cuve vide",
  joined: (deeds: readonly string[]) => deeds.join(", "),
};
