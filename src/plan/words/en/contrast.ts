// Test films and their contrast, lines and warnings, in English.
import type { ContrastWords } from "../contrast-words.ts";

const start = (fog: string, log: string, fromFirst: boolean) =>
  `0.1 above base and fog (${fog}) comes at log H ${log}${fromFirst ? " from the first step" : ""}`;

export const contrast: ContrastWords = {
  test: ({ number, time }) => `Test ${number}, ${time}`,
  wedge: ({ fog, log, rise, sum, fromFirst }) =>
    `${start(fog, log, fromFirst)}; 1.3 further density is up by ${rise}: ${sum}`,
  wedgeWithSpeed: ({ fog, log, rise, sum, speed, degrees, fromFirst }) =>
    `${start(fog, log, fromFirst)}; 1.3 further density is up by ${rise}; speed ${speed}, which is ${degrees}: ${sum}`,
  wedgeNotIso: ({ fog, log, rise, sum, fromFirst }) =>
    `${start(fog, log, fromFirst)}; 1.3 further density is up by ${rise}; not the contrast at which ISO 6 states a speed, 0.80 ± 0.05: ${sum}`,
  gradient: ({ gradient }) => `gradient ${gradient}`,
  growth: "Growth",
  minutes: "minutes",
  growthSum: ({ sum, points, misfit }) =>
    `${sum}, drawn through ${points}; off by ${misfit} in the mean`,
  point: ({ gradient, time }) => `${gradient} at ${time}`,
  range: ({ from, to }) => `from ${from} to ${to}`,
  contrast: "Contrast",
  stopLess: "One stop less",
  stopMore: "One stop more",
  timeSum: ({ gradient, sum }) => `gradient ${gradient}: ${sum}`,
  change: ({ percent, less }) => `${percent} % ${less ? "less" : "more"}`,
  warnings: {
    unfit: {
      "too-few":
        "Contrast is known from one time only. A second test film, at half or twice the time, shows how it grows.",
      "one-time":
        "All test films were developed for the same time. One more, at half or twice the time, shows how contrast grows.",
      contradictory:
        "The tests contradict the way contrast grows: longer development gave no more of it. Look for films interchanged or a figure misread.",
      straight:
        "Contrast grew as fast as the time, so no limit shows and no law can be drawn. A test at a longer time would find it.",
    },
    wedgeUnread: ({ test, why }) => `${test}: the wedge gives no gradient, since ${why}.`,
    wedge: {
      "too-few": "it has too few steps",
      falls: "its densities fall somewhere; they run from the least exposed step to the most",
      "starts-above":
        "its first step is already more than 0.10 above base and fog, so the speed point lies before it",
      "never-reaches": "no step comes to 0.10 above base and fog",
      "too-short": "it ends before log exposure 1.30 beyond the speed point",
    },
    beyondLimit: ({ gradient, limit }) =>
      `No time gives a gradient of ${gradient}: by these tests it never grows beyond ${limit}. Another developer or dilution might.`,
    outsideTests: ({ gradient, time, from, to }) =>
      `A gradient of ${gradient} would take ${time}, outside the times tested (${from} to ${to}), where the curve is a guess. Test a film there before you trust it.`,
  },
};
