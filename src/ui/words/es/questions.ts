// What Work out asks: its questions, what they disclose, the rows that can be added, what can be chosen,
// and the cautions.
import { bathWithin } from "./baths.ts";

export const rows = {
  films: { all: "Películas", one: (n: number) => `Película ${n}`, add: "Añadir otra película" },
  "developer.leaflet": {
    all: "Filas de la ficha",
    one: (n: number) => `Fila ${n}`,
    add: "Añadir una fila de la ficha",
  },
  "developer.readings": {
    all: "Lecturas en el tanque",
    one: (n: number) => `Lectura ${n}`,
    add: "Añadir una lectura del tanque",
  },
  "tempering.readings": {
    all: "Lecturas al baño maría",
    one: (n: number) => `Lectura ${n}`,
    add: "Añadir una lectura",
  },
  "contrast.tests": {
    all: "Películas de prueba",
    one: (n: number) => `Prueba ${n}`,
    add: "Añadir una prueba",
  },
  remove: "Quitar",
};

export const questions = {
  films: "¿Qué películas?",
  developer: "¿Qué dice la ficha?",
  tank: "¿Qué tanque, y cuánto lo llena?",
  hands: "¿Cómo lo agitas?",
  clock: "¿Cómo cuentas el tiempo?",
  baths: "¿Qué otros baños?",
  voice: "¿Cómo quieres que hable?",
  safety: "Antes de abrir una botella",
  warmth: "¿Cómo llega a su temperatura?",
  contrast: "¿Qué dieron tus pruebas?",
};

export const more = {
  leaflet: "Forzado, subrevelado, baño ya usado, ficha de una sola fila",
  tank: "Cubeta, tambor o temperatura que deriva",
  /** @param bath its id */
  bath: (bath: string) => `Más sobre el ${bathWithin(bath)}`,
  ownAgitation: "Agitación propia; lo que quede vacío va como en el revelador",
  inTank: "Lecturas en el tanque mientras se revela",
  capacity: "Para cuánto da; regenerador",
  mixing: "Mezclarlo a una temperatura con dos grifos",
  tempering: "Ponerlo al baño maría y leer el termómetro",
  contrast: "Gradientes, o densidades de una cuña",
  measured: "Tus propios tiempos, medidos",
};

export const choices = {
  "tank.method": {
    inversion: "Inversión a mano",
    twist: "Giro de la varilla",
    rotary: "Tambor, girando sin parar",
    tray: "Cubeta",
    hanger: "Colgadores",
  },
  "clock.starts": { "pour-in": "con la primera gota", full: "con el tanque lleno" },
  "clock.ends": { "pour-out": "al empezar a vaciar", empty: "con el tanque vacío" },
  loading: { "": "por cargar, paso a paso", done: "ya está en el tanque cerrado" },
  "baths.*.afterwards": {
    "": "adonde suele",
    drain: "al desagüe",
    waste: "al bidón de residuos",
    return: "de vuelta a su recipiente",
  },
  "voice.detail": {
    "": "Como siempre",
    full: "Frases enteras",
    brief: "Pocas palabras",
    tones: "Solo señales",
  },
  "baths.*.clearing.times": {
    "": "el doble, como es habitual",
    "2": "el doble",
    "3": "el triple",
  },
};

/** Sources: the general cautions of the trade; the particular ones beside their figures in the tests. */
export const cautions: readonly string[] = [
  "Mandan la ficha de seguridad del fabricante y las normas de la casa.",
  "Guantes y protección para los ojos, desde la primera botella hasta el último enjuague.",
  "El ácido sobre el agua, nunca el agua sobre el ácido.",
  "Que ni el fijador ni el sulfito toquen nunca un ácido: se desprende dióxido de azufre.",
  "Que corra el aire. Ni comida ni bebida en la sala.",
  "El vidrio se rompe y el suelo mojado resbala: seca al momento lo que se derrame.",
  "En la zona húmeda, solo lo que funcione con pilas o batería.",
];
