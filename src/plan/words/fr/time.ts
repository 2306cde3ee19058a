// The lines of the development time and the mix, in French.
import type { MixWords, TimeWords } from "../time-words.ts";

export const time: TimeWords = {
  leaflet: {
    label: "Notice",
    row: ({ time, temperature }) => `${time} à ${temperature}`,
    forRating: ({ rating, rows }) => `donné pour ${rating} : ${rows}`,
    count: ({ count }) => (count < 2 ? `${count} ligne` : `${count} lignes`),
  },
  temperature: {
    label: "Température",
    asRow: ({ bath }) => `le bain est à ${bath}, comme une des lignes : son temps, tel quel`,
    between: ({ from, to, apart, change, bath, away, sum }) =>
      `${apart} entre ${from} et ${to}, ${change} ; ${bath} est à ${away} de ${from} : ${sum}`,
    slope: ({ bath, away, row, change, sum, given }) =>
      `${bath} est à ${away} de la ligne (${row}), ${change}, ${given ? "comme indiqué" : "comme d’usage"} : ${sum}`,
    otherRows: ({ bath, away, row, ratio, sum }) =>
      `${bath} est à ${away} de la ligne (${row}) ; sur cet écart, les autres lignes de la notice changent de × ${ratio} : ${sum}`,
    change: ({ percent, less }) => `${percent} % ${less ? "de moins" : "de plus"} par °C de plus`,
  },
  rating: {
    label: "Exposition",
    ownRows: ({ rating }) =>
      `exposé à ${rating}, comme le veulent les lignes de la notice : rien à ajouter`,
    stops: ({ box, rating, log, stops, sum, count, over }) =>
      `sensibilité nominale ${box}, exposé à ${rating} : ${log} fait ${stops} ${count < 2 ? "diaphragme" : "diaphragmes"} de ${over ? "surexposition" : "sous-exposition"} ; ${sum}`,
  },
  drift: {
    label: "Dérive",
    sum: ({ room, halfway, start, middle, end, sum }) =>
      `la moitié du chemin vers ${room} toutes les ${halfway} min. Le temps est de ${start} au début, ${middle} au milieu et ${end} à la fin : ${sum}`,
  },
  reuse: {
    label: "Bain réutilisé",
    sum: ({ perFilm, films, factor, sum, count }) =>
      `1 + ${perFilm} × ${films} ${count < 2 ? "film déjà passé" : "films déjà passés"} = ${factor} ; ${sum}`,
  },
  method: {
    label: "Méthode",
    names: {
      inversion: "retournement",
      twist: "agitateur",
      rotary: "tambour",
      tray: "cuvette",
      hanger: "cadres",
    },
    sum: ({ method, sum }) => `${method} : ${sum}`,
  },
  measured: {
    from: ({ from }) => `Mesuré à partir de ${from}`,
    stretch: ({ to, before, after, start, middle, end, sum }) =>
      `jusqu’à ${to}, la cuve passe de ${before} à ${after}, où le tout prendrait ${start}, ${middle} au milieu et ${end} à la fin : ${sum}`,
    done: ({ percent }) => `fait à ${percent} %`,
    label: "Mesuré, fini à",
    before: "tout est fini avant le dernier relevé",
    steady: ({ part, at, sum }) => `il reste ${part}, à ${at} comme au dernier relevé : ${sum}`,
    drifting: ({ part, at, room, start, middle, end, sum }) =>
      `il reste ${part}, en dérive de ${at} vers ${room} ; le tout prendrait ${start}, puis ${middle}, puis ${end} : ${sum}`,
  },
  development: {
    label: "Développement",
    rounded: ({ seconds }) => `${seconds}, arrondi à la seconde, la demie vers le haut`,
  },
  sought: {
    label: ({ time }) => `Pour ${time}`,
    least: ({ time }) => `Pour le minimum, ${time}`,
    notFalling: "les temps de la notice ne baissent pas quand la température monte",
    noAnswer: "pas de réponse",
    onLeaflet: ({ factor, time, base, sum }) =>
      `avec le facteur de ce film, ${factor}, ${time}, c’est ${base} sur la notice : ${sum}`,
    beyond: ({ by }) => `${by} au-delà des lignes`,
    guess: ({ at }) => `${at}, sans certitude`,
  },
};

export const mix: MixWords = {
  label: "Mélange",
  asStock: "solution de base telle quelle",
  undiluted: "non dilué",
  sum: ({ sum, stock }) => `${sum} = ${stock} de solution de base ; le reste est de l’eau`,
  result: ({ stock, water }) => `${stock} de solution de base + ${water} d’eau`,
  film: {
    label: "Film",
    area: ({ films, area }) => `${films}, en films de 80 po², soit ${area} cm²`,
    count: ({ films, count }) => `${films} ${count < 2 ? "film" : "films"}`,
  },
  stock: {
    label: "Solution de base nécessaire",
    perFilm: ({ typed, same }) => `${typed} par film, c’est ${same}`,
    needed: ({ sum, total, dilution, holds }) =>
      `${sum} ; pour cela, il faut ${total} de bain (${dilution}), et ce mélange contient ${holds}`,
  },
};
