// What the page says of a plan, in French: the answer, the mix, the baths, how they are moved.

export const answers = {
  develop: "Développement",
  stopped: "À ne pas suivre :",
  none: "Pas encore de temps.",
  mix: "Mélange",
  stock: "base",
  water: "eau",
  working: "Calcul",
  baths: "Les bains, dans l’ordre",
  bath: "Bain",
  time: "Temps",
  temperature: "Température",
  moved: "Agitation",
  unsaid: "comme elle vient",
  left: "au repos",
  severity: { stop: "Halte", caution: "Attention", note: "Note" },
  warnings: "À voir d’abord",
  spoken: (time: string, mix: string) => `Développement : ${time}. Mélange : ${mix}.`,
  spokenMix: (stock: string, water: string | null) =>
    water === null
      ? `${stock} de solution de base`
      : `${stock} de solution de base et ${water} d’eau`,
  otherwise: (time: string) => `Laissé vide : ${time}.`,
  spokenWarning: (severity: string, text: string) => `${severity} : ${text}`,
};

export const agitation = {
  none: "au repos",
  continuous: "sans arrêt",
  first: (seconds: string) => `sans arrêt pendant ${seconds}`,
  after: (seconds: string, every: string) => `puis ${seconds} toutes les ${every}`,
  joined: (parts: readonly string[]) => parts.join(", "),
  taps: (count: number) =>
    count < 2 ? `${count} coup à chaque fois` : `${count} coups à chaque fois`,
};
