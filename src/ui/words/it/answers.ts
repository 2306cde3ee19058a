// What the page says of a plan, in Italian: the answer, the mix, the baths, how they are moved.

export const answers = {
  develop: "Sviluppa per",
  /** In place of it, while a warning says stop. */
  stopped: "Da non usare ancora:",
  none: "Ancora nessun tempo.",
  mix: "Prepara",
  stock: "stock",
  water: "acqua",
  working: "Il calcolo",
  baths: "I bagni, in ordine",
  bath: "Bagno",
  time: "Tempo",
  temperature: "Temperatura",
  moved: "Agitazione",
  unsaid: "come viene",
  left: "a riposo",
  severity: { stop: "Alt", caution: "Attenzione", note: "Nota" },
  warnings: "Guarda prima questo",
  spoken: (time: string, mix: string) => `Sviluppa per ${time}. Prepara ${mix}.`,
  spokenMix: (stock: string, water: string | null) =>
    water === null ? `${stock} di stock` : `${stock} di stock e ${water} d’acqua`,
  /** Of a field that is left empty. */
  otherwise: (time: string) => `Se resta vuoto vale ${time}.`,
  spokenWarning: (severity: string, text: string) => `${severity}: ${text}`,
};

export const agitation = {
  none: "a riposo",
  continuous: "senza pausa",
  first: (seconds: string) => `senza pausa per ${seconds}`,
  after: (seconds: string, every: string) => `poi ${seconds} ogni ${every}`,
  joined: (parts: readonly string[]) => parts.join(", "),
  taps: (count: number) => (count === 1 ? "1 colpo ogni volta" : `${count} colpi ogni volta`),
};
