// Two copies of one bottle, each with what was done where it is kept, put together.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Act, Bottle, Entry } from "../../src/logbook/bottle.ts";
import { inBoth } from "../../src/logbook/bottle-copies.ts";
import { holds, stateOf } from "../../src/logbook/bottle-state.ts";
import { sameness, withEntries } from "../../src/logbook/bottle-store.ts";
import { kinds } from "../../src/logbook/kinds.ts";
import { bottleOf, fixerB } from "../ui/shelf-by-hand.ts";
import { act as anyAct, anyBottle, drawn } from "./any-bottle.ts";

/** What was done with a copy: an act, or the taking back or putting back of one that stands in it. */
type Done =
  | { readonly act: Act; readonly at: number }
  | { readonly kind: "undone" | "redone"; readonly which: number; readonly at: number };

// Few moments, so that two often write at the same one.
const at = fc.integer({ min: 20, max: 32 });
const done: fc.Arbitrary<Done> = fc.oneof(
  fc.record({ act: drawn, at }),
  fc.record({ act: anyAct, at }),
  fc.record({ kind: fc.constantFrom("undone" as const, "redone" as const), which: fc.nat(30), at }),
);

function copyOf(bottle: Bottle, place: string, all: readonly Done[]): Bottle {
  return all.reduce<Bottle>((copy, it, i) => {
    const shared = { id: `${place}${i}`, at: it.at, on: "2026-05-01" };
    if ("act" in it) return withEntries(copy, [{ ...it.act, ...shared }]);
    const entry = copy.entries[it.which % copy.entries.length]?.id ?? "";
    return withEntries(copy, [{ kind: it.kind, entry, ...shared }]);
  }, bottle);
}

const copies = fc
  .tuple(anyBottle, fc.array(fc.array(done, { maxLength: 8 }), { minLength: 3, maxLength: 3 }))
  .map(([bottle, all]) => all.map((each, i) => copyOf(bottle, "abc".charAt(i), each)));

describe("two copies of a bottle", () => {
  test("come to the same, whichever is taken into which and in whatever order", () => {
    fc.assert(
      fc.property(copies, (all) => {
        const [a, b, c] = all as [Bottle, Bottle, Bottle];
        const both = inBoth(a, b);
        expect(inBoth(b, a)).toEqual(both);
        expect(stateOf(inBoth(b, a))).toEqual(stateOf(both));
        expect(inBoth(both, a)).toEqual(both);
        expect(inBoth(b, both)).toEqual(both);
        expect(inBoth(inBoth(c, b), a)).toEqual(inBoth(both, c));
      }),
    );
  });

  test("lose nothing that either knows, and hold a run's bath once", () => {
    fc.assert(
      fc.property(copies, ([a, b]) => {
        if (a === undefined || b === undefined) return;
        const both = inBoth(a, b).entries.map(sameness);
        expect(new Set(both)).toEqual(new Set([...a.entries, ...b.entries].map(sameness)));
        expect(new Set(both).size).toBe(both.length);
      }),
    );
  });

  const entry = (act: Act, id: string, at: number): Entry => ({
    ...act,
    id,
    at,
    on: "2026-05-01",
  });
  const bottle = bottleOf(fixerB);
  const mixed = bottle.entries[0]?.at ?? 0;
  const run: Act = { kind: "drawn", run: "r", bath: "fixer", films: [{ size: "120", count: 2 }] };

  test("go by what was written last, and not by what was taken in last", () => {
    const poured = entry({ kind: "films", films: [{ size: "120", count: 2 }] }, "p", mixed + 1);
    const shared = withEntries(bottle, [poured]);
    const here = withEntries(shared, [
      entry({ kind: "undone", entry: "p" }, "h1", mixed + 2),
      entry({ kind: "redone", entry: "p" }, "h2", mixed + 9),
    ]);
    const there = withEntries(shared, [entry({ kind: "undone", entry: "p" }, "t1", mixed + 5)]);
    const stays = kinds.find(({ shelf }) => shelf === "bottles")?.stays;
    for (const both of [stays?.(here, there), stays?.(there, here)] as Bottle[])
      expect(stateOf(both).films).toBe(2);
    // As an earlier version put them together.
    expect(holds(withEntries(here, there.entries), "p")).toBe(true);
  });

  test("that each wrote a run down have it once, and it stays taken back where one took it back", () => {
    const here = withEntries(bottle, [entry(run, "h", mixed + 3)]);
    const there = withEntries(bottle, [
      entry(run, "t", mixed + 4),
      entry({ kind: "undone", entry: "t" }, "u", mixed + 5),
    ]);
    for (const both of [inBoth(here, there), inBoth(there, here)]) {
      expect(both.entries.map(({ id }) => id)).toEqual([`${bottle.id} mixed`, "h", "u"]);
      expect(stateOf(both).films).toBe(0);
    }
  });
});
