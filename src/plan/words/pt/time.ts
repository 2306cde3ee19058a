// The lines of the development time and the mix, in Portuguese.
import type { MixWords, TimeWords } from "../time-words.ts";

export const time: TimeWords = {
  leaflet: {
    label: "Folheto",
    row: ({ time, temperature }) => `${time} a ${temperature}`,
    forRating: ({ rating, rows }) => `dado para ${rating}: ${rows}`,
    count: ({ count }) => (count === 1 ? "1 linha" : `${count} linhas`),
  },
  temperature: {
    label: "Temperatura",
    asRow: ({ bath }) => `o banho está a ${bath}, como numa linha: vale o tempo dela`,
    between: ({ from, to, apart, change, bath, away, sum }) =>
      `de ${from} a ${to} vão ${apart}, ${change}; ${bath} fica a ${away} de ${from}: ${sum}`,
    slope: ({ bath, away, row, change, sum, given }) =>
      `${bath} fica a ${away} da linha de ${row}, ${change}, ${given ? "como indicado" : "como de costume"}: ${sum}`,
    otherRows: ({ bath, away, row, ratio, sum }) =>
      `${bath} fica a ${away} da linha de ${row}; nessa distância, as outras linhas do folheto mudam × ${ratio}: ${sum}`,
    change: ({ percent, less }) =>
      `${percent} % ${less ? "a menos" : "a mais"} por cada °C que sobe`,
  },
  rating: {
    label: "Índice de exposição",
    ownRows: ({ rating }) =>
      `exposto a ${rating}, e as linhas do folheto são para isso: nada a acrescentar`,
    stops: ({ box, rating, log, stops, sum, count, over }) =>
      `ISO da caixa ${box}, exposto a ${rating}: ${log} ${count === 1 ? "é" : "são"} ${stops} ${count === 1 ? "ponto" : "pontos"} ${over ? "de sobre-exposição" : "de subexposição"}; ${sum}`,
  },
  drift: {
    label: "Deriva",
    sum: ({ room, halfway, start, middle, end, sum }) =>
      `a meio caminho de ${room} a cada ${halfway} min. O tempo é ${start} no início, ${middle} a meio e ${end} no fim: ${sum}`,
  },
  reuse: {
    label: "Reutilização",
    sum: ({ perFilm, films, factor, sum, count }) =>
      `1 + ${perFilm} × ${films} ${count === 1 ? "filme" : "filmes"} antes = ${factor}; ${sum}`,
  },
  method: {
    label: "Método",
    names: {
      inversion: "inversões",
      twist: "vareta",
      rotary: "tambor",
      tray: "tina",
      hanger: "suportes",
    },
    sum: ({ method, sum }) => `${method}: ${sum}`,
  },
  measured: {
    from: ({ from }) => `Medido desde ${from}`,
    stretch: ({ to, before, after, start, middle, end, sum }) =>
      `até ${to} passa de ${before} para ${after}; a revelação inteira levaria ${start} no início, ${middle} a meio e ${end} no fim: ${sum}`,
    done: ({ percent }) => `${percent} % feito`,
    label: "Medido, pronto aos",
    before: "fica tudo feito antes da última leitura",
    steady: ({ part, at, sum }) => `falta ${part}, a ${at} como na última leitura: ${sum}`,
    drifting: ({ part, at, room, start, middle, end, sum }) =>
      `falta ${part}, a passar de ${at} para os ${room} da sala; a revelação inteira levaria ${start}, depois ${middle}, depois ${end}: ${sum}`,
  },
  development: {
    label: "Revelação",
    rounded: ({ seconds }) => `${seconds}, arredondado ao segundo; o meio segundo sobe`,
  },
  sought: {
    label: ({ time }) => `Para ${time}`,
    least: ({ time }) => `Para o mínimo, ${time}`,
    notFalling: "os tempos das linhas não descem à medida que aquece",
    noAnswer: "sem resposta",
    onLeaflet: ({ factor, time, base, sum }) =>
      `com o fator ${factor} deste filme, ${time} são ${base} no folheto: ${sum}`,
    beyond: ({ by }) => `${by} fora das linhas`,
    guess: ({ at }) => `${at}, um palpite`,
  },
};

export const mix: MixWords = {
  label: "Mistura",
  asStock: "solução-mãe tal como está",
  undiluted: "solução-mãe",
  sum: ({ sum, stock }) => `${sum} = ${stock} de solução-mãe; o resto é água`,
  result: ({ stock, water }) => `${stock} de solução-mãe + ${water} de água`,
  film: {
    label: "Filme",
    area: ({ films, area }) => `${films}, em filmes de 80 pol² ou ${area} cm²`,
    count: ({ films, count }) => `${films} ${count === 1 ? "filme" : "filmes"}`,
  },
  stock: {
    label: "Solução-mãe necessária",
    perFilm: ({ typed, same }) => `${typed} por filme são ${same}`,
    needed: ({ sum, total, dilution, holds }) =>
      `${sum}; vem em ${total} de ${dilution}, e esta mistura tem ${holds}`,
  },
};
