// What the baths are called in French, by id: on their own, and within a sentence, with and without article.

export const baths = {
  prewet: { name: "Prémouillage", within: "prémouillage" },
  developer: { name: "Révélateur", within: "révélateur" },
  stop: { name: "Bain d’arrêt", within: "bain d’arrêt" },
  fixer: { name: "Fixateur", within: "fixateur" },
  rinse: { name: "Rinçage", within: "rinçage" },
  "wash-aid": { name: "Auxiliaire de lavage", within: "auxiliaire de lavage" },
  wash: { name: "Lavage", within: "lavage" },
  "wetting-agent": { name: "Agent mouillant", within: "agent mouillant" },
};

/** What is poured: `"le révélateur"`. */
const poured: { readonly [id in keyof typeof baths]: string } = {
  prewet: "l’eau de prémouillage",
  developer: "le révélateur",
  stop: "le bain d’arrêt",
  fixer: "le fixateur",
  rinse: "l’eau de rinçage",
  "wash-aid": "l’auxiliaire de lavage",
  wash: "l’eau de lavage",
  "wetting-agent": "l’agent mouillant",
};

/** For the sentences of this folder; a bath of another process goes by its id. */
export function bathWithin(id: string): string {
  return Object.hasOwn(baths, id) ? baths[id as keyof typeof baths].within : id;
}

/** The same with its article, as what goes into the tank and out of it. */
export function bathPoured(id: string): string {
  return Object.hasOwn(poured, id) ? poured[id as keyof typeof poured] : id;
}
