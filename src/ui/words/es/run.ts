// The words of Lights out. What the voice says stands in audio-scripts/.
import type { Deed } from "../../../process/moments.ts";
import type { Method } from "../../../trade/method.ts";
import { bathWithin } from "./baths.ts";

/** What the hands are to do, large enough to read across a room; by method where hands differ. */
export const runDeeds: { readonly [deed in Deed]: string } = {
  "pour-in": "Llenar",
  full: "Lleno",
  agitate: "Invertir",
  invert: "Invertir",
  rest: "Reposo",
  tap: "Golpear",
  "pour-out": "Vaciar",
  empty: "Vacío",
};

/** Moving the tank, by method. */
export const moves: { readonly [method in Method]: string } = {
  inversion: "Invertir",
  twist: "Girar",
  rotary: "Rodar",
  tray: "Pasar",
  hanger: "Levantar",
};

export const beforeRun = {
  noWorksheet: "La sesión sigue una hoja de trabajo, y la tuya aún no está completa.",
  toWorkOut: "Ir a Calcular",
  ahead: "Lo que se va a guiar",
  develop: (films: string, time: string, temperature: string, developer: string) =>
    `${films}: ${time} a ${temperature} en ${developer}.`,
  films: (films: readonly string[]) => films.join(", "),
  mix: (mix: string) => `Mezcla ${mix}.`,
  how: "Cómo se pulsa",
  once: "Una pulsación en cualquier punto de la pantalla, o cualquier tecla, lleva al paso siguiente.",
  twice:
    "Con dos pulsaciones seguidas se oye dónde estamos y qué viene después. Mientras un baño está en marcha, basta con una.",
  thrice:
    "Tres seguidas: la voz calla y las señales de los momentos siguen; otras tres, y vuelve a hablar.",
  held: "Mantenida un segundo: lo demás, de oído, una opción tras otra; pulsa cuando oigas la tuya. Mantenida en los tres segundos después de una pulsación, la deshace; también lo hace la tecla de retroceso.",
  reading:
    "Mientras se revela, las flechas arriba y abajo introducen una lectura del termómetro, dicha paso a paso; una pulsación la fija, y el final se mueve con ella.",
  clock: "Con el revelador dentro, ya nada espera: el reloj del tanque no se para nunca.",
  dark: "Desde «Apagar la luz» hasta que la tapa esté cerrada, la pantalla queda en negro, sin puntero. Negra no quiere decir apagada: deja el aparato bajo un paño oscuro y mete la mano por debajo para pulsar.",
  volume: "Sube el volumen hasta que las señales se oigan por encima del agua corriente.",
  stops: "Antes de empezar esta sesión",
  accept: "Lo he leído y sigo de todos modos.",
  begin: "Empezar",
  beginHint: "la primera pulsación; a partir de ahí te lleva la voz",
  fetching: "Trayendo la voz…",
  failed:
    "No se ha podido traer la voz, así que no se ha empezado nada. Hace falta red una vez, la primera.",
  elsewhere:
    "Ya hay una sesión en marcha en otra pestaña o ventana de este navegador. Sigue allí, o sal antes de ella.",
  again: "Reintentar",
};

export const duringRun = {
  name: "La sesión",
  press: "Pulsa en cualquier punto para seguir",
  where: "¿Dónde estamos?",
  /** By how much is said now: what a press makes of it. */
  say: { full: "Decir menos", brief: "Solo señales", tones: "Decir todo" },
  leave: "Dejar la sesión",
  leaveTimed: "El reloj del tanque sigue sin ti. ¿Dejar la sesión?",
  leaveWaiting: "¿Dejar la sesión? Lo hecho hasta ahora queda en «Anotar».",
  stay: "Seguir",
  now: (deed: string) => `Ahora: ${deed}`,
  next: "Después",
  in: (time: string) => `en ${time}`,
  after: (deed: string, time: string) => `luego ${deed.toLowerCase()}, en ${time}`,
  /** @param bath its id */
  leftIn: (bath: string) => `le quedan al ${bathWithin(bath)}`,
  untilPour: "hasta llenar",
  emptying: "hasta quedar vacío",
  waiting: "Pulsa",
  waitingFor: (title: string) => `para empezar: ${title}`,
  said: "Lo que se ha dicho",
  tookOver:
    "La voz de este aparato ha fallado dos veces seguidas: a partir de ahora habla la voz que viene con Tankside.",
  over: "Listo",
  overHint: "La película está colgada. Lo que se ha hecho está en «Anotar».",
  toWriteUp: "Ir a Anotar",
};
