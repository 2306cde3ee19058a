// The lines of the hands and the baths, in Portuguese.
import type { BathWords, CapacityWords, FixerWords, HandsWords, WashWords } from "../bath-words.ts";

export const hands: HandsWords = {
  labels: { pourIn: "Encher", pourOut: "Despejar", perInversion: "Uma inversão" },
  times: ({ times, spread, only }) =>
    `${times}: ${only ? "o único" : "o valor do meio"}; ${spread} do mais curto ao mais longo`,
};

export const baths: BathWords = {
  names: {
    prewet: "Pré-molhagem",
    developer: "Revelador",
    stop: "Banho de paragem",
    fixer: "Fixador",
    rinse: "Enxaguamento",
    "wash-aid": "Auxiliar de lavagem",
    wash: "Lavagem",
    "wetting-agent": "Agente molhante",
  },
  unsaid: "o tempo do costume, porque não se indicou nenhum",
  given: "como indicado",
  clears: ({ time, sum }) => `um pedaço de filme clareia em ${time}: ${sum}`,
  clearsButGiven: ({ time, sum, result }) =>
    `como indicado; um pedaço de filme clareia em ${time}: ${sum} dava ${result}`,
  fills: ({ fills, inversion, sum }) =>
    `água limpa com ${fills} inversões, a ${inversion} por inversão: ${sum}`,
  fillsPoured: ({ fills, inversion, pouring, sum }) =>
    `água limpa com ${fills} inversões, a ${inversion} por inversão, mais ${pouring} de cada vez para encher e despejar: ${sum}`,
};

export const fixer: FixerWords = {
  label: "Vida do fixador",
  cleared: ({ fresh, sum, spent }) =>
    `em novo, clareava em ${fresh}: ${sum}; a ${spent} vezes está esgotado`,
  times: ({ times }) => `${times} vezes`,
};

export const wash: WashWords = {
  carriedLabel: "Levado para a lavagem",
  carried: ({ volume, strength, sum }) =>
    `${volume} de fixador com ${strength} de tiossulfato por litro: ${sum} no filme`,
  leftLabel: "O que a lavagem deixa",
  left: ({ way, sum, limit }) =>
    `${way}, se de cada vez a água do filme se igualar à de fora: ${sum}; o limite é ${limit}`,
  running: ({ fill, flow, time }) =>
    `encher uma vez com ${fill}, depois ${flow} por minuto durante ${time}`,
  fills: ({ fill, count }) => (count === 1 ? `uma água de ${fill}` : `${count} águas de ${fill}`),
  lessThan: ({ residue }) => `menos de ${residue}`,
  minutesLabel: "Minutos necessários",
  minutes: ({ first, sum }) => `a primeira água deixa ${first}; ${sum}`,
  noMinutes: "nenhum",
  changesLabel: "Mudas necessárias",
  changes: ({ sum, fill }) => `${sum}, arredondado para cima, com ${fill} de cada vez`,
  changeCount: ({ count }) => (count === 1 ? "1 muda" : `${count} mudas`),
};

export const capacity: CapacityWords = {
  label: ({ bath }) => `${bath}: ainda dá para`,
  sum: ({ volume, litres, perLitre, films, before, now }) =>
    `${volume} (${litres} l) × ${perLitre} filmes por litro = ${films} de 80 pol²; menos ${before} antes e ${now} agora`,
  more: ({ films }) => `mais ${films}`,
  replenisherLabel: "Reforçador a juntar",
  replenishedBefore: ({ films, each, due }) =>
    `${films} antes × ${each} = ${due}, se não se juntou na altura`,
  replenishNow: ({ films, each }) => `${films} agora × ${each}, depois desta sessão`,
};
