// Wires the shelf of bottles to the world, beside main.tsx: its store, what shows it, and what a run writes on it.
// All of it is fetched when a bottle is first asked for.
import type { ComponentType } from "preact";
import type { OpenBase } from "./logbook/base.ts";
import type { RunRecord } from "./logbook/run-record.ts";
import type { RunStore } from "./logbook/run-store.ts";
import { once } from "./once.ts";
import { withLateWords } from "./ui/language.ts";
import { late } from "./ui/late.tsx";
import type { Shelf } from "./ui/shelf-state.ts";

interface ShelfHere {
  /** One for the page's life: a run writes down on it whatever place is shown. */
  readonly shelf: () => Promise<Shelf>;
  /** To be told of a run that has ended. */
  readonly drawnBy: (run: RunRecord) => void;
  readonly Shelf: ComponentType;
  /** The shelf and the room's lists anew, after a file brought or took what is kept of them. */
  readonly lookAgain: () => Promise<void>;
}

/** So many of the newest runs are looked through for what could not be written down when they ended. */
const LOOKED_THROUGH = 50;

export function shelfHere(base: OpenBase, runs: () => Promise<RunStore>): ShelfHere {
  const newId = () => crypto.randomUUID();
  const shelf = once(async () => {
    const [{ openShelf }, { bottleStore }] = await Promise.all([
      withLateWords(import("./ui/shelf-state.ts")),
      import("./logbook/bottle-store.ts"),
    ]);
    return openShelf({
      store: bottleStore(base),
      runs: async () => (await runs()).newest(LOOKED_THROUGH),
      now: () => Date.now(),
      newId,
    });
  });

  const room = once(async () => {
    const [{ openRoom }, { roomStore }] = await Promise.all([
      import("./ui/room-state.ts"),
      import("./logbook/room-store.ts"),
    ]);
    return openRoom(roomStore(base));
  });

  return {
    shelf,
    async lookAgain() {
      // What cannot be fetched now is not shown either, and is read when it is.
      const both = await Promise.all([shelf(), room()]).catch(() => []);
      await Promise.all(both.map((it) => it.lookAgain()));
    },
    drawnBy(run) {
      const { developer, baths = {} } = run.worksheet;
      if (![developer, ...Object.values(baths)].some(({ bottle }) => bottle !== undefined)) return;
      // What cannot be written down now is when the shelf is opened next.
      shelf().then(
        (it) => it.draw(run),
        () => {},
      );
    },
    Shelf: late(async () => {
      const [{ shelfWith }, opened, lists] = await Promise.all([
        withLateWords(import("./ui/shelf.tsx")),
        shelf(),
        room(),
      ]);
      return shelfWith({ shelf: opened, room: lists, newId, print: () => window.print() });
    }),
  };
}
