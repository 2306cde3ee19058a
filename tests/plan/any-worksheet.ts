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

const clockReading = fc
  .integer({ min: 0, max: 7200 })
  .map((s) => `${Math.floor(s / 60)}:${String(s % 60).padStart(2, "0")}`);

/** °C in tenths, as people read them: nearer to an edge than any thermometer is no case of the trade. */
const tenths = (min: number, max: number) =>
  fc.integer({ min: min * 10, max: max * 10 }).map((it) => ({ c: it / 10 }));

/** Readings at times of their own, so that no two disagree. */
const readings = fc.uniqueArray(fc.record({ at: clockReading, temperature: tenths(-10, 110) }), {
  minLength: 1,
  maxLength: 6,
  selector: (row) => row.at,
});

/** A count says something only beside a capacity, so they come together. */
const capacity = fc.oneof(
  fc.constant({}),
  fc.record(
    { filmsPerLitre: real(0.01, 10_000), filmsBefore: real(0, 10_000), kept: volume },
    { requiredKeys: ["filmsPerLitre"] },
  ),
);

const clearing = fc.record(
  { time: clockTime, fresh: clockTime, times: fc.constantFrom(2, 3) },
  { requiredKeys: ["time"] },
);

/** The graduate's marks are given: where they are not, they go by the unit that the tank is told in. */
const mixing = fc
  .record({
    target: tenths(-10, 110),
    stock: tenths(-10, 110),
    taps: fc.tuple(tenths(0, 100), tenths(0, 100)),
    mark: fc.constantFrom({ ml: 5 }, { flOz: 0.25 }),
  })
  .map(({ taps: [a, b], ...rest }) => ({
    ...rest,
    ...(a.c < b.c ? { cold: a, hot: b } : { cold: b, hot: a }),
  }));

const tempering = fc.record(
  {
    target: tenths(-10, 110),
    readings,
    bath: tenths(-10, 110),
    began: fc.constantFrom("0:00", "19:05", "23:59:59"),
  },
  { requiredKeys: ["target", "readings"] },
);

const contrast = fc.record(
  {
    tests: fc.array(
      fc.oneof(
        fc.record({ time: clockTime, gradient: real(0.01, 5) }),
        fc.record({
          time: clockTime,
          densities: fc.array(real(0, 6), { minLength: 3, maxLength: 21 }),
          baseFog: real(0, 6),
        }),
      ),
      { minLength: 1, maxLength: 5 },
    ),
    wanted: real(0.05, 5),
    stepLog: real(0.01, 2),
    firstLog: real(-8, 4),
  },
  { requiredKeys: ["tests", "stepLog"] },
);

const tries = fc.array(real(0.1, 600), { minLength: 1, maxLength: 5 });

const wish = {
  temperature: temperature(-10, 110),
  agitation,
  afterwards: fc.constantFrom("drain", "waste", "return"),
};
const timed = { ...wish, time: clockTime, skip: fc.boolean() };
const chemical = fc
  .tuple(some({ ...timed, bottle: label }), capacity)
  .map(([wishes, of]) => ({ ...wishes, ...of }));

const exchange = fc.record(
  { carryOver: fc.constantFrom({ ml: 20 }, { flOz: 1 }), thiosulfate: real(1, 1000) },
  { requiredKeys: ["carryOver"] },
);

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
    darkWait: fc.constantFrom("0:00", "0:45", "3:00", "30:00"),
    loading: fc.constant("done" as const),
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
        soughtTime: clockTime,
        readings,
        filmsPerLitre: real(0.01, 10_000),
        replenishPerFilm: fc.constantFrom({ ml: 20 }, { flOz: 0.75 }),
        bottle: label,
      },
      { requiredKeys: ["label", "leaflet", "temperature"] },
    ),
    tank: fc
      .tuple(
        fc.record(
          {
            label,
            measured: some({ pourIn: tries, pourOut: tries, perInversion: tries }),
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
      stop: chemical,
      fixer: fc.tuple(chemical, some({ clearing })).map(([of, test]) => ({ ...of, ...test })),
      rinse: some(timed),
      "wash-aid": chemical,
      wash: fc.oneof(
        some(timed),
        some(filled),
        fc.tuple(some(filled), exchange).map(([of, water]) => ({ ...of, ...water })),
        fc
          .tuple(some(timed), exchange)
          .map(([of, water]) => ({ ...of, ...water, flow: { ml: 1500 } })),
      ),
      "wetting-agent": chemical,
    }),
    mixing,
    tempering,
    contrast,
    voice: some({ detail: fc.constantFrom("full", "brief", "tones"), rate: real(0.8, 1.6) }),
  },
  {
    requiredKeys: ["tankside", "process", "films", "developer", "tank", "agitation", "clock"],
  },
) as fc.Arbitrary<Worksheet>;
