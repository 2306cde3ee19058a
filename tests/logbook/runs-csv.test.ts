import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { RunRecord } from "../../src/logbook/run-record.ts";
import { csvOfRuns } from "../../src/logbook/runs-csv.ts";
import { demos } from "../../src/ui/demo.ts";
import { anyRuns } from "./any-run.ts";
import { otherwiseRun } from "./older-versions.ts";

/** A reader of RFC 4180 that knows nothing of the writer. */
function rowsOf(text: string): readonly (readonly string[])[] {
  const rows: string[][] = [[]];
  let cell = "";
  let quoted = false;
  for (let i = 0; i < text.length; i += 1) {
    const letter = text[i];
    if (quoted) {
      if (letter !== '"') cell += letter;
      else if (text[i + 1] === '"') {
        cell += '"';
        i += 1;
      } else quoted = false;
    } else if (letter === '"' && cell === "") quoted = true;
    else if (letter === "," || (letter === "\r" && text[i + 1] === "\n")) {
      rows.at(-1)?.push(cell);
      cell = "";
      if (letter === "\r") {
        rows.push([]);
        i += 1;
      }
    } else cell += letter;
  }
  rows.pop();
  return rows;
}

const tableOf = (runs: readonly RunRecord[]) => {
  const [names = [], ...rows] = rowsOf(csvOfRuns(runs).replace(/^\ufeff/, ""));
  return rows.map((row) => Object.fromEntries(names.map((name, i) => [name, row[i]])));
};

describe("runs as a table", () => {
  test("have a row each, dates of ISO 8601, and units in the names of columns", () => {
    const run = { ...otherwiseRun, stars: 4, note: 'Thin, "at the edge"\nand dry' } as RunRecord;
    expect(tableOf([run])).toEqual([
      {
        id: otherwiseRun.id,
        "begun (UTC)": "2026-03-13T19:42:07.000Z",
        title: "Gullrock Light, Thursday evening",
        films: "Gullrock 125",
        "film sizes": "135-36",
        "film count": "2",
        "exposure indices": "125",
        developer: "Kelp MQ",
        dilution: "'1+3".slice(1),
        "developer temperature (°C)": "20.6",
        method: "inversion",
        tank: "two-reel steel",
        "development planned (s)": "569",
        "development done (s)": "560",
        "baths emptied late (s)": "developer 6.5",
        ended: "left",
        "stars (1-5)": "4",
        density: "",
        note: 'Thin, "at the edge"\nand dry',
      },
    ]);
  });

  test("come back from a reader as they were, whatever was typed", () => {
    fc.assert(
      fc.property(anyRuns, (runs) => {
        const rows = tableOf(runs);
        expect(rows.map(({ id }) => id)).toEqual(runs.map(({ id }) => id));
        for (const [i, { note }] of runs.entries())
          expect([note, `'${note}`]).toContain(rows[i]?.note);
      }),
      { numRuns: 50 },
    );
  });

  test.each(["=1+1", "+1", "-1", "@sum", "\t=1", " =1", '"=1', "\r=1", "|x"])(
    "are no formulas to any spreadsheet: %j",
    (note) => {
      const [row] = tableOf([
        { ...(otherwiseRun as RunRecord), note, worksheet: { ...demos.gullrock, title: note } },
      ]);
      expect(row?.note).toBe(`'${note}`);
      expect(row?.title).toBe(`'${note}`);
    },
  );

  test("are their names alone where there are none", () => {
    expect(tableOf([])).toEqual([]);
    expect(csvOfRuns([]).split("\r\n")).toHaveLength(2);
  });
});
