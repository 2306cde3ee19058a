// Mixing and tempering, lines and warnings, in English.
import type { MixingWords, TemperingWords } from "../warmth-words.ts";

export const mixing: MixingWords = {
  water: "Water to add",
  waterSum: ({ total, target, weight, stock, at, stockWeight, sum }) =>
    `${total} at ${target} weigh ${weight}, ${stock} of stock at ${at} about ${stockWeight}: ${sum}`,
  hot: "From the hot tap",
  cold: "From the cold tap",
  pourSum: ({ sum, at, density }) => `${sum}; at ${at} a ml weighs ${density}`,
  marks: "To the marks",
  marksSum: ({ stock, cold, hot, whole, dilution }) =>
    `${stock} of stock, ${cold} cold, ${hot} hot make ${whole} of ${dilution}`,
  warnings: {
    nothingToMix:
      "The developer is used as stock, so there is no water to warm it with. Stand it in a water bath.",
    outOfReach: ({ target, coldest, warmest }) =>
      `With this stock and these taps ${target} cannot be mixed: it can be had from ${coldest} to ${warmest}. Cool or warm the stock first, take ice water, or mix what is nearest and stand it in a water bath.`,
    oneTap: ({ temperature }) =>
      `Both taps run at one temperature, so the mix will have ${temperature} whatever is taken of each.`,
    noWater:
      "Water is liquid from 0 to 100 °C (32 to 212 °F): one of the temperatures for mixing lies outside.",
    marksTooCoarse: ({ mark, dilution }) =>
      `Marks of ${mark} are too coarse for this mix: they make it ${dilution}. Measure the stock in a smaller graduate.`,
    lessThanAMark: ({ mark }) =>
      `Marks of ${mark} are too coarse for this mix: the stock does not come to half a mark. Measure the stock in a smaller graduate.`,
  },
};

export const tempering: TemperingWords = {
  thermometer: "Thermometer",
  reading: ({ at, temperature }) => `${at} ${temperature}`,
  readings: ({ count }) => (count === 1 ? "1 reading" : `${count} readings`),
  goes: "It goes",
  minutes: "minutes",
  goesSum: ({ sum, room, halfway, from, to, misfit }) =>
    `${sum}, half-way to ${room} every ${halfway} min; it may settle from ${from} to ${to}; the readings lie ${misfit} off it in the mean`,
  settles: ({ temperature }) => `settles at ${temperature}`,
  reached: ({ temperature }) => `At ${temperature}`,
  reachedSum: ({ sum, range }) =>
    `${sum} on the readings' clock; what the thermometer leaves open: ${range}`,
  orNever: ({ soonest }) => `${soonest} at the soonest, or never`,
  range: ({ from, to }) => `${from} to ${to}`,
  onTheWall: ({ time }) => `by the wall that is ${time}`,
  about: ({ time }) => `about ${time}`,
  muchLater: "much later",
  bathFor: ({ count }) => `Bath for ${count} minutes`,
  ice: "Ice for it",
  iceSum: ({ water, from, to, sum }) => `${water} of water from ${from} to ${to}: ${sum}`,
  asItIs: "Or as it is",
  asItIsSum: ({ temperature, time }) => `at ${temperature}, as last read, this film takes ${time}`,
  beyond: ({ by }) => `that is ${by} beyond the leaflet's rows`,
  readAgain: "read once more before you use it",
  guess: ({ time }) => `${time}, a guess`,
  warnings: {
    atTarget: ({ target }) =>
      `The developer is at ${target} as near as a thermometer tells. Take it out of the bath, or bring the bath to it.`,
    unfit: {
      "too-few":
        "Too few readings to say when: two with the water bath's temperature known, three without. Stir, and read again in two minutes.",
      "too-close": "The readings lie less than a minute apart. Read again in two or three.",
      still:
        "The readings do not move by more than a thermometer can show, so no time can be told. Wait, stir, read again; or the bath has done what it can.",
      noisy:
        "The readings jump to and fro by more than a thermometer does. Stir before each, hold the thermometer clear of the wall, and leave out any that were misread.",
      contradictory:
        "The readings do not go the way of one bath: they turn about, or move away from it. Was ice or water added, or one misread? Start afresh from the last.",
    },
    movesAway: ({ target }) =>
      `The developer is past ${target} and moves away from it. Take it out of this bath.`,
    neverReaches: ({ target, settles }) =>
      `In this bath the developer never comes to ${target}: it settles near ${settles}. Change the bath's water, or develop at what it is for the time given.`,
    askIce:
      "Say how warm the bath is and how much water it holds, and the ice for it is worked out.",
    mayNotReach: ({ target }) =>
      `These readings cannot tell whether the developer comes to ${target} in this bath at all. Read again in two or three minutes, or change the bath's water now.`,
    takesLong: ({ target, wait }) =>
      `It takes about ${wait} more to come to ${target}. A bath further off does it sooner; or develop at what it is for the time given.`,
    wait: ({ target, wait, range }) =>
      `Wait about ${wait} more for ${target} (${range}), read once again then, and take it out of the bath.`,
  },
};
