import { describe, expect, test } from "vitest";
import { faultLine } from "../../src/plan/faults.ts";
import { readWorksheet } from "../../src/plan/read-worksheet.ts";
import type { BathWish, Film, LeafletRow } from "../../src/plan/worksheet.ts";
import { changed, gullrock } from "./worksheets.ts";

function lines(value: unknown): readonly string[] {
  const reading = readWorksheet(value);
  return reading.kind === "faults" ? reading.faults.map(faultLine) : [];
}

const film = (speeds: Partial<Film>): Film => ({
  label: "Gullrock",
  size: "120",
  count: 1,
  ...speeds,
});

const row = (c: number, time: string, exposureIndex?: number): LeafletRow =>
  exposureIndex === undefined
    ? { temperature: { c }, time }
    : { temperature: { c }, time, exposureIndex };

const withLeaflet = (films: readonly Film[], leaflet: readonly LeafletRow[]) =>
  changed(gullrock, { films, developer: { leaflet } });

describe("film and leaflet", () => {
  test("a rating with neither a box speed nor a row of its own cannot be counted in stops", () => {
    expect(lines(withLeaflet([film({ exposureIndex: 250 })], [row(20, "9:00")]))).toEqual([
      "films[0].boxSpeed holds nothing; it may hold the ISO speed printed on the box, such as 125: the leaflet has no row for 250, so the stops are counted from the box speed",
    ]);
    expect(lines(withLeaflet([film({ exposureIndex: 250 })], [row(20, "9:00", 250)]))).toEqual([]);
    expect(
      lines(withLeaflet([film({ exposureIndex: 250, boxSpeed: 125 })], [row(20, "9:00")])),
    ).toEqual([]);
  });

  test("a leaflet with rows for other ratings alone serves nobody", () => {
    expect(lines(withLeaflet([film({ boxSpeed: 125 })], [row(20, "9:00", 800)]))).toEqual([
      'developer.leaflet holds [{ "temperature": …, "time": "9:00", "exposureIndex": 800 }]; it may hold at least one row that serves "Gullrock": a row without "exposureIndex" or for 125',
    ]);
  });

  test("two rows of one temperature must agree, in whichever unit they stand", () => {
    const leaflet = [row(20, "9:00"), row(22, "8:00"), { temperature: { f: 68 }, time: "9:10" }];
    expect(lines(withLeaflet([film({})], leaflet))).toEqual([
      'developer.leaflet[2].time holds "9:10"; it may hold "9:00", as developer.leaflet[0] gives for 68 °F too: one temperature has one time',
    ]);
    expect(lines(withLeaflet([film({})], [row(20, "9:00"), row(20, "9:00")]))).toEqual([]);
  });

  test("rows of one temperature for two ratings need not agree", () => {
    const leaflet = [row(20, "9:00"), row(20, "13:00", 800)];
    expect(lines(withLeaflet([film({ boxSpeed: 400 })], leaflet))).toEqual([]);
  });
});

describe("the tank", () => {
  test("drifts toward a room in a time, or not at all", () => {
    expect(lines(changed(gullrock, { tank: { room: { c: 16 } } }))).toEqual([
      "tank.halfway holds nothing; it may hold minutes, since tank.room is given: both or neither",
    ]);
    expect(lines(changed(gullrock, { tank: { halfway: 30 } }))).toEqual([
      'tank.room holds nothing; it may hold a temperature such as { "c": 20 }, since tank.halfway is given: both or neither',
    ]);
  });
});

describe("a bath's wishes", () => {
  const withBaths = (baths: { readonly [id: string]: BathWish }) => lines({ ...gullrock, baths });

  test("a wash has a time, or fills that make it", () => {
    expect(withBaths({ wash: { time: "10:00", fills: [5, 10, 20] } })).toEqual([
      'baths.wash.time holds "10:00"; it may hold nothing beside baths.wash.fills, which make the time themselves',
    ]);
    expect(withBaths({ wash: { fills: [5, 10, 20] } })).toEqual([]);
  });

  test("the developer has one temperature", () => {
    expect(withBaths({ developer: { temperature: { c: 24 } } })).toEqual([
      'baths.developer.temperature holds { "c": 24 }; it may hold nothing, since developer.temperature says 69 °F',
    ]);
    expect(withBaths({ developer: { temperature: { f: 69 } } })).toEqual([]);
  });

  test("a bath that the process does not know is refused by its id", () => {
    expect(withBaths({ bleach: {} })).toEqual([
      'baths.bleach holds {}; it may hold nothing: there is no such field here, only "prewet", "developer", "stop", "fixer", "rinse", "wash-aid", "wash", "wetting-agent"',
    ]);
  });
});
