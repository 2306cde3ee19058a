// Worksheets that the plan's tests start from, and a way to change them.
import type { Worksheet } from "../../src/plan/worksheet.ts";

/** The volunteers' darkroom at Gullrock Light: one roll, nothing out of the way. */
export const gullrock: Worksheet = {
  tankside: 1,
  title: "Tuesday's roll",
  process: "bw-negative",
  films: [{ label: "Gullrock 125", size: "135-36", count: 1, boxSpeed: 125 }],
  developer: {
    label: "Kelp MQ",
    dilution: "1+3",
    leaflet: [
      { temperature: { f: 68 }, time: "10:00" },
      { temperature: { f: 70 }, time: "9:00" },
    ],
    temperature: { f: 69 },
    stockPerFilm: { ml: 75 },
  },
  tank: { method: "inversion", volume: { ml: 300 }, pourIn: 12, pourOut: 10 },
  agitation: { first: 30, every: 60, for: 10, perInversion: 2.5, taps: 2 },
  clock: { starts: "full", ends: "pour-out" },
};

/** Every optional field, in the units the other one is not in. */
export const foghorn: Worksheet = {
  tankside: 1,
  title: "Night exercise",
  language: "en-GB",
  process: "bw-negative",
  films: [
    { label: "Foghorn 400", size: "120", count: 2, boxSpeed: 400, exposureIndex: 800 },
    { label: "Foghorn 400", size: "4x5in", count: 4, boxSpeed: 400, exposureIndex: 800 },
  ],
  developer: {
    label: "Kelp MQ",
    dilution: "1+1.5",
    leaflet: [
      { temperature: { c: 18 }, time: "12:30" },
      { temperature: { c: 20 }, time: "10:00" },
      { temperature: { c: 24 }, time: "7:00", exposureIndex: 400 },
      { temperature: { c: 20 }, time: "13:00", exposureIndex: 1600 },
    ],
    temperature: { c: 21 },
    perDegree: 0.1,
    perStop: { pull: 0.12, push: 0.45 },
    stockPerFilm: { flOz: 4 },
    filmsBefore: 2,
    perFilmBefore: 0.05,
  },
  tank: {
    method: "rotary",
    volume: { flOz: 40 },
    pourIn: 15,
    pourOut: 12.5,
    handover: 3,
    timeFactor: 0.9,
    room: { f: 61 },
    halfway: 40,
  },
  agitation: { first: 30, every: 30, for: 5, perInversion: 2.5, taps: 1 },
  clock: { starts: "pour-in", ends: "empty" },
  baths: {
    prewet: {},
    stop: { time: "0:45", temperature: { c: 20 } },
    fixer: { agitation: { first: 15, every: 30, for: 5, perInversion: 2.5, taps: 0 } },
    rinse: { afterwards: "drain" },
    "wash-aid": { time: "2:00", afterwards: "return" },
    wash: { fills: [5, 10, 20] },
    "wetting-agent": { skip: true },
  },
  voice: { detail: "brief", rate: 1.1 },
};

/** A worksheet with parts of it replaced. */
export function changed(
  from: Worksheet,
  parts: { readonly [Field in keyof Worksheet]?: Partial<Worksheet[Field]> | undefined },
): Worksheet {
  const merged = Object.entries(parts).map(([field, part]) => {
    const was = from[field as keyof Worksheet];
    const merge = typeof part === "object" && part !== null && !Array.isArray(part);
    return [field, merge ? { ...(was as object), ...part } : part];
  });
  return { ...from, ...Object.fromEntries(merged) };
}
