// Test films and their contrast, lines and warnings, in Portuguese.
import type { ContrastWords } from "../contrast-words.ts";

const start = (fog: string, log: string, rise: string, fromFirst: boolean) =>
  `a densidade 0,1 acima de base e véu (${fog}) fica em log H ${log}${fromFirst ? " a contar do primeiro degrau" : ""}; 1,3 mais adiante, subiu ${rise}`;

export const contrast: ContrastWords = {
  test: ({ number, time }) => `Ensaio ${number}, ${time}`,
  wedge: ({ fog, log, rise, sum, fromFirst }) => `${start(fog, log, rise, fromFirst)}: ${sum}`,
  wedgeWithSpeed: ({ fog, log, rise, sum, speed, degrees, fromFirst }) =>
    `${start(fog, log, rise, fromFirst)}; sensibilidade ${speed}, ou seja ${degrees}: ${sum}`,
  wedgeNotIso: ({ fog, log, rise, sum, fromFirst }) =>
    `${start(fog, log, rise, fromFirst)}; não é o contraste para o qual a ISO 6 dá uma sensibilidade, 0,80 ± 0,05: ${sum}`,
  gradient: ({ gradient }) => `gradiente ${gradient}`,
  growth: "Crescimento",
  minutes: "minutos",
  growthSum: ({ sum, points, misfit }) =>
    `${sum}, traçado por ${points}; com um desvio médio de ${misfit}`,
  point: ({ gradient, time }) => `${gradient} com ${time}`,
  range: ({ from, to }) => `de ${from} a ${to}`,
  contrast: "Contraste",
  stopLess: "Um ponto a menos",
  stopMore: "Um ponto a mais",
  timeSum: ({ gradient, sum }) => `gradiente ${gradient}: ${sum}`,
  change: ({ percent, less }) => `${percent} % ${less ? "a menos" : "a mais"}`,
  warnings: {
    unfit: {
      "too-few":
        "Só se conhece o contraste para um tempo. Um segundo filme de ensaio, com metade ou o dobro do tempo, mostra como ele cresce.",
      "one-time":
        "Todos os filmes de ensaio foram revelados durante o mesmo tempo. Mais um, com metade ou o dobro do tempo, mostra como cresce o contraste.",
      contradictory:
        "Os ensaios contradizem a forma como o contraste cresce: revelar mais tempo não deu mais contraste. Veja se há filmes trocados ou um número mal lido.",
      straight:
        "O contraste cresceu tão depressa como o tempo: não se vê limite e não se pode traçar nenhuma lei. Um ensaio com um tempo mais longo mostrava-o.",
    },
    wedgeUnread: ({ test, why }) => `${test}: a cunha não dá gradiente, porque ${why}.`,
    wedge: {
      "too-few": "tem poucos degraus",
      falls: "as densidades descem algures; devem ir do degrau menos exposto ao mais exposto",
      "starts-above":
        "o primeiro degrau já está mais de 0,10 acima de base e véu, e o ponto de sensibilidade fica antes dele",
      "never-reaches": "nenhum degrau chega a 0,10 acima de base e véu",
      "too-short":
        "acaba antes de o log da exposição chegar a 1,30 para lá do ponto de sensibilidade",
    },
    beyondLimit: ({ gradient, limit }) =>
      `Nenhum tempo dá um gradiente de ${gradient}: segundo estes ensaios, nunca passa de ${limit}. Outro revelador ou outra diluição talvez o dê.`,
    outsideTests: ({ gradient, time, from, to }) =>
      `Um gradiente de ${gradient} pedia ${time}, fora dos tempos ensaiados (${from} a ${to}), onde a curva é um palpite. Ensaie aí um filme antes de confiar nela.`,
  },
};
