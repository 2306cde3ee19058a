import { IDBFactory } from "fake-indexeddb";
import { createStore, get, set } from "idb-keyval";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { type KeptTank, tankStore } from "../../src/logbook/tank-store.ts";

beforeEach(() => vi.stubGlobal("indexedDB", new IDBFactory()));
afterEach(() => vi.unstubAllGlobals());

const steel: KeptTank = {
  label: "steel, two reels",
  texts: { "tank.volume": "480 ml", "tank.pourIn": "10.4 s" },
};
const big: KeptTank = { label: "big one", texts: { "tank.volume": "lots" } };
const found = (...tanks: readonly KeptTank[]) => ({ kind: "found", tanks });
const raw = () => createStore("tankside-tanks", "kept");

describe("the kept tanks", () => {
  test("are none on the first visit", async () => {
    expect(await tankStore().load()).toEqual(found());
  });

  test("are there on the next visit, sorted by name, bad texts and all", async () => {
    const store = tankStore();
    expect(await store.keep(steel)).toBe(true);
    expect(await store.keep(big)).toBe(true);
    expect(await tankStore().load()).toEqual(found(big, steel));
  });

  test("are sorted as people count", async () => {
    const store = tankStore();
    const named = (label: string): KeptTank => ({ label, texts: {} });
    for (const label of ["Tank 10", "tank 9", "Éclair", "Tank 2", "file"])
      await store.keep(named(label));
    expect(await store.load()).toEqual(
      found(...["Éclair", "file", "Tank 2", "tank 9", "Tank 10"].map(named)),
    );
  });

  test("hold one of a name: a new one replaces it whole", async () => {
    const store = tankStore();
    await store.keep(steel);
    const filled = { label: steel.label, texts: { "tank.pourOut": "8 s" } };
    expect(await store.keep(filled)).toBe(true);
    expect(await store.load()).toEqual(found(filled));
  });

  test("can be taken out one by one, and one that is not there is no refusal", async () => {
    const store = tankStore();
    await store.keep(steel);
    await store.keep(big);
    expect(await store.remove(steel.label)).toBe(true);
    expect(await store.remove(steel.label)).toBe(true);
    expect(await tankStore().load()).toEqual(found(big));
  });

  test("of another make are passed over, and neither written over nor taken out", async () => {
    const strange: readonly (readonly [string, unknown])[] = [
      ["a text", "a string"],
      ["an empty one", null],
      ["a number", { label: "a number", texts: { volume: 480 } }],
      ["a list", { label: "a list", texts: ["480 ml"] }],
      ["no texts", { label: "no texts" }],
      ["under another name", steel],
    ];
    for (const [label, it] of strange) await set(label, it, raw());
    const store = tankStore();
    await store.keep(big);
    expect(await store.load()).toEqual(found(big));
    for (const [label, it] of strange) {
      expect(await store.keep({ label, texts: {} }), label).toBe(false);
      expect(await store.remove(label), label).toBe(false);
      expect(await get(label, raw()), label).toEqual(it);
    }
  });
});

describe("a browser that keeps nothing", () => {
  test("is told apart from a first visit, and nothing is thrown", async () => {
    vi.stubGlobal("indexedDB", undefined);
    const store = tankStore();
    expect(await store.load()).toEqual({ kind: "refused" });
    expect(await store.keep(steel)).toBe(false);
    expect(await store.remove(steel.label)).toBe(false);
  });

  test("that throws by the very name of its storage is borne as well", async () => {
    vi.stubGlobal("indexedDB", {
      open() {
        throw new DOMException("The operation is insecure.", "SecurityError");
      },
    });
    expect(await tankStore().load()).toEqual({ kind: "refused" });
    expect(await tankStore().keep(steel)).toBe(false);
  });

  test("that never answers is given up", async () => {
    vi.useFakeTimers();
    vi.stubGlobal("indexedDB", { open: () => ({}) });
    const store = tankStore();
    const answers = Promise.all([store.load(), store.keep(steel), store.remove(steel.label)]);
    await vi.advanceTimersByTimeAsync(3000);
    expect(await answers).toEqual([{ kind: "refused" }, false, false]);
    vi.useRealTimers();
  });

  test("that will not keep one tank says so, and goes on keeping others", async () => {
    const store = tankStore();
    // What cannot be cloned stands for a disk that is full: that one write is refused.
    const uncloneable = { label: "odd", texts: { "tank.volume": (() => "") as never } };
    expect(await store.keep(uncloneable)).toBe(false);
    expect(await store.keep(big)).toBe(true);
    expect(await store.load()).toEqual(found(big));
  });
});
