// Random worksheets, over all that a worksheet may hold and not merely what is usual.
import fc from "fast-check";
import type { Agitation, BathWish, Worksheet } from "../../src/plan/worksheet.ts";

const clockTime = (least: number, most: number) =>
  fc
    .integer({ min: least, max: most })
    .map((s) => `${Math.floor(s / 60)}:${String(s % 60).padStart(2, "0")}`);

const seconds = (min: number, max: number) =>
  fc.oneof(
    fc.integer({ min, max }),
    fc.integer({ min: min * 4, max: max * 4 }).map((q) => q / 4),
  );

const agitation: fc.Arbitrary<Agitation> = fc.oneof(
  // What people do …
  fc.record({
    first: fc.constantFrom(0, 10, 30, 60),
    every: fc.constantFrom(10, 30, 60, 120),
    for: fc.constantFrom(0, 5, 10, 60),
    perInversion: fc.constantFrom(2, 2.5, 3),
    taps: fc.integer({ min: 0, max: 3 }),
  }),
  // … and what nobody does, but a worksheet may say.
  fc.record({
    first: seconds(0, 400),
    every: seconds(0, 300),
    for: seconds(0, 100),
    perInversion: fc.double({ min: 0.5, max: 20, noNaN: true }),
    taps: fc.integer({ min: 0, max: 20 }),
  }),
);

const optional = <T>(arb: fc.Arbitrary<T>) => fc.option(arb, { nil: undefined });

/** Drops the keys that hold nothing, as a file would. */
function present<T extends object>(value: T): T {
  return Object.fromEntries(Object.entries(value).filter(([, v]) => v !== undefined)) as T;
}

const bathWish: fc.Arbitrary<BathWish> = fc
  .record({
    time: optional(clockTime(1, 1500)),
    agitation: optional(agitation),
    skip: optional(fc.boolean()),
    afterwards: optional(fc.constantFrom("drain", "waste", "return" as const)),
  })
  .map(present) as fc.Arbitrary<BathWish>;

const washWish: fc.Arbitrary<BathWish> = fc.oneof(
  bathWish,
  fc
    .array(fc.integer({ min: 1, max: 30 }), { minLength: 1, maxLength: 5 })
    .map((fills) => ({ fills })),
);

const baths = fc
  .record({
    prewet: optional(bathWish),
    stop: optional(bathWish),
    fixer: optional(bathWish),
    rinse: optional(bathWish),
    "wash-aid": optional(bathWish),
    wash: optional(washWish),
    "wetting-agent": optional(bathWish),
  })
  .map(present);

export const anyWorksheet: fc.Arbitrary<Worksheet> = fc
  .record({
    tankside: fc.constant(1 as const),
    process: fc.constant("bw-negative"),
    darkWait: optional(clockTime(0, 1800)),
    films: fc.array(
      fc.record({
        label: fc.constantFrom("Gullrock 125", "Foghorn 400"),
        size: fc.constantFrom("135-36", "120", "4x5in"),
        count: fc.integer({ min: 1, max: 4 }),
      }),
      { minLength: 1, maxLength: 2 },
    ),
    developer: fc.record({
      label: fc.constant("Kelp MQ"),
      dilution: fc.constantFrom("stock", "1+1", "1+3"),
      leaflet: clockTime(30, 2400).map((time) => [{ temperature: { c: 20 }, time }]),
      temperature: fc.double({ min: 18, max: 22, noNaN: true }).map((c) => ({ c })),
    }),
    tank: fc
      .record({
        method: fc.constantFrom("inversion", "twist", "rotary", "tray", "hanger" as const),
        volume: fc.constant({ ml: 600 }),
        pourIn: seconds(1, 40),
        pourOut: seconds(1, 40),
        handover: optional(seconds(0, 30)),
      })
      .map(present),
    agitation,
    clock: fc.record({
      starts: fc.constantFrom("pour-in", "full" as const),
      ends: fc.constantFrom("pour-out", "empty" as const),
    }),
    baths: optional(baths),
    voice: fc.record({
      detail: fc.constantFrom("full", "brief", "tones" as const),
      rate: fc.double({ min: 0.8, max: 1.6, noNaN: true }),
    }),
  })
  .map(present) as fc.Arbitrary<Worksheet>;
