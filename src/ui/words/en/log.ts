// The words of what Write up does with many runs, and of what a person adds to one.

export const find = {
  search: "Search",
  film: "Film",
  developer: "Developer",
  year: "Year",
  stars: "Stars",
  /** No choice made. */
  all: "all",
  /** A choice, and how many runs it would leave. */
  choice: (name: string, count: number) => `${name} (${count})`,
  count: (shown: number, all: number) =>
    shown === all ? (all === 1 ? "1 run" : `${all} runs`) : `${shown} of ${all} runs`,
  none: "No run is like that.",
  clear: "Show all runs",
  more: (count: number) => `Show ${count} more`,
};

export const stars = {
  asks: "How good are the negatives?",
  unsaid: "not said",
  words: {
    1: "not to be printed",
    2: "poor",
    3: "usable",
    4: "good",
    5: "as wished for",
  },
  each: (stars: number, word: string) => `${stars}: ${word}`,
};

export const pictures = {
  name: (count: number) =>
    count === 0 ? "Pictures of the negatives" : `Pictures of the negatives: ${count}`,
  hint: "They are made small, kept in this browser, and lose the place and time that a camera writes into them.",
  add: "Add pictures, from the camera or from files",
  alt: "What is to be seen in it",
  unnamed: "A picture nobody has described",
  remove: "Take this picture out",
  removed: "The picture is taken out.",
  notRemoved: "This browser would not take the picture out. It is still here.",
  notPicture: (name: string) => `“${name}” is no picture that this browser can read.`,
  noRoom: "There is no room left for the picture. Nothing else has changed.",
  notKept: "This browser would not keep the picture.",
};

export const dictate = {
  start: "Dictate",
  stop: "Stop dictating",
  listening: "Listening. What is understood goes behind what is typed.",
  away: "This browser may send what it hears to other machines, where it is turned into words. The microphone stays off unless you agree.",
  agree: "Agree and dictate",
  decline: "Rather not",
  failed: "The browser would not listen, or understood nothing. What is typed stays.",
};

export const again = {
  asks: "The developer’s temperature today",
  hint: (was: string) =>
    `It was ${was}. Leaflet, method and times stay; what was measured that day is left out.`,
  make: "Work it out",
  leave: "Not now",
};

export const beside = {
  choose: "Compare",
  chosen: "Chosen to compare",
  hint: "Choose one more run to compare.",
  name: "Side by side",
  what: "What",
  differed: "What differed",
  same: "What was the same",
  leave: "Close",
  begun: "Begun",
  title: "Name",
  temperature: "Temperature",
  planned: "Development planned",
  done: "Development done",
  method: "Method",
  tank: "Tank",
  agitated: "Agitation",
  pressed: "Pressed, counted from the first press",
  agitation: (first: string, every: string, lasts: string) =>
    `first ${first}, then every ${every} for ${lasts}`,
};

export const overTime = {
  name: "Over the months",
  hint: "A dot is the middle of a month’s runs, a stroke goes from the least to the most.",
  temperature: "Developer’s temperature",
  late: (bath: string) => `${bath}: emptied late`,
  table: "The same as tables",
  month: "Month",
  runs: "Runs",
  /** Heads the column of what the table is about. */
  figure: "Middle, and from least to most",
  span: (middle: string, least: string, most: string) => `${middle} (${least} to ${most})`,
};

export const everything = {
  table: "Save a table of the runs",
  tableFile: "tankside-runs.csv",
  choose: "Take in a file",
  hint: "The file holds runs, pictures, tanks, bottles, the lists of the room, the worksheet and the choices of this device. Your own voice has a file of its own.",
  notSaved:
    "Not all that is kept here could be put into a file, so none was made. Nothing is changed.",
  unreadable: (name: string) => `This browser could not read “${name}”. Nothing is changed.`,
  foreign: (name: string) =>
    `“${name}” is no file of runs that was saved here. Nothing is changed.`,
  newer: (name: string) =>
    `“${name}” was saved by a newer version, which knows more. Nothing is changed.`,
  damaged: (name: string, path: string) =>
    `“${name}” is damaged at ${path}, so none of it is used. Nothing is changed.`,
  nothingNew: (name: string) => `All that is in “${name}” is here already.`,
  offer: (name: string) => `Take in “${name}”?`,
  rule: "Of two that are the same run, picture or tank, the newer one stays; of a bottle, all that was written down in either place. The worksheet, the lists of the room and the choices that are here stay.",
  kind: "What",
  adds: "new",
  replaces: "replaced by newer",
  skips: "left as here",
  kinds: {
    runs: "Runs",
    pictures: "Pictures",
    tanks: "Tanks",
    worksheets: "Worksheet",
    bottles: "Bottles",
    rooms: "Lists of the room",
    settings: "Choices",
  },
  take: "Take it in",
  leave: "Leave it",
  taken: "It is taken in. The choices of this device hold from the next visit on.",
  takenBack: (stayed: number) =>
    stayed === 0
      ? "It is taken back: all is as it was before the file."
      : stayed === 1
        ? "It is taken back, but for one thing that has been changed since."
        : `It is taken back, but for ${stayed} things that have been changed since.`,
  notTakenBack: "This browser would not take it back. Nothing is changed.",
  noRoom: "There is no room for it in this browser. Nothing is changed.",
  refused: "This browser would not take it in. Nothing is changed.",
};
