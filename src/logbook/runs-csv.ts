// Runs in, a table of them as text out (RFC 4180): one row a run, for whoever counts in a spreadsheet. Names of
// columns are English in every language, so that a table is read by what was written for it.
import { toCelsius } from "../units/temperature.ts";
import { lineOf } from "./run-line.ts";
import type { RunRecord } from "./run-record.ts";

type Cell = string | number | null;

const columns: readonly (readonly [name: string, of: (run: RunRecord) => Cell])[] = [
  ["id", ({ id }) => id],
  ["begun (UTC)", ({ begunAt }) => new Date(begunAt).toISOString()],
  ["title", ({ worksheet }) => worksheet.title ?? ""],
  ["films", ({ worksheet }) => worksheet.films.map(({ label }) => label).join("; ")],
  ["film sizes", ({ worksheet }) => worksheet.films.map(({ size }) => size).join("; ")],
  ["film count", ({ worksheet }) => worksheet.films.reduce((sum, { count }) => sum + count, 0)],
  [
    "exposure indices",
    ({ worksheet }) =>
      worksheet.films
        .map(({ exposureIndex, boxSpeed }) => exposureIndex ?? boxSpeed ?? "")
        .join("; "),
  ],
  ["developer", ({ worksheet }) => worksheet.developer.label],
  ["dilution", ({ worksheet }) => worksheet.developer.dilution ?? "stock"],
  [
    "developer temperature (°C)",
    ({ worksheet }) => tenths(toCelsius(worksheet.developer.temperature)),
  ],
  ["method", ({ worksheet }) => worksheet.tank.method],
  ["tank", ({ worksheet }) => worksheet.tank.label ?? ""],
  ["development planned (s)", ({ developmentSeconds }) => developmentSeconds],
  ["development done (s)", (run) => run.developedSeconds ?? run.developmentSeconds],
  [
    "baths emptied late (s)",
    (run) =>
      lineOf(run)
        .strays.map(([bath, by]) => `${bath} ${by}`)
        .join("; "),
  ],
  ["ended", ({ ended }) => ended ?? ""],
  ["stars (1-5)", ({ stars }) => (stars === undefined || stars === 0 ? null : stars)],
  ["density", ({ negatives }) => negatives?.density ?? ""],
  ["note", ({ note }) => note],
];

export function csvOfRuns(runs: readonly RunRecord[]): string {
  const rows = [
    columns.map(([name]) => cell(name)),
    ...runs.map((run) => columns.map(([, of]) => cell(of(run)))),
  ];
  // A mark at its beginning, or some spreadsheets take it for another alphabet.
  return `\ufeff${rows.map((row) => `${row.join(",")}\r\n`).join("")}`;
}

/**
 * A text that a spreadsheet would take for a formula gets an apostrophe before it: whoever sent a file of runs is not
 * to reckon on another's machine.
 */
function cell(value: Cell): string {
  if (value === null) return "";
  if (typeof value === "number") return String(value);
  const text = /^[\s"']*[=+\-@|\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

const tenths = (value: number): number => Math.round(value * 10) / 10;
