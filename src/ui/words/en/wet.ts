// What is shown to someone with wet hands: pressing along, and reading the thermometer at the sink.

type Measured = "pour-in" | "pour-out" | "inversion";

const begin: { readonly [what in Measured]: string } = {
  "pour-in": "Press as the first drop goes in",
  "pour-out": "Press as you begin to tip",
  inversion: "Press, then turn the tank over and back four times",
};
const end: { readonly [what in Measured]: string } = {
  "pour-in": "Press when the tank is full",
  "pour-out": "Press when it is empty",
  inversion: "Press once it is upright for the fourth time",
};

const ordinals = ["First", "Second", "Third"];

export const pressAlong = {
  name: {
    "pour-in": "How long pouring in takes",
    "pour-out": "How long pouring out takes",
    inversion: "How long one inversion takes",
  },
  advice: {
    "pour-in": "With water, in the light.",
    "pour-out": "With water, in the light, starting from a full tank.",
    inversion: "With water in the tank and the lid on, in the light.",
  },
  begin,
  end,
  turn: (turn: number, of: number) => `${ordinals[turn - 1]} of ${of}`,
  seconds: (time: string) => `${time} s`,
  /** Told to those who listen to the page, after each press; `last` is the time just taken. */
  status: {
    begin: (last: string, what: Measured) => `${last}. ${begin[what]}.`,
    end: (what: Measured) => `${end[what]}.`,
    done: (last: string) => `${last}. That was the third.`,
  },
  times: "Times so far",
  measured: { "pour-in": "Pouring in", "pour-out": "Pouring out", inversion: "One inversion" },
  /** Shown where a time is still to come. */
  none: "–",
  median: (time: string) => `Median ${time}`,
  alike: "All three are alike.",
  even: (apart: string) => `Shortest and longest are ${apart} apart. That is even enough.`,
  uneven: (apart: string) =>
    `Shortest and longest are ${apart} apart. That is much: three more would tell better.`,
  keep: (time: string) => `Keep ${time}`,
  again: "Again",
  takeBack: "Take back",
  leave: "Leave",
};

export const sink = {
  shown: "The thermometer shows",
  less: "Half a degree less",
  more: "Half a degree more",
  read: (temperature: string) => `Read ${temperature} now`,
  readings: "Readings so far",
  noReadings: "No reading yet.",
  reading: (clock: string, temperature: string) => `${clock} ${temperature}`,
  takeBack: "Take the last one back",
  done: "Done",
};
