// The words of the shelf of bottles: how each stands, what was done with it, and what can be.

export const shelf = {
  title: "The shelf of bottles",
  /** Beside a run. */
  poursFrom: "Bottles",
  lead: "What was mixed, opened and used. A run that is poured from a bottle writes its films down here by itself.",
  looking: "Looking at the shelf…",
  refused: "This browser keeps nothing between visits, so nothing can stand on the shelf.",
  unread: (count: number) =>
    count === 1
      ? "One more bottle was kept by another version, and cannot be shown. It is left as it is."
      : `${count} more bottles were kept by another version, and cannot be shown. They are left as they are.`,
  empty: "Nothing stands on it yet.",
  demo: "Put Gullrock Light’s bottles on it",
  add: "Add a bottle",
  poured: (count: number) => `Poured away: ${count}`,
  removed: (count: number) => `Deleted: ${count}`,
  states: { working: "working solution", stock: "stock, to be diluted" },
  facts: {
    what: "What it is",
    mixed: "Mixed",
    left: "Left",
    films: "Films through it",
    due: "Due",
    stands: "Where it is",
  },
  by: (initials: string) => `by ${initials}`,
  from: (what: string) => `from ${what}`,
  outOf: (some: string, all: string) => `${some} of ${all}`,
  /** Films of 80 sq in, and the sizes that they come to it from. */
  films: (films: string, sizes: string) => `${films} (${sizes})`,
  /** Where some of the solution was poured off or topped up. */
  counted: (films: string) => `what is left counts as ${films}`,
  dueBy: {
    full: (since: string) => `mixed on ${since}`,
    half: (since: string) => `half full or less since ${since}`,
    opened: (since: string) => `opened on ${since}`,
  },
  past: "past its day",
  notSaid: "not said",
  aside: "set aside, not to be used",
  awaySince: (day: string) => `poured away on ${day}`,
  history: (count: number) => (count === 1 ? "History: 1 entry" : `History: ${count} entries`),
  told: {
    mixed: (volume: string) => `mixed, ${volume}`,
    corrected: "corrected",
    films: (films: string) => `films through it: ${films}`,
    drawn: (bath: string, films: string) => `a run, ${bath}: ${films}`,
    took: (bath: string, volume: string) => `a run, ${bath}: ${volume} used up`,
    taken: (volume: string) => `${volume} poured off`,
    added: (volume: string) => `${volume} added`,
    tested: (time: string, film: string) => `cleared in ${time}: ${film}`,
    opened: "opened",
    "set-aside": "set aside",
    "taken-up": "back on the shelf",
    "poured-away": "poured away",
    removed: "deleted",
  },
  takenBack: "taken back",
  acts: {
    films: "Films through it",
    tested: "Clearing test",
    opened: "Opened",
    taken: "Some poured off",
    added: "Some added",
    "set-aside": "Set aside",
    "taken-up": "Back on the shelf",
    "poured-away": "Poured away",
    corrected: "Correct",
    removed: "Delete",
  },
  undo: "Take back",
  redo: "Put back",
  undoLast: "Undo",
  /** Read on from the words of a button, by those who listen to the page. */
  of: (name: string) => ` (${name})`,
  kept: (name: string) => `“${name}”: written down.`,
  taken: (name: string) => `“${name}”: taken back.`,
  notKept: "This browser would not keep it. Nothing has changed.",
  refusals: {
    "more-than-left": "There is not so much left in it.",
    "opened-already": "It has been opened before.",
    "poured-away": "It was poured away. Take that back first.",
    "before-mixed": "It was mixed later than that day.",
    "name-taken": "Another bottle on the shelf has this name. Two alike get mixed up.",
  },
};

/** In Work out, beside a bath. */
export const pick = {
  none: "none",
  taken: (name: string) => `Filled in from the shelf: ${name}. Undo brings back what stood there.`,
  putBack: "The bottle is put back. What it filled in still stands.",
  gone: (name: string) =>
    `No bottle called “${name}” stands on this shelf. A run is written down nowhere.`,
  mixed: (day: string, days: string) => `mixed on ${day}, ${days} ago`,
  days: (count: number) => (count === 1 ? "1 day" : `${count} days`),
  past: (day: string) => `It was due on ${day}. Use a fresh one, or test it first.`,
  aside: "It is set aside: not to be used.",
  little: (left: string, wanted: string) => `It holds ${left}; this run wants ${wanted}.`,
  spent: "By its clearing test it is spent.",
  again: "Fill in as it stands now",
};
