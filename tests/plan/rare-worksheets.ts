// Worksheets for what a plan seldom says: with those of the bench, every sentence is said by one of them
// or by a random one.
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { gullrock } from "./worksheets.ts";

/** °F; `read` every so many minutes. */
const tempered = (target: number, bath: number | null, every: number, read: readonly number[]) => ({
  ...gullrock,
  tempering: {
    target: { f: target },
    readings: read.map((f, at) => ({ at: `${at * every}:00`, temperature: { f } })),
    ...(bath === null ? {} : { bath: { f: bath } }),
  },
});

const wedge = (from: number, rise: number) =>
  Array.from({ length: 16 }, (_, step) => Math.round((from + step * rise) * 100) / 100);

export const rareWorksheets: { readonly [what: string]: Worksheet } = {
  "a target at the water bath's own temperature": tempered(66, 66, 3, [75, 72.5, 71]),
  "a target that may not be reached": tempered(65, null, 1, [75, 74, 72, 71]),
  "a last reading off the others": tempered(63, 58, 2, [74, 72, 69, 69, 69]),
  "a developer that does not move": tempered(68, null, 3, [75, 75, 75]),
  "a developer that takes days": tempered(70, null, 400, [80, 78, 76.3]),
  "test films at one time": {
    ...gullrock,
    contrast: {
      tests: [
        { time: "7:00", gradient: 0.5 },
        { time: "7:00", gradient: 0.52 },
      ],
    },
  },
  "wedges with no exposure known, one of them begun too late": {
    ...gullrock,
    contrast: {
      stepLog: 0.15,
      tests: [
        { time: "7:00", densities: wedge(0.3, 0.07), baseFog: 0.3 },
        { time: "9:00", densities: wedge(0.6, 0.07), baseFog: 0.3 },
      ],
    },
  },
  "a film whose speed nobody knows": {
    ...gullrock,
    films: [...gullrock.films, { label: "Found in a drawer", size: "135-36", count: 1 }],
  },
};
