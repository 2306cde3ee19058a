// Random bottles: contents and acts over all that a ledger may hold.
import fc from "fast-check";
import type { Act, Bottle, Entry } from "../../src/logbook/bottle.ts";

const day = fc
  .integer({ min: 0, max: 300 })
  .map((days) => new Date(Date.UTC(2026, 0, 1 + days)).toISOString().slice(0, 10));

const volume = fc.oneof(
  fc.double({ min: 1, max: 3000, noNaN: true }).map((ml) => ({ ml })),
  fc.double({ min: 0.1, max: 100, noNaN: true }).map((flOz) => ({ flOz })),
);

const span = fc.record({
  count: fc.integer({ min: 1, max: 24 }),
  unit: fc.constantFrom("days", "weeks", "months"),
});

const contents = fc.record(
  {
    name: fc.constantFrom("Fixer A", "Fixer B", "the old one"),
    kind: fc.constantFrom("developer", "stop", "fixer", "wash-aid", "wetting-agent"),
    state: fc.constantFrom("working", "stock"),
    strength: fc.constantFrom("stock", "1+4"),
    mixedOn: day,
    by: fc.constant("E. M."),
    from: fc.constant("powder"),
    volume,
    keeps: fc.record({ full: span, half: span, opened: span }, { requiredKeys: [] }),
    filmsPerLitre: fc.double({ min: 0.1, max: 100, noNaN: true }),
    addPerFilm: fc.double({ min: 0.01, max: 1, noNaN: true }),
    hazards: fc.constant("one line\nand another"),
  },
  { requiredKeys: ["name", "kind", "state", "mixedOn", "volume", "keeps"] },
);

const films = fc.array(
  fc.record({
    size: fc.constantFrom("135-36", "120", "4x5in"),
    count: fc.integer({ min: 1, max: 12 }),
  }),
  { minLength: 1, maxLength: 3 },
);

export const drawn = fc.record(
  {
    kind: fc.constant("drawn" as const),
    run: fc.constantFrom("run 1", "run 2", "run 3"),
    bath: fc.constantFrom("developer", "fixer"),
    films,
    takes: volume,
  },
  { requiredKeys: ["kind", "run", "bath", "films"] },
);

/** Whatever can be done but taking something back. */
export const act: fc.Arbitrary<Act> = fc.oneof(
  fc.record({ kind: fc.constantFrom("mixed", "corrected"), contents }),
  fc.record({ kind: fc.constant("films" as const), films }),
  drawn,
  fc.record({ kind: fc.constantFrom("taken", "added"), volume }),
  fc.record({
    kind: fc.constant("tested" as const),
    seconds: fc.integer({ min: 5, max: 300 }),
    film: fc.constantFrom("Gullrock 125", "Foghorn 400"),
  }),
  fc.record({
    kind: fc.constantFrom("opened", "set-aside", "taken-up", "poured-away", "removed"),
  }),
);

export const entriesFrom = fc.array(fc.tuple(act, day), { maxLength: 14 });

export const anyBottle: fc.Arbitrary<Bottle> = fc
  .tuple(contents, entriesFrom)
  .map(([first, acts]) => ({
    tankside: 1,
    id: "a bottle",
    entries: [
      { kind: "mixed", contents: first, id: "0", at: 0, on: first.mixedOn },
      ...acts.map(([act, on], at): Entry => ({ ...act, id: String(at + 1), at: at + 1, on })),
    ],
  }));
