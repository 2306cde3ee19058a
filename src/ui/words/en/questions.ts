// What Work out asks: its questions, what they disclose, the rows that can be added, what can be chosen,
// and the cautions.
import { bathWithin } from "./baths.ts";

export const rows = {
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
};

export const questions = {
  films: "Which films?",
  developer: "What does the leaflet say?",
  tank: "What tank, and how much fills it?",
  hands: "How do your hands move it?",
  clock: "How do you count the time?",
  baths: "Which other baths?",
  voice: "How shall it speak?",
  safety: "Before a bottle is opened",
  warmth: "How does it come to temperature?",
  contrast: "What did your test films show?",
};

export const more = {
  leaflet: "Pushing, pulling, used solution, a single row",
  tank: "Tray, drum or drifting temperature",
  /** @param bath its id */
  bath: (bath: string) => `More about the ${bathWithin(bath)}`,
  ownAgitation: "Agitation of its own; what is left empty goes as for the developer",
  inTank: "Readings in the tank while it develops",
  capacity: "How much it serves; replenisher",
  mixing: "Mix it to a temperature from two taps",
  tempering: "Stand it in a water bath, and read the thermometer",
  contrast: "Gradients, or a step wedge’s densities",
  measured: "Your own times, as measured",
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
  loading: { "": "to be loaded, step by step", done: "in the closed tank already" },
  "baths.*.afterwards": {
    "": "as it usually does",
    drain: "down the drain",
    waste: "to the waste vessel",
    return: "back into its vessel",
  },
  "voice.detail": {
    "": "As usual",
    full: "Whole sentences",
    brief: "Few words",
    tones: "Tones only",
  },
  "baths.*.clearing.times": {
    "": "twice as long, as usual",
    "2": "twice as long",
    "3": "three times as long",
  },
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
