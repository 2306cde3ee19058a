// Test films and their contrast, lines and warnings, in French.
import type { ContrastWords } from "../contrast-words.ts";

const start = (fog: string, log: string, fromFirst: boolean) =>
  `0,1 au-dessus du support et voile (${fog}) est atteint à log H ${log}${fromFirst ? " depuis la première plage" : ""}`;
const rises = (rise: string) => `1,3 plus loin, la densité a monté de ${rise}`;

export const contrast: ContrastWords = {
  test: ({ number, time }) => `Essai ${number}, ${time}`,
  wedge: ({ fog, log, rise, sum, fromFirst }) =>
    `${start(fog, log, fromFirst)} ; ${rises(rise)} : ${sum}`,
  wedgeWithSpeed: ({ fog, log, rise, sum, speed, degrees, fromFirst }) =>
    `${start(fog, log, fromFirst)} ; ${rises(rise)} ; sensibilité ${speed}, soit ${degrees} : ${sum}`,
  wedgeNotIso: ({ fog, log, rise, sum, fromFirst }) =>
    `${start(fog, log, fromFirst)} ; ${rises(rise)} ; ce n’est pas le contraste auquel ISO 6 donne une sensibilité, 0,80 ± 0,05 : ${sum}`,
  gradient: ({ gradient }) => `gradient ${gradient}`,
  growth: "Montée du contraste",
  minutes: "minutes",
  growthSum: ({ sum, points, misfit }) =>
    `${sum}, qui passe par ${points} ; écart moyen de ${misfit}`,
  point: ({ gradient, time }) => `${gradient} en ${time}`,
  range: ({ from, to }) => `de ${from} à ${to}`,
  contrast: "Contraste",
  stopLess: "Un diaphragme de moins",
  stopMore: "Un diaphragme de plus",
  timeSum: ({ gradient, sum }) => `gradient ${gradient} : ${sum}`,
  change: ({ percent, less }) => `${percent} % ${less ? "de moins" : "de plus"}`,
  warnings: {
    unfit: {
      "too-few":
        "Le contraste n’est connu que pour un seul temps. Un deuxième film d’essai, à la moitié ou au double, montre comment il monte.",
      "one-time":
        "Tous les films d’essai ont été développés le même temps. Un de plus, à la moitié ou au double, montre comment le contraste monte.",
      contradictory:
        "Les essais contredisent la façon dont le contraste monte : un développement plus long n’en a pas donné plus. Cherchez des films intervertis ou un chiffre mal lu.",
      straight:
        "Le contraste a monté aussi vite que le temps : aucune limite ne se voit, et aucune loi ne peut être tracée. Un essai plus long la montrerait.",
    },
    wedgeUnread: ({ test, why }) => `${test} : le coin ne donne pas de gradient, car ${why}.`,
    wedge: {
      "too-few": "il a trop peu de plages",
      falls:
        "ses densités baissent quelque part ; elles vont de la plage la moins exposée à la plus exposée",
      "starts-above":
        "sa première plage dépasse déjà le support et voile de plus de 0,10 : le point de sensibilité est avant elle",
      "never-reaches": "aucune plage n’arrive à 0,10 au-dessus du support et voile",
      "too-short": "il s’arrête avant un log d’exposition de 1,30 au-delà du point de sensibilité",
    },
    beyondLimit: ({ gradient, limit }) =>
      `Aucun temps ne donne un gradient de ${gradient} : d’après ces essais, il ne dépasse jamais ${limit}. Un autre révélateur ou une autre dilution le pourrait.`,
    outsideTests: ({ gradient, time, from, to }) =>
      `Un gradient de ${gradient} demanderait ${time}, hors des temps essayés (de ${from} à ${to}) : là, la courbe n’est qu’une supposition. Essayez un film à ce temps avant de vous y fier.`,
  },
};
