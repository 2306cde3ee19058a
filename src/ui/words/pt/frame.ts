// The words of the frame around every place, of the greeting, and of what is done to the worksheet as a
// whole, in Portuguese.

export const frame = {
  program: "Tankside",
  skip: "Saltar para a página",
  places: "Lugares",
  title: (place: string) => `${place} · Tankside`,
  opening: "A abrir…",
  notOpened: "Não se conseguiu abrir este lugar. A folha está a salvo.",
  again: "Tentar de novo",
  colophon:
    "Funciona sem rede, não envia nada para lado nenhum e guarda neste navegador o que escreve.",
  accessibility: "Acessibilidade",
};

export const language = {
  choose: "Língua",
  notFetched: (language: string) =>
    `Não se conseguiu ir buscar a língua ${language}. A página ficou como estava.`,
  notKept: "Este navegador não guarda a escolha de uma visita para a outra.",
  voiceToo: (language: string) =>
    `A voz desta folha também passou para ${language}. «Anular» deixa-a como estava.`,
};

export const places = {
  "work-out": { name: "Calcular", hint: "o tempo e a mistura" },
  "walk-through": { name: "Percorrer", hint: "cada passo, com luz" },
  "lights-out": { name: "Apagar a luz", hint: "a sessão, de ouvido" },
  "write-up": { name: "Anotar", hint: "o que daí saiu" },
};

export const greeting = {
  says: "O filme às escuras, as duas mãos molhadas. Preencha a página abaixo, e uma voz diz-lhe o que fazer e quando.",
  hear: "Ouvir encher",
  hearHint: "dez segundos, da contagem à primeira inversão",
  hearing: "Escute…",
  notHeard: "Não se conseguiu pôr o som a tocar.",
  begin: "Começar a sessão",
  beginHint: "leva a Apagar a luz",
};

export const sheet = {
  tools: "Esta folha",
  save: "Guardar num ficheiro",
  open: "Abrir um ficheiro",
  demo: "Partir de Gullrock Light",
  demoPushed: "Partir de Foghorn 400",
  empty: "Começar do zero",
  undo: "Anular",
  redo: "Refazer",
  dropHere: "Largue para abrir esta folha",
};

export const notices = {
  practice:
    "Está preenchida uma folha de treino de Gullrock Light. Mude o que quiser, ou comece do zero.",
  demo: "Ficou preenchida a folha de Gullrock Light. «Anular» traz a sua de volta.",
  empty: "A página está vazia. «Anular» traz de volta a última folha.",
  opened: (name: string) => `${name} está aberto. «Anular» traz de volta a última folha.`,
  saved: (name: string) => `Guardado como ${name}.`,
  notSaved:
    "Ainda não foi guardada: no ficheiro, a folha tem de estar completa. Primeiro, estes campos:",
  notWorksheet: (name: string) =>
    `${name} não se pode usar. Aqui não mudou nada. O que lá se encontrou:`,
  notFile: "Não se conseguiu ler isso como ficheiro. Aqui não mudou nada.",
  notKept:
    "Este navegador não guarda a folha de uma visita para a outra. Guarde-a num ficheiro antes de sair.",
  removed: (row: string) => `Retirado: ${row}. «Anular» repõe.`,
  undone: "Anulado.",
  redone: "Refeito.",
};

/** What stands in the worksheets from Gullrock Light. */
export const demo = {
  gullrock: { title: "Gullrock Light, quinta-feira à noite", tank: "aço, duas espirais" },
  foghorn: { title: "Foghorn 400, um ponto a menos", tank: "aço, uma espiral" },
};
