// The house's lists as kept in, what a person does to them out: written, ticked, all ticks taken off, and the way
// back from what took lines or ticks away. What another page did to them meanwhile stays.
import { type ReadonlySignal, signal } from "@preact/signals";
import {
  emptyRoom,
  linesFrom,
  type RoomChange,
  type RoomLine,
  type RoomListId,
  type RoomLists,
  type RoomStore,
  roomListIds,
} from "../logbook/room-store.ts";

export interface Room {
  /** null until the store has answered. */
  readonly lists: ReadonlySignal<RoomLists | null>;
  /** What came of the last act; null before anything was done. */
  readonly told: ReadonlySignal<"kept" | "not kept" | "undone" | null>;
  /** Whether what was taken away last can be brought back; another each time. */
  readonly back: ReadonlySignal<RoomChange | null>;
  write(id: RoomListId, text: string): Promise<void>;
  tick(id: RoomListId, at: number): Promise<void>;
  reset(): Promise<void>;
  /** Into the lists in which nothing is written. */
  fill(lists: RoomLists): Promise<void>;
  undo(): Promise<void>;
  /** Reads them anew: what is kept was changed by another than these acts. */
  lookAgain(): Promise<void>;
}

interface Became {
  readonly was: RoomLists;
  readonly lists: RoomLists;
}

export function openRoom(store: RoomStore): Room {
  const lists = signal<RoomLists | null>(null);
  const told = signal<Room["told"]["value"]>(null);
  const back = signal<RoomChange | null>(null);
  /** Acts that are not kept yet; one that the browser would not keep goes along with the next. */
  let waiting: readonly RoomChange[] = [];
  let turn: Promise<Became | null> = Promise.resolve(null);
  void lookAgain();

  const withWaiting = (was: RoomLists) => waiting.reduce((all, change) => change(all), was);

  async function lookAgain(): Promise<void> {
    const found = await store.load();
    if (found.kind === "found") lists.value = withWaiting(found.lists);
    else {
      lists.value ??= emptyRoom;
      told.value = "not kept";
    }
  }

  /** Shown at once, and kept in its turn. Hands out what the lists were and became. */
  function become(change: RoomChange, tells: "kept" | "undone" = "kept"): Promise<Became | null> {
    const shown = lists.value;
    if (shown === null) return Promise.resolve(null);
    waiting = [...waiting, change];
    const inMemory = { was: shown, lists: change(shown) };
    lists.value = inMemory.lists;
    turn = turn.then(async () => {
      const acts = waiting.slice(0, waiting.indexOf(change) + 1);
      const came = await store.change((was) => acts.reduce((all, act) => act(all), was));
      told.value = came === null ? "not kept" : tells;
      if (came === null) return inMemory;
      waiting = waiting.slice(acts.length);
      lists.value = withWaiting(came.lists);
      return came;
    });
    return turn;
  }

  async function takeAway(change: RoomChange): Promise<void> {
    const came = await become(change);
    if (came === null) return;
    const { was, lists: made } = came;
    if (roomListIds.some((id) => hasLost(was[id], made[id])))
      back.value = (now) => each((id) => broughtBack(was[id], made[id], now[id]));
  }

  return {
    lists,
    told,
    back,
    write: (id, text) => takeAway((was) => ({ ...was, [id]: linesFrom(text, was[id]) })),
    async tick(id, at) {
      const shown = lists.value?.[id] ?? [];
      const ticked = shown[at];
      if (ticked === undefined) return;
      const { text, done } = ticked;
      const before = shown.slice(0, at).filter((line) => line.text === text).length;
      await become((was) => ({ ...was, [id]: withTick(was[id], text, before, !done) }));
    },
    reset: () =>
      takeAway((was) => each((id) => was[id].map(({ text }) => ({ text, done: false })))),
    async fill(some) {
      await become((was) => each((id) => (was[id].length === 0 ? some[id] : was[id])));
    },
    async undo() {
      const change = back.value;
      if (change === null) return;
      back.value = null;
      await become(change, "undone");
    },
    lookAgain,
  };
}

function each(linesOf: (id: RoomListId) => readonly RoomLine[]): RoomLists {
  return Object.fromEntries(
    roomListIds.map((id) => [id, linesOf(id)] as const),
  ) as unknown as RoomLists;
}

/** By its text, since another page may have written lines before it. @param before so many lines of the same text. */
function withTick(lines: readonly RoomLine[], text: string, before: number, done: boolean) {
  let same = 0;
  return lines.map((line) => {
    if (line.text !== text) return line;
    same += 1;
    return same === before + 1 ? { text, done } : line;
  });
}

/** Whether a line went, or the tick of one. */
function hasLost(was: readonly RoomLine[], made: readonly RoomLine[]): boolean {
  const alike = (lines: readonly RoomLine[], { text, done }: RoomLine) =>
    lines.filter((line) => line.text === text && (line.done || !done)).length;
  return was.some((line) => alike(made, line) < alike(was, line));
}

/** As they were, with the lines that were written and the ticks that were set since. */
function broughtBack(
  was: readonly RoomLine[],
  made: readonly RoomLine[],
  now: readonly RoomLine[],
): readonly RoomLine[] {
  const known = new Set([...was, ...made].map(({ text }) => text));
  const since = now.filter(({ text }) => !known.has(text));
  const ticked = new Set(now.flatMap(({ text, done }) => (done ? [text] : [])));
  return [...was.map(({ text, done }) => ({ text, done: done || ticked.has(text) })), ...since];
}
