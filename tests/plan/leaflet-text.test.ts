import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readLeafletText } from "../../src/plan/leaflet-text.ts";
import { writeClockTime } from "../../src/units/clock-time.ts";

const rowOf = (text: string) => {
  const { rows, faults } = readLeafletText(text);
  expect(faults, text).toEqual([]);
  return rows[0];
};

describe("one row of a leaflet, as it is written", () => {
  test.each([
    ["68 10:00", { f: 68 }, "10:00"],
    ["20 °C 11½ min", { c: 20 }, "11:30"],
    ["20 °C\t11½ min", { c: 20 }, "11:30"],
    ["68,10:00", { f: 68 }, "10:00"],
    ["20,5 °C, 9:30", { c: 20.5 }, "9:30"],
    ["20.5;9:30", { c: 20.5 }, "9:30"],
    ["20°C 9'30\"", { c: 20 }, "9:30"],
    ["9 min 30 s at 20 C", { c: 20 }, "9:30"],
    ["10:00 at 68 °F", { f: 68 }, "10:00"],
    ["20 °C / 68 °F   10 min", { c: 20 }, "10:00"],
    ["68°F (20°C): 10 minutes", { f: 68 }, "10:00"],
    ["20 11½", { c: 20 }, "11:30"],
    ["20 9.5", { c: 20 }, "9:30"],
    ["| 20 | 9:30 |", { c: 20 }, "9:30"],
    ["75 F\t1:02:00", { f: 75 }, "1:02:00"],
    ["18 ℃ 12 1/2 min", { c: 18 }, "12:30"],
  ])("%s", (text, temperature, time) => {
    expect(rowOf(text)).toEqual({ temperature, time });
  });

  test.each([
    ["20 °C 14:00 EI 800", 800],
    ["EI 1600: 20 °C 18 min", 1600],
    ["68 10:00 @ 250", 250],
    ["20; 9:30; ISO 400", 400],
  ])("%s is for that rating", (text, exposureIndex) => {
    expect(rowOf(text)).toMatchObject({ exposureIndex });
  });
});

describe("a whole table", () => {
  test("takes rows of both units, headings and blank lines as they come", () => {
    const text = "Temperature\tTime\r\n\r\n65 °F\t11:45\r\n20 °C\t10:00\n70\t9\n";
    expect(readLeafletText(text)).toEqual({
      rows: [
        { temperature: { f: 65 }, time: "11:45" },
        { temperature: { c: 20 }, time: "10:00" },
        { temperature: { f: 70 }, time: "9:00" },
      ],
      faults: [],
    });
  });

  test("names each fault by its line, and keeps the rows that are sound", () => {
    const text =
      "68 10:00\n\n45 9:00\n20 °C 9.30\n20 °C 75 °F 8:00\nGullrock 125 at 20 °C 9:00 10:00\n70 °F";
    const { rows, faults } = readLeafletText(text);
    expect(rows).toEqual([{ temperature: { f: 68 }, time: "10:00" }]);
    expect(faults.map(({ line, text: typed }) => [line, typed])).toEqual([
      [3, "45 9:00"],
      [4, "20 °C 9.30"],
      [5, "20 °C 75 °F 8:00"],
      [6, "Gullrock 125 at 20 °C 9:00 10:00"],
      [7, "70 °F"],
    ]);
    expect(faults[0]?.may).toContain('"45" wants its unit');
    expect(faults[2]?.may).toContain("not the same");
  });

  test("reads back whatever rows were written in any of its ways", () => {
    const row = fc.record({
      degrees: fc.integer({ min: 10, max: 40 }),
      seconds: fc.integer({ min: 60, max: 3600 }),
      fahrenheit: fc.boolean(),
      way: fc.constantFrom(
        (t: string, time: string) => `${t} ${time}`,
        (t: string, time: string) => `${t}\t${time}`,
        (t: string, time: string) => `${t}, ${time}`,
        (t: string, time: string) => `${time} at ${t}`,
        (t: string, time: string) => `| ${t} | ${time} |`,
      ),
    });
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 12 }), (all) => {
        const written = all.map(({ degrees, seconds, fahrenheit, way }) => {
          const temperature = fahrenheit ? { f: degrees + 40 } : { c: degrees };
          const text = fahrenheit ? `${degrees + 40} °F` : `${degrees} °C`;
          return {
            line: way(text, writeClockTime(seconds)),
            row: { temperature, time: writeClockTime(seconds) },
          };
        });
        const { rows, faults } = readLeafletText(written.map(({ line }) => line).join("\n"));
        expect(faults).toEqual([]);
        expect(rows).toEqual(written.map((it) => it.row));
      }),
    );
  });

  test("bears any text at all", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 300 }), (text) => {
        const { rows, faults } = readLeafletText(text);
        expect(rows.length + faults.length).toBeLessThanOrEqual(text.split(/\r\n|\r|\n/).length);
      }),
    );
  });
});
