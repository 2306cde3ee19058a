// Random records over all that one may hold, as any version may have kept them.
import fc from "fast-check";
import type { Picture } from "../../src/logbook/picture.ts";
import type { Otherwise, RunRecord } from "../../src/logbook/run-record.ts";
import { wrongs } from "../../src/process/wrongs.ts";
import { densities, edges, marks } from "../../src/trade/negatives.ts";
import { demos } from "../../src/ui/demo.ts";
import { anyWorksheet } from "../plan/any-worksheet.ts";

const time = fc.integer({ min: Date.UTC(2020, 0), max: Date.UTC(2040, 0) });
const seconds = fc.integer({ min: -6000, max: 6000 }).map((it) => it / 10 + 0);
const text = fc.string({ unit: "binary", maxLength: 30 }).map((it) => it.toWellFormed());
const bath = fc.constantFrom("developer", "stop", "fixer");

const otherwise: fc.Arbitrary<Otherwise> = fc.oneof(
  fc.record({ at: time, kind: fc.constantFrom("poured", "emptied"), bath, by: seconds }),
  fc.record({
    at: time,
    kind: fc.constant("read"),
    temperature: fc.oneof(fc.record({ c: seconds }), fc.record({ f: seconds })),
    after: seconds,
  }),
  fc.record({
    at: time,
    kind: fc.constant("lost"),
    how: fc.constantFrom("closed", "frozen", "asleep", "silent"),
    lost: seconds,
  }),
  fc.record({ at: time, kind: fc.constant("clock-set"), by: seconds }),
  fc.record({ at: time, kind: fc.constant("wrong"), wrong: fc.constantFrom(...wrongs) }),
) as fc.Arbitrary<Otherwise>;

const anyRun: fc.Arbitrary<RunRecord> = fc.record(
  {
    id: fc.uuid(),
    begunAt: time,
    worksheet: fc.oneof(fc.constantFrom(demos.gullrock, demos.foghorn), anyWorksheet),
    developmentSeconds: fc.nat(),
    planned: fc.array(fc.record({ bath, section: bath, seconds }), { maxLength: 3 }),
    presses: fc.array(fc.record({ section: bath, at: time }), { maxLength: 4 }),
    otherwise: fc.array(otherwise, { maxLength: 4 }),
    developedSeconds: fc.nat(),
    pouredIn: fc.array(bath, { maxLength: 3 }),
    ended: fc.constantFrom("done", "left", null),
    note: text,
    negatives: fc.record({
      density: fc.constantFrom(...densities, null),
      edges: fc.constantFrom(...edges, null),
      marks: fc.subarray([...marks]),
    }),
    stars: fc.constantFrom(0, 1, 2, 3, 4, 5),
    changedAt: time,
  },
  {
    requiredKeys: ["id", "begunAt", "worksheet", "developmentSeconds", "presses", "ended", "note"],
  },
) as fc.Arbitrary<RunRecord>;

export const anyRuns = fc.uniqueArray(anyRun, { maxLength: 6, selector: ({ id }) => id });

export const anyPicture: fc.Arbitrary<Picture> = fc
  .record({
    id: fc.uuid(),
    run: fc.uuid(),
    alt: text,
    addedAt: time,
    changedAt: time,
    width: fc.nat(1600),
    height: fc.nat(1600),
    bytes: fc.uint8Array({ maxLength: 200 }),
    type: fc.constantFrom("image/webp", "image/jpeg"),
  })
  .map(({ bytes, type, ...rest }) => ({
    ...rest,
    image: new Blob([new Uint8Array(bytes)], { type }),
  }));

export const anyTanks = fc.uniqueArray(
  fc.record(
    { label: text, texts: fc.dictionary(text, text, { maxKeys: 3 }), keptAt: time },
    { requiredKeys: ["label", "texts"] },
  ),
  { maxLength: 3, selector: ({ label }) => label },
);

export const anySettings = fc.dictionary(
  fc.constantFrom("tankside-language", "tankside-delay", "tankside-senses", "tankside-pace-Keeper"),
  text,
);
