// What the page says of a plan: the answer, the mix, the baths, how they are moved.

export const answers = {
  develop: "Entwicklungszeit",
  /** In place of it, while a warning says stop. */
  stopped: "Noch nicht verwenden:",
  none: "Noch keine Zeit.",
  mix: "Ansatz",
  stock: "Vorratslösung",
  water: "Wasser",
  working: "Rechenweg",
  baths: "Die Bäder der Reihe nach",
  bath: "Bad",
  time: "Zeit",
  temperature: "Temperatur",
  moved: "Bewegung",
  unsaid: "Temperatur offen",
  left: "nicht bewegt",
  severity: { stop: "Halt", caution: "Vorsicht", note: "Hinweis" },
  warnings: "Das zuerst ansehen",
  spoken: (time: string, mix: string) => `Entwicklungszeit ${time}. Ansatz: ${mix}.`,
  spokenMix: (stock: string, water: string | null) =>
    water === null ? `${stock} Vorratslösung` : `${stock} Vorratslösung und ${water} Wasser`,
  /** Of a field that is left empty. */
  otherwise: (time: string) => `Leer gilt ${time}.`,
  spokenWarning: (severity: string, text: string) => `${severity}: ${text}`,
};

export const agitation = {
  none: "ruhig stehen lassen",
  continuous: "ohne Pause",
  first: (seconds: string) => `${seconds} ohne Pause`,
  after: (seconds: string, every: string) => `dann alle ${every} für ${seconds}`,
  joined: (parts: readonly string[]) => parts.join(", "),
  taps: (count: number) =>
    count === 1 ? "danach je einmal aufklopfen" : `danach je ${count}-mal aufklopfen`,
};
