// What the baths are called in Italian, by id: on their own, and within a sentence, with the article or
// with the preposition that swallows it.

export const baths = {
  prewet: { name: "Prebagno", within: "prebagno" },
  developer: { name: "Rivelatore", within: "rivelatore" },
  stop: { name: "Bagno d’arresto", within: "bagno d’arresto" },
  fixer: { name: "Fissaggio", within: "fissaggio" },
  rinse: { name: "Risciacquo", within: "risciacquo" },
  "wash-aid": { name: "Ausiliario di lavaggio", within: "ausiliario di lavaggio" },
  wash: { name: "Lavaggio", within: "lavaggio" },
  "wetting-agent": { name: "Imbibente", within: "imbibente" },
};

interface Cases {
  /** What is poured. */
  readonly the: string;
  readonly about: string;
  readonly inThe: string;
}

const cases: { readonly [id in keyof typeof baths]: Cases } = {
  prewet: { the: "l’acqua di prebagno", about: "sul prebagno", inThe: "nel prebagno" },
  developer: { the: "il rivelatore", about: "sul rivelatore", inThe: "nel rivelatore" },
  stop: { the: "il bagno d’arresto", about: "sul bagno d’arresto", inThe: "nel bagno d’arresto" },
  fixer: { the: "il fissaggio", about: "sul fissaggio", inThe: "nel fissaggio" },
  rinse: { the: "l’acqua di risciacquo", about: "sul risciacquo", inThe: "nel risciacquo" },
  "wash-aid": {
    the: "l’ausiliario di lavaggio",
    about: "sull’ausiliario di lavaggio",
    inThe: "nell’ausiliario di lavaggio",
  },
  wash: { the: "l’acqua di lavaggio", about: "sul lavaggio", inThe: "nel lavaggio" },
  "wetting-agent": { the: "l’imbibente", about: "sull’imbibente", inThe: "nell’imbibente" },
};

const known = (id: string): id is keyof typeof baths => Object.hasOwn(baths, id);

/** For the sentences of this folder; a bath of another process goes by its id. */
export function bathWithin(id: string): string {
  return known(id) ? baths[id].within : id;
}

export function theBath(id: string): string {
  return known(id) ? cases[id].the : `il bagno ${id}`;
}

export function aboutBath(id: string): string {
  return known(id) ? cases[id].about : `sul bagno ${id}`;
}

export function inBath(id: string): string {
  return known(id) ? cases[id].inThe : `nel bagno ${id}`;
}
