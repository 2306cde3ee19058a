// The words of Write up, in Portuguese.

export const write = {
  lead: "De cada sessão fica aqui um registo, sem ser preciso pedir.",
  onItsWay: "À procura das suas sessões…",
  empty:
    "Ainda nenhuma sessão. Assim que começar uma, fica aqui por si: a folha, a hora a que pressionou em cada passo, e lugar para o que daí saiu.",
  toLightsOut: "Ir para Apagar a luz",
  refused:
    "Este navegador não guarda nada de uma visita para a outra: as sessões antigas não se podem mostrar, e as de baixo perdem-se ao fechar a página. Guarde-as num ficheiro.",
  onlyHere: (count: number) =>
    count === 1
      ? "Este navegador não guardou uma destas sessões, ou o que dela se disse: perde-se ao fechar a página. Guarde tudo num ficheiro."
      : `Este navegador não guardou ${count} destas sessões, ou o que delas se disse: perde-se ao fechar a página. Guarde tudo num ficheiro.`,
  unread: (count: number) =>
    count === 1
      ? "Há mais uma sessão, guardada por outra versão, que não se pode mostrar. Fica como está."
      : `Há mais ${count} sessões, guardadas por outra versão, que não se podem mostrar. Ficam como estão.`,
  saveAll: "Guardar tudo num ficheiro",
  saved: (name: string) => `Guardado como ${name}.`,
  file: "tankside-sessoes.json",
  untitled: "Sessão sem nome",
  films: "Filmes",
  film: (label: string, size: string, count: number) =>
    count === 1 ? `${label}, ${size}` : `${count} × ${label}, ${size}`,
  rating: (at: number, box: number | undefined) =>
    box === undefined || box === at ? `exposto a ${at}` : `exposto a ${at}, ISO da caixa ${box}`,
  rated: (film: string, rating: string) => `${film}, ${rating}`,
  developer: "Revelador",
  stock: "solução-mãe",
  developed: "Revelado durante",
  bath: (time: string, temperature: string) => `${time} a ${temperature}`,
  ended: "Fim",
  endings: {
    done: "levada até ao fim",
    left: (after: string) => `deixada depois de: ${after}`,
    leftAtOnce: "deixada antes de pressionar a primeira vez",
    open: "ainda não, ou interrompida",
  },
  presses: (count: number) => (count === 1 ? "pressionou 1 vez" : `pressionou ${count} vezes`),
  step: "Passo",
  at: "Pressionou às",
  after: "Depois do anterior",
  note: "O que daí saiu",
  noteHint: "Fraco, bom, denso? Uniforme? O que mudaria?",
  noteKept: "Guardado.",
  noteNotKept: "Este navegador não o guardou. Guarde tudo num ficheiro antes de sair.",
  again: "Fazer de novo",
  takeOut: "Retirar",
  takenOut: (title: string) => `Retirou-se «${title}».`,
  notTakenOut: (title: string) => `Este navegador não retirou «${title}». Continua aqui.`,
  notPutBack: (title: string) =>
    `Este navegador não conseguiu repor «${title}» com as suas imagens. Pode tentar de novo enquanto a página estiver aberta.`,
  undo: "Anular",
  of: (title: string, begun: string) => ` (${title}, ${begun})`,
};

/** Steps that are no bath, by id. */
export const steps = {
  "lay-out": "Preparar o material",
  dry: "Espirais secas",
  "wet-side": "A zona húmida",
  temper: "Temperatura",
  quiet: "Modo de voo",
  lamps: "Tapar as lâmpadas",
  volume: "Volume do som",
  screen: "Ecrã",
  "lights-out": "Apagar a luz",
  wait: "Procurar luz",
  open: "Tirar o filme",
  cut: "Cortar a ponta",
  feed: "Meter a ponta",
  wind: "Carregar a espiral",
  spool: "Fora do carreto",
  tape: "A fita",
  others: "As outras espirais",
  count: "Contar as chapas",
  holders: "Colocar as chapas",
  core: "Eixo e espirais",
  close: "Fechar o tanque",
  everyone: "Todos prontos",
  light: "Acender a luz",
  "stay-dark": "Ainda às escuras",
  hang: "Pendurar a secar",
};
