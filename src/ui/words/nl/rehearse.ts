// The Dutch words of the rehearsal with water. What the voice says stands in audio-scripts/.

export const rehearse = {
  title: "Met water oefenen",
  lead: "De hele sessie op het gehoor, bij licht: water in elke beker en een film die er niet meer toe doet. Gieten en bewegen duren zo lang als altijd; alleen de rust ertussen is korter.",
  press:
    "Druk als je begint in te gieten en als je begint uit te gieten; als je wilt ook als je begint te bewegen. Daarna hoor je wat het oefenen waard is.",
  keeps:
    "Er blijft niets van bewaard bij de sessies, en geen bad wordt er ouder van. Met de pagina is het voorbij.",
  rests: "Rust",
  /** What is left of a rest. */
  factors: {
    whole: "heel",
    half: "de helft",
    quarter: "een kwart",
    least: "zo kort als de woorden toelaten",
  },
  why: "Voor elk bad zeggen waarom, en bij elke stap van het laden hoe",
  begin: "Begin met oefenen",
  beginHint: (clock: string) => `${clock} op de klok`,
  overHint: "Wat het oefenen waard is, staat met seconden in “Doornemen”.",
  back: "Terug naar “Doornemen”",
  found: "De laatste repetitie",
  unmarked: "Bij het gieten is niet gedrukt, dus er valt niets te vergelijken.",
  well: (n: number, of: number, seconds: string) =>
    `${n} van ${of} momenten gingen goed: op ${seconds} na.`,
  practise: "Het oefenen waard, het belangrijkste eerst",
  all: "Alles wat ernaast zat",
  late: (seconds: string) => `${seconds} te laat`,
  early: (seconds: string) => `${seconds} te vroeg`,
  missed: "niet gedrukt",
};
