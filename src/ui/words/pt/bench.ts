// The words of what is measured and reckoned at the bench, in Portuguese: a leaflet pasted, water mixed
// and tempered, hands timed, tanks kept.

export const paste = {
  more: "Colar a tabela do folheto",
  label: "As linhas tal como vêm no folheto",
  why: "Uma linha de cada vez: uma temperatura e um tempo, em °C ou °F, com tabulações, vírgulas ou espaços. No fim, EI e o índice, se a linha for para um. Os cabeçalhos saltam-se.",
  fill: "Preencher com estas linhas",
  nothing: "Ainda não há aqui nenhuma linha.",
  fault: (line: number, text: string, may: string) =>
    `Linha ${line}: «${text}» não serve. Cabe aqui: ${may}.`,
  filled: (rows: number) =>
    rows === 1
      ? "Ficou preenchida 1 linha do folheto. «Anular» traz as outras de volta."
      : `Ficaram preenchidas ${rows} linhas do folheto. «Anular» traz as outras de volta.`,
};

export const mixing = {
  take: "Juntar",
  stock: (volume: string) => `${volume} de solução-mãe`,
  cold: (volume: string) => `${volume} de fria`,
  hot: (volume: string) => `${volume} de quente`,
};

export const tempering = {
  sink: "Ler junto à pia",
  sinkHint: "teclas grandes; ao pressionar, fica marcada a hora",
  title: "O revelador em banho-maria",
  noTarget: "Diga primeiro a que temperatura deve chegar.",
  hindered: (field: string) => `Primeiro é preciso corrigir ou preencher «${field}».`,
  afresh:
    "Começou-se de novo: as leituras que aqui estavam não tinham hora. «Anular» traz essas leituras de volta.",
};

export const hands = {
  measure: "Medir",
  of: (label: string) => `: ${label}`,
  kept: (label: string, seconds: string) => `${label}: ${seconds}, o valor do meio de três.`,
};

export const tanks = {
  choose: "Tanques guardados",
  none: "escolha um",
  keep: "Guardar este tanque",
  forget: "Esquecer",
  isKept: (label: string) => `«${label}» ficou guardado com os seus tempos.`,
  taken: (label: string) => `«${label}» está preenchido. «Anular» traz de volta o último tanque.`,
  forgotten: (label: string) => `«${label}» já não está guardado.`,
  bringBack: (label: string) => `Trazer «${label}» de volta`,
  needsName: "Dê primeiro um nome ao tanque; é com ele que fica guardado.",
  notKept:
    "Este navegador não guarda tanques de uma visita para a outra. Guarde antes a folha num ficheiro.",
};

export const latePart = {
  notFetched: "Não se conseguiu ir buscar esta parte.",
};
