// Mixing and tempering, lines and warnings, in Spanish.
import type { MixingWords, TemperingWords } from "../warmth-words.ts";

export const mixing: MixingWords = {
  water: "Agua por añadir",
  waterSum: ({ total, target, weight, stock, at, stockWeight, sum }) =>
    `${total} a ${target} pesan ${weight}; ${stock} de stock a ${at}, unos ${stockWeight}: ${sum}`,
  hot: "Del grifo caliente",
  cold: "Del grifo frío",
  pourSum: ({ sum, at, density }) => `${sum}; a ${at}, un ml pesa ${density}`,
  marks: "Hasta las marcas",
  marksSum: ({ stock, cold, hot, whole, dilution }) =>
    `${stock} de stock, ${cold} de agua fría y ${hot} de agua caliente hacen ${whole} de ${dilution}`,
  warnings: {
    nothingToMix:
      "El revelador se usa como stock, así que no hay agua con que calentarlo. Ponlo al baño maría.",
    outOfReach: ({ target, coldest, warmest }) =>
      `Con este stock y estos grifos no se puede mezclar a ${target}: se consigue de ${coldest} a ${warmest}. Enfría o calienta antes el stock, usa agua con hielo, o mezcla lo más cercano y ponlo al baño maría.`,
    oneTap: ({ temperature }) =>
      `Los dos grifos dan la misma temperatura: la mezcla quedará a ${temperature}, tomes lo que tomes de cada uno.`,
    noWater:
      "El agua es líquida de 0 a 100 °C (de 32 a 212 °F): una de las temperaturas de la mezcla queda fuera.",
    marksTooCoarse: ({ mark, dilution }) =>
      `Las marcas de ${mark} son demasiado gruesas para esta mezcla: la dejan en ${dilution}. Mide el stock en una probeta más pequeña.`,
    lessThanAMark: ({ mark }) =>
      `Las marcas de ${mark} son demasiado gruesas para esta mezcla: el stock no llega ni a media marca. Mide el stock en una probeta más pequeña.`,
  },
};

export const tempering: TemperingWords = {
  thermometer: "Termómetro",
  reading: ({ at, temperature }) => `${at} ${temperature}`,
  readings: ({ count }) => (count === 1 ? "1 lectura" : `${count} lecturas`),
  goes: "Evolución",
  minutes: "minutos",
  goesSum: ({ sum, room, halfway, from, to, misfit }) =>
    `${sum}, la mitad del camino hacia ${room} cada ${halfway} min; puede estabilizarse entre ${from} y ${to}; las lecturas se apartan ${misfit} de media`,
  settles: ({ temperature }) => `se estabiliza a ${temperature}`,
  reached: ({ temperature }) => `Llega a ${temperature}`,
  reachedSum: ({ sum, range }) =>
    `${sum} en el reloj de las lecturas; lo que el termómetro deja abierto: ${range}`,
  orNever: ({ soonest }) => `${soonest} como pronto, o nunca`,
  range: ({ from, to }) => `de ${from} a ${to}`,
  onTheWall: ({ time }) => `en el reloj de pared, ${time}`,
  about: ({ time }) => `${time}, más o menos`,
  muchLater: "más de un día",
  bathFor: ({ count }) => (count === 1 ? "Baño para 1 minuto" : `Baño para ${count} minutos`),
  ice: "Hielo para eso",
  iceSum: ({ water, from, to, sum }) => `${water} de agua, de ${from} a ${to}: ${sum}`,
  asItIs: "O tal como está",
  asItIsSum: ({ temperature, time }) =>
    `a ${temperature}, como en la última lectura, esta película lleva ${time}`,
  beyond: ({ by }) => `eso queda ${by} fuera de las filas de la ficha`,
  readAgain: "y conviene leerlo otra vez antes de usarlo",
  guess: ({ time }) => `${time}, solo orientativo`,
  warnings: {
    atTarget: ({ target }) =>
      `El revelador está a ${target}, hasta donde distingue un termómetro. Sácalo del baño maría, o lleva el baño a esa temperatura.`,
    unfit: {
      "too-few":
        "Hay muy pocas lecturas para decir cuándo: hacen falta dos si se sabe la temperatura del baño maría, tres si no. Remueve y vuelve a leer dentro de dos minutos.",
      "too-close": "Entre las lecturas hay menos de un minuto. Vuelve a leer dentro de dos o tres.",
      still:
        "Las lecturas no se mueven más de lo que distingue un termómetro, así que no se puede decir un tiempo. Espera, remueve y vuelve a leer; o es que el baño maría ya no da más de sí.",
      noisy:
        "Las lecturas saltan arriba y abajo más que un termómetro. Remueve antes de cada una, no dejes que el termómetro toque la pared y quita las que se leyeran mal.",
      contradictory:
        "Las lecturas no siguen el camino de un solo baño maría: dan la vuelta o se alejan de él. ¿Se añadió hielo o agua, o se leyó mal alguna? Empieza de nuevo desde la última.",
    },
    movesAway: ({ target }) =>
      `El revelador ya ha pasado de ${target} y se aleja. Sácalo de este baño maría.`,
    neverReaches: ({ target, settles }) =>
      `En este baño maría el revelador no llega nunca a ${target}: se estabiliza cerca de ${settles}. Cambia el agua del baño, o revela a la temperatura que tiene durante el tiempo que se da.`,
    askIce: "Di a cuánto está el baño maría y cuánta agua tiene, y se calcula el hielo.",
    mayNotReach: ({ target }) =>
      `Con estas lecturas no se sabe siquiera si el revelador llega a ${target} en este baño maría. Vuelve a leer dentro de dos o tres minutos, o cambia ya el agua del baño.`,
    takesLong: ({ target, wait }) =>
      `Para llegar a ${target} faltan todavía ${wait}, más o menos. Un baño maría más frío o más caliente lo hace antes; o revela a la temperatura que tiene durante el tiempo que se da.`,
    wait: ({ target, wait, range }) =>
      `Espera todavía ${wait}, más o menos, hasta ${target} (${range}); entonces léelo otra vez y sácalo del baño maría.`,
  },
};
