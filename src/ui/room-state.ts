// The house's lists as kept in, what a person does to them out: written, ticked, all ticks taken off.
import { type ReadonlySignal, signal } from "@preact/signals";
import {
  emptyRoom,
  linesFrom,
  type RoomListId,
  type RoomLists,
  type RoomStore,
  roomListIds,
} from "../logbook/room-store.ts";

export interface Room {
  readonly lists: ReadonlySignal<RoomLists>;
  /** Whether what was done last is kept; null before anything was. */
  readonly kept: ReadonlySignal<boolean | null>;
  write(id: RoomListId, text: string): Promise<void>;
  tick(id: RoomListId, at: number): Promise<void>;
  reset(): Promise<void>;
  fill(lists: RoomLists): Promise<void>;
  /** Reads them anew: what is kept was changed by another than these acts. */
  lookAgain(): Promise<void>;
}

export function openRoom(store: RoomStore): Room {
  const lists = signal<RoomLists>(emptyRoom);
  const kept = signal<boolean | null>(null);
  void lookAgain();

  async function lookAgain(): Promise<void> {
    const found = await store.load();
    if (found.kind === "found") lists.value = found.lists;
  }

  async function become(next: RoomLists): Promise<void> {
    lists.value = next;
    kept.value = await store.keep(next);
  }
  const lines = (id: RoomListId) => lists.value[id];

  return {
    lists,
    kept,
    write: (id, text) => become({ ...lists.value, [id]: linesFrom(text, lines(id)) }),
    tick: (id, ticked) =>
      become({
        ...lists.value,
        [id]: lines(id).map((line, at) => (at === ticked ? { ...line, done: !line.done } : line)),
      }),
    reset: () =>
      become(
        Object.fromEntries(
          roomListIds.map((id) => [id, lines(id).map(({ text }) => ({ text, done: false }))]),
        ) as unknown as RoomLists,
      ),
    fill: become,
    lookAgain,
  };
}
