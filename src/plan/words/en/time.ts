// The lines of the development time and the mix, in English.
import type { MixWords, TimeWords } from "../time-words.ts";

export const time: TimeWords = {
  leaflet: {
    label: "Leaflet",
    row: ({ time, temperature }) => `${time} at ${temperature}`,
    forRating: ({ rating, rows }) => `given for ${rating}: ${rows}`,
    count: ({ count }) => (count === 1 ? "1 row" : `${count} rows`),
  },
  temperature: {
    label: "Temperature",
    asRow: ({ bath }) => `the bath is at ${bath}, as a row is: its time as it stands`,
    between: ({ from, to, apart, change, bath, away, sum }) =>
      `${from} and ${to} are ${apart} apart, ${change}; ${bath} is ${away} from ${from}: ${sum}`,
    slope: ({ bath, away, row, change, sum, given }) =>
      `${bath} is ${away} from the row's ${row}, ${change} ${given ? "as given" : "as usual"}: ${sum}`,
    otherRows: ({ bath, away, row, ratio, sum }) =>
      `${bath} is ${away} from the row's ${row}, over which the leaflet's other rows change by × ${ratio}: ${sum}`,
    change: ({ percent, less }) => `${percent} % ${less ? "less" : "more"} for each °C warmer`,
  },
  rating: {
    label: "Rating",
    ownRows: ({ rating }) =>
      `metered at ${rating}, which the leaflet's rows are for: nothing to add`,
    stops: ({ box, rating, log, stops, sum, count, over }) =>
      `box speed ${box}, metered at ${rating}: ${log} is ${stops} ${count === 1 ? "stop" : "stops"} ${over ? "over" : "under"}; ${sum}`,
  },
  drift: {
    label: "Drift",
    sum: ({ room, halfway, start, middle, end, sum }) =>
      `half-way to ${room} every ${halfway} min. The time is ${start} at the start, ${middle} half-way through and ${end} at the end: ${sum}`,
  },
  reuse: {
    label: "Reuse",
    sum: ({ perFilm, films, factor, sum }) =>
      `1 + ${perFilm} × ${films} films before = ${factor}; ${sum}`,
  },
  method: {
    label: "Method",
    names: {
      inversion: "inversion",
      twist: "twist",
      rotary: "rotary",
      tray: "tray",
      hanger: "hanger",
    },
    sum: ({ method, sum }) => `${method}: ${sum}`,
  },
  measured: {
    from: ({ from }) => `Measured from ${from}`,
    stretch: ({ to, before, after, start, middle, end, sum }) =>
      `to ${to} it goes from ${before} to ${after}, where all of it would take ${start}, ${middle} half-way and ${end}: ${sum}`,
    done: ({ percent }) => `${percent} % done`,
    label: "Measured, done at",
    before: "the whole is done before the last reading",
    steady: ({ part, at, sum }) => `${part} is left, at ${at} as last read: ${sum}`,
    drifting: ({ part, at, room, start, middle, end, sum }) =>
      `${part} is left, drifting from ${at} toward ${room}; all of it would take ${start}, then ${middle}, then ${end}: ${sum}`,
  },
  development: {
    label: "Development",
    rounded: ({ seconds }) => `${seconds} to the nearest second, half up`,
  },
  sought: {
    label: ({ time }) => `For ${time}`,
    least: ({ time }) => `For the least, ${time}`,
    notFalling: "the rows' times do not fall as it gets warmer",
    noAnswer: "no answer",
    onLeaflet: ({ factor, time, base, sum }) =>
      `with this film's factor ${factor}, ${time} are ${base} on the leaflet: ${sum}`,
    beyond: ({ by }) => `${by} beyond the rows`,
    guess: ({ at }) => `${at}, a guess`,
  },
};

export const mix: MixWords = {
  label: "Mix",
  asStock: "stock as it is",
  undiluted: "stock",
  sum: ({ sum, stock }) => `${sum} = ${stock} of stock; the rest is water`,
  result: ({ stock, water }) => `${stock} of stock + ${water} of water`,
  film: {
    label: "Film",
    area: ({ films, area }) => `${films}, in films of 80 sq in or ${area} cm²`,
    count: ({ films, count }) => `${films} ${count === 1 ? "film" : "films"}`,
  },
  stock: {
    label: "Stock needed",
    perFilm: ({ typed, same }) => `${typed} a film is ${same}`,
    needed: ({ sum, total, dilution, holds }) =>
      `${sum}; that is in ${total} of ${dilution}, and this mix holds ${holds}`,
  },
};
