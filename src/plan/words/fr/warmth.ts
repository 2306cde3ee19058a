// Mixing and tempering, lines and warnings, in French.
import type { MixingWords, TemperingWords } from "../warmth-words.ts";

export const mixing: MixingWords = {
  water: "Eau à ajouter",
  waterSum: ({ total, target, weight, stock, at, stockWeight, sum }) =>
    `${total} à ${target} pèsent ${weight}, ${stock} de solution de base à ${at} environ ${stockWeight} : ${sum}`,
  hot: "Du robinet chaud",
  cold: "Du robinet froid",
  pourSum: ({ sum, at, density }) => `${sum} ; à ${at}, un ml pèse ${density}`,
  marks: "Aux traits de l’éprouvette",
  marksSum: ({ stock, cold, hot, whole, dilution }) =>
    `${stock} de solution de base, ${cold} d’eau froide, ${hot} d’eau chaude font ${whole} (${dilution})`,
  warnings: {
    nothingToMix:
      "Le révélateur s’emploie non dilué : il n’y a pas d’eau pour le réchauffer. Mettez-le au bain-marie.",
    outOfReach: ({ target, coldest, warmest }) =>
      `Avec cette solution de base et ces robinets, pas de mélange à ${target} : on peut aller de ${coldest} à ${warmest}. Refroidissez ou réchauffez d’abord la solution de base, prenez de l’eau glacée, ou mélangez au plus près et mettez au bain-marie.`,
    oneTap: ({ temperature }) =>
      `Les deux robinets coulent à la même température : le mélange sera à ${temperature}, quoi qu’on prenne de chacun.`,
    noWater:
      "L’eau est liquide de 0 à 100 °C (32 à 212 °F) : l’une des températures du mélange est en dehors.",
    marksTooCoarse: ({ mark, dilution }) =>
      `Des traits tous les ${mark}, c’est trop grossier pour ce mélange : ils en font ${dilution}. Mesurez la solution de base dans une éprouvette plus petite.`,
    lessThanAMark: ({ mark }) =>
      `Des traits tous les ${mark}, c’est trop grossier pour ce mélange : la solution de base n’arrive pas à la moitié d’un trait. Mesurez-la dans une éprouvette plus petite.`,
  },
};

export const tempering: TemperingWords = {
  thermometer: "Thermomètre",
  reading: ({ at, temperature }) => `${at} ${temperature}`,
  readings: ({ count }) => (count < 2 ? `${count} relevé` : `${count} relevés`),
  goes: "Évolution",
  minutes: "minutes",
  goesSum: ({ sum, room, halfway, from, to, misfit }) =>
    `${sum}, la moitié du chemin vers ${room} toutes les ${halfway} min ; cela peut se stabiliser de ${from} à ${to} ; écart moyen des relevés de ${misfit}`,
  settles: ({ temperature }) => `se stabilise à ${temperature}`,
  reached: ({ temperature }) => `À ${temperature}`,
  reachedSum: ({ sum, range }) =>
    `${sum} au chrono des relevés ; ce que le thermomètre laisse ouvert : ${range}`,
  orNever: ({ soonest }) => `${soonest} au plus tôt, ou jamais`,
  range: ({ from, to }) => `de ${from} à ${to}`,
  onTheWall: ({ time }) => `à la pendule, ${time}`,
  about: ({ time }) => `vers ${time}`,
  muchLater: "24:00:00 et plus",
  bathFor: ({ count }) =>
    count < 2 ? `Bain-marie pour ${count} minute` : `Bain-marie pour ${count} minutes`,
  ice: "Glace pour l’avoir",
  iceSum: ({ water, from, to, sum }) => `${water} d’eau de ${from} à ${to} : ${sum}`,
  asItIs: "Ou tel quel",
  asItIsSum: ({ temperature, time }) =>
    `à ${temperature}, comme au dernier relevé, ce film demande ${time}`,
  beyond: ({ by }) => `c’est ${by} au-delà des lignes de la notice`,
  readAgain: "à relire avant de s’en servir",
  guess: ({ time }) => `${time}, sans certitude`,
  warnings: {
    atTarget: ({ target }) =>
      `Le révélateur est à ${target}, aussi juste qu’un thermomètre peut le dire. Sortez-le du bain-marie, ou amenez le bain-marie à sa température.`,
    unfit: {
      "too-few":
        "Trop peu de relevés pour dire quand : il en faut deux si la température du bain-marie est connue, trois sinon. Remuez, et relevez de nouveau dans deux minutes.",
      "too-close":
        "Les relevés sont à moins d’une minute l’un de l’autre. Relevez de nouveau dans deux ou trois minutes.",
      still:
        "Les relevés ne bougent pas plus que ce qu’un thermomètre peut montrer : impossible de donner un temps. Attendez, remuez, relevez ; ou alors le bain-marie a fait ce qu’il a pu.",
      noisy:
        "Les relevés sautent d’un côté à l’autre plus que ne le fait un thermomètre. Remuez avant chacun, tenez le thermomètre à l’écart de la paroi, et laissez de côté ceux qui ont été mal lus.",
      contradictory:
        "Les relevés ne suivent pas un seul bain-marie : ils changent de sens, ou s’éloignent de sa température. A-t-on ajouté de la glace ou de l’eau, ou mal lu l’un d’eux ? Repartez du dernier.",
    },
    movesAway: ({ target }) =>
      `Le révélateur a dépassé ${target} et s’en éloigne. Sortez-le de ce bain-marie.`,
    neverReaches: ({ target, settles }) =>
      `Dans ce bain-marie, le révélateur n’arrive jamais à ${target} : il se stabilise vers ${settles}. Changez l’eau du bain-marie, ou développez à la température qu’il a, pendant le temps indiqué.`,
    askIce:
      "Dites à combien est le bain-marie et combien d’eau il contient : la glace qu’il faut sera calculée.",
    mayNotReach: ({ target }) =>
      `Ces relevés ne disent pas si le révélateur arrivera à ${target} dans ce bain-marie. Relevez de nouveau dans deux ou trois minutes, ou changez l’eau du bain-marie maintenant.`,
    takesLong: ({ target, wait }) =>
      `Il faut encore environ ${wait} pour arriver à ${target}. Un bain-marie à une température plus éloignée y mène plus vite ; ou développez à la température qu’il a, pendant le temps indiqué.`,
    wait: ({ target, wait, range }) =>
      `Attendez encore environ ${wait} pour ${target} (${range}), relevez alors une dernière fois, et sortez-le du bain-marie.`,
  },
};
