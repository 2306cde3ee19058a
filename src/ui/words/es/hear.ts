// The Spanish words of what is heard before a run: the test with the tap running, and headphones that play late.

export const hearFirst = {
  title: "Primero, óyelo",
  how: "Abre el grifo como lo vas a tener y ponte donde vas a trabajar. Deja correr el agua mientras escuchas.",
  ask: "¿Lo has oído todo, con el grifo abierto?",
  play: "Oír la prueba",
  playAgain: "Oírla otra vez",
  playHint: "unas señales y una frase, tan fuertes como en la sesión",
  playing: "Sonando…",
  listen: "Escucha ahora, con el grifo abierto.",
  failed: "No se ha podido oír la prueba. Hace falta red una vez, la primera, para traer la voz.",
  heard: "Lo he oído",
  notHeard: "No lo he oído",
  good: "Bien. La sesión sonará igual de fuerte.",
  mend: "Entonces será una de estas cosas; después, óyela otra vez:",
  advice: [
    "El volumen: súbelo a mano, en el aparato y en el altavoz o los auriculares.",
    "El silencio: algunos aparatos llevan un interruptor en el lateral, o un modo silencioso.",
    "Por dónde sale: puede estar conectado un altavoz de otra habitación, o unos auriculares guardados.",
    "El agua: un chorro más fino, el aparato más cerca, o auriculares.",
  ],
  begin: "Empezar sin haberlo oído",
  beginHint: "para quien siente las señales en el cuerpo o lee las palabras",
};

export const tapAlong = {
  ask: "¿Auriculares sin cable?",
  why: "Suenan con retraso, a menudo un cuarto de segundo, y con ellos llega tarde la señal de vaciar. Da toques al compás de unos golpes, y todo lo que suena en la sesión se enviará antes en esa medida.",
  kept: (delay: string) => `En este aparato se envía ${delay} antes.`,
  noneKept: "En este aparato no se envía nada antes.",
  notKept: "Este navegador no lo guardará entre visitas.",
  measure: "Medirlo siguiendo el compás",
  none: "Sin retraso",
  name: "Con cuánto retraso suenan los auriculares",
  advice:
    "Auriculares puestos. Tres golpes y un silencio, una y otra vez, durante veinte segundos.",
  start: "Pulsa para oír los golpes",
  fetching: "Trayendo los golpes…",
  tap: "Toca aquí con cada golpe",
  tapHint: "o pulsa la barra espaciadora; en los silencios, no",
  taps: (count: number) => `Toques: ${count}`,
  failed:
    "No se han podido oír los golpes. Hace falta red una vez, la primera. Pulsa para intentarlo de nuevo.",
  late: (delay: string) => `${delay} de retraso`,
  notLate: "Ningún retraso que importe",
  sure: (apart: string) => `La mitad de los toques está a ${apart} de eso, o menos.`,
  keep: (delay: string) => `Guardar ${delay}`,
  keepNone: "Dejarlo sin retraso",
  again: "Repetir",
  leave: "Salir",
  refused: {
    few: "Son pocos toques para saberlo. Otra vez: un toque con cada golpe.",
    uneven: "Los toques varían demasiado. Otra vez: primero coge el compás, luego toca con él.",
    unclear: "Eso encaja con dos retrasos. Otra vez: tres toques, y ninguno en el silencio.",
    far: "Es más de un segundo, más de lo que se puede compensar. Sirven unos auriculares con cable o el altavoz del aparato.",
  },
};

export const byEar = {
  open: "Calcularlo de oído",
  name: "Calcular de oído",
  hint: "Cualquier tecla o toque toma lo que se ofrece, o sigue. Arriba y abajo llevan de campo en campo, izquierda y derecha por los valores que hay, e Intro toma uno; las cifras y las letras de un nombre entran al teclearlas, Intro las fija, C o F, M u O en esa unidad, una coma separa las cargas de un lavado, un espacio los escalones de una cuña, Retroceso quita una, Escape cierra.",
  end: "Todo junto",
  previous: "Anterior",
  next: "Siguiente",
  close: "Cerrar",
  notHeard: "No se pudo traer la voz. Busca una red y pulsa otra vez.",
};
