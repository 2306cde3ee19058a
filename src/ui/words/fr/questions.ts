// What Work out asks, in French: its questions, what they disclose, the rows that can be added, what can be
// chosen, and the cautions.
import { bathWithin } from "./baths.ts";

export const rows = {
  films: { all: "Films", one: (n: number) => `Film ${n}`, add: "Ajouter un film" },
  "developer.leaflet": {
    all: "Lignes de la notice",
    one: (n: number) => `Ligne ${n}`,
    add: "Ajouter une ligne de la notice",
  },
  "developer.readings": {
    all: "Relevés dans la cuve",
    one: (n: number) => `Relevé ${n}`,
    add: "Ajouter un relevé dans la cuve",
  },
  "tempering.readings": {
    all: "Relevés au bain-marie",
    one: (n: number) => `Relevé ${n}`,
    add: "Ajouter un relevé",
  },
  "contrast.tests": {
    all: "Films d’essai",
    one: (n: number) => `Essai ${n}`,
    add: "Ajouter un essai",
  },
  remove: "Retirer",
};

export const questions = {
  films: "Quels films ?",
  developer: "Que dit la notice ?",
  tank: "Quelle cuve, et combien pour la remplir ?",
  hands: "Comment vos mains l’agitent-elles ?",
  clock: "Comment comptez-vous le temps ?",
  baths: "Quels autres bains ?",
  voice: "Comment doit parler la voix ?",
  safety: "Avant d’ouvrir un flacon",
  warmth: "Comment le mettre à température ?",
  contrast: "Qu’ont montré vos films d’essai ?",
};

export const more = {
  leaflet: "Pousser, retenir, bain déjà utilisé, ligne unique",
  tank: "Cuvette, tambour ou température qui dérive",
  bath: (bath: string) => `Plus de détails : ${bathWithin(bath)}`,
  ownAgitation: "Une agitation à part ; ce qui reste vide suit le révélateur",
  inTank: "Relevés dans la cuve pendant le développement",
  capacity: "Combien de films il sert ; régénérateur",
  mixing: "Mélanger à température avec deux robinets",
  tempering: "Mettre au bain-marie et lire le thermomètre",
  contrast: "Gradients, ou densités d’un coin sensitométrique",
  measured: "Vos propres temps, mesurés",
};

export const choices = {
  "tank.method": {
    inversion: "Retournée à la main",
    twist: "Agitateur tourné",
    rotary: "Tambour, en rotation continue",
    tray: "Cuvette",
    hanger: "Cadres",
  },
  "clock.starts": { "pour-in": "à la première goutte", full: "quand la cuve est pleine" },
  "clock.ends": { "pour-out": "quand on commence à vider", empty: "quand la cuve est vide" },
  loading: { "": "à charger, pas à pas", done: "est déjà dans la cuve fermée" },
  "baths.*.afterwards": {
    "": "comme d’habitude",
    drain: "à l’évier",
    waste: "dans le bidon de déchets",
    return: "dans son récipient",
  },
  "voice.detail": {
    "": "Comme d’habitude",
    full: "Phrases entières",
    brief: "Peu de mots",
    tones: "Signaux seuls",
  },
  "baths.*.clearing.times": {
    "": "deux fois ce temps (habituel)",
    "2": "deux fois ce temps",
    "3": "trois fois ce temps",
  },
};

/** The same cautions, in the same order, as in English. */
export const cautions: readonly string[] = [
  "La fiche de sécurité du fabricant et le règlement du labo passent avant tout.",
  "Gants et lunettes de protection, du premier flacon au dernier rinçage.",
  "L’acide dans l’eau, jamais l’eau dans l’acide.",
  "Jamais de fixateur ni de sulfite au contact d’un acide : il s’en dégage du dioxyde de soufre.",
  "De l’air qui circule. Ni nourriture ni boisson dans la pièce.",
  "Le verre casse, un sol mouillé glisse : essuyez tout de suite ce qui est renversé.",
  "Côté humide, rien que des appareils sur pile ou sur batterie.",
];
