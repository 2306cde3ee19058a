// The words of how a run reaches a person (heard, read out, felt, read), and of the statement on accessibility.

export const senses = {
  title: "Quem fala?",
  why: "Duas vozes falariam uma por cima da outra, por isso há só uma. Pode mudar aqui antes de cada sessão.",
  hear: "Ouvir a pergunta",
  hearHint: "ou responda já: teclas 1, 2 e 3",
  notHeard: "Não foi possível carregar a voz. Da primeira vez é precisa rede.",
  names: { program: "Fala o programa", reader: "Fala o meu leitor de ecrã", tones: "Só os sinais" },
  hints: {
    program:
      "O que há a dizer vem só desta página; durante a sessão não dá nada a dizer ao leitor de ecrã.",
    reader:
      "Durante a sessão as palavras chegam a seu tempo, como texto, ao leitor de ecrã; os sinais ficam.",
    tones: "A sessão dá os seus sinais e nada diz até que lho peça.",
  },
  change: "Mudar",
  also: "Para sentir e ler",
  vibrates: "Vibrar a cada sinal",
  vibratesHint:
    "Também às escuras. Traga o aparelho junto ao corpo e experimente aqui: desta página não se sabe se ele tem motor.",
  noMotor: "Este navegador não consegue fazer vibrar um aparelho.",
  feel: "Sentir os sinais",
  captions: "Escrever o que é dito",
  captionsHint:
    "Em grande no ecrã da sessão enquanto houver luz. O que será dito às escuras aparece antes de a luz se apagar.",
  darkAhead: "Às escuras será dito:",
  /** The two halves of a turn, as large as the beat is short. */
  turns: { over: "Ida", back: "Volta" },
};

export const statement = {
  built: (standard: string, point: string) =>
    `O Tankside é feito segundo as ${standard}: o nível AA por inteiro, e o nível AAA menos numa coisa, o tempo (${point}).`,
  time: "O relógio de um tanque não se pode parar nem alongar. Em vez disso:",
  instead: [
    "Cada momento é anunciado, contado e depois soado, e também se pode sentir e ler.",
    "Entre os passos com relógio a sessão espera que pressione, o tempo que quiser.",
    "O que pressionou pode ser desfeito durante três segundos, e um atraso pode ser dito: o resto é calculado de novo.",
    "Quanto tempo demora a verter e a que ritmo a voz fala, pode escolher.",
  ],
  ways: "Uma sessão pode fazer-se de ouvido, com leitor de ecrã, com sinais, com vibração ou, enquanto houver luz, a ler; com uma tecla, um dedo ou um pedal. Tudo o que se mantém pressionado ou se pressiona duas ou três vezes tem também um botão próprio.",
  measured:
    "Os testes medem a cada alteração: texto sobre fundo a 7 para 1 ou melhor, nos dois papéis; botões da sessão com 88 píxeis ou mais; páginas com 320 píxeis de largura sem deslocar para o lado; texto espaçado; cores forçadas; e que o axe-core nada encontra em lugar nenhum.",
  limits:
    "Limites conhecidos: um leitor de ecrã tem o seu ritmo e pode estar ainda a falar quando vem um sinal; no bolso, com o aparelho bloqueado, nada tem para ler e só se ouvem sinais.",
  trials:
    "Não houve ensaios com pessoas cegas, surdas ou que trabalham com uma mão. O que aqui está segue as normas, e oferece-se para ensaio.",
};
