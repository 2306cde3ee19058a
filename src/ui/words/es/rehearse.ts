// The Spanish words of the rehearsal with water. What the voice says stands in audio-scripts/.

export const rehearse = {
  title: "Ensayar con agua",
  lead: "Toda la sesión de oído, con luz: agua en cada recipiente y una película que ya no importe. Llenar, vaciar y agitar duran lo de siempre; solo se acortan los reposos.",
  press:
    "Pulsa al empezar a llenar y al empezar a vaciar; si quieres, también al empezar a agitar. Al final se te dice qué merece la pena practicar.",
  keeps:
    "No queda anotado entre las sesiones, y ningún baño envejece por ello. Se acaba al cerrar la página.",
  rests: "Reposos",
  /** What is left of a rest. */
  factors: {
    whole: "enteros",
    half: "la mitad",
    quarter: "la cuarta parte",
    least: "tan cortos como dejen las palabras",
  },
  why: "Decir el porqué antes de cada baño, y el cómo en cada paso de la carga",
  begin: "Empezar el ensayo",
  beginHint: (clock: string) => `${clock} de reloj`,
  overHint: "Lo que merece la pena practicar está en «Repasar», con segundos.",
  back: "Volver a «Repasar»",
  found: "El último ensayo",
  unmarked: "No se pulsó al verter, así que no hay nada que comparar.",
  well: (n: number, of: number, seconds: string) =>
    `${n} de ${of} momentos han salido bien: con menos de ${seconds} de error.`,
  practise: "Merece la pena practicar, lo más importante primero",
  all: "Todo lo que se desvió",
  late: (seconds: string) => `${seconds} tarde`,
  early: (seconds: string) => `${seconds} antes`,
  missed: "sin pulsar",
};
