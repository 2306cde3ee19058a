// What the page says of a plan, in Portuguese: the answer, the mix, the baths, how they are moved.

export const answers = {
  develop: "Revelar durante",
  stopped: "Ainda não é de usar:",
  none: "Ainda sem tempo.",
  mix: "Misturar",
  stock: "solução-mãe",
  water: "água",
  working: "As contas",
  baths: "Os banhos, por ordem",
  bath: "Banho",
  time: "Tempo",
  temperature: "Temperatura",
  moved: "Agitação",
  unsaid: "tal como está",
  left: "sem mexer",
  severity: { stop: "Pare", caution: "Atenção", note: "Nota" },
  warnings: "Veja isto primeiro",
  spoken: (time: string, mix: string) => `Revele durante ${time}. Misture ${mix}.`,
  spokenMix: (stock: string, water: string | null) =>
    water === null ? `${stock} de solução-mãe` : `${stock} de solução-mãe e ${water} de água`,
  otherwise: (time: string) => `Vazio, vale ${time}.`,
  spokenWarning: (severity: string, text: string) => `${severity}: ${text}`,
};

export const agitation = {
  none: "em repouso",
  continuous: "sem parar",
  first: (seconds: string) => `sem parar durante ${seconds}`,
  after: (seconds: string, every: string) => `depois ${seconds} a cada ${every}`,
  joined: (parts: readonly string[]) => parts.join(", "),
  taps: (count: number) => (count === 1 ? "1 pancada por série" : `${count} pancadas por série`),
};
