import { IDBFactory, IDBObjectStore } from "fake-indexeddb";
import { createStore, set } from "idb-keyval";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { voiceStore } from "../../src/logbook/voice-store.ts";

beforeEach(() => vi.stubGlobal("indexedDB", new IDBFactory()));
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

const clip = (...samples: readonly number[]) => Int16Array.from(samples);
const found = (clips: Record<string, Int16Array>) => ({
  kind: "found",
  clips: new Map(Object.entries(clips)),
});

describe("A kept voice", () => {
  test("is empty on the first visit", async () => {
    expect(await voiceStore().load("en")).toEqual(found({}));
  });

  test("is there on the next visit, to the sample, each language by itself", async () => {
    const store = voiceStore();
    expect(await store.change("en", new Map([["Lights out.", clip(1, -2, 32767)]]))).toBe(true);
    expect(await store.change("de", new Map([["Licht aus.", clip(-32768)]]))).toBe(true);
    expect(await voiceStore().load("en")).toEqual(found({ "Lights out.": clip(1, -2, 32767) }));
    expect(await voiceStore().load("de")).toEqual(found({ "Licht aus.": clip(-32768) }));
  });

  test("changes in several places at once: clips replaced, added and taken out", async () => {
    const store = voiceStore();
    await store.change(
      "en",
      new Map([
        ["a", clip(1)],
        ["b", clip(2)],
      ]),
    );
    const change = new Map([
      ["a", null],
      ["b", clip(3)],
      ["c", clip(4)],
      ["never there", null],
    ]);
    expect(await store.change("en", change)).toBe(true);
    expect(await store.load("en")).toEqual(found({ b: clip(3), c: clip(4) }));
  });

  test("is left as it was where the browser stops keeping in the middle of a change, and that is told", async () => {
    const store = voiceStore();
    await store.change("en", new Map([["a", clip(1)]]));
    const put = IDBObjectStore.prototype.put;
    let calls = 0;
    vi.spyOn(IDBObjectStore.prototype, "put").mockImplementation(function (
      this: IDBObjectStore,
      ...args: Parameters<typeof put>
    ) {
      calls += 1;
      if (calls === 3) throw new DOMException("full", "QuotaExceededError");
      return put.apply(this, args);
    });
    const change = new Map(["a", "b", "c", "d"].map((text) => [text, clip(9)]));
    expect(await store.change("en", change)).toBe(false);
    expect(calls).toBe(3);
    vi.restoreAllMocks();
    expect(await voiceStore().load("en")).toEqual(found({ a: clip(1) }));
  });

  test("passes over what another make has kept", async () => {
    const raw = createStore("tankside-voice-en", "kept");
    await set("a text", "a string", raw);
    await set("another width", new Float32Array(3), raw);
    await set("nothing", new Int16Array(0), raw);
    await set(3, clip(1), raw);
    expect(await voiceStore().load("en")).toEqual(found({}));
  });

  test("is refused where the browser has no store, or opens it never", async () => {
    vi.stubGlobal("indexedDB", undefined);
    expect(await voiceStore().load("en")).toEqual({ kind: "refused" });
    expect(await voiceStore().change("en", new Map([["a", clip(1)]]))).toBe(false);
    vi.stubGlobal("indexedDB", { open: () => ({}) });
    expect(await voiceStore(20).load("en")).toEqual({ kind: "refused" });
    expect(await voiceStore(20).change("en", new Map([["a", clip(1)]]))).toBe(false);
  });
});
