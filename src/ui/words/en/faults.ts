// What is said of a field: what it may hold, how it was read, what is at fault or wanting.

export const faults = {
  holds: (typed: string, may: string) => `“${typed}” cannot be used. It may hold ${may}.`,
  list: (may: string) => `What stands here is not enough. It may hold ${may}.`,
  needed: (may: string) => `Needed: ${may}.`,
  readAs: (meaning: string) => `Read as ${meaning}.`,
  lent: (meaning: string) =>
    `Read as ${meaning}, the unit you used last. Write another beside it to change that.`,
  /** Of a file: where in it, what stands there, what may. */
  inFile: (path: string, holds: string, may: string) =>
    `${path} holds ${holds}; it may hold ${may}`,
  nothing: "nothing",
  number: 'a number such as "2" or "2.5"',
  seconds: 'seconds, such as "10" or "10 s", or "1:30"',
  numbers: 'numbers parted by spaces, such as "0.12 0.2 0.35"',
  minutes: 'minutes, such as "30" or "30 min"',
  perCent: 'per cent, such as "10"',
  counts: 'a number of inversions for each fill, such as "5, 10, 20"',
  why: "why?",
  spoken: (faults: number, wanting: number) =>
    `No answer yet. ${faults} to mend, ${wanting} to fill in.`,
  summary: (faults: number) => (faults === 1 ? "1 field to mend:" : `${faults} fields to mend:`),
  wanted: (count: number) => (count === 1 ? "1 field to fill in:" : `${count} fields to fill in:`),
};

/** What fields are called when something is said of them. */
export const names = {
  /** `"Film 2: Size"`, `"Fixer: Time"`. */
  within: (part: string, field: string) => `${part}: ${field}`,
  quoted: (name: string) => `“${name}”`,
};
