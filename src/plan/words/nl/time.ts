// The lines of the development time and the mix, in Dutch.
import type { MixWords, TimeWords } from "../time-words.ts";

export const time: TimeWords = {
  leaflet: {
    label: "Bijsluiter",
    row: ({ time, temperature }) => `${time} bij ${temperature}`,
    forRating: ({ rating, rows }) => `opgegeven voor ${rating}: ${rows}`,
    count: ({ count }) => (count === 1 ? "1 rij" : `${count} rijen`),
  },
  temperature: {
    label: "Temperatuur",
    asRow: ({ bath }) => `het bad is ${bath}, precies zoals een rij: die tijd geldt`,
    between: ({ from, to, apart, change, bath, away, sum }) =>
      `${from} en ${to} liggen ${apart} uit elkaar, ${change}; ${bath} ligt ${away} van ${from} af: ${sum}`,
    slope: ({ bath, away, row, change, sum, given }) =>
      `${bath} ligt ${away} van de rij bij ${row} af, ${change}, ${given ? "zoals opgegeven" : "zoals gebruikelijk"}: ${sum}`,
    otherRows: ({ bath, away, row, ratio, sum }) =>
      `${bath} ligt ${away} van de rij bij ${row} af; over die afstand veranderen de andere rijen van de bijsluiter met × ${ratio}: ${sum}`,
    change: ({ percent, less }) => `${percent}% ${less ? "korter" : "langer"} per °C warmer`,
  },
  rating: {
    label: "Belichtingsindex",
    ownRows: ({ rating }) =>
      `belicht op ${rating}, en daarvoor gelden de rijen van de bijsluiter: er komt niets bij`,
    stops: ({ box, rating, log, stops, sum, count, over }) =>
      `ISO ${box} op het doosje, belicht op ${rating}: ${log} is ${stops} ${count < 2 ? "stop" : "stops"} ${over ? "overbelicht" : "onderbelicht"}; ${sum}`,
  },
  drift: {
    label: "Temperatuurverloop",
    sum: ({ room, halfway, start, middle, end, sum }) =>
      `elke ${halfway} min de helft dichter bij ${room}. De tijd is ${start} aan het begin, ${middle} halverwege en ${end} aan het eind: ${sum}`,
  },
  reuse: {
    label: "Gebruikte ontwikkelaar",
    sum: ({ perFilm, films, factor, sum, count }) =>
      `1 + ${perFilm} × ${films} ${count === 1 ? "film" : "films"} eerder = ${factor}; ${sum}`,
  },
  method: {
    label: "Methode",
    names: {
      inversion: "kantelen",
      twist: "draaien",
      rotary: "trommel",
      tray: "schaal",
      hanger: "vlakfilmhangers",
    },
    sum: ({ method, sum }) => `${method}: ${sum}`,
  },
  measured: {
    from: ({ from }) => `Gemeten vanaf ${from}`,
    stretch: ({ to, before, after, start, middle, end, sum }) =>
      `tot ${to} gaat het van ${before} naar ${after}; de hele ontwikkeling zou daar ${start} duren, halverwege ${middle} en aan het eind ${end}: ${sum}`,
    done: ({ percent }) => `voor ${percent}% ontwikkeld`,
    label: "Gemeten, klaar op",
    before: "voor de laatste meting is alles al ontwikkeld",
    steady: ({ part, at, sum }) =>
      `er rest nog ${part}, bij ${at} zoals het laatst gemeten: ${sum}`,
    drifting: ({ part, at, room, start, middle, end, sum }) =>
      `er rest nog ${part}, onderweg van ${at} naar ${room}; de hele ontwikkeling zou eerst ${start}, dan ${middle}, dan ${end} duren: ${sum}`,
  },
  development: {
    label: "Ontwikkeling",
    rounded: ({ seconds }) => `${seconds}, op hele seconden afgerond, de helft naar boven`,
  },
  sought: {
    label: ({ time }) => `Voor ${time}`,
    least: ({ time }) => `Voor het minste, ${time}`,
    notFalling: "de tijden van de rijen worden niet overal korter naarmate het warmer wordt",
    noAnswer: "geen antwoord",
    onLeaflet: ({ factor, time, base, sum }) =>
      `met factor ${factor} van deze film is ${time} op de bijsluiter ${base}: ${sum}`,
    beyond: ({ by }) => `${by} buiten de rijen`,
    guess: ({ at }) => `${at}, een schatting`,
  },
};

export const mix: MixWords = {
  label: "Mengsel",
  asStock: "stock, onverdund",
  /** In brackets behind a volume, or behind the developer's name. */
  undiluted: "onverdund",
  sum: ({ sum, stock }) => `${sum} = ${stock} stock; de rest is water`,
  result: ({ stock, water }) => `${stock} stock + ${water} water`,
  film: {
    label: "Film",
    area: ({ films, area }) => `${films}, in films van 80 vierkante inch of ${area} cm²`,
    count: ({ films, count }) => `${films} ${count === 1 ? "film" : "films"}`,
  },
  stock: {
    label: "Stock nodig",
    perFilm: ({ typed, same }) => `${typed} per film is ${same}`,
    needed: ({ sum, total, dilution, holds }) =>
      `${sum}; zoveel zit er in ${total} (${dilution}), en dit mengsel bevat ${holds}`,
  },
};
