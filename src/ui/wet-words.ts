// Every word shown to someone with wet hands: pressing along, and reading the thermometer at the sink.
// As data, so that another language is another module of the same shape.
import type { Pace } from "../trade/hands.ts";
import { type Measured, type Stage, turns } from "./press-along-model.ts";

/** Always a tenth: what was measured to a tenth is read as such. */
const seconds = (time: number) => `${time.toFixed(1)} s`;

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

export const pressAlongWords = {
  name: {
    "pour-in": "How long pouring in takes",
    "pour-out": "How long pouring out takes",
    inversion: "How long one inversion takes",
  } satisfies { readonly [what in Measured]: string },
  advice: {
    "pour-in": "With water, in the light.",
    "pour-out": "With water, in the light, starting from a full tank.",
    inversion: "With water in the tank and the lid on, in the light.",
  } satisfies { readonly [what in Measured]: string },
  begin,
  end,
  turn: (turn: number) => `${ordinals[turn - 1]} of ${turns}`,
  seconds,
  /** Told to those who listen to the page, after each press. */
  status: (what: Measured, stage: Stage, last: number | null) => {
    const taken = last === null ? "" : `${seconds(last)}. `;
    switch (stage.kind) {
      case "ready":
        return last === null ? "" : `${taken}${begin[what]}.`;
      case "running":
        return `${end[what]}.`;
      case "done":
        return `${taken}That was the third.`;
    }
  },
  times: "Times so far",
  measured: { "pour-in": "Pouring in", "pour-out": "Pouring out", inversion: "One inversion" },
  /** Shown where a time is still to come. */
  none: "–",
  median: (pace: Pace) => `Median ${seconds(pace.median)}`,
  spread: (pace: Pace, uneven: boolean) => {
    if (pace.spread < 0.05) return "All three are alike.";
    // The unit stays on the line of its number.
    const apart = `Shortest and longest are ${pace.spread.toFixed(1)}\u00a0s apart.`;
    return uneven
      ? `${apart} That is much: three more would tell better.`
      : `${apart} That is even enough.`;
  },
  keep: (pace: Pace) => `Keep ${seconds(pace.median)}`,
  again: "Again",
  takeBack: "Take back",
  leave: "Leave",
};

export const sinkWords = {
  shown: "The thermometer shows",
  less: "Half a degree less",
  more: "Half a degree more",
  // The unit stays on the line of its number.
  read: (temperature: string) => `Read ${temperature.replace(" ", "\u00a0")} now`,
  readings: "Readings so far",
  noReadings: "No reading yet.",
  reading: (clock: string, temperature: string) => `${clock} ${temperature}`,
  takeBack: "Take the last one back",
  done: "Done",
};
