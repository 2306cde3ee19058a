import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { logbookBase } from "../../src/logbook/base.ts";
import { worksheetStore } from "../../src/logbook/worksheet-store.ts";

beforeEach(() => vi.stubGlobal("indexedDB", new IDBFactory()));
afterEach(() => vi.unstubAllGlobals());

describe("the kept worksheet", () => {
  test("is there on the next visit, bad texts and all", async () => {
    const texts = { title: "Thursday", "developer.temperature": "warm" };
    expect(await worksheetStore(logbookBase()).keep(texts)).toBe(true);
    expect(await worksheetStore(logbookBase()).load()).toEqual({ kind: "found", texts });
  });

  test("is nothing on the first visit", async () => {
    expect(await worksheetStore(logbookBase()).load()).toEqual({ kind: "nothing" });
  });

  test("of another make counts as nothing", async () => {
    const base = await logbookBase()();
    await base.put("worksheets", { title: 7 }, "worksheet");
    expect(await worksheetStore(logbookBase()).load()).toEqual({ kind: "nothing" });
  });
});

describe("a browser that keeps nothing", () => {
  test("is told apart from a first visit, and nothing is thrown", async () => {
    vi.stubGlobal("indexedDB", undefined);
    expect(await worksheetStore(logbookBase()).load()).toEqual({ kind: "refused" });
    expect(await worksheetStore(logbookBase()).keep({})).toBe(false);
  });

  test("that throws by the very name of its storage is borne as well", async () => {
    vi.stubGlobal("indexedDB", {
      open() {
        throw new DOMException("The operation is insecure.", "SecurityError");
      },
    });
    expect(await worksheetStore(logbookBase()).load()).toEqual({ kind: "refused" });
  });

  test("that never answers is given up, and what it may hold is not written over", async () => {
    vi.useFakeTimers();
    vi.stubGlobal("indexedDB", { open: () => new EventTarget() });
    const store = worksheetStore(logbookBase());
    const found = store.load();
    await vi.advanceTimersByTimeAsync(3000);
    expect(await found).toEqual({ kind: "refused" });
    expect(await store.keep({})).toBe(false);
    vi.useRealTimers();
  });
});
