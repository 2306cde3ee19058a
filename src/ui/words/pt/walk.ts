// The words of Walk through in Portuguese, the score's own among them. What is spoken, and the names of
// the steps, come with the timeline.
import type { Method } from "../../../trade/method.ts";
import { bathWithin, theBath } from "./baths.ts";

export const walk = {
  noWorksheet: "Não há nada para percorrer enquanto a folha não der para calcular.",
  toWorkOut: "Ir para Calcular",
  onItsWay: "A juntar os passos…",
  failed: "Não se conseguiu juntar os passos: faltam aqui as palavras e os sons.",
  again: "Tentar de novo",
  stops: "Veja isto primeiro",
  stop: "Pare",
  stopsAfter: "Os passos mostram-se na mesma.",
  lead: "Tudo seguido, da folha à corda de secar. Nada aqui põe uma sessão a andar.",
  steps: "Passos",
  print: "Imprimir toda a partitura",
  total: (steps: number, clock: string) =>
    steps === 1
      ? `1 passo. ${clock} ao relógio.`
      : `${steps} passos. ${clock} ao relógio; os outros esperam que pressione.`,
  dark: "às escuras",
  light: "com luz",
  screenBlack: "Aqui o ecrã fica preto.",
  ownPace: "sem relógio",
  hint: (light: string, lasts: string) => `${light}, ${lasts}`,
  spoken: (seconds: string) => `${seconds} de palavras, depois espera que pressione.`,
  clocked: (time: string) => `${time} ao relógio.`,
  previous: "Passo anterior",
  next: "Passo seguinte",
  step: (n: number, of: number) => `Passo ${n} de ${of}`,
  stepTitle: (title: string) => `: ${title}`,
  hear: "Ouvir este passo",
  hearWhy: "Ouvir porquê e como",
  stopHearing: "Parar",
  hearing: (time: string, of: string) => `${time} de ${of}`,
  notHeard: "Não se conseguiu pôr o som a tocar.",
  runIsOn: "Há uma sessão a decorrer, e por isso nada mais soa. Continua em",
  lightsOut: "Apagar a luz",
  runIsOnEnd: ".",
  inWords: "O mesmo por palavras",
  time: "Tempo",
  hands: "Mãos",
  voice: "Voz",
  hearFrom: "ouvir",
  from: (time: string) => `a partir de ${time}`,
  left: (count: number) => (count === 1 ? "1 frase omitida" : `${count} frases omitidas`),
  leftWhy: "O que não coube entre os sinais, e porquê.",
  nothingLeft: "Cabe tudo o que há para dizer.",
};

export const score = {
  picture: (title: string) => `Partitura: ${title}`,
  region: (title: string) => `Partitura: ${title}, desliza para os lados`,
  key: "Como se lê",
  keys: {
    words: "Uma barra do comprimento das palavras, com as palavras por cima.",
    count: "Três batidas preparam o momento.",
    moment:
      "Soa uma buzina no próprio momento: três arcos para encher, mais grossos para despejar, dois para começar a mover o tanque.",
    beats: "Batidas para virar e endireitar.",
    rest: "Um anel onde se pousa o tanque; um traço onde um sinal suave diz que está tudo bem.",
    water:
      "Cinco linhas são o banho: abrem-se quando se enche, balançam com o tanque, ficam direitas no repouso e fecham-se quando se despeja.",
    fold: "Um repouso longo aparece dobrado, com a duração escrita no intervalo.",
    clock:
      "Preto e branco alternados: cinco segundos cada; um segundo cada onde só se ouvem palavras.",
  },
  example: { words: "Pronto", fold: "17 s" },
  bath: (bath: string) => bathWithin(bath),
  press: "pressionar",
  "pour-in": "encher",
  full: "cheio",
  rest: "repouso",
  "pour-out": "despejar",
  empty: "vazio",
  tap: (count: number) => `bater ${count}×`,
  still: (time: string) => time,
  moving: (count: number, time: string) => `×${count}, ${time}`,
};

/** A bout, short enough to stand under its notes. */
export const turnsInScore: { readonly [method in Method]: (count: number) => string } = {
  inversion: (count) => `inverter ${count}×`,
  twist: (count) => `girar ${count}×`,
  rotary: (count) => `rodar ${count}×`,
  tray: (count) => `passar ${count}×`,
  hanger: (count) => `levantar ${count}×`,
};

const times = (count: number) =>
  count === 1 ? "uma vez" : count === 2 ? "duas vezes" : `${count} vezes`;

/** A bout, as a sentence's part. */
export const turnsInWords: { readonly [method in Method]: (count: number) => string } = {
  inversion: (count) => `inverter ${times(count)}`,
  twist: (count) => `girar ${times(count)}`,
  rotary: (count) => `rodar o tambor ${times(count)}`,
  tray: (count) => `passar as chapas ${times(count)}`,
  hanger: (count) => `levantar e inclinar ${times(count)}`,
};

const blows = (count: number) =>
  count === 1 ? "uma pancada" : count === 2 ? "duas pancadas" : `${count} pancadas`;

export const deeds = {
  pourIn: (bath: string) => `encher com ${theBath(bath)}`,
  full: "tanque cheio",
  until: (turns: string, time: string) => `${turns}, até ${time}`,
  rest: "repouso",
  tap: (count: number) => `dar ${blows(count)}`,
  pourOut: (bath: string) => `despejar ${theBath(bath)}`,
  empty: "tanque vazio",
  joined: (deeds: readonly string[]) => deeds.join(", "),
};
