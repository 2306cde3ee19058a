// The words of Walk through, the score's own among them. What is spoken, and the names of the steps, come
// with the timeline.
import type { Method } from "../../../trade/method.ts";
import { bathWithin } from "./baths.ts";

export const walk = {
  noWorksheet: "No hay nada que repasar mientras no se pueda calcular la hoja de trabajo.",
  toWorkOut: "Ir a Calcular",
  onItsWay: "Ordenando los pasos…",
  failed: "No se han podido ordenar los pasos: faltan aquí las palabras y los sonidos.",
  again: "Reintentar",
  stops: "Mira esto primero",
  stop: "Alto",
  stopsAfter: "Aun así, aquí están los pasos.",
  lead: "Todo el recorrido, desde la hoja de trabajo hasta colgar la película. Aquí nada pone en marcha una sesión.",
  steps: "Pasos",
  print: "Imprimir toda la partitura",
  total: (steps: number, clock: string) =>
    `${steps} pasos. ${clock} con el reloj en marcha; los demás esperan a que pulses.`,
  dark: "a oscuras",
  light: "con luz",
  screenBlack: "Aquí la pantalla está en negro.",
  ownPace: "sin reloj",
  /** Beneath a step's name. */
  hint: (light: string, lasts: string) => `${light}, ${lasts}`,
  spoken: (seconds: string) => `${seconds} de voz; después espera a que pulses.`,
  clocked: (time: string) => `${time} de reloj.`,
  previous: "Paso anterior",
  next: "Paso siguiente",
  step: (n: number, of: number) => `Paso ${n} de ${of}`,
  /** Read on from that, by those who listen to the page. */
  stepTitle: (title: string) => `: ${title}`,
  hear: "Oír este paso",
  hearWhy: "Oír el porqué y el cómo",
  stopHearing: "Parar",
  hearing: (time: string, of: string) => `${time} de ${of}`,
  notHeard: "Aquí no se ha podido iniciar el sonido.",
  runIsOn: "Hay una sesión en marcha y no suena nada más. Sigue en",
  lightsOut: "Apagar la luz",
  /** What ends that sentence, behind the link. */
  runIsOnEnd: ".",
  inWords: "Lo mismo en palabras",
  time: "Tiempo",
  hands: "Manos",
  voice: "Voz",
  hearFrom: "oír",
  /** Read on from the word before it, by those who listen to the page. */
  from: (time: string) => `desde ${time}`,
  left: (count: number) => (count === 1 ? "1 frase omitida" : `${count} frases omitidas`),
  leftWhy: "Lo que no ha cabido entre las señales, y por qué.",
  nothingLeft: "Cabe todo lo que hay que decir.",
};

export const score = {
  /** Said of the whole picture; what it holds stands beside it in words. */
  picture: (title: string) => `Partitura: ${title}`,
  region: (title: string) => `Partitura: ${title}; se puede desplazar a los lados`,
  key: "Cómo se lee",
  keys: {
    words: "Una barra tan larga como lo que se dice, con las palabras encima.",
    count: "Tres toques dan la entrada.",
    moment:
      "Una bocina suena en el momento justo: tres arcos para llenar, más gruesos para vaciar, dos para empezar a mover el tanque.",
    beats: "Toques para la ida y para la vuelta.",
    rest: "Un anillo donde se deja el tanque apoyado; una raya donde una señal suave dice que todo va bien.",
    water:
      "Cinco líneas son el baño: se abren al llenar, oscilan con el tanque, quedan planas durante el reposo y se cierran al vaciar.",
    fold: "Un reposo largo va plegado, con su duración escrita en el hueco.",
    clock:
      "Blanco y negro por turnos: cinco segundos cada uno; un segundo cada uno donde solo hay palabras.",
  },
  /** What stands for words, and for the length of a fold, where the signs are shown. */
  example: { words: "Listo", fold: "17 s" },
  /** @param bath its id */
  bath: (bath: string) => bathWithin(bath),
  press: "pulsar",
  "pour-in": "llenar",
  full: "lleno",
  rest: "reposo",
  "pour-out": "vaciar",
  empty: "vacío",
  tap: (count: number) => (count === 1 ? "1 golpe" : `${count} golpes`),
  still: (time: string) => time,
  moving: (count: number, time: string) => `×${count}, ${time}`,
};

/** A bout, short enough to stand under its notes. */
export const turnsInScore: { readonly [method in Method]: (count: number) => string } = {
  inversion: (count) => `invertir ${count}`,
  twist: (count) => `girar ${count}`,
  rotary: (count) => `rodar ${count}`,
  tray: (count) => `pasar ${count}`,
  hanger: (count) => `levantar ${count}`,
};

const times = (count: number) => (count === 1 ? "una vez" : `${count} veces`);

/** A bout, as a sentence's part. */
export const turnsInWords: { readonly [method in Method]: (count: number) => string } = {
  inversion: (count) => `invertir ${times(count)}`,
  twist: (count) => `girar la varilla ${times(count)}`,
  rotary: (count) => `hacer rodar el tambor ${times(count)}`,
  tray: (count) => `pasar las placas ${times(count)}`,
  hanger: (count) => `levantar e inclinar ${times(count)}`,
};

export const deeds = {
  /** @param bath its id, here and below */
  pourIn: (bath: string) => `llenar con el ${bathWithin(bath)}`,
  full: "tanque lleno",
  until: (turns: string, time: string) => `${turns}, hasta ${time}`,
  rest: "reposo",
  tap: (count: number) => (count === 1 ? "dar un golpe" : `dar ${count} golpes`),
  pourOut: (bath: string) => `vaciar el ${bathWithin(bath)}`,
  empty: "tanque vacío",
  joined: (deeds: readonly string[]) => deeds.join(", "),
};
