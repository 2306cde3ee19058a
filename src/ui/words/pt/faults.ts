// What is said of a field: what it may hold, how it was read, what is at fault or wanting, in Portuguese.
// "Cabe aqui:" goes before what may stand there, because that may also be "nada".

export const faults = {
  holds: (typed: string, may: string) => `«${typed}» não serve. Cabe aqui: ${may}.`,
  list: (may: string) => `O que está aqui não chega. Cabe aqui: ${may}.`,
  needed: (may: string) => `Falta preencher: ${may}.`,
  readAs: (meaning: string) => `Lido como ${meaning}.`,
  lent: (meaning: string) =>
    `Lido como ${meaning}, com a última unidade que usou. Para outra, escreva-a ao lado.`,
  inFile: (path: string, holds: string, may: string) => `Em ${path} está ${holds}; cabe aí: ${may}`,
  nothing: "nada",
  number: "um número como «2» ou «2,5»",
  seconds: "segundos, como «10» ou «10 s», ou «1:30»",
  numbers: "números separados por espaços, como «0,12 0,2 0,35»",
  minutes: "minutos, como «30» ou «30 min»",
  perCent: "uma percentagem, como «10»",
  counts: "um número de inversões para cada muda de água, como «5, 10, 20»",
  why: "porquê?",
  spoken: (faults: number, wanting: number) =>
    `Ainda sem resposta. ${faults} por corrigir, ${wanting} por preencher.`,
  summary: (faults: number) =>
    faults === 1 ? "1 campo por corrigir:" : `${faults} campos por corrigir:`,
  wanted: (count: number) =>
    count === 1 ? "1 campo por preencher:" : `${count} campos por preencher:`,
};

export const names = {
  within: (part: string, field: string) => `${part}: ${field}`,
  quoted: (name: string) => `«${name}»`,
};
