// What the baths are called, by id: on their own, and within a sentence in the case that it wants.

export const baths = {
  prewet: { name: "Vorwässerung", within: "das Wasser" },
  developer: { name: "Entwickler", within: "den Entwickler" },
  stop: { name: "Stoppbad", within: "das Stoppbad" },
  fixer: { name: "Fixierbad", within: "das Fixierbad" },
  rinse: { name: "Zwischenwässerung", within: "das Wasser" },
  "wash-aid": { name: "Wässerungshilfe", within: "die Wässerungshilfe" },
  wash: { name: "Schlusswässerung", within: "das Wasser" },
  "wetting-agent": { name: "Netzmittel", within: "das Netzmittel" },
};

type Bath = keyof typeof baths;

const inBaths: { readonly [bath in Bath]: string } = {
  prewet: "in der Vorwässerung",
  developer: "im Entwickler",
  stop: "im Stoppbad",
  fixer: "im Fixierbad",
  rinse: "in der Zwischenwässerung",
  "wash-aid": "in der Wässerungshilfe",
  wash: "in der Schlusswässerung",
  "wetting-agent": "im Netzmittel",
};

const onBaths: { readonly [bath in Bath]: string } = {
  prewet: "zur Vorwässerung",
  developer: "zum Entwickler",
  stop: "zum Stoppbad",
  fixer: "zum Fixierbad",
  rinse: "zur Zwischenwässerung",
  "wash-aid": "zur Wässerungshilfe",
  wash: "zur Schlusswässerung",
  "wetting-agent": "zum Netzmittel",
};

/** On its own; a bath of another process goes by its id, here and below. */
export function bathName(id: string): string {
  return isBath(id) ? baths[id].name : id;
}

/** What is poured, behind a verb: "den Entwickler einfüllen". */
export function bathWithin(id: string): string {
  return isBath(id) ? baths[id].within : id;
}

/** Where the film is: "noch im Entwickler". */
export function inBath(id: string): string {
  return isBath(id) ? inBaths[id] : `im Bad ${id}`;
}

/** What something is about: "mehr zum Entwickler". */
export function onBath(id: string): string {
  return isBath(id) ? onBaths[id] : `zum Bad ${id}`;
}

function isBath(id: string): id is Bath {
  return Object.hasOwn(baths, id);
}
