// What the page says of a plan: the answer, the mix, the baths, how they are moved.

export const answers = {
  develop: "Revelar durante",
  /** In place of it, while a warning says stop. */
  stopped: "No lo uses todavía:",
  none: "Aún no hay tiempo.",
  mix: "Mezcla",
  stock: "stock",
  water: "agua",
  working: "Cálculo",
  baths: "Los baños, por orden",
  bath: "Baño",
  time: "Tiempo",
  temperature: "Temperatura",
  moved: "Agitación",
  unsaid: "como venga",
  left: "sin agitar",
  severity: { stop: "Alto", caution: "Atención", note: "Nota" },
  warnings: "Mira esto primero",
  spoken: (time: string, mix: string) => `Revela durante ${time}. Mezcla ${mix}.`,
  spokenMix: (stock: string, water: string | null) =>
    water === null ? `${stock} de stock` : `${stock} de stock y ${water} de agua`,
  /** Of a field that is left empty. */
  otherwise: (time: string) => `Si queda vacío, ${time}.`,
  spokenWarning: (severity: string, text: string) => `${severity}: ${text}`,
};

export const agitation = {
  none: "en reposo",
  continuous: "sin parar",
  first: (seconds: string) => `${seconds} sin parar`,
  after: (seconds: string, every: string) => `después ${seconds} cada ${every}`,
  joined: (parts: readonly string[]) => parts.join(", "),
  taps: (count: number) => (count === 1 ? "1 golpe cada vez" : `${count} golpes cada vez`),
};
