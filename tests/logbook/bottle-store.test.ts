import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { logbookBase } from "../../src/logbook/base.ts";
import type { Entry } from "../../src/logbook/bottle.ts";
import { stateOf } from "../../src/logbook/bottle-state.ts";
import { bottleStore } from "../../src/logbook/bottle-store.ts";
import { emptyRoom, linesFrom, roomStore } from "../../src/logbook/room-store.ts";
import { bottleOf, fixerB } from "../ui/shelf-by-hand.ts";

beforeEach(() => vi.stubGlobal("indexedDB", new IDBFactory()));
afterEach(() => vi.unstubAllGlobals());

const bottle = bottleOf(fixerB);
const drawn = (id: string): Entry => ({
  id,
  at: 5,
  on: "2026-05-01",
  kind: "drawn",
  run: "run 1",
  bath: "fixer",
  films: [{ size: "120", count: 2 }],
});

describe("the kept bottles", () => {
  test("are there on the next visit, with what was added", async () => {
    const store = bottleStore(logbookBase());
    expect(await store.load()).toEqual({ kind: "found", bottles: [], unread: 0 });
    expect(await store.begin(bottle)).toBe(true);
    expect(await store.add(bottle.id, [drawn("a")])).toBe(true);
    expect(await bottleStore(logbookBase()).load()).toEqual({
      kind: "found",
      bottles: [{ ...bottle, entries: [...bottle.entries, drawn("a")] }],
      unread: 0,
    });
  });

  test("take a run once, from two pages at a time", async () => {
    const [one, other] = [bottleStore(logbookBase()), bottleStore(logbookBase())];
    await one.begin(bottle);
    await Promise.all([
      one.add(bottle.id, [drawn("a")]),
      other.add(bottle.id, [drawn("b")]),
      one.add(bottle.id, [drawn("c")]),
    ]);
    const found = await one.load();
    expect(found.kind === "found" && found.bottles[0]?.entries).toHaveLength(2);
  });

  test("begun again stay as they are, and one that is not there takes nothing", async () => {
    const store = bottleStore(logbookBase());
    await store.begin(bottle);
    await store.add(bottle.id, [drawn("a")]);
    expect(await store.begin(bottle)).toBe(true);
    const found = await store.load();
    expect(found.kind === "found" && found.bottles[0]?.entries).toHaveLength(2);
    expect(await store.add("no such bottle", [drawn("a")])).toBe(false);
  });

  test("of another make are counted, and neither written over nor added to", async () => {
    const newer = { ...bottle, tankside: 2 };
    const base = await logbookBase()();
    await base.put("bottles", newer, bottle.id);
    const store = bottleStore(logbookBase());
    expect(await store.load()).toEqual({ kind: "found", bottles: [], unread: 1 });
    expect(await store.begin(bottle)).toBe(false);
    expect(await store.add(bottle.id, [drawn("a")])).toBe(false);
    expect(await base.get("bottles", bottle.id)).toEqual(newer);
  });

  test("take nothing with which they could not be read again", async () => {
    const store = bottleStore(logbookBase());
    const nothing = bottleOf({ ...fixerB, volume: { ml: 0 } }, "nothing");
    expect(await store.begin(nothing)).toBe(false);
    await store.begin(bottle);
    const added: Entry = { id: "a", at: 5, on: "2026-05-01", kind: "added", volume: { ml: -5 } };
    expect(await store.add(bottle.id, [added])).toBe(false);
    expect(await store.load()).toEqual({ kind: "found", bottles: [bottle], unread: 0 });
  });

  test("of which an earlier version wrote down that 0 ml were poured are there", async () => {
    const none = { id: "a", at: 5, on: "2026-05-01", kind: "taken", volume: { ml: 0 } } as const;
    const kept = { ...bottle, entries: [...bottle.entries, none] };
    await (await logbookBase()()).put("bottles", kept, bottle.id);
    expect(await bottleStore(logbookBase()).load()).toMatchObject({ bottles: [kept], unread: 0 });
    expect(stateOf(kept).left).toBe(1000);
  });

  test("in a browser that keeps nothing are refused, and nothing is thrown", async () => {
    vi.stubGlobal("indexedDB", undefined);
    expect(await bottleStore(logbookBase()).load()).toEqual({ kind: "refused" });
    expect(await bottleStore(logbookBase()).begin(bottle)).toBe(false);
    expect(await bottleStore(logbookBase()).add(bottle.id, [])).toBe(false);
  });
});

describe("the room's lists", () => {
  const lists = { ...emptyRoom, opening: [{ text: "Fan on", done: true }] };

  test("are empty at first, and there on the next visit with their ticks", async () => {
    const store = roomStore(logbookBase());
    expect(await store.load()).toEqual({ kind: "found", lists: emptyRoom });
    expect(await store.change(() => lists)).toEqual({ was: emptyRoom, lists });
    expect(await roomStore(logbookBase()).load()).toEqual({ kind: "found", lists });
  });

  test("of another make are not written over", async () => {
    const base = await logbookBase()();
    await base.put("rooms", { tankside: 2, lists: {} }, "lists");
    const store = roomStore(logbookBase());
    expect(await store.load()).toEqual({ kind: "refused" });
    expect(await store.change(() => lists)).toBeNull();
    expect(await base.get("rooms", "lists")).toEqual({ tankside: 2, lists: {} });
  });

  test("of two pages are each changed from what is kept, and not from what the other had read", async () => {
    const [one, other] = [roomStore(logbookBase()), roomStore(logbookBase())];
    await Promise.all([one.load(), other.load()]);
    const closing = [{ text: "Taps off", done: false }];
    await Promise.all([
      one.change((was) => ({ ...was, opening: lists.opening })),
      other.change((was) => ({ ...was, closing })),
    ]);
    expect(await one.load()).toEqual({ kind: "found", lists: { ...lists, closing } });
  });

  test("are a line each, and a line that stays stays ticked", () => {
    expect(linesFrom(" Fan on \n\nTaps off\n", lists.opening)).toEqual([
      { text: "Fan on", done: true },
      { text: "Taps off", done: false },
    ]);
    expect(linesFrom(" \n", lists.opening)).toEqual([]);
  });

  test("in a browser that never answers are given up", async () => {
    vi.useFakeTimers();
    const store = roomStore(() => new Promise(() => {}));
    const acts = [store.load(), store.change(() => lists)];
    await vi.advanceTimersByTimeAsync(3000);
    expect(await Promise.all(acts)).toEqual([{ kind: "refused" }, null]);
    vi.useRealTimers();
  });

  test("are not changed after it was said that they are not, where another page holds them for long", async () => {
    const open = logbookBase();
    const base = await open();
    const held = base.transaction("rooms", "readwrite");
    let letGo = false;
    const holding = (async () => {
      while (!letGo) await held.store.get("x");
    })();
    vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
    const changing = roomStore(open).change(() => lists);
    for (let waited = 0; waited < 3; waited += 1) {
      await vi.advanceTimersByTimeAsync(3000);
      await new Promise((resolve) => setImmediate(resolve));
    }
    vi.useRealTimers();
    letGo = true;
    await holding;
    expect(await changing).toBeNull();
    expect(await roomStore(open).load()).toEqual({ kind: "found", lists: emptyRoom });
  });

  test("in a browser that keeps nothing are refused, and nothing is thrown", async () => {
    vi.stubGlobal("indexedDB", undefined);
    expect(await roomStore(logbookBase()).load()).toEqual({ kind: "refused" });
    expect(await roomStore(logbookBase()).change(() => lists)).toBeNull();
  });
});
