// Journals kept in the browser, entry by entry, each for good before anything else is: what is lost with a
// page that dies is nothing. Beside them, less strictly, when a run was last seen alive.
import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { Plan } from "../plan/plan.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import type { Rehearsal } from "../process/rehearsal.ts";
import type { Stamp } from "./clocks.ts";
import type { Entry } from "./journal.ts";

/** What a run was begun with. */
export interface RunHeader {
  readonly id: string;
  readonly worksheet: Worksheet;
  readonly plan: Plan;
  /** Where it is a rehearsal: of those none is ever kept. */
  readonly rehearsal?: Rehearsal | undefined;
  /** UTC, ms since 1970. */
  readonly begunAt: number;
}

export interface UnfinishedRun {
  readonly header: RunHeader;
  readonly entries: readonly Entry[];
  /** When it was last seen alive; null where that was not kept. */
  readonly alive: Stamp | null;
}

/** Never rejects. False, or null, where the browser would not. */
export interface JournalStore {
  begin(header: RunHeader): Promise<boolean>;
  add(run: string, entry: Entry): Promise<boolean>;
  seenAlive(run: string, stamp: Stamp): void;
  /** The run begun last, if it never ended. */
  unfinished(): Promise<UnfinishedRun | null>;
}

/** What a rehearsal writes its journal into: it is over with its page, and what was kept before stays. */
export const unkeptJournal: Pick<JournalStore, "add" | "seenAlive"> = {
  add: async () => true,
  seenAlive() {},
};

interface Shelves extends DBSchema {
  runs: { key: string; value: RunHeader };
  entries: { key: number; value: { run: string; entry: Entry }; indexes: { run: string } };
  alive: { key: string; value: Stamp };
}

const NAME = "tankside-journal";

export function browserJournal(): JournalStore {
  let opened: Promise<IDBPDatabase<Shelves>> | null = null;

  function database(): Promise<IDBPDatabase<Shelves>> {
    opened ??= openDB<Shelves>(NAME, 1, {
      upgrade(made) {
        made.createObjectStore("runs", { keyPath: "id" });
        made.createObjectStore("entries", { autoIncrement: true }).createIndex("run", "run");
        made.createObjectStore("alive");
      },
      terminated() {
        opened = null;
      },
    });
    return opened;
  }

  /** Browsers now and then lose a database in mid-air: opened again, it is there. */
  async function twice<T>(act: (base: IDBPDatabase<Shelves>) => Promise<T>): Promise<T> {
    try {
      return await act(await database());
    } catch {
      opened = null;
      return act(await database());
    }
  }

  async function done(act: (base: IDBPDatabase<Shelves>) => Promise<unknown>): Promise<boolean> {
    try {
      await twice(act);
      return true;
    } catch {
      return false;
    }
  }

  return {
    begin: (header) =>
      done(async (base) => {
        const stores = ["runs", "entries", "alive"] as const;
        const change = base.transaction(stores, "readwrite", { durability: "strict" });
        // What was before it has ended: its record is kept elsewhere.
        await Promise.all(stores.map((name) => change.objectStore(name).clear()));
        await change.objectStore("runs").put(header);
        await change.done;
      }),
    add: (run, entry) =>
      done(async (base) => {
        const change = base.transaction("entries", "readwrite", { durability: "strict" });
        await change.store.add({ run, entry });
        await change.done;
      }),
    seenAlive(run, stamp) {
      void done(async (base) => {
        const change = base.transaction("alive", "readwrite", { durability: "relaxed" });
        await change.store.put(stamp, run);
        await change.done;
      });
    },
    async unfinished() {
      try {
        return await twice(async (base) => {
          const header = (await base.getAll("runs")).at(-1);
          if (header === undefined) return null;
          const kept = await base.getAllFromIndex("entries", "run", header.id);
          const entries = kept.map(({ entry }) => entry);
          if (entries.length === 0 || entries.some(({ kind }) => kind === "ended")) return null;
          return { header, entries, alive: (await base.get("alive", header.id)) ?? null };
        });
      } catch {
        return null;
      }
    },
  };
}
