// What the baths are called, by id: on their own, within a drawing, and within a sentence with the
// article that the noun takes.

export const baths = {
  prewet: { name: "Pré-molhagem", within: "pré-molhagem" },
  developer: { name: "Revelador", within: "revelador" },
  stop: { name: "Banho de paragem", within: "banho de paragem" },
  fixer: { name: "Fixador", within: "fixador" },
  rinse: { name: "Enxaguamento", within: "enxaguamento" },
  "wash-aid": { name: "Auxiliar de lavagem", within: "auxiliar de lavagem" },
  wash: { name: "Lavagem", within: "lavagem" },
  "wetting-agent": { name: "Agente molhante", within: "agente molhante" },
};

/** Those that are water when they are poured, as the voice says it. */
const waters: { readonly [id: string]: string } = {
  prewet: "a água de pré-molhagem",
  rinse: "a água de enxaguamento",
  wash: "a água de lavagem",
};

/** A bath of another process goes by its id. */
export function bathWithin(id: string): string {
  return Object.hasOwn(baths, id) ? baths[id as keyof typeof baths].within : id;
}

/** `"o revelador"`, `"a água de lavagem"`. */
export function theBath(id: string): string {
  return waters[id] ?? `o ${bathWithin(id)}`;
}

/** `"no revelador"`, `"na água de lavagem"`. */
export const inTheBath = (id: string): string => `n${theBath(id)}`;

/** The step and not the liquid: `"o revelador"`, `"a lavagem"`. */
export const theStep = (id: string): string =>
  `${id === "prewet" || id === "wash" ? "a" : "o"} ${bathWithin(id)}`;
