// Bottles and the room's lists in a file of everything: out of one browser, into another.
import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import { beforeEach, expect, test } from "vitest";
import { faultInBottle } from "../../src/logbook/bottle.ts";
import { kinds } from "../../src/logbook/kinds.ts";
import { emptyRoom, ROOM } from "../../src/logbook/room-store.ts";
import { bottleOf, fixerB } from "../ui/shelf-by-hand.ts";

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

const kindOf = (shelf: string) => {
  const kind = kinds.find((each) => each.shelf === shelf);
  if (kind === undefined) throw new Error(`nothing of ${shelf} is in a file`);
  return kind;
};
const bottle = bottleOf(fixerB);
const entry = (id: string) => ({
  id,
  at: 5,
  on: "2026-05-01",
  kind: "drawn" as const,
  run: `run ${id}`,
  bath: "fixer",
  films: [{ size: "120", count: 2 }],
});

test("a bottle goes through a file as it is, and of another make it stays behind", async () => {
  const kind = kindOf("bottles");
  const held = JSON.parse(JSON.stringify(await kind.toFile(bottle.id, bottle)));
  expect(kind.fromFile(held)).toEqual({ key: bottle.id, value: bottle });
  expect(await kind.toFile(bottle.id, { ...bottle, tankside: 2 })).toBeNull();
});

test("of one bottle in two places, what either knows is kept, a run once", () => {
  const here = { ...bottle, entries: [...bottle.entries, entry("a"), entry("b")] };
  const there = { ...bottle, entries: [...bottle.entries, { ...entry("a"), id: "x" }, entry("c")] };
  expect(kindOf("bottles").stays(here, there)).toEqual({
    ...bottle,
    entries: [...here.entries, entry("c")],
  });
});

test.each([
  [{ ...bottle, tankside: 2 }, "tankside"],
  [{ ...bottle, id: 3 }, "id"],
  [{ ...bottle, entries: [] }, "entries"],
  [{ ...bottle, entries: [...bottle.entries, { ...entry("a"), films: "two" }] }, "entries[1]"],
  ["a bottle", ""],
])("what is wrong with a bottle is named by its place: %#", (held, fault) => {
  expect(faultInBottle(held)).toBe(fault);
  expect(kindOf("bottles").fromFile(held)).toEqual({ fault });
});

test("the room's lists go through a file, and those that are here stay", async () => {
  const kind = kindOf("rooms");
  const held = {
    tankside: 1,
    lists: { ...emptyRoom, closing: [{ text: "Taps off", done: false }] },
  };
  expect(kind.fromFile(await kind.toFile(ROOM, held))).toEqual({ key: ROOM, value: held });
  expect(kind.fromFile({ tankside: 1, lists: {} })).toEqual({ fault: "lists" });
  expect(kind.stays("here", "there")).toBe("here");
});
