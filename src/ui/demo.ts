// Two worksheets to begin from: the volunteers' darkroom in the old fog-signal house at Gullrock
// Light. All of it is invented, and none of it is used outside these two.
import type { Worksheet } from "../plan/worksheet.ts";

const gullrock: Worksheet = {
  tankside: 1,
  title: "Gullrock Light, Thursday evening",
  process: "bw-negative",
  films: [{ label: "Gullrock 125", size: "135-36", count: 2, boxSpeed: 125 }],
  developer: {
    label: "Kelp MQ",
    dilution: "1+3",
    leaflet: [
      { temperature: { f: 65 }, time: "11:45" },
      { temperature: { f: 68 }, time: "10:00" },
      { temperature: { f: 70 }, time: "9:00" },
      { temperature: { f: 75 }, time: "7:00" },
    ],
    temperature: { f: 69 },
    stockPerFilm: { ml: 75 },
  },
  tank: {
    method: "inversion",
    volume: { ml: 640 },
    pourIn: 10,
    pourOut: 10,
    handover: 5,
  },
  agitation: { first: 30, every: 30, for: 5, perInversion: 2.5, taps: 2 },
  clock: { starts: "pour-in", ends: "pour-out" },
  baths: {
    stop: { time: "0:30" },
    fixer: { time: "5:00" },
    "wash-aid": { time: "2:00" },
    wash: { time: "5:00" },
    "wetting-agent": { time: "0:45" },
  },
};

const foghorn: Worksheet = {
  ...gullrock,
  title: "Foghorn 400, one stop under",
  films: [{ label: "Foghorn 400", size: "135-36", count: 1, boxSpeed: 400, exposureIndex: 800 }],
  developer: {
    label: "Kelp MQ",
    dilution: "1+1",
    leaflet: [
      { temperature: { f: 68 }, time: "9:30" },
      { temperature: { f: 70 }, time: "8:30" },
    ],
    temperature: { f: 68.5 },
    stockPerFilm: { ml: 75 },
  },
  tank: { ...gullrock.tank, volume: { ml: 320 } },
};

export const demos = { gullrock, foghorn } as const;
export type DemoId = keyof typeof demos;
