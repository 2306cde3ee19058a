// Test films and their contrast, lines and warnings, in Spanish.
import type { ContrastWords } from "../contrast-words.ts";

const start = (fog: string, log: string, fromFirst: boolean) =>
  `0,1 sobre base y velo (${fog}) cae en log H ${log}${fromFirst ? " desde el primer escalón" : ""}`;

const further = (rise: string) => `1,3 más allá, la densidad ha subido ${rise}`;

export const contrast: ContrastWords = {
  test: ({ number, time }) => `Prueba ${number}, ${time}`,
  wedge: ({ fog, log, rise, sum, fromFirst }) =>
    `${start(fog, log, fromFirst)}; ${further(rise)}: ${sum}`,
  wedgeWithSpeed: ({ fog, log, rise, sum, speed, degrees, fromFirst }) =>
    `${start(fog, log, fromFirst)}; ${further(rise)}; sensibilidad ${speed}, que son ${degrees}: ${sum}`,
  wedgeNotIso: ({ fog, log, rise, sum, fromFirst }) =>
    `${start(fog, log, fromFirst)}; ${further(rise)}; no es el contraste con el que la ISO 6 da una sensibilidad, 0,80 ± 0,05: ${sum}`,
  gradient: ({ gradient }) => `gradiente ${gradient}`,
  growth: "Cómo crece",
  minutes: "minutos",
  growthSum: ({ sum, points, misfit }) =>
    `${sum}, trazada por ${points}; se aparta ${misfit} de media`,
  point: ({ gradient, time }) => `${gradient} con ${time}`,
  range: ({ from, to }) => `de ${from} a ${to}`,
  contrast: "Contraste",
  stopLess: "Un paso menos",
  stopMore: "Un paso más",
  timeSum: ({ gradient, sum }) => `gradiente ${gradient}: ${sum}`,
  change: ({ percent, less }) => `${percent} % ${less ? "menos" : "más"}`,
  warnings: {
    unfit: {
      "too-few":
        "El contraste se conoce para un solo tiempo. Una segunda película de prueba, con la mitad o el doble de tiempo, enseña cómo crece.",
      "one-time":
        "Todas las películas de prueba se revelaron el mismo tiempo. Una más, con la mitad o el doble, enseña cómo crece el contraste.",
      contradictory:
        "Las pruebas no concuerdan con la manera en que crece el contraste: con más revelado no salió más. Mira si hay películas cambiadas o una cifra mal leída.",
      straight:
        "El contraste creció tan deprisa como el tiempo, así que no asoma ningún límite y no se puede trazar una curva. Una prueba con más tiempo lo encontraría.",
    },
    wedgeUnread: ({ test, why }) => `${test}: la cuña no da gradiente, porque ${why}.`,
    wedge: {
      "too-few": "tiene muy pocos escalones",
      falls: "sus densidades bajan en algún punto; van del escalón menos expuesto al más expuesto",
      "starts-above":
        "su primer escalón ya pasa de 0,10 sobre base y velo, así que el punto de sensibilidad queda antes",
      "never-reaches": "ningún escalón llega a 0,10 sobre base y velo",
      "too-short": "acaba antes de 1,30 de log exposición más allá del punto de sensibilidad",
    },
    beyondLimit: ({ gradient, limit }) =>
      `Ningún tiempo da un gradiente de ${gradient}: según estas pruebas, nunca pasa de ${limit}. Quizá sí con otro revelador u otra dilución.`,
    outsideTests: ({ gradient, time, from, to }) =>
      `Un gradiente de ${gradient} llevaría ${time}, fuera de los tiempos probados (de ${from} a ${to}), donde la curva es una suposición. Prueba ahí una película antes de fiarte.`,
  },
};
