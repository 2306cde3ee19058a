// The warnings about time, mix, hands, baths and voice, in Spanish.
import type { WarningWords } from "../warning-words.ts";

const side = (warmer: boolean) => (warmer ? "por encima" : "por debajo");

export const warnings: WarningWords = {
  extrapolated: ({ by, row, bath, warmer, tooFar }) =>
    `El revelador está ${by} ${side(warmer)} de la fila más cercana de la ficha (${row}), ${
      tooFar
        ? "tan lejos de las filas que el tiempo no es de fiar"
        : "así que el tiempo sigue una pendiente que ahí no se conoce"
    }. Acércalo a ${row}, o añade la fila de la ficha para ${bath}.`,
  driftExtrapolated: ({ end, by, row, bath, warmer }) =>
    `El tanque deriva hasta ${end} al final, ${by} ${side(warmer)} de la fila más cercana de la ficha (${row}), así que la última parte del tiempo sigue una pendiente que ahí no se conoce. Ten el tanque en agua a ${bath}.`,
  readingExtrapolated: ({ reading, by, row, warmer }) =>
    `En el tanque había ${reading}, ${by} ${side(warmer)} de la fila más cercana de la ficha (${row}), así que esa parte del tiempo sigue una pendiente que ahí no se conoce.`,
  tooCold: ({ bath }) =>
    `El revelador está a ${bath}. Por debajo de 15,6 °C (60 °F) un revelador con hidroquinona pierde fuerza enseguida, y con más tiempo no se compensa. Calienta el baño.`,
  tooWarm: ({ bath }) =>
    `El revelador está a ${bath}. Por encima de 26,7 °C (80 °F) la gelatina se ablanda y el tiempo es demasiado corto para cumplirlo bien. Enfría el baño.`,
  shortDevelopment: ({ time, least }) =>
    `El revelado lleva ${time}. Con menos de ${least}, las partes que se mojan primero salen más densas a simple vista. Con una dilución más débil o un baño más frío lleva más tiempo.`,
  leastAt: ({ least, temperature }) => `Según esta ficha, a ${temperature} lleva ${least}.`,
  rowOutOfLine: ({ time, temperature, expected }) =>
    `Una fila de la ficha no encaja con las demás: ${time} a ${temperature}, donde las otras apuntan a unos ${expected}. Mírala otra vez: una cifra se lee mal enseguida.`,
  soughtNowhere: ({ time }) =>
    `No se puede decir ninguna temperatura para ${time}: los tiempos de la ficha no bajan siempre al subir la temperatura.`,
  soughtBeyond: ({ time, temperature, by }) =>
    `${time} saldría a ${temperature}, pero eso queda ${by} fuera de las filas de la ficha, donde no se conoce la pendiente.`,
  readingsPastEnd: ({ done, read }) =>
    `Según las lecturas del tanque, el revelado estaba hecho en ${done}, antes de la lectura en ${read}. Pasarse un poco hace poco daño; vacía ya y anótalo.`,
  longerThanADay: ({ hours }) =>
    `El revelado sale a ${hours} y se corta en 24:00:00, que no es lo que se ha calculado. Busca un error en las filas de la ficha, las temperaturas o las sensibilidades.`,
  hours: ({ count }) => (count === 1 ? "1 hora" : `${count} horas`),
  moreHours: ({ count }) => (count === 1 ? "más de 1 hora" : `más de ${count} horas`),
  mixedRatings: ({ films, first }) =>
    `Las películas no comparten sensibilidad: ${films}. Cada una necesita su propio tiempo, y uno intermedio no le va bien a ninguna; este plan es solo para «${first}». Revela las demás aparte.`,
  ratedFilm: ({ film, rating }) => `«${film}» a ${rating}`,
  ratedFilmOfSpeed: ({ film, rating, box }) => `«${film}» a ${rating} (ISO de la caja ${box})`,
  unratedFilm: ({ film }) => `«${film}» sin sensibilidad puesta`,
  leafletBackwards: ({ warmer, colder }) =>
    `Los tiempos de la ficha se acortan al bajar la temperatura: ${warmer}, pero ${colder}. Un baño más frío trabaja más despacio, así que una de las dos filas se leyó mal. Corrígela.`,
  stockShort: ({ tank, dilution, stock, needed, films, wanted, served }) =>
    `${tank} de ${dilution} llevan ${stock} de stock, pero para ${films} de 80 pulg² hacen falta ${needed}: el revelador se agotaría antes de acabar la película. Bastaría con llenar el tanque con ${wanted}; ${tank} dan para ${served} de 80 pulg².`,
  bathTooShort: ({ bath, time, pouring, least }) =>
    `${bath}: con ${time} habría que empezar a vaciar antes de que el tanque estuviera lleno, porque en llenar y vaciar se van ${pouring} de ese tiempo. Dale ${least} o más, llena más deprisa, o cuenta el tiempo desde el tanque lleno.`,
  temperatureStep: ({ bath, temperature, by, most, warmer }) =>
    `${bath}: está a ${temperature}, ${by} ${side(warmer)} del revelador. Un salto de más de ${most} puede arrugar la gelatina. Acerca las temperaturas de los baños.`,
  languageUnavailable: ({ language }) =>
    `Todavía no hay voz para el idioma «${language}», así que la voz habla inglés.`,
  fixerSpent: ({ times }) =>
    `El fijador tarda en clarificar ${times} veces lo que tardaba recién preparado; al doble está agotado, y la película que se fija en él no dura. Entrégalo para que recuperen la plata y prepara otro.`,
  clearedQuicker:
    "El recorte clarificó antes que en el fijador recién preparado, y eso no puede ser. ¿Estaba más caliente, era otra película, o se leyó mal uno de los dos tiempos?",
  fixerShort: ({ given, asked, twice }) =>
    `Al fijador se le dan ${given}, pero el ${twice ? "doble" : "triple"} del tiempo de clarificación son ${asked}. Dale al menos eso, o deja vacío su tiempo.`,
  washShort: ({ left, limit, cure }) =>
    `Solo por dilución, este lavado deja ${left} de tiosulfato en la película, más de los ${limit} que pueden quedar. ${cure}`,
  moreChanges: ({ count }) =>
    count === 1 ? "Hace falta 1 cambio de agua." : `Hacen falta ${count} cambios de agua.`,
  moreRunning: ({ time }) => `Deja correr el agua durante ${time}.`,
  pastCapacity: ({ bath, before, now, all, developer }) =>
    `${bath}: ${before} de antes y ${now} de ahora pasan de lo que admite, ${all} de 80 pulg². ${
      developer
        ? "Se agotaría antes de acabar la película. Usa revelador nuevo, o menos películas."
        : "Una cuenta no prueba nada: pruébalo con un recorte de película y, si falla, prepara otro."
    }`,
  replenishedTwice:
    "Se pide más tiempo por cada película anterior, y además regenerador. Una solución regenerada conserva su tiempo: con una de las dos cosas basta.",
  unevenHands: ({ what, spread, median }) =>
    `${what}: tus tiempos se llevan ${spread} entre sí, en torno a ${median}. Practícalo con agua: importa más hacerlo igual que hacerlo deprisa.`,
  notAsMeasured: ({ what, used, median }) =>
    `${what}: se cuenta con ${used}, pero tus propias manos tardaron ${median}.`,
};
