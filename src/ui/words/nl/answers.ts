// What the page says of a plan: the answer, the mix, the baths, how they are moved.

export const answers = {
  develop: "Ontwikkeltijd",
  /** In place of it, while a warning says stop. */
  stopped: "Nog niet gebruiken:",
  none: "Nog geen tijd.",
  mix: "Mengsel",
  stock: "stock",
  water: "water",
  working: "Berekening",
  baths: "De baden, op volgorde",
  bath: "Bad",
  time: "Tijd",
  temperature: "Temperatuur",
  moved: "Beweging",
  unsaid: "zoals het is",
  left: "niet bewegen",
  severity: { stop: "Stop", caution: "Let op", note: "Opmerking" },
  warnings: "Bekijk dit eerst",
  spoken: (time: string, mix: string) => `Ontwikkeltijd ${time}. Mengsel: ${mix}.`,
  spokenMix: (stock: string, water: string | null) =>
    water === null ? `${stock} stock` : `${stock} stock en ${water} water`,
  /** Of a field that is left empty. */
  otherwise: (time: string) => `Leeg geldt ${time}.`,
  spokenWarning: (severity: string, text: string) => `${severity}: ${text}`,
};

export const agitation = {
  none: "laten staan",
  continuous: "zonder pauze",
  first: (seconds: string) => `${seconds} zonder pauze`,
  after: (seconds: string, every: string) => `dan ${seconds} om de ${every}`,
  joined: (parts: readonly string[]) => parts.join(", "),
  taps: (count: number) =>
    count === 1 ? "daarna telkens 1 keer tikken" : `daarna telkens ${count} keer tikken`,
};
