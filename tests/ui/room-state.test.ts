import { describe, expect, test } from "vitest";
import { emptyRoom, type RoomLists, type RoomStore } from "../../src/logbook/room-store.ts";
import { openRoom } from "../../src/ui/room-state.ts";
import { roomByHand } from "./shelf-by-hand.ts";

const line = (text: string, done = false) => ({ text, done });
const lists: RoomLists = {
  opening: [line("Fan on", true), line("Blind down")],
  closing: [line("Taps off", true)],
  waste: [line("Fixer: blue can")],
};

async function opened(start = lists, keeps = true) {
  const it = roomByHand(start, keeps);
  await it.room.lookAgain();
  return it;
}

describe("the room's lists", () => {
  test("are not said to be empty before the store has answered", async () => {
    const { room } = roomByHand(lists);
    expect(room.lists.value).toBeNull();
    await room.lookAgain();
    expect(room.lists.value).toEqual(lists);
  });

  test("that cannot be read are empty, and it is told that nothing is kept", async () => {
    const refusing: RoomStore = {
      load: async () => ({ kind: "refused" }),
      change: async () => null,
    };
    const room = openRoom(refusing);
    await room.lookAgain();
    expect([room.lists.value, room.told.value]).toEqual([emptyRoom, "not kept"]);
  });

  test("written on one page leave what another page wrote and ticked meanwhile", async () => {
    const { room, lists: kept, changedElsewhere } = await opened();
    changedElsewhere({ ...lists, opening: [line("Bell off"), line("Fan on"), line("Blind down")] });
    await room.tick("opening", 1);
    await room.write("closing", "Taps off\nKey back");
    const all = {
      ...lists,
      opening: [line("Bell off"), line("Fan on"), line("Blind down", true)],
      closing: [line("Taps off", true), line("Key back")],
    };
    expect(kept()).toEqual(all);
    expect(room.lists.value).toEqual(all);
  });

  test("are filled only where nothing is written, on no page", async () => {
    const { room, lists: kept, changedElsewhere } = await opened(emptyRoom);
    changedElsewhere({ ...emptyRoom, waste: lists.waste });
    await room.fill({ ...lists, waste: [line("another can")] });
    expect(kept()).toEqual(lists);
  });

  test("show each press at once, and of two in a row none is lost", async () => {
    const { room, lists: kept } = await opened();
    const acts = [room.tick("opening", 1), room.tick("opening", 0), room.tick("waste", 0)];
    const after = {
      ...lists,
      opening: [line("Fan on"), line("Blind down", true)],
      waste: [line("Fixer: blue can", true)],
    };
    expect(room.lists.value).toEqual(after);
    await Promise.all(acts);
    expect([room.lists.value, kept()]).toEqual([after, after]);
  });

  test("of lines that are the same have the one ticked that was pressed", async () => {
    const twice = { ...emptyRoom, opening: [line("Fan on"), line("Fan on")] };
    const { room, lists: kept } = await opened(twice);
    await room.tick("opening", 1);
    expect(kept().opening).toEqual([line("Fan on"), line("Fan on", true)]);
  });

  test("keep what the browser would not keep as soon as it will", async () => {
    let keeps = false;
    const it = roomByHand(lists);
    const store: RoomStore = {
      load: async () => ({ kind: "found", lists: it.lists() }),
      change: async (next) => (keeps ? it.store.change(next) : null),
    };
    const room = openRoom(store);
    await room.lookAgain();
    await room.write("waste", "grey can");
    expect(room.told.value).toBe("not kept");
    keeps = true;
    await room.tick("opening", 1);
    expect(room.told.value).toBe("kept");
    expect(it.lists()).toEqual(room.lists.value);
    expect(it.lists().waste).toEqual([line("grey can")]);
  });
});

describe("what was taken away of the lists", () => {
  test.each([
    [
      "lines that were edited away",
      (room: ReturnType<typeof openRoom>) => room.write("opening", "Bell"),
    ],
    ["the ticks that were taken off", (room: ReturnType<typeof openRoom>) => room.reset()],
  ])("comes back by one press: %s", async (_, act) => {
    const { room, lists: kept } = await opened();
    expect(room.back.value).toBeNull();
    await act(room);
    expect(kept()).not.toEqual(lists);
    expect(room.back.value).not.toBeNull();
    await room.undo();
    expect([kept(), room.lists.value]).toEqual([lists, lists]);
    expect([room.told.value, room.back.value]).toEqual(["undone", null]);
  });

  test("leaves what was written and ticked since, on this page or another", async () => {
    const { room, lists: kept, changedElsewhere } = await opened();
    await room.reset();
    await room.tick("opening", 1);
    changedElsewhere({ ...kept(), closing: [...kept().closing, line("Key back")] });
    await room.undo();
    expect(kept()).toEqual({
      ...lists,
      opening: [line("Fan on", true), line("Blind down", true)],
      closing: [line("Taps off", true), line("Key back")],
    });
  });

  test("is what another page had written just before, too", async () => {
    const { room, lists: kept, changedElsewhere } = await opened();
    const both = { ...lists, opening: [...lists.opening, line("Bell off")] };
    changedElsewhere(both);
    await room.write("opening", "Fan on\nBlind down");
    await room.undo();
    expect(kept()).toEqual(both);
  });

  test("is nothing where lines were only added, moved or ticked", async () => {
    const { room } = await opened();
    await room.write("opening", "Blind down\nFan on\nBell off");
    await room.tick("waste", 0);
    expect(room.back.value).toBeNull();
  });

  test("is also one of two lines that were the same", async () => {
    const { room } = await opened({ ...emptyRoom, opening: [line("Fan on"), line("Fan on")] });
    await room.write("opening", "Fan on");
    expect(room.back.value).not.toBeNull();
  });
});
