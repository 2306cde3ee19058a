// What the baths are called, by id: on their own, and within a sentence.

export const baths = {
  prewet: { name: "Pre-wet", within: "pre-wet" },
  developer: { name: "Developer", within: "developer" },
  stop: { name: "Stop bath", within: "stop bath" },
  fixer: { name: "Fixer", within: "fixer" },
  rinse: { name: "Rinse", within: "rinse" },
  "wash-aid": { name: "Wash aid", within: "wash aid" },
  wash: { name: "Wash", within: "wash" },
  "wetting-agent": { name: "Wetting agent", within: "wetting agent" },
};

/** For the sentences of this folder; a bath of another process goes by its id. */
export function bathWithin(id: string): string {
  return Object.hasOwn(baths, id) ? baths[id as keyof typeof baths].within : id;
}
