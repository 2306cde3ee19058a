import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { logbookBase } from "../../src/logbook/base.ts";
import { type KeptTank, tankStore } from "../../src/logbook/tank-store.ts";

beforeEach(() => vi.stubGlobal("indexedDB", new IDBFactory()));
afterEach(() => vi.unstubAllGlobals());

const steel: KeptTank = {
  label: "steel, two reels",
  texts: { "tank.volume": "480 ml", "tank.pourIn": "10.4 s" },
};
const big: KeptTank = { label: "big one", texts: { "tank.volume": "lots" } };
const found = (...tanks: readonly KeptTank[]) => ({ kind: "found", tanks });

describe("the kept tanks", () => {
  test("are none on the first visit", async () => {
    expect(await tankStore(logbookBase()).load()).toEqual(found());
  });

  test("are there on the next visit, sorted by name, bad texts and all", async () => {
    const store = tankStore(logbookBase());
    expect(await store.keep(steel)).toBe(true);
    expect(await store.keep(big)).toBe(true);
    expect(await tankStore(logbookBase()).load()).toEqual(found(big, steel));
  });

  test("are sorted as people count", async () => {
    const store = tankStore(logbookBase());
    const named = (label: string): KeptTank => ({ label, texts: {} });
    for (const label of ["Tank 10", "tank 9", "Éclair", "Tank 2", "file"])
      await store.keep(named(label));
    expect(await store.load()).toEqual(
      found(...["Éclair", "file", "Tank 2", "tank 9", "Tank 10"].map(named)),
    );
  });

  test("hold one of a name: a new one replaces it whole", async () => {
    const store = tankStore(logbookBase());
    await store.keep(steel);
    const filled = { label: steel.label, texts: { "tank.pourOut": "8 s" } };
    expect(await store.keep(filled)).toBe(true);
    expect(await store.load()).toEqual(found(filled));
  });

  test("can be taken out one by one, and one that is not there is no refusal", async () => {
    const store = tankStore(logbookBase());
    await store.keep(steel);
    await store.keep(big);
    expect(await store.remove(steel.label)).toBe(true);
    expect(await store.remove(steel.label)).toBe(true);
    expect(await tankStore(logbookBase()).load()).toEqual(found(big));
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
    const base = await logbookBase()();
    for (const [label, it] of strange) await base.put("tanks", it, label);
    const store = tankStore(logbookBase());
    await store.keep(big);
    expect(await store.load()).toEqual(found(big));
    for (const [label, it] of strange) {
      expect(await store.keep({ label, texts: {} }), label).toBe(false);
      expect(await store.remove(label), label).toBe(false);
      expect(await base.get("tanks", label), label).toEqual(it);
    }
  });
});

describe("a browser that keeps nothing", () => {
  test("is told apart from a first visit, and nothing is thrown", async () => {
    vi.stubGlobal("indexedDB", undefined);
    const store = tankStore(logbookBase());
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
    expect(await tankStore(logbookBase()).load()).toEqual({ kind: "refused" });
    expect(await tankStore(logbookBase()).keep(steel)).toBe(false);
  });

  test("that never answers is given up", async () => {
    vi.useFakeTimers();
    vi.stubGlobal("indexedDB", { open: () => new EventTarget() });
    const store = tankStore(logbookBase());
    const answers = Promise.all([store.load(), store.keep(steel), store.remove(steel.label)]);
    await vi.advanceTimersByTimeAsync(3000);
    expect(await answers).toEqual([{ kind: "refused" }, false, false]);
    vi.useRealTimers();
  });

  test("that will not keep one tank says so, and goes on keeping others", async () => {
    const store = tankStore(logbookBase());
    // What cannot be cloned stands for a disk that is full: that one write is refused.
    const uncloneable = { label: "odd", texts: { "tank.volume": (() => "") as never } };
    expect(await store.keep(uncloneable)).toBe(false);
    expect(await store.keep(big)).toBe(true);
    expect(await store.load()).toEqual(found(big));
  });
});
