import "fake-indexeddb/auto";
import { IDBFactory, IDBObjectStore } from "fake-indexeddb";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { browserKeeping } from "../../src/logbook/keeping.ts";

beforeEach(() => vi.stubGlobal("indexedDB", new IDBFactory()));
afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

/** @param grants whether it keeps for good once asked. */
function browser(grants: boolean, estimate: StorageEstimate = { quota: 1e9, usage: 1e6 }) {
  const asked: string[] = [];
  let kept = false;
  const storage: Partial<StorageManager> = {
    persisted: async () => kept,
    async persist() {
      asked.push("persist");
      kept = grants;
      return grants;
    },
    estimate: async () => estimate,
  };
  return { asked, storage };
}

describe("what this browser keeps", () => {
  test("is looked at without asking for anything", async () => {
    const { asked, storage } = browser(true);
    expect(await browserKeeping(storage).now()).toBe("may be cleared");
    expect(asked).toEqual([]);
  });

  test("is kept for good where the browser grants it, and then so for whoever looks", async () => {
    const { storage } = browser(true);
    const keeping = browserKeeping(storage);
    expect(await keeping.ask()).toBe("kept");
    expect(await keeping.now()).toBe("kept");
  });

  test("may be cleared where it does not, which it is asked no second time", async () => {
    const { asked, storage } = browser(false);
    const keeping = browserKeeping(storage);
    expect(await keeping.ask()).toBe("may be cleared");
    expect(await keeping.ask()).toBe("may be cleared");
    expect(asked).toEqual(["persist"]);
  });

  test("is not asked for where it was granted on an earlier visit", async () => {
    const { asked, storage } = browser(true);
    await browserKeeping(storage).ask();
    expect(await browserKeeping(storage).ask()).toBe("kept");
    expect(asked).toEqual(["persist"]);
  });

  test("may be cleared where a browser knows of no storage, or refuses to answer", async () => {
    const refuses = () => Promise.reject(new TypeError("opaque origin"));
    for (const storage of [null, {}, { persisted: refuses, persist: refuses, estimate: refuses }]) {
      expect(await browserKeeping(storage).now()).toBe("may be cleared");
      expect(await browserKeeping(storage).ask()).toBe("may be cleared");
    }
  });

  test("is nothing where the store is missing or refused, whatever the browser grants", async () => {
    vi.stubGlobal("indexedDB", undefined);
    expect(await browserKeeping(browser(true).storage).ask()).toBe("nothing is kept");
  });

  test("has no room left where the disk is full, or less than a run needs is left", async () => {
    const scant = browser(true, { quota: 1e6, usage: 1e6 - 1000 });
    expect(await browserKeeping(scant.storage).now()).toBe("no room");
    vi.spyOn(IDBObjectStore.prototype, "put").mockImplementation(() => {
      throw new DOMException("the disk is full", "QuotaExceededError");
    });
    expect(await browserKeeping(browser(true).storage).now()).toBe("no room");
  });

  test("leaves nothing behind of the trial", async () => {
    const deleted = vi.spyOn(IDBObjectStore.prototype, "delete");
    const put = vi.spyOn(IDBObjectStore.prototype, "put");
    await browserKeeping(browser(true).storage).now();
    expect(put).toHaveBeenCalledTimes(1);
    expect(deleted).toHaveBeenCalledWith(put.mock.calls[0]?.[1]);
  });
});

test("the room left is what the browser tells, and unknown where it does not", async () => {
  expect(await browserKeeping(browser(true, { quota: 5e6, usage: 2e6 }).storage).room()).toBe(3e6);
  expect(await browserKeeping(browser(true, { quota: 5e6 }).storage).room()).toBeNull();
  expect(await browserKeeping(null).room()).toBeNull();
});
