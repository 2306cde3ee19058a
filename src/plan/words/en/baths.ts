// The lines of the hands and the baths, in English.
import type { BathWords, CapacityWords, FixerWords, HandsWords, WashWords } from "../bath-words.ts";

export const hands: HandsWords = {
  labels: { pourIn: "Pouring in", pourOut: "Pouring out", perInversion: "An inversion" },
  times: ({ times, spread, only }) =>
    `${times}: ${only ? "the only one" : "the middle one"}; ${spread} from shortest to longest`,
};

export const baths: BathWords = {
  names: {
    prewet: "Pre-wet",
    developer: "Developer",
    stop: "Stop bath",
    fixer: "Fixer",
    rinse: "Rinse",
    "wash-aid": "Wash aid",
    wash: "Wash",
    "wetting-agent": "Wetting agent",
  },
  unsaid: "the usual time, since none was given",
  given: "as given",
  clears: ({ time, sum }) => `a snip clears in ${time}: ${sum}`,
  clearsButGiven: ({ time, sum, result }) =>
    `as given; a snip clears in ${time}: ${sum} would be ${result}`,
  fills: ({ fills, inversion, sum }) =>
    `fresh water with ${fills} inversions, at ${inversion} an inversion: ${sum}`,
  fillsPoured: ({ fills, inversion, pouring, sum }) =>
    `fresh water with ${fills} inversions, at ${inversion} an inversion and ${pouring} to pour each time: ${sum}`,
};

export const fixer: FixerWords = {
  label: "Fixer's life",
  cleared: ({ fresh, sum, spent }) =>
    `it cleared in ${fresh} when fresh: ${sum}; at ${spent} times it is spent`,
  times: ({ times }) => `${times} times`,
};

export const wash: WashWords = {
  carriedLabel: "Carried into the wash",
  carried: ({ volume, strength, sum }) =>
    `${volume} of fixer with ${strength} of thiosulfate a litre: ${sum} on the film`,
  leftLabel: "Left by the wash",
  left: ({ way, sum, limit }) =>
    `${way}, if each soak comes to rest with the water in the film: ${sum}; the limit is ${limit}`,
  running: ({ fill, flow, time }) => `a fill of ${fill}, then ${flow} a minute for ${time}`,
  fills: ({ fill, count }) => (count === 1 ? `one fill of ${fill}` : `${count} fills of ${fill}`),
  lessThan: ({ residue }) => `less than ${residue}`,
  minutesLabel: "Minutes needed",
  minutes: ({ first, sum }) => `the first fill leaves ${first}; ${sum}`,
  noMinutes: "none",
  changesLabel: "Changes needed",
  changes: ({ sum, fill }) => `${sum}, rounded up, with fills of ${fill}`,
  changeCount: ({ count }) => (count === 1 ? "1 change" : `${count} changes`),
};

export const capacity: CapacityWords = {
  label: ({ bath }) => `${bath}: still serves`,
  sum: ({ volume, litres, perLitre, films, before, now }) =>
    `${volume} (${litres} l) × ${perLitre} films a litre = ${films} of 80 sq in; less ${before} before and ${now} now`,
  more: ({ films }) => `${films} more`,
  replenisherLabel: "Replenisher due",
  replenishedBefore: ({ films, each, due }) =>
    `${films} before × ${each} = ${due}, if it was not added then`,
  replenishNow: ({ films, each }) => `${films} now × ${each}, after this run`,
};
