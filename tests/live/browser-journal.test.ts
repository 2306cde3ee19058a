// A run's journal in a browser that would not keep everything at once. Another page is another journal on the same base.
import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { browserJournal } from "../../src/live/browser-journal.ts";
import type { Entry } from "../../src/live/journal.ts";
import { planOf } from "../../src/plan/plan.ts";
import { gullrock } from "../plan/worksheets.ts";

const header = { id: "a", worksheet: gullrock, plan: planOf(gullrock), begunAt: 1_700_000_000_000 };
const stamp = { life: "first", steady: 0, wall: header.begunAt };
const pressed = (section: string): Entry => ({ ...stamp, kind: "pressed", section });
const [mix, rinse, developer] = ["mix", "rinse", "developer"].map(pressed) as [Entry, Entry, Entry];

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});
afterEach(() => {
  vi.restoreAllMocks();
});

/** From now on the disk is full for what one of a store's methods writes. */
function full(method: "add" | "put") {
  return vi.spyOn(IDBObjectStore.prototype, method).mockImplementation(() => {
    throw new DOMException("no room", "QuotaExceededError");
  });
}

/** As a page that is opened again reads it. */
const left = () => browserJournal().unfinished();

describe("A run's journal", () => {
  test("is found by another page: what the run was begun with, each entry in order, and when it was last alive", async () => {
    const journal = browserJournal();
    expect(await journal.begin(header)).toBe(true);
    const kept = [mix, rinse, developer].map((entry) => journal.add("a", entry));
    expect(await Promise.all(kept)).toEqual([true, true, true]);
    expect(await journal.seenAlive("a", { ...stamp, steady: 7 })).toBe(true);
    await vi.waitFor(async () => expect((await left())?.alive?.steady).toBe(7));
    expect(await left()).toMatchObject({ header, entries: [mix, rinse, developer] });
  });

  test("is nobody's once it has ended, and holds no entry of the run before", async () => {
    const journal = browserJournal();
    await journal.begin(header);
    await journal.add("a", mix);
    await journal.add("a", { ...stamp, kind: "ended", how: "done" });
    expect(await left()).toBeNull();
    await journal.begin({ ...header, id: "b" });
    await journal.add("b", rinse);
    expect(await left()).toMatchObject({ header: { id: "b" }, entries: [rinse] });
  });

  test("keeps what could not be written before what follows it, and says that all is kept only then", async () => {
    const journal = browserJournal();
    await journal.begin(header);
    await journal.add("a", mix);
    const disk = full("add");
    expect(await journal.add("a", rinse)).toBe(false);
    expect(await journal.seenAlive("a", stamp)).toBe(false);
    disk.mockRestore();
    expect(await journal.add("a", developer)).toBe(true);
    expect((await left())?.entries).toEqual([mix, rinse, developer]);
  });

  test("tries again as long as its page lives, though nothing follows, and writes nothing twice", async () => {
    const journal = browserJournal();
    await journal.begin(header);
    const disk = full("add");
    expect(await journal.add("a", mix)).toBe(false);
    disk.mockRestore();
    expect(await journal.seenAlive("a", stamp)).toBe(true);
    expect(await journal.seenAlive("a", stamp)).toBe(true);
    expect((await left())?.entries).toEqual([mix]);
  });

  test("is not said to be kept before its beginning is, without which no page can find it", async () => {
    const journal = browserJournal();
    const disk = full("put");
    expect(await journal.begin(header)).toBe(false);
    expect(await journal.add("a", mix)).toBe(false);
    expect(await left()).toBeNull();
    disk.mockRestore();
    expect(await journal.add("a", rinse)).toBe(true);
    expect(await left()).toMatchObject({ header, entries: [mix, rinse] });
  });

  test("takes nothing of a run that could not be kept along into the next one", async () => {
    const journal = browserJournal();
    await journal.begin(header);
    const disk = full("add");
    await journal.add("a", mix);
    disk.mockRestore();
    await journal.begin({ ...header, id: "b" });
    await journal.add("b", rinse);
    expect((await left())?.entries).toEqual([rinse]);
  });
});
