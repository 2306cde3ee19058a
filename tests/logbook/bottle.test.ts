import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Act, type Bottle, type Entry, isBottle } from "../../src/logbook/bottle.ts";
import { comparable, holds, refusalOf, stateOf } from "../../src/logbook/bottle-state.ts";
import { sameness, withEntries } from "../../src/logbook/bottle-store.ts";
import { nominalFilms } from "../../src/plan/film-area.ts";
import { bottleOf, fixerB } from "../ui/shelf-by-hand.ts";
import { anyBottle, drawn, entriesFrom } from "./any-bottle.ts";

let ids = 0;
const entry = (act: Act, on = "2026-05-01"): Entry => {
  ids += 1;
  return { ...act, id: `e${ids}`, at: ids, on };
};
const withActs = (bottle: Bottle, acts: readonly Act[], on?: string): Bottle => ({
  ...bottle,
  entries: [...bottle.entries, ...acts.map((act) => entry(act, on))],
});
const rolls = (count: number): Act => ({ kind: "films", films: [{ size: "135-36", count }] });

describe("the ledger of a bottle", () => {
  test("taking an entry back leaves nothing of it behind, and putting it back brings all of it", () => {
    fc.assert(
      fc.property(anyBottle, entriesFrom, fc.nat(), (bottle, acts, at) => {
        const more = withActs(
          bottle,
          acts.map(([act]) => act),
        );
        const any = more.entries[1 + (at % Math.max(1, more.entries.length - 1))];
        if (any === undefined) return;
        const undone = withActs(more, [{ kind: "undone", entry: any.id }]);
        const without = { ...more, entries: more.entries.filter(({ id }) => id !== any.id) };
        expect(stateOf(undone)).toEqual(stateOf(without));
        expect(holds(undone, any.id)).toBe(false);
        const redone = withActs(undone, [{ kind: "redone", entry: any.id }]);
        expect(stateOf(redone)).toEqual(stateOf(more));
      }),
    );
  });

  test("never has less than nothing left, nor served more films than went through it", () => {
    fc.assert(
      fc.property(anyBottle, (bottle) => {
        const { left, served, films } = stateOf(bottle);
        expect(left).toBeGreaterThanOrEqual(0);
        expect(served).toBeGreaterThanOrEqual(0);
        expect(served).toBeLessThanOrEqual(films * (1 + 1e-9));
      }),
    );
  });

  test("counts each film once, in films of 80 sq in", () => {
    fc.assert(
      fc.property(anyBottle, (bottle) => {
        const all = bottle.entries.flatMap((it) =>
          it.kind === "films" || it.kind === "drawn" ? it.films : [],
        );
        const { films, bySize } = stateOf(bottle);
        expect(films).toBeCloseTo(nominalFilms(all), 8);
        expect(nominalFilms(bySize)).toBeCloseTo(films, 8);
      }),
    );
  });

  test("takes a run's bath once, however often and in whatever order it is told", () => {
    fc.assert(
      fc.property(anyBottle, fc.array(drawn, { maxLength: 8 }), (bottle, draws) => {
        const told = draws.map((act) => entry(act));
        const once = withEntries(bottle, told);
        const again = told.reduce((it, one) => withEntries(it, [one]), withEntries(once, told));
        expect(again).toEqual(once);
        const runs = once.entries.map(sameness);
        const before = new Set(bottle.entries.map(sameness));
        const added = runs.slice(bottle.entries.length);
        expect(new Set(added).size).toBe(added.length);
        expect(added.some((it) => before.has(it))).toBe(false);
      }),
    );
  });

  test("a run that was taken back is not written down anew", () => {
    const run: Act = { kind: "drawn", run: "r", bath: "fixer", films: [{ size: "120", count: 2 }] };
    const bottle = withActs(bottleOf(fixerB), [run]);
    const undone = withActs(bottle, [{ kind: "undone", entry: bottle.entries[1]?.id ?? "" }]);
    expect(withEntries(undone, [entry(run)])).toBe(undone);
    expect(stateOf(undone).films).toBe(0);
  });

  test("is read back as it was written, and nothing else is", () => {
    fc.assert(
      fc.property(anyBottle, (bottle) => {
        expect(isBottle(JSON.parse(JSON.stringify(bottle)))).toBe(true);
      }),
    );
    const good = withActs(bottleOf(fixerB), [rolls(1)]);
    const spoilt: readonly unknown[] = [
      { ...good, tankside: 2 },
      { ...good, entries: [] },
      { ...good, entries: good.entries.slice(1) },
      { ...good, entries: [...good.entries, { ...good.entries[1], on: "2026-02-30" }] },
      { ...good, entries: [...good.entries, { ...good.entries[1], kind: "varnished" }] },
      { ...good, entries: [{ ...good.entries[0], contents: { ...fixerB, volume: { ml: 0 } } }] },
      { ...good, entries: [{ ...good.entries[0], contents: { ...fixerB, strength: "1:4" } }] },
      null,
      "a bottle",
    ];
    for (const it of spoilt) expect(isBottle(it)).toBe(false);
  });
});

describe("how a bottle stands", () => {
  test("half of it poured off takes half of the films along", () => {
    const bottle = withActs(bottleOf(fixerB), [rolls(10), { kind: "taken", volume: { ml: 500 } }]);
    expect(stateOf(bottle)).toMatchObject({ left: 500, films: 10, served: 5, serves: 10 });
    const topped = withActs(bottle, [{ kind: "added", volume: { ml: 500 } }]);
    expect(stateOf(topped)).toMatchObject({ left: 1000, served: 5, serves: 20 });
  });

  test("films in a bath that went to waste count as through it, and not to what is left", () => {
    const run: Act = {
      kind: "drawn",
      run: "r",
      bath: "fixer",
      films: [{ size: "135-36", count: 2 }],
      takes: { ml: 500 },
    };
    const fresh = withActs(bottleOf(fixerB), [run]);
    expect(stateOf(fresh)).toMatchObject({ left: 500, films: 2, served: 0, serves: 10 });
    expect(stateOf(fresh).bySize).toEqual([{ size: "135-36", count: 2 }]);
    // What was poured into the tank took its part of the films before along.
    const used = withActs(bottleOf(fixerB), [rolls(10), run]);
    expect(stateOf(used)).toMatchObject({ left: 500, films: 12, served: 5 });
  });

  test("is open from the day that something was first poured from it, and due from then", () => {
    const run: Act = { kind: "drawn", run: "r", bath: "fixer", films: [] };
    for (const act of [rolls(1), run, { kind: "taken", volume: { ml: 5 } } as const]) {
      const poured = withActs(bottleOf(fixerB), [act], "2026-04-10");
      expect(stateOf(poured), act.kind).toMatchObject({
        openedOn: "2026-04-10",
        due: { on: "2026-06-10", by: "opened", since: "2026-04-10" },
      });
      const before = withActs(poured, [{ kind: "opened" }], "2026-04-03");
      expect(stateOf(before).openedOn).toBe("2026-04-03");
      const after = withActs(poured, [{ kind: "opened" }], "2026-04-20");
      expect(stateOf(after).openedOn).toBe("2026-04-10");
    }
    const kept = withActs(bottleOf(fixerB), [{ kind: "tested", seconds: 25, film: "" }]);
    expect(stateOf(kept).openedOn).toBeNull();
  });

  test("it is half full from the day that it came to be so, and not once it is topped up", () => {
    const contents = {
      ...fixerB,
      keeps: { full: { count: 1, unit: "months" }, half: { count: 1, unit: "weeks" } },
    } as const;
    const half = withActs(
      bottleOf(contents),
      [{ kind: "taken", volume: { ml: 500 } }],
      "2026-04-10",
    );
    expect(stateOf(half).due).toEqual({ on: "2026-04-17", by: "half", since: "2026-04-10" });
    const topped = withActs(half, [{ kind: "added", volume: { ml: 10 } }], "2026-04-11");
    expect(stateOf(topped).due).toEqual({ on: "2026-05-01", by: "full", since: "2026-04-01" });
  });

  test("one that an earlier version kept with a billion months stands, and is due in a hundred years", () => {
    const keeps = { full: { count: 1e9, unit: "months" } } as const;
    const bottle = bottleOf({ ...fixerB, keeps });
    expect(isBottle(bottle)).toBe(true);
    expect(stateOf(bottle).due?.on).toBe("2126-04-01");
  });

  test("what was done earlier counts earlier, whenever it was written down", () => {
    const tested: Act = { kind: "tested", seconds: 25, film: "Gullrock 125" };
    const late = withActs(
      withActs(bottleOf(fixerB), [rolls(4)], "2026-04-20"),
      [tested],
      "2026-04-02",
    );
    expect(stateOf(late).tests).toEqual([
      { on: "2026-04-02", seconds: 25, film: "Gullrock 125", films: 0 },
    ]);
  });

  test("a correction changes what is in it and keeps what was done", () => {
    const bottle = withActs(bottleOf(fixerB), [
      rolls(3),
      { kind: "corrected", contents: { ...fixerB, name: "Fixer C", volume: { ml: 2000 } } },
    ]);
    expect(stateOf(bottle)).toMatchObject({ left: 2000, films: 3, serves: 40 });
    expect(stateOf(bottle).contents.name).toBe("Fixer C");
  });

  test("a test is held against the fresh one of the same film", () => {
    const test = (seconds: number, film: string): Act => ({ kind: "tested", seconds, film });
    const fresh = withActs(bottleOf(fixerB), [test(25, "Gullrock 125")]);
    expect(comparable(stateOf(fresh))).toEqual({ last: 25, fresh: 25 });
    const later = withActs(fresh, [rolls(8), test(52, "gullrock 125 "), test(70, "Foghorn 400")]);
    expect(comparable(stateOf(later))).toEqual({ last: 52, fresh: 25 });
    // Of two films that were tested fresh, against that of the last test.
    const both = withActs(fresh, [test(40, "Foghorn 400"), rolls(8), test(90, "Foghorn 400")]);
    expect(comparable(stateOf(both))).toEqual({ last: 90, fresh: 40 });
    // What the one film says fresh is no longer true of a bath that 8 films have gone through.
    const other = withActs(fresh, [rolls(8), test(90, "Foghorn 400")]);
    expect(comparable(stateOf(other))).toBeNull();
    expect(comparable(stateOf(withActs(other, [test(52, "Gullrock 125")])))).toEqual({
      last: 52,
      fresh: 25,
    });
    // The first test was made when films had gone through it: nobody knows what it was fresh.
    const unknown = withActs(bottleOf(fixerB), [rolls(1), test(30, "Gullrock 125")]);
    expect(comparable(stateOf(unknown))).toBeNull();
  });

  test("what cannot be done is refused with its reason", () => {
    const state = stateOf(bottleOf(fixerB));
    const taken = (ml: number): Act => ({ kind: "taken", volume: { ml } });
    expect(refusalOf(state, taken(1000), "2026-05-01")).toBeNull();
    expect(refusalOf(state, taken(1001), "2026-05-01")).toBe("more-than-left");
    expect(refusalOf(state, rolls(1), "2026-03-31")).toBe("before-mixed");
    const opened = stateOf(withActs(bottleOf(fixerB), [{ kind: "opened" }]));
    expect(refusalOf(opened, { kind: "opened" }, "2026-05-02")).toBe("opened-already");
    // Who poured from it opened it then at the latest: earlier can still be said.
    const poured = stateOf(withActs(bottleOf(fixerB), [rolls(1)]));
    expect(refusalOf(poured, { kind: "opened" }, "2026-05-01")).toBe("opened-already");
    expect(refusalOf(poured, { kind: "opened" }, "2026-04-30")).toBeNull();
    const away = stateOf(withActs(bottleOf(fixerB), [{ kind: "poured-away" }]));
    expect(refusalOf(away, rolls(1), "2026-05-02")).toBe("poured-away");
    expect(refusalOf(away, { kind: "removed" }, "2026-05-02")).toBeNull();
  });
});
