// The lines of the development time and the mix, in German.
import type { MixWords, TimeWords } from "../time-words.ts";

export const time: TimeWords = {
  leaflet: {
    label: "Datenblatt",
    row: ({ time, temperature }) => `${time} bei ${temperature}`,
    forRating: ({ rating, rows }) => `angegeben für ${rating}: ${rows}`,
    count: ({ count }) => (count === 1 ? "1 Zeile" : `${count} Zeilen`),
  },
  temperature: {
    label: "Temperatur",
    asRow: ({ bath }) => `das Bad hat ${bath}, genau wie eine Zeile: Deren Zeit gilt`,
    between: ({ from, to, apart, change, bath, away, sum }) =>
      `${from} und ${to} liegen ${apart} auseinander, ${change}; ${bath} liegt ${away} von ${from} entfernt: ${sum}`,
    slope: ({ bath, away, row, change, sum, given }) =>
      `${bath} liegt ${away} von der Zeile mit ${row} entfernt, ${change}, ${given ? "wie angegeben" : "wie üblich"}: ${sum}`,
    otherRows: ({ bath, away, row, ratio, sum }) =>
      `${bath} liegt ${away} von der Zeile mit ${row} entfernt; auf dieser Strecke ändern sich die anderen Zeilen des Datenblatts um × ${ratio}: ${sum}`,
    change: ({ percent, less }) => `je °C wärmer ${percent} % ${less ? "kürzer" : "länger"}`,
  },
  rating: {
    label: "Belichtungsindex",
    ownRows: ({ rating }) =>
      `belichtet auf ${rating}, und genau dafür gelten die Zeilen des Datenblatts: nichts hinzuzurechnen`,
    stops: ({ box, rating, log, stops, sum, count, over }) =>
      `Nennempfindlichkeit ${box}, belichtet auf ${rating}: ${log} ergibt ${stops} ${count === 1 ? "Blende" : "Blenden"} ${over ? "mehr" : "weniger"} Licht; ${sum}`,
  },
  drift: {
    label: "Temperaturgang",
    sum: ({ room, halfway, start, middle, end, sum }) =>
      `alle ${halfway} min den halben Weg zu ${room}. Die Zeit ist am Anfang ${start}, in der Mitte ${middle} und am Ende ${end}: ${sum}`,
  },
  reuse: {
    label: "Gebrauchter Entwickler",
    sum: ({ perFilm, films, factor, sum, count }) =>
      `1 + ${perFilm} × ${films} ${count === 1 ? "Film" : "Filme"} vorher = ${factor}; ${sum}`,
  },
  method: {
    label: "Verfahren",
    names: {
      inversion: "Kippen",
      twist: "Drehen",
      rotary: "Trommel",
      tray: "Schale",
      hanger: "Planfilmhänger",
    },
    sum: ({ method, sum }) => `${method}: ${sum}`,
  },
  measured: {
    from: ({ from }) => `Gemessen ab ${from}`,
    stretch: ({ to, before, after, start, middle, end, sum }) =>
      `bis ${to} geht es von ${before} auf ${after}; die ganze Entwicklung würde hier ${start} dauern, in der Mitte ${middle} und am Ende ${end}: ${sum}`,
    done: ({ percent }) => `zu ${percent} % entwickelt`,
    label: "Gemessen, fertig bei",
    before: "vor der letzten Messung ist schon alles entwickelt",
    steady: ({ part, at, sum }) => `es fehlen noch ${part}, bei zuletzt gemessenen ${at}: ${sum}`,
    drifting: ({ part, at, room, start, middle, end, sum }) =>
      `es fehlen noch ${part}, auf dem Weg von ${at} zu ${room}; die ganze Entwicklung würde erst ${start}, dann ${middle}, dann ${end} dauern: ${sum}`,
  },
  development: {
    label: "Entwicklung",
    rounded: ({ seconds }) => `${seconds}, auf ganze Sekunden gerundet, ab der Hälfte aufwärts`,
  },
  sought: {
    label: ({ time }) => `Für ${time}`,
    least: ({ time }) => `Für das Mindeste, ${time}`,
    notFalling: "die Zeiten der Zeilen werden mit der Wärme nicht durchweg kürzer",
    noAnswer: "keine Antwort",
    onLeaflet: ({ factor, time, base, sum }) =>
      `mit dem Faktor ${factor} dieses Films sind ${time} im Datenblatt ${base}: ${sum}`,
    beyond: ({ by }) => `${by} außerhalb der Zeilen`,
    guess: ({ at }) => `${at}, geschätzt`,
  },
};

export const mix: MixWords = {
  label: "Ansatz",
  asStock: "Vorratslösung, unverdünnt",
  /** In brackets behind a volume, or behind the developer's name. */
  undiluted: "unverdünnt",
  sum: ({ sum, stock }) => `${sum} = ${stock} Vorratslösung; der Rest ist Wasser`,
  result: ({ stock, water }) => `${stock} Vorratslösung + ${water} Wasser`,
  film: {
    label: "Film",
    area: ({ films, area }) => `${films}, in Filmen zu 80 Quadratzoll oder ${area} cm²`,
    count: ({ films, count }) => `${films} ${count === 1 ? "Film" : "Filme"}`,
  },
  stock: {
    label: "Nötige Vorratslösung",
    perFilm: ({ typed, same }) => `${typed} je Film sind ${same}`,
    needed: ({ sum, total, dilution, holds }) =>
      `${sum}; so viel steckt in ${total} (${dilution}), und dieser Ansatz enthält ${holds}`,
  },
};
