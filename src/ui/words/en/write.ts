// The words of Write up.

export const write = {
  lead: "Every run leaves a record here by itself.",
  onItsWay: "Looking for your runs…",
  empty:
    "No run yet. Once one has begun, it stands here by itself: the worksheet, when each step was pressed for, and room for what came of it.",
  toLightsOut: "Go to Lights out",
  refused:
    "This browser keeps nothing between visits, so earlier runs cannot be shown, and those below go when the page is closed. Save them to a file.",
  onlyHere: (count: number) =>
    count === 1
      ? "This browser would not keep one of these runs, or not what was said of it: that goes when the page is closed. Save all to a file."
      : `This browser would not keep ${count} of these runs, or not what was said of them: that goes when the page is closed. Save all to a file.`,
  unread: (count: number) =>
    count === 1
      ? "One more run was kept by another version, and cannot be shown. It is left as it is."
      : `${count} more runs were kept by another version, and cannot be shown. They are left as they are.`,
  saveAll: "Save all to a file",
  saved: (name: string) => `Saved as ${name}.`,
  file: "tankside-runs.json",
  untitled: "A run without a name",
  films: "Films",
  film: (label: string, size: string, count: number) =>
    count === 1 ? `${label}, ${size}` : `${count} × ${label}, ${size}`,
  rating: (at: number, box: number | undefined) =>
    box === undefined || box === at ? `at ${at}` : `at ${at}, box speed ${box}`,
  /** A film, and what it was metered at. */
  rated: (film: string, rating: string) => `${film}, ${rating}`,
  developer: "Developer",
  /** In place of a dilution. */
  stock: "stock",
  developed: "Developed for",
  bath: (time: string, temperature: string) => `${time} at ${temperature}`,
  ended: "Ended",
  endings: {
    done: "gone through to the end",
    left: (after: string) => `left after: ${after}`,
    leftAtOnce: "left before the first press",
    open: "not yet, or cut off",
  },
  presses: (count: number) => (count === 1 ? "1 press" : `${count} presses`),
  step: "Step",
  at: "Pressed at",
  after: "After the one before",
  note: "What came of it",
  noteHint: "Thin, good, dense? Even? What would you change?",
  noteKept: "Kept.",
  noteNotKept: "This browser would not keep it. Save all to a file before you leave.",
  again: "Do this again",
  takeOut: "Take out",
  takenOut: (title: string) => `“${title}” is taken out.`,
  notTakenOut: (title: string) => `This browser would not take out “${title}”. It is still here.`,
  notPutBack: (title: string) =>
    `This browser would not put “${title}” back with its pictures. It can be tried again for as long as the page is open.`,
  undo: "Undo",
  /** Read on from the words of a button, by those who listen to the page. */
  of: (title: string, begun: string) => ` (${title}, ${begun})`,
};

/** Steps that are no bath, by id. */
export const steps = {
  "lay-out": "Lay out",
  dry: "Dry reels",
  "wet-side": "The wet side",
  temper: "Temperature",
  quiet: "Flight mode",
  lamps: "Lamps covered",
  volume: "Volume",
  screen: "Screen",
  "lights-out": "Lights out",
  wait: "Look for light",
  open: "Open the film",
  cut: "Cut the end",
  feed: "Feed the end in",
  wind: "Onto the reel",
  spool: "Off the spool",
  tape: "The tape",
  others: "The other reels",
  count: "Count the sheets",
  holders: "Sheets in place",
  core: "Core and reels",
  close: "Close the tank",
  everyone: "Everyone done",
  light: "Lights on",
  "stay-dark": "Still dark",
  hang: "Hang to dry",
};
