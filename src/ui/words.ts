// Every word that the frame and Work out show, in one place and as data, so that another language is
// another module of the same shape. What the voice says stands in audio-scripts/. Past 200 lines
// because every field has its label here.
import type { FieldPattern } from "./fields.ts";
import type { PlaceId } from "./place.ts";

export interface FieldWords {
  readonly label: string;
  /** One press away: why it is asked, or what it does. */
  readonly why?: string;
}

export const program = "Tankside";

export const frameWords = {
  skip: "Skip to the page",
  places: "Places",
  title: (place: PlaceId) => `${placeWords[place].name} · ${program}`,
  opening: "Opening…",
  notOpened: "This place could not be fetched. The worksheet is safe.",
  again: "Try again",
  colophon: "Works without a network, sends nothing anywhere, keeps what you type in this browser.",
};

export const placeWords: Record<PlaceId, { readonly name: string; readonly hint: string }> = {
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

export const sheetWords = {
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

export const rowWords = {
  films: { all: "Films", one: (n: number) => `Film ${n}`, add: "Add another film" },
  "developer.leaflet": {
    all: "Rows of the leaflet",
    one: (n: number) => `Row ${n}`,
    add: "Add a row of the leaflet",
  },
  "developer.readings": {
    all: "Readings in the tank",
    one: (n: number) => `Reading ${n}`,
    add: "Add a reading from the tank",
  },
  "tempering.readings": {
    all: "Readings in the bath",
    one: (n: number) => `Reading ${n}`,
    add: "Add a reading",
  },
  "contrast.tests": {
    all: "Test films",
    one: (n: number) => `Test ${n}`,
    add: "Add a test film",
  },
  remove: "Take out",
} as const;

export const questions = {
  films: "Which films?",
  developer: "What does the leaflet say?",
  tank: "What tank, and how much fills it?",
  hands: "How do your hands move it?",
  clock: "How do you count the time?",
  baths: "Which other baths?",
  voice: "How shall it speak?",
  safety: "Before a bottle is opened",
};

export const more = {
  leaflet: "Pushing, pulling, used solution, a single row",
  tank: "Tray, drum or drifting temperature",
  bath: (bath: string) => `More about the ${bath.toLowerCase()}`,
  ownAgitation: "Agitation of its own; what is left empty goes as for the developer",
};

export const faultWords = {
  holds: (typed: string, may: string) => `“${typed}” cannot be used. It may hold ${may}.`,
  list: (may: string) => `What stands here is not enough. It may hold ${may}.`,
  needed: (may: string) => `Needed: ${may}.`,
  readAs: (meaning: string) => `Read as ${meaning}.`,
  lent: (meaning: string) =>
    `Read as ${meaning}, the unit you used last. Write another beside it to change that.`,
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

export const answerWords = {
  develop: "Develop for",
  /** In place of it, while a warning says stop. */
  stopped: "Not for use yet:",
  none: "No time yet.",
  mix: "Mix",
  stock: "stock",
  water: "water",
  working: "Working",
  baths: "The baths, in order",
  bath: "Bath",
  time: "Time",
  temperature: "Temperature",
  moved: "Moved",
  unsaid: "as it comes",
  left: "left alone",
  severity: { stop: "Stop", caution: "Caution", note: "Note" },
  warnings: "Look at this first",
  spoken: (time: string, mix: string) => `Develop for ${time}. Mix ${mix}.`,
  spokenMix: (stock: string, water: string | null) =>
    water === null ? `${stock} of stock` : `${stock} of stock and ${water} of water`,
  spokenWarning: (severity: string, text: string) => `${severity}: ${text}`,
};

export const bathWords = {
  otherwise: (time: string) => `Empty means ${time}.`,
};

export const agitationWords = {
  none: "left standing",
  continuous: "without a break",
  first: (seconds: string) => `without a break for ${seconds}`,
  after: (seconds: string, every: string) => `then ${seconds} every ${every}`,
  taps: (count: number) => (count === 1 ? "1 tap after each" : `${count} taps after each`),
};

export const choices = {
  "tank.method": {
    inversion: "Turned over by hand",
    twist: "Spindle twisted",
    rotary: "Drum, turned all the time",
    tray: "Tray",
    hanger: "Hangers",
  },
  "clock.starts": { "pour-in": "with the first drop in", full: "when the tank is full" },
  "clock.ends": { "pour-out": "as pouring out begins", empty: "when the tank is empty" },
  "baths.*.afterwards": {
    "": "as it usually does",
    drain: "down the drain",
    waste: "to the waste vessel",
    return: "back into its bottle",
  },
  "voice.detail": {
    "": "As usual",
    full: "Whole sentences",
    brief: "Few words",
    tones: "Tones only",
  },
};

export const fieldWords: Partial<Record<FieldPattern, FieldWords>> = {
  title: { label: "Name of this worksheet" },
  "films[].label": { label: "Film" },
  "films[].size": { label: "Size" },
  "films[].count": { label: "How many" },
  "films[].boxSpeed": { label: "Speed on the box" },
  "films[].exposureIndex": {
    label: "Metered at",
    why: "The speed the meter was set to. Empty means the speed on the box. All films in one tank get one time, so they should share it.",
  },
  "developer.label": { label: "Developer" },
  "developer.dilution": {
    label: "Dilution",
    why: "Parts of stock, then parts of water: 1+3 is one of stock and three of water. “stock” is undiluted. 1:3 is not taken, since people read it in two ways.",
  },
  "developer.leaflet[].temperature": { label: "Temperature" },
  "developer.leaflet[].time": { label: "Time" },
  "developer.leaflet[].exposureIndex": { label: "If metered at" },
  "developer.temperature": {
    label: "In the mixed bath now",
    why: "What the thermometer says in the bath itself, just before it is used. The time is worked out for this.",
  },
  "developer.perDegree": {
    label: "Change per °C",
    why: "k in time × e^(−k × °C), for a leaflet with a single row. Empty means 0.099.",
  },
  "developer.perStop.pull": { label: "Less time for each stop over, %", why: "Empty means 10." },
  "developer.perStop.push": { label: "More time for each stop under, %", why: "Empty means 40." },
  "developer.stockPerFilm": {
    label: "Least stock for one film",
    why: "What 80 square inches use up: one 135-36, one 120 or four 4×5 in. The maker’s sheet gives it. Left empty, nothing checks it.",
  },
  "developer.filmsBefore": { label: "Films through it before" },
  "developer.perFilmBefore": { label: "More time for each of them, %" },
  "tank.method": { label: "Method" },
  "tank.volume": { label: "To cover the film" },
  "tank.pourIn": {
    label: "Pouring in takes",
    why: "Time yourself with water. The clock is planned around it.",
  },
  "tank.pourOut": { label: "Pouring out takes" },
  "tank.handover": { label: "From empty to the next bath" },
  "tank.timeFactor": {
    label: "Time multiplied by",
    why: "For this method. Empty means 1, or 0.85 for a drum.",
  },
  "tank.room": {
    label: "The room",
    why: "A tank drifts toward the room. With this and the half-way time, the answer allows for it.",
  },
  "tank.halfway": {
    label: "Half-way there in",
    why: "Minutes in which a tank of water goes half the way from its temperature to the room’s.",
  },
  "agitation.first": { label: "At first, without a break" },
  "agitation.every": { label: "Then every" },
  "agitation.for": {
    label: "For",
    why: "0 lets the bath stand; as long as “every”, or longer, never stops.",
  },
  "agitation.perInversion": { label: "Over and back takes" },
  "agitation.taps": { label: "Taps after each" },
  "clock.starts": { label: "The clock starts" },
  "clock.ends": { label: "Time is up" },
  "baths.*.use": { label: "Used" },
  "baths.*.time": { label: "Time" },
  "baths.*.temperature": { label: "Temperature" },
  "baths.*.agitation.first": { label: "At first, without a break" },
  "baths.*.agitation.every": { label: "Then every" },
  "baths.*.agitation.for": { label: "For" },
  "baths.*.agitation.perInversion": { label: "Over and back takes" },
  "baths.*.agitation.taps": { label: "Taps after each" },
  "baths.*.afterwards": { label: "Poured out, it goes" },
  "baths.*.fills": {
    label: "By fills and dumps",
    why: "In place of a time: the inversions in each fill of fresh water, as 5, 10, 20.",
  },
  "voice.detail": { label: "How much is said" },
  "voice.rate": { label: "Pace", why: "1 is as recorded; 0.8 is slowest, 1.6 quickest." },
};

/** Sources: the general cautions of the trade; the particular ones beside their figures in the tests. */
export const cautions: readonly string[] = [
  "The maker’s safety sheet and the rules of the house come first.",
  "Gloves and eye protection, from the first bottle to the last rinse.",
  "Acid into water, never water into acid.",
  "Never let fixer or sulphite meet acid: it gives off sulphur dioxide.",
  "Air that moves. No food or drink in the room.",
  "Glass breaks and a wet floor slips: wipe spills at once.",
  "On the wet side, only what runs on a battery.",
];
