// What the baths are called, by id: on their own, and within a sentence.

export const baths = {
  prewet: { name: "Prehumectado", within: "agua de prehumectado" },
  developer: { name: "Revelador", within: "revelador" },
  stop: { name: "Baño de paro", within: "baño de paro" },
  fixer: { name: "Fijador", within: "fijador" },
  rinse: { name: "Enjuague", within: "agua de enjuague" },
  "wash-aid": { name: "Auxiliar de lavado", within: "auxiliar de lavado" },
  wash: { name: "Lavado", within: "agua de lavado" },
  "wetting-agent": { name: "Humectante", within: "humectante" },
};

/**
 * For the sentences of this folder, behind "el", "al" or "del", which suit them all; a bath of another
 * process goes by its id.
 */
export function bathWithin(id: string): string {
  return Object.hasOwn(baths, id) ? baths[id as keyof typeof baths].within : id;
}
