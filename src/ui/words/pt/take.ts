// The words of taking a session along, of a worksheet that comes with a link, and of a class that starts together.

export const take = {
  title: "Para levar",
  lead: "Toda a sessão em ficheiros: para ouvir em qualquer leitor, para ler, para passar a outros. São feitos neste dispositivo e nada é enviado. Fala a voz incluída, ou a sua onde a tiver gravado.",
  notDevice:
    "A voz deste dispositivo, escolhida aqui, não se pode pôr num ficheiro: aí fala a incluída em seu lugar.",
  track: "A faixa",
  waits: "Onde se teria de pressionar",
  /** Each with what a plain player makes of it. */
  kinds: {
    pass: "Continua sozinha depois de uma espera",
    stay: "Espera, em leitores que sabem repetir um capítulo",
  },
  kindsHow: {
    pass: "Um ficheiro não se pode pressionar. Avisa meio minuto e dez segundos antes de continuar; quem precisar de mais tempo põe o leitor em pausa.",
    stay: "Cada espera é um capítulo próprio e, num ficheiro WAV, um ciclo. A maioria dos leitores não repete nada por si: continua depois da espera e não o diz. Ponha o leitor em pausa em cada espera, ou faça-o repetir esse capítulo.",
  },
  gap: "Segundos de espera",
  gapMay: (most: string) => `Pode conter segundos inteiros de 0 a ${most}.`,
  sizes:
    "Um ficheiro MP3 ocupa meio megabyte por minuto, um WAV três. Ambos contêm um capítulo por passo, e as palavras.",
  makes: {
    mp3: "Fazer um ficheiro MP3",
    wav: "Fazer um ficheiro WAV",
    vtt: "Legendas, WebVTT",
    srt: "Legendas, SubRip",
    ssml: "O texto falado, SSML",
    txt: "Tudo em texto, 40 colunas",
    ics: "Entrada para um calendário",
  },
  making: (share: string) => `A fazer: ${share}`,
  cancel: "Cancelar",
  cancelled: "Cancelado. Nada foi guardado.",
  saved: (name: string) => `Guardado como ${name}.`,
  failed: "Não se pôde fazer aqui.",
  tooLong: "É mais longo do que um ficheiro assim pode ser: cerca de um dia.",
  texts: "Para ler, e para outros programas",
  plannedFor: "Um dia e uma hora para isso",
  planned: "Dia e hora",
  wantsTime: "Escolha primeiro o dia e a hora.",
  isPast: "Essa hora já passou. Escolha uma que esteja para vir.",
  link: "Como ligação",
  linkLead:
    "A ligação leva a folha inteira, com o título e os nomes dos seus filmes: quem tiver a ligação pode lê-los. Não passa por nenhum servidor e abre-se sem rede num dispositivo que já tenha aberto o Tankside.",
  together: "Uma turma começa junta, no dia e à hora acima",
  togetherHow:
    "Cada telefone abre a ligação, usa a folha e pressiona «Tudo pronto» em «Apagar a luz»; nesse minuto o seu primeiro passo começa sozinho. Os relógios dos telefones diferem, em geral até um ou dois segundos.",
  copy: "Copiar a ligação",
  copied: "Copiada.",
  notCopied: "Não se pôde copiar. Aqui está inteira:",
  share: "Passar a ligação",
  code: "A ligação como código para uma câmara",
  codeTooLong:
    "Esta folha é longa demais para um código que uma câmara possa ler. A ligação leva-a na mesma.",
  linkTooLong:
    "Esta folha é longa demais para uma ligação. Guarde-a antes num ficheiro, em «Calcular».",
};

export const brought = {
  title: "Com a ligação veio uma folha",
  named: (title: string) => `Chama-se ${title}.`,
  starts: (time: string) => `A sua turma começa às ${time}.`,
  keeps: "A sua fica como está até usar esta; depois disso, Anular trá-la de volta.",
  use: "Usar esta folha",
  leave: "Deixá-la",
  broken: "A ligação está cortada, foi alterada no caminho ou é de outra versão. Aqui nada mudou.",
  /** What a notice calls it. */
  name: "A folha da ligação",
};

export const classStart = {
  title: "Uma turma começa junta",
  at: (time: string) => `Começa às ${time}.`,
  left: (clock: string) => `faltam ${clock}`,
  ready: "Tudo pronto",
  notReady: "Afinal não",
  putAside: "Não esperar pela turma",
  waits: "O primeiro passo começa sozinho. Deixe esta página aberta e à vista.",
  clocks: "Os relógios dos telefones diferem, em geral até um ou dois segundos: vale o de cada um.",
  passed: "Essa hora já passou. Comece como de costume.",
  stopFirst: "Veja primeiro o aviso acima e aceite-o.",
};
