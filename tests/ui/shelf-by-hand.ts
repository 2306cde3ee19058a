// A shelf in memory: a store that keeps as it is told to, a clock that stands, ids that count.
import type { Bottle, Contents } from "../../src/logbook/bottle.ts";
import { type BottleStore, withEntries } from "../../src/logbook/bottle-store.ts";
import { emptyRoom, type RoomLists, type RoomStore } from "../../src/logbook/room-store.ts";
import type { RunRecord } from "../../src/logbook/run-record.ts";
import { openRoom } from "../../src/ui/room-state.ts";
import { openShelf } from "../../src/ui/shelf-state.ts";

const noon = new Date(2026, 4, 14, 12).getTime();

export const fixerB: Contents = {
  name: "Fixer B",
  kind: "fixer",
  state: "working",
  strength: "1+4",
  mixedOn: "2026-04-01",
  by: "E. M.",
  from: "concentrate",
  volume: { ml: 1000 },
  keeps: { opened: { count: 2, unit: "months" } },
  filmsPerLitre: 20,
};

export const bottleOf = (contents: Contents, id = contents.name.replace(" ", "-")): Bottle => ({
  tankside: 1,
  id,
  entries: [{ id: `${id} mixed`, at: noon, on: contents.mixedOn, kind: "mixed", contents }],
});

interface Told {
  readonly bottles?: readonly Bottle[];
  readonly runs?: readonly RunRecord[];
  readonly keeps?: boolean;
  readonly refuses?: boolean;
}

export function shelfByHand({ bottles = [], runs = [], keeps = true, refuses }: Told = {}) {
  let kept = bottles;
  let ids = 0;
  const newId = () => {
    ids += 1;
    return `id-${ids}`;
  };
  const store: BottleStore = {
    load: async () => (refuses ? { kind: "refused" } : { kind: "found", bottles: kept, unread: 0 }),
    async begin(bottle) {
      if (keeps) kept = [...kept, bottle];
      return keeps;
    },
    async add(id, entries) {
      if (keeps) kept = kept.map((it) => (it.id === id ? withEntries(it, entries) : it));
      return keeps;
    },
  };
  const shelf = openShelf({ store, runs: async () => runs, now: () => noon, newId });
  return {
    shelf,
    newId,
    kept: () => kept,
    changedElsewhere(next: readonly Bottle[]) {
      kept = next;
    },
  };
}

export function roomByHand(start: RoomLists = emptyRoom, keeps = true) {
  let lists = start;
  const store: RoomStore = {
    load: async () => ({ kind: "found", lists }),
    async change(next) {
      if (!keeps) return null;
      const was = lists;
      lists = next(was);
      return { was, lists };
    },
  };
  return {
    store,
    room: openRoom(store),
    lists: () => lists,
    changedElsewhere(next: RoomLists) {
      lists = next;
    },
  };
}
