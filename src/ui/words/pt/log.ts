// The words of what Write up does with many runs, and of what a person adds to one, in Portuguese.

export const find = {
  search: "Procurar",
  film: "Filme",
  developer: "Revelador",
  year: "Ano",
  stars: "Estrelas",
  /** No choice made. */
  all: "tudo",
  /** A choice, and how many runs it would leave. */
  choice: (name: string, count: number) => `${name} (${count})`,
  count: (shown: number, all: number) =>
    shown === all ? (all === 1 ? "1 sessão" : `${all} sessões`) : `${shown} de ${all} sessões`,
  none: "Nenhuma sessão é assim.",
  clear: "Mostrar todas as sessões",
  more: (count: number) => `Mostrar mais ${count}`,
};

export const stars = {
  asks: "Como ficaram os negativos?",
  unsaid: "por dizer",
  words: {
    1: "não dão para ampliar",
    2: "fracos",
    3: "aproveitáveis",
    4: "bons",
    5: "como se queria",
  },
  each: (stars: number, word: string) => `${stars}: ${word}`,
};

export const pictures = {
  name: (count: number) =>
    count === 0 ? "Fotografias dos negativos" : `Fotografias dos negativos: ${count}`,
  hint: "São reduzidas, ficam neste navegador e perdem o lugar e a hora que uma câmara lá escreve.",
  add: "Juntar fotografias, da câmara ou de ficheiros",
  alt: "O que nela se vê",
  unnamed: "Uma fotografia que ninguém descreveu",
  remove: "Retirar esta fotografia",
  removed: "A fotografia foi retirada.",
  notRemoved: "Este navegador não retirou a fotografia. Continua aqui.",
  notPicture: (name: string) => `«${name}» não é uma imagem que este navegador saiba ler.`,
  noRoom: "Já não há lugar para a fotografia. Nada mais mudou.",
  notKept: "Este navegador não guardou a fotografia.",
};

export const dictate = {
  start: "Ditar",
  stop: "Parar de ditar",
  listening: "À escuta. O que se percebe vai para trás do que está escrito.",
  away: "Este navegador pode enviar o que ouve para outras máquinas, onde se transforma em palavras. O microfone fica desligado se não concordar.",
  agree: "Concordar e ditar",
  decline: "Antes não",
  failed: "O navegador não escutou, ou não percebeu nada. O que está escrito fica.",
};

export const again = {
  asks: "Temperatura do revelador hoje",
  hint: (was: string) =>
    `Era de ${was}. O folheto, o método e os tempos ficam; o que se mediu nesse dia fica de fora.`,
  make: "Calcular",
  leave: "Agora não",
};

export const beside = {
  choose: "Comparar",
  chosen: "Escolhida para comparar",
  hint: "Escolha mais uma sessão para comparar.",
  name: "Lado a lado",
  what: "O quê",
  differed: "O que foi diferente",
  same: "O que foi igual",
  leave: "Fechar",
  begun: "Começada",
  title: "Nome",
  temperature: "Temperatura",
  planned: "Revelação prevista",
  done: "Revelação real",
  method: "Método",
  tank: "Tanque",
  agitated: "Agitação",
  pressed: "Pressionado, contando desde a primeira vez",
  agitation: (first: string, every: string, lasts: string) =>
    `primeiro ${first}, depois a cada ${every} durante ${lasts}`,
};

export const overTime = {
  name: "Ao longo dos meses",
  hint: "Um ponto é o meio das sessões de um mês; um traço vai do menor valor ao maior.",
  temperature: "Temperatura do revelador",
  late: (bath: string) => `${bath}: esvaziado com atraso de`,
  table: "O mesmo em tabelas",
  month: "Mês",
  runs: "Sessões",
  /** Heads the column of what the table is about. */
  figure: "Meio, e do menor ao maior",
  span: (middle: string, least: string, most: string) => `${middle} (de ${least} a ${most})`,
};

export const everything = {
  table: "Guardar uma tabela das sessões",
  tableFile: "tankside-sessoes.csv",
  choose: "Trazer um ficheiro",
  hint: "O ficheiro leva sessões, fotografias, tanques, frascos, as listas da sala, a folha e as escolhas deste aparelho. A sua própria voz tem um ficheiro à parte.",
  notSaved:
    "Nem tudo o que está guardado aqui coube num ficheiro, por isso nenhum foi guardado. Nada mudou.",
  unreadable: (name: string) => `Este navegador não conseguiu ler «${name}». Nada mudou.`,
  foreign: (name: string) => `«${name}» não é um ficheiro de sessões guardado aqui. Nada mudou.`,
  newer: (name: string) =>
    `«${name}» foi guardado por uma versão mais nova, que sabe mais. Nada mudou.`,
  damaged: (name: string, path: string) =>
    `«${name}» está danificado em ${path}, por isso nada dele se usa. Nada mudou.`,
  nothingNew: (name: string) => `Tudo o que há em «${name}» já está aqui.`,
  offer: (name: string) => `Trazer «${name}»?`,
  rule: "De dois que são a mesma sessão, fotografia ou tanque fica o mais novo; de um frasco, tudo o que está escrito aqui ou ali. A folha, as listas da sala e as escolhas daqui ficam.",
  kind: "O quê",
  adds: "novo",
  replaces: "trocado pelo mais novo",
  skips: "fica como está aqui",
  kinds: {
    runs: "Sessões",
    pictures: "Fotografias",
    tanks: "Tanques",
    worksheets: "Folha",
    bottles: "Frascos",
    rooms: "Listas da sala",
    settings: "Escolhas",
  },
  take: "Trazê-lo",
  leave: "Deixá-lo",
  taken: "Já cá está. As escolhas do aparelho valem a partir da próxima visita.",
  takenBack: (stayed: number) =>
    stayed === 0
      ? "Anulado: está tudo como antes do ficheiro."
      : stayed === 1
        ? "Anulado, exceto uma coisa que entretanto mudou."
        : `Anulado, exceto ${stayed} coisas que entretanto mudaram.`,
  notTakenBack: "Este navegador não o anulou. Nada mudou.",
  noRoom: "Não há lugar para isso neste navegador. Nada mudou.",
  refused: "Este navegador não o aceitou. Nada mudou.",
};
