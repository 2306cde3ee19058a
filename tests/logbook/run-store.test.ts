import { IDBFactory } from "fake-indexeddb";
import { createStore, get, set } from "idb-keyval";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import type { RunRecord } from "../../src/logbook/run-record.ts";
import { runStore } from "../../src/logbook/run-store.ts";
import { demos } from "../../src/ui/demo.ts";

beforeEach(() => vi.stubGlobal("indexedDB", new IDBFactory()));
afterEach(() => vi.unstubAllGlobals());

const begunAt = Date.UTC(2026, 2, 12, 19, 42);
const thursday: RunRecord = {
  id: "thursday",
  begunAt,
  worksheet: demos.gullrock,
  developmentSeconds: 569,
  presses: [{ section: "lay-out", at: begunAt }],
  ended: null,
  note: "",
};
const friday: RunRecord = { ...thursday, id: "friday", begunAt: begunAt + 86_400_000 };

const found = (...runs: readonly RunRecord[]) => ({ kind: "found", runs, onlyHere: [], unread: 0 });

describe("the kept runs", () => {
  test("are there on the next visit, newest first", async () => {
    const store = runStore();
    expect(await store.keep(friday)).toBe(true);
    expect(await store.keep(thursday)).toBe(true);
    expect(await runStore().all()).toEqual(found(friday, thursday));
  });

  test("are none on the first visit", async () => {
    expect(await runStore().all()).toEqual(found());
  });

  test("take on what a run does next, and leave what was said of it as it was", async () => {
    const store = runStore();
    await store.keep(thursday);
    const negatives = { density: "thin", edges: null, marks: ["spots"] } as const;
    expect(await store.judge("thursday", { note: "  a little thin\n", negatives })).toBe(true);
    const later: RunRecord = {
      ...thursday,
      presses: [...thursday.presses, { section: "temper", at: begunAt + 60_000 }],
      ended: "done",
    };
    await store.keep(later);
    expect(await store.all()).toEqual(found({ ...later, note: "  a little thin\n", negatives }));
  });

  test("lose neither a press nor a note when both come at once", async () => {
    const store = runStore();
    await store.keep(thursday);
    await Promise.all([
      store.keep({ ...thursday, ended: "left" }),
      store.judge("thursday", { note: "good" }),
      store.keep({ ...thursday, ended: "done" }),
    ]);
    expect(await store.all()).toEqual(found({ ...thursday, ended: "done", note: "good" }));
  });

  test("can be taken out, and put back with their notes", async () => {
    const store = runStore();
    await store.keep(thursday);
    expect(await store.remove("thursday")).toBe(true);
    expect(await store.all()).toEqual(found());
    expect(await store.judge("thursday", { note: "too late" })).toBe(false);
    expect(await store.all()).toEqual(found());
    await store.keep({ ...thursday, note: "good" });
    expect(await store.all()).toEqual(found({ ...thursday, note: "good" }));
  });

  test("of another make are counted, and left as they are", async () => {
    const raw = createStore("tankside-runs", "kept");
    const strange = [
      { ...thursday, worksheet: { tankside: 2 } },
      { ...thursday, begunAt: Number.NaN },
      { ...thursday, presses: [{ at: 1 }] },
      { ...thursday, ended: "exploded" },
      "a string",
    ];
    for (const [i, record] of strange.entries()) await set(`strange ${i}`, record, raw);
    const store = runStore();
    await store.keep(friday);
    expect(await store.all()).toEqual({ ...found(friday), unread: strange.length });
    expect(await get("strange 4", raw)).toBe("a string");
  });
});

describe("a browser that keeps nothing", () => {
  test("has the runs of this visit held for it, note and all, and says that it refused", async () => {
    vi.stubGlobal("indexedDB", undefined);
    const store = runStore();
    expect(await store.keep(thursday)).toBe(false);
    expect(await store.judge("thursday", { note: "dense" })).toBe(false);
    expect(await store.keep({ ...thursday, ended: "done" })).toBe(false);
    expect(await store.all()).toEqual({
      kind: "refused",
      runs: [{ ...thursday, ended: "done", note: "dense" }],
    });
    expect(await store.remove("thursday")).toBe(true);
    expect(await store.remove("thursday")).toBe(false);
    expect(await store.all()).toEqual({ kind: "refused", runs: [] });
  });

  test("that throws by the very name of its storage is borne as well", async () => {
    vi.stubGlobal("indexedDB", {
      open() {
        throw new DOMException("The operation is insecure.", "SecurityError");
      },
    });
    expect(await runStore().keep(thursday)).toBe(false);
    expect(await runStore().all()).toEqual({ kind: "refused", runs: [] });
  });

  test("that never answers is given up", async () => {
    vi.useFakeTimers();
    vi.stubGlobal("indexedDB", { open: () => ({}) });
    const all = runStore().all();
    await vi.advanceTimersByTimeAsync(3000);
    expect(await all).toEqual({ kind: "refused", runs: [] });
    vi.useRealTimers();
  });

  test("of one run names it among the others, until it keeps it after all", async () => {
    const store = runStore();
    await store.keep(thursday);
    // What cannot be cloned stands for a disk that is full: that one write is refused.
    const uncloneable = { ...friday, worksheet: { ...demos.gullrock, title: (() => "") as never } };
    expect(await store.keep(uncloneable)).toBe(false);
    const all = await store.all();
    expect(all).toMatchObject({ kind: "found", onlyHere: ["friday"] });
    expect(all.runs.map((run) => run.id)).toEqual(["friday", "thursday"]);
    await store.judge("friday", { note: "good" });
    expect(await store.keep(friday)).toBe(true);
    expect(await store.all()).toEqual(found({ ...friday, note: "good" }, thursday));
  });
});
