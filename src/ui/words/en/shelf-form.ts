// The words of what is written down about a bottle, and of the labels that are printed from it.

export const bottleForm = {
  name: "Name on the label",
  kind: "What it is for",
  state: "How it is used",
  strength: "Diluted",
  mixedOn: "Mixed on",
  by: "By whom, initials",
  from: "From what",
  volume: "How much",
  keeps: "How long it keeps, as the maker’s sheet has it",
  full: "Full, from mixing",
  half: "Half full or less",
  opened: "Once opened",
  unit: "counted in",
  units: { days: "days", weeks: "weeks", months: "months" },
  /** How many of them. */
  spanMay: (most: string) => `a whole number from 1 to ${most}`,
  filmsPerLitre: "Films a litre serves",
  filmsHint: "In films of 80 sq in (516 cm²): one 135-36, one 120, four 4x5in.",
  addPerFilm: "Time added for each film before, %",
  hazards: "Hazard statements",
  hazardsHint:
    "Copy them word for word from the maker’s sheet; none are made up here. Never use a bottle that food or drink came in.",
  on: "Day",
  size: "Film size",
  count: "How many",
  time: "It cleared in",
  film: "Film of the snip",
  freshFirst:
    "The first test wants the fresh bath, before any film goes through: later ones are held against it. Use the same film each time.",
  wanted: "This is wanted.",
  add: "Put it on the shelf",
  correct: "Keep the correction",
  writeDown: "Write it down",
  cancel: "Cancel",
};

export const bottleLabels = {
  title: "Labels to print",
  lead: "Hazard statements stand on a label only as they were copied from the maker’s sheet. Never use a bottle that food or drink came in.",
  print: (count: number) => (count === 1 ? "Print 1 label" : `Print ${count} labels`),
  mixed: "Mixed",
  by: "By",
  due: "Due",
  films: "Films",
  hazards: "Hazards, from the maker’s sheet:",
  /** Of more films than boxes. */
  each: (films: string) => `A box is ${films} films.`,
};

/** A fixer's tally and its tests, side by side. */
export const fixerWords = {
  title: "Tally and test",
  tally: "The tally of films says",
  test: "The clearing test says",
  tallySays: {
    good: (served: string, serves: string) => `good: ${served} of ${serves}`,
    spent: (served: string, serves: string) => `spent: ${served} of ${serves}`,
    silent: "nothing: no capacity is written down",
  },
  testSays: {
    good: (times: string) => `good: ${times} times the fresh value`,
    spent: (times: string) => `spent: ${times} times the fresh value`,
    silent: "nothing: the fresh bath was not tested with this film",
  },
  rule: "Rule: a fixer is spent when a snip takes twice as long to clear as in the fresh bath (NAVEDTRA 14209).",
  disagree: "The two disagree.",
  trust: {
    test: "Trust the test: it was made in this bath, and films differ in what they leave behind. Do not use it again.",
    tally:
      "Trust the tally: a bath may still clear quickly while it holds too much silver to be washed out. Do not use it again.",
  },
  since: (films: string) => `Since that test: ${films} films.`,
  on: "Day",
  film: "Film",
  cleared: "Cleared in",
  filmsBy: "Films by then",
  picture: "Clearing time over the bath’s life",
  across: "films through the bath",
  up: "clearing time",
  twice: "spent: twice fresh",
  capacity: "capacity",
  says: (tests: number, last: string) =>
    tests === 1 ? `One test: ${last}.` : `${tests} tests, the last ${last}.`,
};
