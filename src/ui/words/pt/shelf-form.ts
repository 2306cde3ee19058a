// The words of what is written down about a bottle, and of the labels printed from it, in Portuguese.

export const bottleForm = {
  name: "Nome no rótulo",
  kind: "Para que serve",
  state: "Como se usa",
  strength: "Diluída",
  mixedOn: "Preparada a",
  by: "Por quem, iniciais",
  from: "De quê",
  volume: "Quanto",
  keeps: "Quanto tempo se conserva, segundo a ficha do fabricante",
  full: "Cheia, desde a preparação",
  half: "Meio cheia ou menos",
  opened: "Depois de aberta",
  unit: "contado em",
  units: { days: "dias", weeks: "semanas", months: "meses" },
  spanMay: (most: string) => `um número inteiro de 1 a ${most}`,
  filmsPerLitre: "Filmes por litro",
  filmsHint: "Em filmes de 80 polegadas quadradas (516 cm²): um 135-36, um 120, quatro 4x5in.",
  addPerFilm: "Tempo a mais por filme anterior, %",
  hazards: "Advertências de perigo",
  hazardsHint:
    "Copie-as palavra por palavra da ficha do fabricante; aqui não se inventa nenhuma. Nunca use uma garrafa que teve comida ou bebida.",
  on: "Dia",
  size: "Formato",
  count: "Quantos",
  time: "Clareou em",
  film: "Filme do pedaço",
  freshFirst:
    "A primeira prova quer o banho fresco, antes de passar qualquer filme: as outras comparam-se com ela. Use sempre o mesmo filme.",
  wanted: "Isto é preciso.",
  add: "Pôr na prateleira",
  correct: "Guardar a correção",
  writeDown: "Anotar",
  cancel: "Desistir",
};

export const bottleLabels = {
  title: "Rótulos para imprimir",
  lead: "As advertências de perigo só estão no rótulo como foram copiadas da ficha do fabricante. Nunca use uma garrafa que teve comida ou bebida.",
  print: (count: number) => (count === 1 ? "Imprimir 1 rótulo" : `Imprimir ${count} rótulos`),
  mixed: "Preparada",
  by: "Por",
  due: "Validade",
  films: "Filmes",
  hazards: "Perigos, da ficha do fabricante:",
  each: (films: string) => `Um quadrado são ${films} filmes.`,
};

export const fixerWords = {
  title: "Contagem e prova",
  tally: "A contagem de filmes diz",
  test: "A prova de clareamento diz",
  tallySays: {
    good: (served: string, serves: string) => `bom: ${served} de ${serves}`,
    spent: (served: string, serves: string) => `esgotado: ${served} de ${serves}`,
    silent: "nada: não está anotado quantos serve",
  },
  testSays: {
    good: (times: string) => `bom: ${times} vezes o valor fresco`,
    spent: (times: string) => `esgotado: ${times} vezes o valor fresco`,
    silent: "nada: o banho fresco não foi provado com este filme",
  },
  rule: "Regra: um fixador está esgotado quando um pedaço leva o dobro do tempo a clarear que no banho fresco (NAVEDTRA 14209).",
  disagree: "As duas não concordam.",
  trust: {
    test: "Confie na prova: foi feita neste banho, e nem todos os filmes deixam lá o mesmo. Não o use mais.",
    tally:
      "Confie na contagem: um banho pode ainda clarear depressa e já ter prata a mais para a lavagem a tirar. Não o use mais.",
  },
  since: (films: string) => `Desde essa prova: ${films} filmes.`,
  on: "Dia",
  film: "Filme",
  cleared: "Clareou em",
  filmsBy: "Filmes até então",
  picture: "Tempo de clareamento ao longo da vida do banho",
  across: "filmes passados pelo banho",
  up: "tempo de clareamento",
  twice: "esgotado: o dobro do fresco",
  capacity: "capacidade",
  says: (tests: number, last: string) =>
    tests === 1 ? `Uma prova: ${last}.` : `${tests} provas, a última ${last}.`,
};
