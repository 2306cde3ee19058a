// What the page says of a plan: the answer, the mix, the baths, how they are moved.

export const answers = {
  develop: "Develop for",
  /** In place of it, while a warning says stop. */
  stopped: "Not for use yet:",
  none: "No time yet.",
  mix: "Mix",
  stock: "stock",
  water: "water",
  working: "Working",
  baths: "The baths, in order",
  bath: "Bath",
  time: "Time",
  temperature: "Temperature",
  moved: "Moved",
  unsaid: "as it comes",
  left: "left alone",
  severity: { stop: "Stop", caution: "Caution", note: "Note" },
  warnings: "Look at this first",
  spoken: (time: string, mix: string) => `Develop for ${time}. Mix ${mix}.`,
  spokenMix: (stock: string, water: string | null) =>
    water === null ? `${stock} of stock` : `${stock} of stock and ${water} of water`,
  /** Of a field that is left empty. */
  otherwise: (time: string) => `Empty means ${time}.`,
  spokenWarning: (severity: string, text: string) => `${severity}: ${text}`,
};

export const agitation = {
  none: "left standing",
  continuous: "without a break",
  first: (seconds: string) => `without a break for ${seconds}`,
  after: (seconds: string, every: string) => `then ${seconds} every ${every}`,
  joined: (parts: readonly string[]) => parts.join(", "),
  taps: (count: number) => (count === 1 ? "1 tap after each" : `${count} taps after each`),
};
