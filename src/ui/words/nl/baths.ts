// What the baths are called, by id: on their own, and within a sentence with the article.

export const baths = {
  prewet: { name: "Voorweken", within: "het water" },
  developer: { name: "Ontwikkelaar", within: "de ontwikkelaar" },
  stop: { name: "Stopbad", within: "het stopbad" },
  fixer: { name: "Fixeer", within: "het fixeer" },
  rinse: { name: "Tussenspoeling", within: "het water" },
  "wash-aid": { name: "Spoelhulp", within: "de spoelhulp" },
  wash: { name: "Eindspoeling", within: "het water" },
  "wetting-agent": { name: "Bevochtiger", within: "de bevochtiger" },
};

/** Those in which water alone is poured are called by more than that where it is not about pouring. */
const waters: { readonly [bath: string]: string } = {
  prewet: "het voorweekwater",
  rinse: "de tussenspoeling",
  wash: "de eindspoeling",
};

/** On its own; a bath of another process goes by its id, here and below. */
export function bathName(id: string): string {
  return isBath(id) ? baths[id].name : id;
}

/** What is poured, before a verb: "de ontwikkelaar ingieten". */
export function bathWithin(id: string): string {
  return isBath(id) ? baths[id].within : id;
}

/** Where the film is, and what something is about: "nog in de eindspoeling". */
export function theBath(id: string): string {
  return waters[id] ?? (isBath(id) ? baths[id].within : `het bad ${id}`);
}

function isBath(id: string): id is keyof typeof baths {
  return Object.hasOwn(baths, id);
}
