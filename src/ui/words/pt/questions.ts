// What Work out asks: its questions, what they disclose, the rows that can be added, what can be chosen,
// and the cautions, in Portuguese.
import { theStep } from "./baths.ts";

export const rows = {
  films: { all: "Filmes", one: (n: number) => `Filme ${n}`, add: "Juntar outro filme" },
  "developer.leaflet": {
    all: "Linhas do folheto",
    one: (n: number) => `Linha ${n}`,
    add: "Juntar uma linha do folheto",
  },
  "developer.readings": {
    all: "Leituras no tanque",
    one: (n: number) => `Leitura ${n}`,
    add: "Juntar uma leitura do tanque",
  },
  "tempering.readings": {
    all: "Leituras no banho-maria",
    one: (n: number) => `Leitura ${n}`,
    add: "Juntar uma leitura",
  },
  "contrast.tests": {
    all: "Filmes de ensaio",
    one: (n: number) => `Ensaio ${n}`,
    add: "Juntar um filme de ensaio",
  },
  remove: "Retirar",
};

export const questions = {
  films: "Que filmes?",
  developer: "O que diz o folheto?",
  tank: "Que tanque, e quanto leva?",
  hands: "Como o movem as suas mãos?",
  clock: "Como conta o tempo?",
  baths: "Que outros banhos?",
  voice: "Como deve falar a voz?",
  safety: "Antes de abrir um frasco",
  warmth: "Como chega à temperatura?",
  contrast: "O que mostraram os ensaios?",
};

export const more = {
  leaflet: "Puxar, reduzir, solução já usada, uma só linha",
  tank: "Tina, tambor ou temperatura que foge",
  bath: (bath: string) => `Mais sobre ${theStep(bath)}`,
  ownAgitation: "Agitação própria; o que ficar vazio segue o revelador",
  inTank: "Leituras no tanque durante a revelação",
  capacity: "Para quanto dá; reforçador",
  mixing: "Misturar à temperatura certa com duas torneiras",
  tempering: "Pôr em banho-maria e ler o termómetro",
  contrast: "Gradientes, ou as densidades de uma cunha",
  measured: "Os seus tempos, medidos",
};

export const choices = {
  "tank.method": {
    inversion: "Inversões à mão",
    twist: "Vareta a girar",
    rotary: "Tambor, sempre a rodar",
    tray: "Tina",
    hanger: "Suportes",
  },
  "clock.starts": { "pour-in": "com a primeira gota a entrar", full: "com o tanque cheio" },
  "clock.ends": { "pour-out": "ao começar a despejar", empty: "com o tanque vazio" },
  loading: { "": "por carregar, passo a passo", done: "já está no tanque fechado" },
  "baths.*.afterwards": {
    "": "para onde costuma ir",
    drain: "para o esgoto",
    waste: "para os resíduos",
    return: "de volta ao seu recipiente",
  },
  "voice.detail": {
    "": "Como de costume",
    full: "Frases inteiras",
    brief: "Poucas palavras",
    tones: "Só sinais",
  },
  "baths.*.clearing.times": {
    "": "o dobro, como de costume",
    "2": "o dobro",
    "3": "o triplo",
  },
};

/** Sources: the general cautions of the trade; the particular ones beside their figures in the tests. */
export const cautions: readonly string[] = [
  "Primeiro estão a ficha de segurança do fabricante e as regras da casa.",
  "Luvas e óculos de proteção, do primeiro frasco ao último enxaguamento.",
  "O ácido deita-se na água; nunca a água no ácido.",
  "Nunca deixe o fixador ou o sulfito entrar em contacto com um ácido: liberta-se dióxido de enxofre.",
  "Ar a circular. Nada de comer nem de beber na sala.",
  "O vidro parte-se e o chão molhado escorrega: limpe logo o que se entornar.",
  "Na zona molhada, só aparelhos a pilhas ou bateria.",
];
