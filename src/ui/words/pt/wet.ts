// What is shown in Portuguese to someone with wet hands: pressing along, and reading the thermometer at
// the sink.

type Measured = "pour-in" | "pour-out" | "inversion";

const begin: { readonly [what in Measured]: string } = {
  "pour-in": "Pressione ao entrar a primeira gota",
  "pour-out": "Pressione ao começar a inclinar",
  inversion: "Pressione e inverta o tanque quatro vezes",
};
const end: { readonly [what in Measured]: string } = {
  "pour-in": "Pressione quando o tanque estiver cheio",
  "pour-out": "Pressione quando estiver vazio",
  inversion: "Pressione quando ficar direito pela quarta vez",
};

const ordinals = ["Primeira", "Segunda", "Terceira"];

export const pressAlong = {
  name: {
    "pour-in": "Quanto demora a encher",
    "pour-out": "Quanto demora a despejar",
    inversion: "Quanto demora uma inversão",
  },
  advice: {
    "pour-in": "Com água e com a luz acesa.",
    "pour-out": "Com água e com a luz acesa, a partir do tanque cheio.",
    inversion: "Com água no tanque, a tampa posta e a luz acesa.",
  },
  begin,
  end,
  turn: (turn: number, of: number) => `${ordinals[turn - 1]} de ${of}`,
  seconds: (time: string) => `${time} s`,
  status: {
    begin: (last: string, what: Measured) => `${last}. ${begin[what]}.`,
    end: (what: Measured) => `${end[what]}.`,
    done: (last: string) => `${last}. Foi a terceira.`,
  },
  times: "Tempos até agora",
  measured: { "pour-in": "Encher", "pour-out": "Despejar", inversion: "Uma inversão" },
  none: "–",
  median: (time: string) => `Mediana: ${time}`,
  alike: "Os três são iguais.",
  even: (apart: string) =>
    `Entre o mais curto e o mais longo vão ${apart}. A mão está bastante certa.`,
  uneven: (apart: string) =>
    `Entre o mais curto e o mais longo vão ${apart}. É muito: mais três vezes diriam melhor.`,
  keep: (time: string) => `Ficar com ${time}`,
  again: "Outra vez",
  takeBack: "Voltar atrás",
  leave: "Sair",
};

export const sink = {
  shown: "O termómetro marca",
  less: "Meio grau a menos",
  more: "Meio grau a mais",
  read: (temperature: string) => `Li ${temperature} agora`,
  readings: "Leituras até agora",
  noReadings: "Ainda nenhuma leitura.",
  reading: (clock: string, temperature: string) => `${clock} ${temperature}`,
  takeBack: "Retirar a última",
  done: "Pronto",
};
