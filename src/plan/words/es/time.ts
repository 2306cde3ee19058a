// The lines of the development time and the mix, in Spanish.
import type { MixWords, TimeWords } from "../time-words.ts";

export const time: TimeWords = {
  leaflet: {
    label: "Ficha",
    row: ({ time, temperature }) => `${time} a ${temperature}`,
    forRating: ({ rating, rows }) => `para ${rating}: ${rows}`,
    count: ({ count }) => (count === 1 ? "1 fila" : `${count} filas`),
  },
  temperature: {
    label: "Temperatura",
    asRow: ({ bath }) => `el baño está a ${bath}, igual que una fila: su tiempo tal cual`,
    between: ({ from, to, apart, change, bath, away, sum }) =>
      `de ${from} a ${to} hay ${apart}, ${change}; de ${from} a ${bath} hay ${away}: ${sum}`,
    slope: ({ bath, away, row, change, sum, given }) =>
      `de los ${row} de la fila a ${bath} hay ${away}, ${change}, ${given ? "como está puesto" : "como es habitual"}: ${sum}`,
    otherRows: ({ bath, away, row, ratio, sum }) =>
      `de los ${row} de la fila a ${bath} hay ${away}; en ese tramo, las otras filas de la ficha cambian × ${ratio}: ${sum}`,
    change: ({ percent, less }) =>
      `${percent} % ${less ? "menos" : "más"} de tiempo por cada °C que sube`,
  },
  rating: {
    label: "Sensibilidad",
    ownRows: ({ rating }) =>
      `medida a ${rating}, justo para lo que son las filas de la ficha: nada que añadir`,
    stops: ({ box, rating, log, stops, sum, count, over }) =>
      `ISO de la caja ${box}, medida a ${rating}: ${log} ${count === 1 ? "es" : "son"} ${stops} ${count === 1 ? "paso" : "pasos"} de ${over ? "sobreexposición" : "subexposición"}; ${sum}`,
  },
  drift: {
    label: "Deriva",
    sum: ({ room, halfway, start, middle, end, sum }) =>
      `la mitad del camino hacia ${room} cada ${halfway} min. El tiempo es ${start} al principio, ${middle} a la mitad y ${end} al final: ${sum}`,
  },
  reuse: {
    label: "Baño ya usado",
    sum: ({ perFilm, films, factor, sum, count }) =>
      `1 + ${perFilm} × ${films} ${count === 1 ? "película ya pasada" : "películas ya pasadas"} = ${factor}; ${sum}`,
  },
  method: {
    label: "Método",
    names: {
      inversion: "inversión",
      twist: "giro de la varilla",
      rotary: "tambor",
      tray: "cubeta",
      hanger: "colgadores",
    },
    sum: ({ method, sum }) => `${method}: ${sum}`,
  },
  measured: {
    from: ({ from }) => `Medido desde ${from}`,
    stretch: ({ to, before, after, start, middle, end, sum }) =>
      `hasta ${to} va de ${before} a ${after}; a esas temperaturas, el revelado entero llevaría ${start} al principio, ${middle} a medio camino y ${end} al final: ${sum}`,
    done: ({ percent }) => `${percent} % hecho`,
    label: "Medido, acaba en",
    before: "todo está hecho antes de la última lectura",
    steady: ({ part, at, sum }) => `queda ${part}, a ${at}, como en la última lectura: ${sum}`,
    drifting: ({ part, at, room, start, middle, end, sum }) =>
      `queda ${part}, derivando de ${at} hacia ${room}; el revelado entero llevaría ${start}, después ${middle} y después ${end}: ${sum}`,
  },
  development: {
    label: "Revelado",
    rounded: ({ seconds }) => `${seconds} al segundo más cercano, el medio hacia arriba`,
  },
  sought: {
    label: ({ time }) => `Para ${time}`,
    least: ({ time }) => `Para el mínimo, ${time}`,
    notFalling: "los tiempos de las filas no bajan al subir la temperatura",
    noAnswer: "sin respuesta",
    onLeaflet: ({ factor, time, base, sum }) =>
      `con el factor ${factor} de esta película, ${time} son ${base} en la ficha: ${sum}`,
    beyond: ({ by }) => `${by} fuera de las filas`,
    guess: ({ at }) => `${at}, solo orientativo`,
  },
};

export const mix: MixWords = {
  label: "Mezcla",
  asStock: "stock tal cual",
  undiluted: "stock",
  sum: ({ sum, stock }) => `${sum} = ${stock} de stock; el resto es agua`,
  result: ({ stock, water }) => `${stock} de stock + ${water} de agua`,
  film: {
    label: "Película",
    area: ({ films, area }) => `${films}, en películas de 80 pulg² o ${area} cm²`,
    count: ({ films, count }) => `${films} ${count === 1 ? "película" : "películas"}`,
  },
  stock: {
    label: "Stock necesario",
    perFilm: ({ typed, same }) => `${typed} por película son ${same}`,
    needed: ({ sum, total, dilution, holds }) =>
      `${sum}; eso es lo que llevan ${total} de ${dilution}, y esta mezcla lleva ${holds}`,
  },
};
