// Two worksheets in which everything is measured that can be: one in °F and fluid ounces, one in °C and ml.
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { gullrock } from "./worksheets.ts";

export const benchInFahrenheit: Worksheet = {
  ...gullrock,
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
    stockPerFilm: { flOz: 2.5 },
    soughtTime: "8:00",
    readings: [
      { at: "3:00", temperature: { f: 68 } },
      { at: "6:00", temperature: { f: 66.5 } },
    ],
    filmsPerLitre: 10,
    filmsBefore: 2,
    replenishPerFilm: { flOz: 0.75 },
  },
  tank: {
    ...gullrock.tank,
    label: "two-reel steel",
    volume: { flOz: 22 },
    pourIn: 10.4,
    pourOut: 10,
    measured: { pourIn: [9.8, 10.4, 11.1], pourOut: [8, 12, 13], perInversion: [2.5, 2.4, 2.6] },
  },
  baths: {
    fixer: {
      clearing: { time: "1:15", fresh: "0:45", times: 3 },
      filmsPerLitre: 20,
      filmsBefore: 12,
      kept: { flOz: 32 },
    },
    wash: { fills: [5, 10, 20], carryOver: { flOz: 0.7 } },
  },
  mixing: { target: { f: 68 }, stock: { f: 72 }, cold: { f: 60 }, hot: { f: 110 } },
  tempering: {
    target: { f: 68 },
    readings: [
      { at: "0:00", temperature: { f: 75 } },
      { at: "3:00", temperature: { f: 72.5 } },
      { at: "6:00", temperature: { f: 71 } },
    ],
    bath: { f: 66 },
    began: "23:55",
  },
  contrast: {
    tests: [
      { time: "5:00", gradient: 0.45 },
      { time: "10:00", gradient: 0.7 },
    ],
    wanted: 0.6,
  },
};

/** Steps of 0.15 that rise by so much each, after two that show nothing. */
const wedge = (rise: number) =>
  Array.from(
    { length: 16 },
    (_, step) => Math.round((0.3 + Math.max(step - 2, 0) * rise) * 100) / 100,
  );

export const benchInCelsius: Worksheet = {
  ...benchInFahrenheit,
  developer: {
    label: "Kelp MQ",
    dilution: "1+1",
    leaflet: [
      { temperature: { c: 18 }, time: "12:00" },
      { temperature: { c: 20 }, time: "10:00" },
      { temperature: { c: 24 }, time: "7:00" },
    ],
    temperature: { c: 21 },
    soughtTime: "8:00",
    readings: [{ at: "4:00", temperature: { c: 20 } }],
    perFilmBefore: 0.05,
    filmsBefore: 2,
  },
  tank: {
    ...gullrock.tank,
    method: "rotary",
    volume: { ml: 600 },
    pourIn: 10,
    pourOut: 10,
    room: { c: 17 },
    halfway: 25,
  },
  baths: {
    fixer: { time: "5:00", clearing: { time: "2:00" } },
    wash: { time: "3:00", carryOver: { ml: 20 }, flow: { ml: 1200 }, thiosulfate: 150 },
  },
  mixing: {
    target: { c: 20 },
    stock: { c: 24 },
    cold: { c: 11 },
    hot: { c: 45 },
    mark: { ml: 10 },
  },
  tempering: {
    target: { c: 20 },
    readings: [
      { at: "0:00", temperature: { c: 26 } },
      { at: "4:00", temperature: { c: 24 } },
      { at: "8:00", temperature: { c: 23 } },
    ],
    bath: { c: 22 },
    bathVolume: { ml: 4000 },
  },
  contrast: {
    tests: [
      { time: "6:00", densities: wedge(0.07), baseFog: 0.3 },
      { time: "9:00", densities: wedge(0.095), baseFog: 0.3 },
      { time: "13:00", densities: wedge(0.11), baseFog: 0.3 },
    ],
    stepLog: 0.15,
    firstLog: -2.9,
  },
};
