// The lines of the hands and the baths, in French.
import type { BathWords, CapacityWords, FixerWords, HandsWords, WashWords } from "../bath-words.ts";

export const hands: HandsWords = {
  labels: { pourIn: "Remplissage", pourOut: "Vidange", perInversion: "Un retournement" },
  times: ({ times, spread, only }) =>
    `${times} : ${only ? "le seul" : "le médian"} ; ${spread} entre le plus court et le plus long`,
};

export const baths: BathWords = {
  names: {
    prewet: "Prémouillage",
    developer: "Révélateur",
    stop: "Bain d’arrêt",
    fixer: "Fixateur",
    rinse: "Rinçage",
    "wash-aid": "Auxiliaire de lavage",
    wash: "Lavage",
    "wetting-agent": "Agent mouillant",
  },
  unsaid: "le temps habituel, puisque aucun n’est donné",
  given: "comme indiqué",
  clears: ({ time, sum }) => `un bout de film s’éclaircit en ${time} : ${sum}`,
  clearsButGiven: ({ time, sum, result }) =>
    `comme indiqué ; un bout de film s’éclaircit en ${time} : ${sum} donnerait ${result}`,
  fills: ({ fills, inversion, sum }) =>
    `de l’eau propre avec ${fills} retournements, à ${inversion} le retournement : ${sum}`,
  fillsPoured: ({ fills, inversion, pouring, sum }) =>
    `de l’eau propre avec ${fills} retournements, à ${inversion} le retournement, et chaque fois ${pouring} pour remplir et vider : ${sum}`,
};

export const fixer: FixerWords = {
  label: "Usure du fixateur",
  cleared: ({ fresh, sum, spent }) =>
    `le bain neuf éclaircissait en ${fresh} : ${sum} ; à ${spent} fois, il est épuisé`,
  times: ({ times }) => `${times} fois`,
};

export const wash: WashWords = {
  carriedLabel: "Emporté dans le lavage",
  carried: ({ volume, strength, sum }) =>
    `${volume} de fixateur à ${strength} de thiosulfate par litre : ${sum} sur le film`,
  leftLabel: "Reste après le lavage",
  left: ({ way, sum, limit }) =>
    `${way}, si à chaque trempage l’eau du film se met en équilibre avec l’eau autour : ${sum} ; la limite est de ${limit}`,
  running: ({ fill, flow, time }) =>
    `un remplissage de ${fill}, puis ${flow} par minute pendant ${time}`,
  fills: ({ fill, count }) =>
    count < 2 ? `un remplissage de ${fill}` : `${count} remplissages de ${fill}`,
  lessThan: ({ residue }) => `moins de ${residue}`,
  minutesLabel: "Minutes nécessaires",
  minutes: ({ first, sum }) => `le premier remplissage laisse ${first} ; ${sum}`,
  noMinutes: "aucune",
  changesLabel: "Eaux nécessaires",
  changes: ({ sum, fill }) => `${sum}, arrondi vers le haut, avec des remplissages de ${fill}`,
  changeCount: ({ count }) => (count < 2 ? `${count} eau` : `${count} eaux`),
};

export const capacity: CapacityWords = {
  label: ({ bath }) => `${bath} : peut servir`,
  sum: ({ volume, litres, perLitre, films, before, now }) =>
    `${volume} (${litres} l) × ${perLitre} films par litre = ${films} de 80 po² ; moins ${before} avant et ${now} maintenant`,
  more: ({ films }) => `encore ${films}`,
  replenisherLabel: "Régénérateur à ajouter",
  replenishedBefore: ({ films, each, due }) =>
    `${films} avant × ${each} = ${due}, si ce n’est pas déjà fait`,
  replenishNow: ({ films, each }) => `${films} maintenant × ${each}, après cette séance`,
};
