// The words of the frame around every place, of the greeting, and of what is done to the worksheet as a whole.

export const frame = {
  /** The same in every language. */
  program: "Tankside",
  skip: "Skip to the page",
  places: "Places",
  title: (place: string) => `${place} · Tankside`,
  opening: "Opening…",
  notOpened: "This place could not be fetched. The worksheet is safe.",
  again: "Try again",
  colophon: "Works without a network, sends nothing anywhere, keeps what you type in this browser.",
  accessibility: "Accessibility",
};

export const language = {
  choose: "Language",
  notFetched: (language: string) => `${language} could not be fetched. The page stays as it was.`,
  notKept: "This browser will not keep the choice between visits.",
  /** Said where the voice of the worksheet has gone along. */
  voiceToo: (language: string) =>
    `The voice of this worksheet speaks ${language} now. Undo leaves it as it was.`,
};

export const places = {
  "work-out": { name: "Work out", hint: "the time and the mix" },
  "walk-through": { name: "Walk through", hint: "each step, in the light" },
  "lights-out": { name: "Lights out", hint: "the run, by ear" },
  "write-up": { name: "Write up", hint: "what came of it" },
};

export const greeting = {
  says: "Film in the dark, both hands wet. Fill in the page below, and a voice will tell you what to do and when.",
  hear: "Hear a pour",
  hearHint: "ten seconds, from the count-in to the first inversion",
  hearing: "Listen…",
  notHeard: "No sound could be started here.",
  begin: "Begin the run",
  beginHint: "goes to Lights out",
};

export const sheet = {
  tools: "This worksheet",
  save: "Save to a file",
  open: "Open a file",
  demo: "Start from Gullrock Light",
  demoPushed: "Start from Foghorn 400",
  empty: "Start empty",
  undo: "Undo",
  redo: "Redo",
  dropHere: "Let go to open this worksheet",
};

export const notices = {
  practice:
    "A practice worksheet from Gullrock Light is filled in. Change anything, or start empty.",
  demo: "The worksheet from Gullrock Light is filled in. Undo brings yours back.",
  empty: "The page is empty. Undo brings the last worksheet back.",
  opened: (name: string) => `${name} is open. Undo brings the last worksheet back.`,
  saved: (name: string) => `Saved as ${name}.`,
  notSaved: "Not saved yet: a file has to be whole. These fields first, please:",
  notWorksheet: (name: string) =>
    `${name} cannot be used. Nothing here has changed. What it holds:`,
  notFile: "That could not be read as a file. Nothing here has changed.",
  notKept:
    "This browser will not keep the worksheet between visits. Save it to a file before you leave.",
  removed: (row: string) => `${row} is taken out. Undo brings it back.`,
  undone: "Undone.",
  redone: "Done again.",
};

/** What stands in the worksheets from Gullrock Light. */
export const demo = {
  gullrock: { title: "Gullrock Light, Thursday evening", tank: "two-reel steel" },
  foghorn: { title: "Foghorn 400, one stop under", tank: "one-reel steel" },
};
