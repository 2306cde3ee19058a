// The lines of the development time and the mix, in Italian.
import type { MixWords, TimeWords } from "../time-words.ts";

export const time: TimeWords = {
  leaflet: {
    label: "Foglietto",
    row: ({ time, temperature }) => `${time} a ${temperature}`,
    forRating: ({ rating, rows }) => `per pellicola esposta a ${rating}: ${rows}`,
    count: ({ count }) => (count === 1 ? "1 riga" : `${count} righe`),
  },
  temperature: {
    label: "Temperatura",
    asRow: ({ bath }) => `il bagno è a ${bath}, come una riga: il suo tempo così com’è`,
    between: ({ from, to, apart, change, bath, away, sum }) =>
      `fra ${from} e ${to} la differenza è di ${apart}, ${change}; fra ${from} e ${bath} è di ${away}: ${sum}`,
    slope: ({ bath, away, row, change, sum, given }) =>
      `${bath} dista ${away} dalla riga (${row}), ${change} ${given ? "come indicato" : "come di solito"}: ${sum}`,
    otherRows: ({ bath, away, row, ratio, sum }) =>
      `${bath} dista ${away} dalla riga (${row}); su questo tratto le altre righe del foglietto cambiano di × ${ratio}: ${sum}`,
    change: ({ percent, less }) => `${percent}% in ${less ? "meno" : "più"} per ogni °C in più`,
  },
  rating: {
    label: "Sensibilità",
    ownRows: ({ rating }) =>
      `esposta a ${rating}, e le righe del foglietto sono per questa: niente da aggiungere`,
    stops: ({ box, rating, log, stops, sum, over }) =>
      `nominale ${box}, esposta a ${rating}: ${log} fa ${stops} stop di ${over ? "sovraesposizione" : "sottoesposizione"}; ${sum}`,
  },
  drift: {
    label: "Deriva",
    sum: ({ room, halfway, start, middle, end, sum }) =>
      `metà strada verso ${room} ogni ${halfway} min. Il tempo è ${start} all’inizio, ${middle} a metà e ${end} alla fine: ${sum}`,
  },
  reuse: {
    label: "Riuso",
    sum: ({ perFilm, films, factor, sum, count }) =>
      `1 + ${perFilm} × ${films} ${count === 1 ? "pellicola già trattata" : "pellicole già trattate"} = ${factor}; ${sum}`,
  },
  method: {
    label: "Metodo",
    names: {
      inversion: "capovolgimento",
      twist: "agitatore",
      rotary: "tamburo",
      tray: "bacinella",
      hanger: "telaietti",
    },
    sum: ({ method, sum }) => `${method}: ${sum}`,
  },
  measured: {
    from: ({ from }) => `Misurato da ${from}`,
    stretch: ({ to, before, after, start, middle, end, sum }) =>
      `fino a ${to} passa da ${before} a ${after}, e per tutto ci vorrebbe ${start}, a metà ${middle} e alla fine ${end}: ${sum}`,
    done: ({ percent }) => `${percent}% fatto`,
    label: "Misurato, finito a",
    before: "tutto è finito prima dell’ultima lettura",
    steady: ({ part, at, sum }) => `resta ${part}, a ${at} come nell’ultima lettura: ${sum}`,
    drifting: ({ part, at, room, start, middle, end, sum }) =>
      `resta ${part}, e da ${at} va verso ${room}; per tutto ci vorrebbe ${start}, poi ${middle}, poi ${end}: ${sum}`,
  },
  development: {
    label: "Sviluppo",
    rounded: ({ seconds }) => `${seconds} al secondo più vicino, il mezzo per eccesso`,
  },
  sought: {
    label: ({ time }) => `Per avere ${time}`,
    least: ({ time }) => `Per avere il minimo, ${time}`,
    notFalling: "i tempi delle righe non calano quando fa più caldo",
    noAnswer: "nessuna risposta",
    onLeaflet: ({ factor, time, base, sum }) =>
      `con il fattore ${factor} di questa pellicola, ${time} sono ${base} sul foglietto: ${sum}`,
    beyond: ({ by }) => `${by} oltre le righe`,
    guess: ({ at }) => `${at}, una supposizione`,
  },
};

export const mix: MixWords = {
  label: "Miscela",
  asStock: "stock così com’è",
  undiluted: "stock",
  sum: ({ sum, stock }) => `${sum} = ${stock} di stock; il resto è acqua`,
  result: ({ stock, water }) => `${stock} di stock + ${water} d’acqua`,
  film: {
    label: "Pellicola",
    area: ({ films, area }) => `${films}, in pellicole da 80 in², cioè ${area} cm²`,
    count: ({ films, count }) => `${films} ${count === 1 ? "pellicola" : "pellicole"}`,
  },
  stock: {
    label: "Stock che serve",
    perFilm: ({ typed, same }) => `${typed} per pellicola sono ${same}`,
    needed: ({ sum, total, dilution, holds }) =>
      `${sum}; sta in ${total} di soluzione ${dilution}, e questa miscela ne contiene ${holds}`,
  },
};
