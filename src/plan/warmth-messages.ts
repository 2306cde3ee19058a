// Every warning about mixing to a temperature and tempering: what is the matter, what would do.
// Apart from the code that finds them, so that they are read, translated and tested as words.
import type { Warning } from "./line.ts";

export function nothingToMix(): Warning {
  return note(
    "nothing-to-mix",
    "The developer is used as stock, so there is no water to warm it with. Stand it in a water bath.",
  );
}

export function mixOutOfReach(target: string, coldest: string, warmest: string): Warning {
  return caution(
    "mix-out-of-reach",
    `With this stock and these taps ${target} cannot be mixed: it can be had from ${coldest} to ${warmest}. Cool or warm the stock first, take ice water, or mix what is nearest and stand it in a water bath.`,
  );
}

export function oneTap(celsius: string): Warning {
  return note(
    "one-tap",
    `Both taps run at one temperature, so the mix will have ${celsius} whatever is taken of each.`,
  );
}

export function noWater(): Warning {
  return caution(
    "no-water",
    "Water is liquid from 0 to 100 °C (32 to 212 °F): one of the temperatures for mixing lies outside.",
  );
}

/** `parts`: what the marks make of the dilution; null where not even the stock comes to a mark. */
export function marksTooCoarse(mark: string, parts: string | null): Warning {
  const made = parts === null ? "the stock does not come to half a mark" : `they make it ${parts}`;
  return caution(
    "marks-too-coarse",
    `Marks of ${mark} are too coarse for this mix: ${made}. Measure the stock in a smaller graduate.`,
  );
}

export function isAtTarget(target: string): Warning {
  return note(
    "at-target",
    `The developer is at ${target} as near as a thermometer tells. Take it out of the bath, or bring the bath to it.`,
  );
}

const unfitWords = {
  "too-few":
    "Too few readings to say when: two with the water bath's temperature known, three without. Stir, and read again in two minutes.",
  "too-close": "The readings lie less than a minute apart. Read again in two or three.",
  still:
    "The readings do not move by more than a thermometer can show, so no time can be told. Wait, stir, read again; or the bath has done what it can.",
  noisy:
    "The readings jump to and fro by more than a thermometer does. Stir before each, hold the thermometer clear of the wall, and leave out any that were misread.",
  contradictory:
    "The readings do not go the way of one bath: they turn about, or move away from it. Was ice or water added, or one misread? Start afresh from the last.",
} as const;

export function temperingUnfit(why: keyof typeof unfitWords): Warning {
  return caution(`tempering-${why}`, unfitWords[why]);
}

export function movesAway(target: string): Warning {
  return caution(
    "moves-away",
    `The developer is past ${target} and moves away from it. Take it out of this bath.`,
  );
}

/** `askIce`: the bath is too warm, and not enough is known of it to reckon the ice. */
export function neverReaches(target: string, settles: string, askIce: boolean): Warning {
  const ice = askIce
    ? " Say how warm the bath is and how much water it holds, and the ice for it is worked out."
    : "";
  return caution(
    "never-reaches",
    `In this bath the developer never comes to ${target}: it settles near ${settles}. Change the bath's water, or develop at what it is for the time given.${ice}`,
  );
}

export function mayNotReach(target: string): Warning {
  return caution(
    "may-not-reach",
    `These readings cannot tell whether the developer comes to ${target} in this bath at all. Read again in two or three minutes, or change the bath's water now.`,
  );
}

export function takesLong(target: string, wait: string): Warning {
  return caution(
    "takes-long",
    `It takes about ${wait} more to come to ${target}. A bath further off does it sooner; or develop at what it is for the time given.`,
  );
}

/** `range`: as far as the readings leave it open, `"6:50 to 12:00"`. */
export function waitFor(target: string, wait: string, range: string): Warning {
  return note(
    "wait",
    `Wait about ${wait} more for ${target} (${range}), read once again then, and take it out of the bath.`,
  );
}

function caution(id: string, text: string): Warning {
  return { id, severity: "caution", text };
}

function note(id: string, text: string): Warning {
  return { id, severity: "note", text };
}
