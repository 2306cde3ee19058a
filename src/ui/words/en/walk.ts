// The words of Walk through, the score's own among them. What is spoken, and the names of the steps, come
// with the timeline.
import type { Method } from "../../../trade/method.ts";
import { bathWithin } from "./baths.ts";

export const walk = {
  noWorksheet: "There is nothing to walk through until the worksheet can be worked out.",
  toWorkOut: "Go to Work out",
  onItsWay: "Putting the steps together…",
  failed: "The steps could not be put together: the words and sounds could not be had here.",
  again: "Try again",
  stops: "Look at this first",
  stop: "Stop",
  stopsAfter: "The steps are shown all the same.",
  lead: "The whole of it, from the worksheet to the drying line. Nothing here starts a run.",
  steps: "Steps",
  print: "Print the whole score",
  total: (steps: number, clock: string) =>
    `${steps} steps. ${clock} by the clock; the others wait for your press.`,
  dark: "dark",
  light: "light",
  screenBlack: "The screen is black here.",
  ownPace: "no clock",
  /** Beneath a step's name. */
  hint: (light: string, lasts: string) => `${light}, ${lasts}`,
  spoken: (seconds: string) => `${seconds} of words, then it waits for your press.`,
  clocked: (time: string) => `${time} by the clock.`,
  previous: "Previous step",
  next: "Next step",
  step: (n: number, of: number) => `Step ${n} of ${of}`,
  /** Read on from that, by those who listen to the page. */
  stepTitle: (title: string) => `: ${title}`,
  hear: "Hear this step",
  hearWhy: "Hear why and how",
  stopHearing: "Stop",
  hearing: (time: string, of: string) => `${time} of ${of}`,
  notHeard: "No sound could be started here.",
  runIsOn: "A run is on, so nothing else sounds. It goes on in",
  lightsOut: "Lights out",
  /** What ends that sentence, behind the link. */
  runIsOnEnd: ".",
  inWords: "The same in words",
  time: "Time",
  hands: "Hands",
  voice: "Voice",
  hearFrom: "hear",
  /** Read on from the word before it, by those who listen to the page. */
  from: (time: string) => `from ${time}`,
  left: (count: number) => (count === 1 ? "1 sentence left out" : `${count} sentences left out`),
  leftWhy: "What found no room between the signals, and why.",
  nothingLeft: "All that ought to be said finds its room.",
};

export const score = {
  /** Said of the whole picture; what it holds stands beside it in words. */
  picture: (title: string) => `Score of ${title}`,
  region: (title: string) => `Score of ${title}, may be scrolled sideways`,
  key: "How to read it",
  keys: {
    words: "A bar as long as the words last, with the words above it.",
    count: "Three beats lead in.",
    moment:
      "A horn sounds at the moment itself: three arcs to pour in, heavier ones to pour out, two to begin moving the tank.",
    beats: "Beats for over and back.",
    rest: "A ring where the tank is set down; a dash where a soft tone says that all is well.",
    water:
      "Five lines are the bath: they open as it is poured in, swing with the tank, lie level while it rests, and close as it is poured out.",
    fold: "A long rest is folded, with its length written in the gap.",
    clock:
      "Black and white in turn: five seconds each; one second each where only words are heard.",
  },
  /** What stands for words, and for the length of a fold, where the signs are shown. */
  example: { words: "Ready", fold: "17 s" },
  /** @param bath its id */
  bath: (bath: string) => bathWithin(bath),
  press: "press",
  "pour-in": "pour in",
  full: "full",
  rest: "rest",
  "pour-out": "pour out",
  empty: "empty",
  tap: (count: number) => `tap ${count}`,
  still: (time: string) => time,
  moving: (count: number, time: string) => `×${count}, ${time}`,
};

/** A bout, short enough to stand under its notes. */
export const turnsInScore: { readonly [method in Method]: (count: number) => string } = {
  inversion: (count) => `invert ${count}`,
  twist: (count) => `twist ${count}`,
  rotary: (count) => `turn ${count}`,
  tray: (count) => `shuffle ${count}`,
  hanger: (count) => `lift ${count}`,
};

const times = (count: number) => (count === 1 ? "once" : count === 2 ? "twice" : `${count} times`);

/** A bout, as a sentence's part. */
export const turnsInWords: { readonly [method in Method]: (count: number) => string } = {
  inversion: (count) => `invert ${times(count)}`,
  twist: (count) => `twist ${times(count)}`,
  rotary: (count) => `turn the drum ${times(count)}`,
  tray: (count) => `shuffle ${times(count)}`,
  hanger: (count) => `lift and tilt ${times(count)}`,
};

export const deeds = {
  /** @param bath its id, here and below */
  pourIn: (bath: string) => `pour in the ${bathWithin(bath)}`,
  full: "tank full",
  until: (turns: string, time: string) => `${turns}, until ${time}`,
  rest: "rest",
  tap: (count: number) => `tap ${times(count)}`,
  pourOut: (bath: string) => `pour out the ${bathWithin(bath)}`,
  empty: "tank empty",
  joined: (deeds: readonly string[]) => deeds.join(", "),
};
