// Random worksheets over all that a worksheet may hold, bounds included and every field at some time.
import fc from "fast-check";
import type { Worksheet } from "../../src/plan/worksheet.ts";

/** Without −0, which JSON cannot hold. */
const real = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((it) => it + 0);

const clockTime = fc
  .integer({ min: 1, max: 86_400 })
  .map((s) => `${Math.floor(s / 60)}:${String(s % 60).padStart(2, "0")}`);

const temperature = (min: number, max: number) =>
  fc.oneof(
    real(min, max).map((c) => ({ c })),
    fc
      .integer({ min: Math.ceil(min * 1.8 + 32), max: Math.floor(max * 1.8 + 32) })
      .map((f) => ({ f })),
  );

const volume = fc.oneof(
  real(1, 100_000).map((ml) => ({ ml })),
  real(0.1, 3000).map((flOz) => ({ flOz })),
);

const agitation = fc.record({
  first: real(0, 86_400),
  every: real(0, 86_400),
  for: real(0, 86_400),
  perInversion: real(0.5, 60),
  taps: fc.integer({ min: 0, max: 20 }),
});

const speed = fc.oneof(fc.constantFrom(50, 125, 400, 3200), real(0.1, 1_000_000));

/** Some of the fields of a record, or all. */
const some = <T extends object>(fields: { [Field in keyof T]: fc.Arbitrary<T[Field]> }) =>
  fc.record(fields, { requiredKeys: [] });

const label = fc.constantFrom("Gullrock 125", "Foghorn 400", " ½ roll, „Nebel“ ");

const wish = {
  temperature: temperature(-10, 110),
  agitation,
  afterwards: fc.constantFrom("drain", "waste", "return"),
};
const timed = { ...wish, time: clockTime, skip: fc.boolean() };
const filled = {
  ...wish,
  fills: fc.array(fc.integer({ min: 1, max: 200 }), { minLength: 1, maxLength: 20 }),
};

/** Rows at whole °C, no two alike, for no rating or one of two. */
const leaflet = fc
  .uniqueArray(
    fc.record(
      {
        temperature: fc.integer({ min: -10, max: 110 }).map((c) => ({ c })),
        time: clockTime,
        exposureIndex: fc.constantFrom(125, 400),
      },
      { requiredKeys: ["temperature", "time"] },
    ),
    { minLength: 1, maxLength: 8, selector: (row) => row.temperature.c },
  )
  .filter((rows) => rows.some((row) => row.exposureIndex === undefined));

const drift = fc.record({ room: temperature(-40, 60), halfway: real(0.1, 100_000) });

export const anyWorksheet: fc.Arbitrary<Worksheet> = fc.record(
  {
    tankside: fc.constant(1 as const),
    title: label,
    language: fc.constantFrom("en", "en-GB", "de-AT", "zh-Hant-TW"),
    process: fc.constant("bw-negative"),
    films: fc.array(
      fc.record(
        {
          label,
          size: fc.constantFrom("135-36", "135-24", "120", "220", "4x5in", "9x12cm"),
          count: fc.integer({ min: 1, max: 100 }),
          boxSpeed: speed,
          exposureIndex: speed,
        },
        { requiredKeys: ["label", "size", "count", "boxSpeed"] },
      ),
      { minLength: 1, maxLength: 3 },
    ),
    developer: fc.record(
      {
        label,
        dilution: fc.constantFrom("stock", "1+3", "1+1.5", "10000+0.0001"),
        leaflet,
        temperature: temperature(-10, 110),
        perDegree: real(1e-6, 1),
        perStop: fc.record({ pull: real(0, 0.9), push: real(0, 5) }),
        stockPerFilm: volume,
        filmsBefore: real(0, 10_000),
        perFilmBefore: real(0, 10),
      },
      { requiredKeys: ["label", "leaflet", "temperature"] },
    ),
    tank: fc
      .tuple(
        fc.record(
          {
            method: fc.constantFrom("inversion", "twist", "rotary", "tray", "hanger" as const),
            volume,
            pourIn: real(1, 600),
            pourOut: real(1, 600),
            handover: real(0, 600),
            timeFactor: real(0.1, 5),
          },
          { requiredKeys: ["method", "volume", "pourIn", "pourOut"] },
        ),
        fc.oneof(fc.constant({}), drift),
      )
      .map(([tank, drifting]) => ({ ...tank, ...drifting })),
    agitation,
    clock: fc.record({
      starts: fc.constantFrom("pour-in", "full" as const),
      ends: fc.constantFrom("pour-out", "empty" as const),
    }),
    baths: some({
      prewet: some(timed),
      developer: some({ agitation, afterwards: wish.afterwards }),
      stop: some(timed),
      fixer: some(timed),
      rinse: some(timed),
      "wash-aid": some(timed),
      wash: fc.oneof(some(timed), some(filled)),
      "wetting-agent": some(timed),
    }),
    voice: some({ detail: fc.constantFrom("full", "brief", "tones"), rate: real(0.8, 1.6) }),
  },
  {
    requiredKeys: ["tankside", "process", "films", "developer", "tank", "agitation", "clock"],
  },
) as fc.Arbitrary<Worksheet>;
