// The words of Lights out. What the voice says stands in audio-scripts/.
import type { Deed } from "../../../process/moments.ts";
import type { Method } from "../../../trade/method.ts";
import { bathWithin } from "./baths.ts";

/** What the hands are to do, large enough to read across a room; by method where hands differ. */
export const runDeeds: { readonly [deed in Deed]: string } = {
  "pour-in": "Pour in",
  full: "Full",
  agitate: "Invert",
  invert: "Invert",
  rest: "Rest",
  tap: "Tap",
  "pour-out": "Pour out",
  empty: "Empty",
};

/** Moving the tank, by method. */
export const moves: { readonly [method in Method]: string } = {
  inversion: "Invert",
  twist: "Twist",
  rotary: "Roll",
  tray: "Shuffle",
  hanger: "Lift",
};

export const beforeRun = {
  noWorksheet: "The run follows a worksheet, and yours is not whole yet.",
  toWorkOut: "Go to Work out",
  ahead: "What will be led",
  develop: (films: string, time: string, temperature: string, developer: string) =>
    `${films}, for ${time} at ${temperature} in ${developer}.`,
  films: (films: readonly string[]) => films.join(", "),
  mix: (mix: string) => `Mix ${mix}.`,
  how: "How it is pressed",
  once: "One press anywhere on the screen, or any key, goes on to the next step.",
  twice:
    "Two presses in a row say where we are and what comes next. So does one, while a bath is running.",
  thrice:
    "Three in a row: the voice falls silent, and the tones of the moments go on; three more, and it speaks again.",
  held: "Held down for a second: the rest by ear, one choice after another; press when you hear yours. Held within three seconds of a press, it takes that press back; so does the Backspace key.",
  reading:
    "While the film develops, the arrow keys up and down enter a thermometer reading, spoken step by step; a press sets it, and the end moves by it.",
  clock: "Once the developer is in, nothing waits: the clock in the tank never stops.",
  dark: "From “Lights out” until the lid is locked the screen is black, pointer and all. Black is not off: keep the device under a dark cloth, and slip a hand beneath it to press.",
  volume: "Set the volume so that the tones carry over running water.",
  stops: "Before this is run",
  accept: "I have read this, and go on all the same.",
  begin: "Begin",
  beginHint: "the first press; the voice takes over from here",
  fetching: "Fetching the voice…",
  failed:
    "The voice could not be fetched, so nothing was begun. A network is needed once, the first time.",
  elsewhere:
    "A run is on in another tab or window of this browser. Go on there, or leave it first.",
  again: "Try again",
};

export const duringRun = {
  name: "The run",
  press: "Press anywhere to go on",
  where: "Where are we?",
  /** By how much is said now: what a press makes of it. */
  say: { full: "Say less", brief: "Tones only", tones: "Say all" },
  leave: "Leave the run",
  leaveTimed: "The clock in the tank goes on without you. Leave the run?",
  leaveWaiting: "Leave the run? What was done so far is kept in Write up.",
  stay: "Stay",
  now: (deed: string) => `Now: ${deed}`,
  next: "Next",
  in: (time: string) => `in ${time}`,
  after: (deed: string, time: string) => `then ${deed.toLowerCase()}, in ${time}`,
  /** @param bath its id */
  leftIn: (bath: string) => `left in the ${bathWithin(bath)}`,
  untilPour: "until the pour",
  emptying: "until it is empty",
  waiting: "Press",
  waitingFor: (title: string) => `to begin: ${title}`,
  said: "What was said",
  tookOver:
    "This device’s voice failed twice in a row: the voice that comes with Tankside speaks from here on.",
  over: "Done",
  overHint: "The film is hanging. What was done is in Write up.",
  toWriteUp: "Go to Write up",
};
