// Two worksheets to begin from: the volunteers' darkroom in the old fog-signal house at Gullrock
// Light. All of it is invented, and none of it is used outside these two.
import type { Worksheet } from "../plan/worksheet.ts";
import type { Language } from "../units/language.ts";
import type { FirstWords } from "./words/words.ts";

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
    label: "two-reel steel",
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
  tank: { ...gullrock.tank, label: "one-reel steel", volume: { ml: 320 } },
  mixing: { target: { f: 68 }, stock: { f: 73 }, cold: { f: 58 }, hot: { f: 108 } },
  tempering: {
    target: { f: 68 },
    bath: { f: 66 },
    bathVolume: { ml: 4000 },
    began: "19:05",
    readings: [
      { at: "0:00", temperature: { f: 75 } },
      { at: "3:00", temperature: { f: 72.5 } },
      { at: "6:00", temperature: { f: 71 } },
    ],
  },
  contrast: {
    wanted: 0.6,
    tests: [
      { time: "5:00", gradient: 0.44 },
      { time: "8:00", gradient: 0.6 },
      { time: "12:00", gradient: 0.73 },
    ],
  },
};

export const demos = { gullrock, foghorn } as const;
export type DemoId = keyof typeof demos;

/** The same two where leaflets are in °C, with the round figures that such leaflets have. */
const inCelsius: { readonly [id in DemoId]: Worksheet } = {
  gullrock: {
    ...gullrock,
    developer: {
      ...gullrock.developer,
      leaflet: [
        { temperature: { c: 18 }, time: "12:00" },
        { temperature: { c: 20 }, time: "10:00" },
        { temperature: { c: 22 }, time: "8:15" },
        { temperature: { c: 24 }, time: "7:00" },
      ],
      temperature: { c: 20.5 },
    },
  },
  foghorn: {
    ...foghorn,
    developer: {
      ...foghorn.developer,
      leaflet: [
        { temperature: { c: 20 }, time: "9:30" },
        { temperature: { c: 22 }, time: "8:00" },
      ],
      temperature: { c: 20.3 },
    },
    mixing: { target: { c: 20 }, stock: { c: 23 }, cold: { c: 14 }, hot: { c: 42 } },
    tempering: {
      target: { c: 20 },
      bath: { c: 19 },
      bathVolume: { ml: 4000 },
      began: "19:05",
      readings: [
        { at: "0:00", temperature: { c: 24 } },
        { at: "3:00", temperature: { c: 22.6 } },
        { at: "6:00", temperature: { c: 21.6 } },
      ],
    },
  },
};

/** What a person of that language would have written; English is at home with °F. */
export function demoIn(language: Language, id: DemoId, says: FirstWords["demo"]): Worksheet {
  const worksheet = language === "en" ? demos[id] : inCelsius[id];
  const { title, tank } = says[id];
  return { ...worksheet, title, tank: { ...worksheet.tank, label: tank } };
}
