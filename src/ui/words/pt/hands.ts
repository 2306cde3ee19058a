// The words for what the hands use beside the one press, in Portuguese: a thermometer, a pedal, a knock.

export const reading = {
  name: "Termómetro",
  typed: "Temperatura no tanque",
  taken: (temperature: string) => `Registado: ${temperature}.`,
  range: (least: string, most: string) =>
    `Um revelador no tanque está entre ${least} e ${most}. Nada mudou.`,
  connect: "Ligar um termómetro",
  hint: "Se tiver Bluetooth, acerta o fim sozinho. Nunca é preciso.",
  connecting: "À procura de um termómetro…",
  disconnect: "Desligar do termómetro",
  nameless: "Termómetro",
  on: (name: string, temperature: string) => `${name}: ${temperature}.`,
  nothingYet: (name: string) => `${name}: ligado, ainda sem leituras.`,
  out: (name: string, temperature: string) =>
    `${name}: ${temperature}. Parece estar fora do tanque, e por isso não conta.`,
  lost: (name: string) => `${name}: ligação perdida, à procura dele.`,
  last: (temperature: string) => `Última leitura: ${temperature}.`,
  refused: {
    none: "Não se escolheu nenhum termómetro. Ligue-o, aproxime-o e volte a pressionar.",
    denied: "Aqui não é permitido usar o Bluetooth. Permita-o nas definições e volte a pressionar.",
    unreachable:
      "O termómetro não respondeu. Aproxime-o ou desligue-o de outro aparelho e volte a pressionar.",
    unfit: "Esse não dá uma temperatura que aqui se possa ler.",
    unable: "Este navegador não consegue usar o Bluetooth nesta página.",
  },
};

export const pedal = {
  name: "Vira-páginas, pedal ou outro botão",
  hint: "Tudo o que envie teclas a este aparelho pode servir para pressionar numa sessão. Aprende-se pressionando-o.",
  learn: "Aprender um",
  capture:
    "Pressione-o agora: uma vez breve, e depois outra durante um segundo. A tecla Escape cancela.",
  again: "Chegou. Agora outra vez, durante um segundo.",
  calledOff: "Nada se aprendeu.",
  nothing: "Não chegou nenhuma tecla. Está ligado, e emparelhado com este aparelho?",
  learnt: "Aprendido.",
  notKept: "Este navegador não o guarda: vale até a página ser fechada.",
  known: "Aprendidos até agora",
  holds: (key: string) => `${key}: pode pressionar-se e manter-se`,
  taps: (key: string) => `${key}: pode pressionar-se, mas não manter-se`,
  keyboard: "Numa sessão estas teclas contam venham de onde vierem, também de um teclado.",
  refused: {
    moves: "Tab e Escape ficam como são: quem se move com teclas precisa delas.",
    modifier: "Esta tecla sozinha não quer dizer nada, e por isso não pode servir.",
    nameless: "Esta tecla não tem nome pelo qual se reconheça.",
  },
  try: "Experimentar",
  trying: "Pressione como numa sessão. A tecla Escape termina.",
  meanings: {
    once: "Uma vez: segue, ou diz onde estamos.",
    twice: "Duas vezes: diz onde estamos.",
    thrice: "Três vezes: cala a voz, ou põe-na a falar de novo.",
    held: "Mantido: anula, ou propõe o que mais se pode fazer.",
  },
  tried: "A experiência acabou.",
  forget: (key: string) => `Esquecer ${key}`,
  forgotten: "Esquecido.",
  keys: { space: "Espaço", enter: "Enter", pageUp: "Page Up", pageDown: "Page Down" },
};

export const knocks = {
  hear: "Ouvir pancadas na mesa (microfone)",
  hint: "O que ouve não é guardado nem sai deste aparelho. Nunca é preciso: pressionar faz o mesmo.",
};
