// The words of Lights out, in Portuguese. What the voice says stands in audio-scripts/.
import type { Deed } from "../../../process/moments.ts";
import type { Method } from "../../../trade/method.ts";
import { inTheBath } from "./baths.ts";

/** What the hands are to do, large enough to read across a room; by method where hands differ. */
export const runDeeds: { readonly [deed in Deed]: string } = {
  "pour-in": "Encher",
  full: "Cheio",
  agitate: "Inverter",
  invert: "Inverter",
  rest: "Repouso",
  tap: "Bater",
  "pour-out": "Despejar",
  empty: "Vazio",
};

/** Moving the tank, by method. */
export const moves: { readonly [method in Method]: string } = {
  inversion: "Inverter",
  twist: "Girar",
  rotary: "Rodar",
  tray: "Passar",
  hanger: "Levantar",
};

export const beforeRun = {
  noWorksheet: "A sessão segue uma folha, e a sua ainda não está completa.",
  toWorkOut: "Ir para Calcular",
  ahead: "O que vai ser guiado",
  develop: (films: string, time: string, temperature: string, developer: string) =>
    `${films}, durante ${time} a ${temperature} em ${developer}.`,
  films: (films: readonly string[]) => films.join(", "),
  mix: (mix: string) => `Misture ${mix}.`,
  how: "Como se pressiona",
  once: "Pressione uma vez, em qualquer ponto do ecrã ou numa tecla qualquer, e passa ao passo seguinte.",
  twice:
    "Pressione duas vezes seguidas, e ouve onde vamos e o que vem a seguir. Enquanto corre um banho, basta uma.",
  thrice:
    "Três vezes seguidas: a voz cala-se e os sinais dos momentos continuam; mais três, e volta a falar.",
  held: "Premido durante um segundo: o resto de ouvido, uma escolha a seguir à outra; pressione quando ouvir a sua. Premido nos três segundos depois de pressionar, desfaz essa pressão; a tecla Backspace também.",
  reading:
    "Durante a revelação, as setas para cima e para baixo introduzem uma leitura do termómetro, dita passo a passo; pressionar fixa-a, e o fim desloca-se com ela.",
  clock: "Com o revelador dentro, nada espera: o relógio do tanque nunca para.",
  dark: "De «Apagar a luz» até a tampa estar travada, o ecrã fica preto, ponteiro incluído. Preto não é desligado: deixe o aparelho debaixo de um pano escuro e meta a mão por baixo para pressionar.",
  volume: "Ponha o som alto que chegue para se ouvirem os sinais com a água a correr.",
  stops: "Antes de começar",
  accept: "Li isto, e sigo mesmo assim.",
  begin: "Começar",
  beginHint: "pressione aqui, e a partir daí guia a voz",
  fetching: "A ir buscar a voz…",
  failed:
    "Não se conseguiu ir buscar a voz, e por isso nada começou. É preciso rede uma vez, a primeira.",
  elsewhere:
    "Já há uma sessão a decorrer noutro separador ou janela deste navegador. Continue lá, ou saia dela primeiro.",
  again: "Tentar de novo",
};

export const duringRun = {
  name: "A sessão",
  press: "Pressione em qualquer ponto para seguir",
  where: "Onde estamos?",
  say: { full: "Dizer menos", brief: "Só sinais", tones: "Dizer tudo" },
  leave: "Sair da sessão",
  leaveTimed: "O relógio do tanque continua sem si. Quer sair da sessão?",
  leaveWaiting: "Quer sair da sessão? O que já se fez fica guardado em Anotar.",
  stay: "Ficar",
  now: (deed: string) => `Agora: ${deed}`,
  next: "A seguir",
  in: (time: string) => `daqui a ${time}`,
  after: (deed: string, time: string) => `depois ${deed.toLowerCase()}, daqui a ${time}`,
  leftIn: (bath: string) => `ainda ${inTheBath(bath)}`,
  untilPour: "até encher",
  emptying: "até ficar vazio",
  waiting: "Pressione",
  waitingFor: (title: string) => `para começar: ${title}`,
  said: "O que se disse",
  tookOver:
    "A voz deste aparelho falhou duas vezes seguidas: a partir daqui fala a voz que vem com o Tankside.",
  over: "Feito",
  overHint: "O filme está pendurado. O que se fez está em Anotar.",
  toWriteUp: "Ir para Anotar",
};
