// A run's record in, what a list of runs says of it out: what it is found, filtered, counted and drawn by. Kept
// beside the record, so that ten thousand runs are listed without one of their worksheets being read.
import { isObject } from "../units/object.ts";
import { toCelsius } from "../units/temperature.ts";
import type { RunRecord, Stars } from "./run-record.ts";

export interface RunLine {
  readonly id: string;
  /** UTC, ms since 1970. */
  readonly begunAt: number;
  /** What its owner calls each film, each once. */
  readonly films: readonly string[];
  readonly developer: string;
  readonly stars: Stars | null;
  /** Of the developer, °C, as measured before it was poured. */
  readonly celsius: number;
  /** Of the scale that it was read on. */
  readonly scale: "c" | "f";
  /** Of each bath that was pressed for: by how many seconds it was emptied later than planned, or sooner. */
  readonly strays: readonly (readonly [bath: string, seconds: number])[];
  /** All that it can be found by, without capitals and accents. */
  readonly text: string;
}

/** Of what is made here, and of how it lies on its shelf: another number has all lines made anew. */
export const LINES = 3;

export function lineOf(run: RunRecord): RunLine {
  const { id, begunAt, worksheet, note, stars } = run;
  const { title, films, developer, tank, baths = {} } = worksheet;
  const labels = [...new Set(films.map(({ label }) => label.trim()))];
  return {
    id,
    begunAt,
    films: labels,
    developer: developer.label.trim(),
    stars: stars === undefined || stars === 0 ? null : stars,
    celsius: toCelsius(developer.temperature),
    scale: "c" in developer.temperature ? "c" : "f",
    strays: straysOf(run),
    text: folded(
      [
        title ?? "",
        ...films.flatMap(({ label, size }) => [label, size]),
        developer.label,
        developer.dilution ?? "",
        developer.bottle ?? "",
        ...Object.values(baths).map(({ bottle, skip }) => (skip ? "" : (bottle ?? ""))),
        tank.label ?? "",
        note,
      ].join("\n"),
    ),
  };
}

/** By how much each bath that was begun strayed; 0 where nobody told of anything. In the order of the run. */
function straysOf({ presses, otherwise = [], planned = [] }: RunRecord): RunLine["strays"] {
  const by = new Map<string, number>();
  for (const { bath, section } of planned) {
    if (presses.some((press) => press.section === section)) by.set(bath, 0);
  }
  // Of the first versions nobody knows which baths there were, but for the one that there always is.
  if (presses.some(({ section }) => section === "developer")) by.set("developer", 0);
  for (const one of otherwise) {
    if (one.kind === "emptied") by.set(one.bath, (by.get(one.bath) ?? 0) + one.by);
  }
  return [...by].map(([bath, seconds]) => [bath, Math.round(seconds * 10) / 10 + 0]);
}

/** As people search: without capitals, accents, and more than one space. */
export function folded(text: string): string {
  return text
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^\S\n]+/g, " ");
}

/** What was kept by this version is one; told by what a list cannot do without. */
export function isRunLine(kept: unknown): kept is RunLine {
  return (
    isObject(kept) &&
    typeof kept.id === "string" &&
    typeof kept.begunAt === "number" &&
    typeof kept.text === "string" &&
    Array.isArray(kept.films) &&
    Array.isArray(kept.strays)
  );
}
