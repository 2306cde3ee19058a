import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import { openDB } from "idb";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { BASE, logbookBase } from "../../src/logbook/base.ts";
import { bottleStore } from "../../src/logbook/bottle-store.ts";
import { roomStore } from "../../src/logbook/room-store.ts";
import { runStore } from "../../src/logbook/run-store.ts";
import { tankStore } from "../../src/logbook/tank-store.ts";
import { worksheetStore } from "../../src/logbook/worksheet-store.ts";
import { diesAt, fullAfter } from "./full-disk.ts";
import {
  asOlderVersionsDid,
  firstRun,
  firstVersion,
  olderBottle,
  olderRoom,
  olderRuns,
  olderTank,
  olderTexts,
  openOlder,
} from "./older-versions.ts";

beforeEach(() => vi.stubGlobal("indexedDB", new IDBFactory()));
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

const namesOfBases = async () => (await indexedDB.databases()).map(({ name }) => name).sort();
const ids = olderRuns.map(({ id }) => id);

async function expectAllThere() {
  const open = logbookBase();
  const store = runStore(open);
  const found = await store.lines();
  expect(found).toMatchObject({ kind: "found", unread: 1, onlyHere: [] });
  expect(found.lines.map(({ id }) => id)).toEqual(ids);
  expect(await store.read(ids)).toEqual(olderRuns);
  expect(await tankStore(open).load()).toEqual({ kind: "found", tanks: [olderTank] });
  expect(await worksheetStore(open).load()).toEqual({ kind: "found", texts: olderTexts });
  expect(await bottleStore(open).load()).toMatchObject({ bottles: [olderBottle], unread: 0 });
  expect(await roomStore(open).load()).toEqual({ kind: "found", lists: olderRoom });
}

describe("what older versions kept", () => {
  test("is all there, each run as that version wrote it, and what nobody can read as well", async () => {
    await asOlderVersionsDid();
    await expectAllThere();
    const base = await logbookBase()();
    expect(await base.get("runs", "of another make")).toMatchObject({ worksheet: { tankside: 2 } });
  });

  test("is kept in one place from then on, and the older ones are gone", async () => {
    await asOlderVersionsDid();
    await logbookBase()();
    await vi.waitFor(async () => expect(await namesOfBases()).toEqual([BASE]));
    await expectAllThere();
  });

  test("is moved whenever a store joins the one base, without what was moved before", async () => {
    await asOlderVersionsDid();
    const base = await logbookBase()();
    await vi.waitFor(async () => expect(await namesOfBases()).toEqual([BASE]));
    await base.delete("notes", "tankside-tanks is moved");
    await base.clear("tanks");
    base.close();
    await asOlderVersionsDid();
    const open = logbookBase();
    await runStore(open).takeOut(ids[0] ?? "");
    expect(await tankStore(open).load()).toEqual({ kind: "found", tanks: [olderTank] });
    expect((await runStore(logbookBase()).lines()).lines.map(({ id }) => id)).toEqual(ids.slice(1));
  });

  test("is looked for without anything being made of what is not there", async () => {
    await logbookBase()();
    await vi.waitFor(async () => expect(await namesOfBases()).toEqual([BASE]));
  });

  test("comes from a part of the older bases as well", async () => {
    await asOlderVersionsDid();
    indexedDB.deleteDatabase("tankside-tanks");
    const open = logbookBase();
    expect((await runStore(open).lines()).lines).toHaveLength(3);
    expect(await tankStore(open).load()).toEqual({ kind: "found", tanks: [] });
  });

  test.each([1, 2, 4, 6, 9])(
    "stays where it was when the page dies at write %i of moving it, and is moved at the next visit",
    async (at) => {
      await asOlderVersionsDid();
      diesAt(at);
      await expect(logbookBase()()).rejects.toThrow();
      vi.restoreAllMocks();
      const older = await openOlder("tankside-runs");
      expect(await older.count("kept")).toBe(4);
      older.close();
      const made = await openDB(BASE);
      for (const shelf of ["runs", "tanks", "worksheets", "bottles", "rooms"])
        expect(await made.count(shelf)).toBe(0);
      made.close();
      await expectAllThere();
    },
  );

  test("stays where it was when the disk is full, is told of as unread, and comes once there is room", async () => {
    await asOlderVersionsDid();
    fullAfter(3);
    expect(await runStore(logbookBase()).lines()).toEqual({ kind: "refused", lines: [] });
    vi.restoreAllMocks();
    await expectAllThere();
  });

  test("is not written over what a newer version kept meanwhile under the same name", async () => {
    await asOlderVersionsDid();
    diesAt(1);
    await expect(logbookBase()()).rejects.toThrow();
    vi.restoreAllMocks();
    const made = await openDB(BASE);
    await made.put("tanks", { ...olderTank, texts: {} }, olderTank.label);
    made.close();
    expect(await tankStore(logbookBase()).load()).toEqual({
      kind: "found",
      tanks: [{ ...olderTank, texts: {} }],
    });
  });
});

describe("the one base", () => {
  test("is opened once, however often it is asked for", async () => {
    const opened = vi.spyOn(indexedDB, "open");
    const open = logbookBase();
    const [a, b] = await Promise.all([open(), open()]);
    expect(a).toBe(b);
    expect(opened.mock.calls.filter(([name]) => name === BASE)).toHaveLength(1);
  });

  test("of a newer version is refused, and left as it is", async () => {
    const newer = await openDB(BASE, 99, {
      upgrade: (made) => void made.createObjectStore("runs").put("kept", "a"),
    });
    newer.close();
    expect(await runStore(logbookBase()).lines()).toEqual({ kind: "refused", lines: [] });
    expect(await worksheetStore(logbookBase()).keep({})).toBe(false);
    expect(await (await openDB(BASE)).get("runs", "a")).toBe("kept");
  });

  test("of its first version, which had no shelf for bottles nor for the room, gets both and keeps the rest", async () => {
    const first = await firstVersion();
    await first.put("runs", firstRun, firstRun.id);
    for (const name of ["runs", "tanks", "worksheet"])
      await first.put("notes", true, `tankside-${name} is moved`);
    first.close();
    const open = logbookBase();
    expect(await bottleStore(open).begin(olderBottle)).toBe(true);
    expect(await roomStore(open).change((was) => was)).not.toBeNull();
    expect(await runStore(open).read([firstRun.id])).toEqual([firstRun]);
  });

  test("makes way for a page that brings it up to date, and is opened anew when next wanted", async () => {
    const open = logbookBase();
    const tanks = tankStore(open);
    await tanks.keep(olderTank);
    const newer = await openDB(BASE, 99);
    newer.close();
    expect(await tanks.load()).toEqual({ kind: "refused" });
  });
});
