import "fake-indexeddb/auto";
import { IDBFactory, IDBObjectStore, IDBOpenDBRequest } from "fake-indexeddb";
import { openDB } from "idb";
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
    const raw = await openDB("tankside-voice-en", 1, {
      upgrade: (made) => void made.createObjectStore("kept"),
    });
    await raw.put("kept", "a string", "a text");
    await raw.put("kept", new Float32Array(3), "another width");
    await raw.put("kept", new Int16Array(0), "nothing");
    await raw.put("kept", clip(1), 3);
    expect(await voiceStore().load("en")).toEqual(found({}));
  });

  test("of an older version is there as it was kept, in the database that it made", async () => {
    const older = indexedDB.open("tankside-voice-en");
    older.onupgradeneeded = () => older.result.createObjectStore("kept");
    await new Promise((resolve) => {
      older.onsuccess = resolve;
    });
    const writing = older.result.transaction("kept", "readwrite");
    writing.objectStore("kept").put(clip(7), "Lights out.");
    await new Promise((resolve) => {
      writing.oncomplete = resolve;
    });
    older.result.close();
    const store = voiceStore();
    expect(await store.load("en")).toEqual(found({ "Lights out.": clip(7) }));
    expect(await store.change("en", new Map([["b", clip(8)]]))).toBe(true);
    expect(await voiceStore().load("en")).toEqual(found({ "Lights out.": clip(7), b: clip(8) }));
  });

  test("is refused where the browser has no store, or opens it never", async () => {
    vi.stubGlobal("indexedDB", undefined);
    expect(await voiceStore().load("en")).toEqual({ kind: "refused" });
    expect(await voiceStore().change("en", new Map([["a", clip(1)]]))).toBe(false);
    vi.stubGlobal("indexedDB", { open: () => new IDBOpenDBRequest() });
    expect(await voiceStore(20).load("en")).toEqual({ kind: "refused" });
    expect(await voiceStore(20).change("en", new Map([["a", clip(1)]]))).toBe(false);
  });
});
