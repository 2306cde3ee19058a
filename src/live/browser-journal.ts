// Journals kept in the browser, entry by entry, each for good and begun at once; what could not be kept is held in its
// order, and tried again before whatever follows. Beside them, less strictly, when a run was last seen alive.
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

/** Never rejects. False, or null, where the browser would not; true only once all that was given before is kept too. */
export interface JournalStore {
  begin(header: RunHeader): Promise<boolean>;
  add(run: string, entry: Entry): Promise<boolean>;
  /** Whether all but this is kept: what is not is tried again. */
  seenAlive(run: string, stamp: Stamp): Promise<boolean>;
  /** The run begun last, if it never ended. */
  unfinished(): Promise<UnfinishedRun | null>;
}

/** What a rehearsal writes its journal into: it is over with its page, and what was kept before stays. */
export const unkeptJournal: Pick<JournalStore, "add" | "seenAlive"> = {
  add: async () => true,
  seenAlive: async () => true,
};

interface Written {
  readonly run: string;
  readonly entry: Entry;
}

interface Shelves extends DBSchema {
  runs: { key: string; value: RunHeader };
  entries: { key: number; value: Written; indexes: { run: string } };
  alive: { key: string; value: Stamp };
}

const NAME = "tankside-journal";

export function browserJournal(): JournalStore {
  let opened: Promise<IDBPDatabase<Shelves>> | null = null;
  /** What is not kept yet: a run's beginning, and entries in their order. */
  let begun: RunHeader | null = null;
  let waiting: readonly Written[] = [];
  let last: Promise<boolean> = Promise.resolve(true);

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

  const isAllKept = () => begun === null && waiting.length === 0;

  /** Behind whatever is being written, so that no entry overtakes another. */
  function kept(): Promise<boolean> {
    last = last.then(async () => {
      const [header, entries] = [begun, waiting];
      if (isAllKept() || !(await done((base) => write(base, header, entries)))) return isAllKept();
      if (begun === header) begun = null;
      waiting = waiting.filter((each) => !entries.includes(each));
      return isAllKept();
    });
    return last;
  }

  return {
    begin(header) {
      // What was before it has ended: its record is kept elsewhere.
      [begun, waiting] = [header, []];
      return kept();
    },
    add(run, entry) {
      waiting = [...waiting, { run, entry }];
      return kept();
    },
    seenAlive(run, stamp) {
      void done(async (base) => {
        const change = base.transaction("alive", "readwrite", { durability: "relaxed" });
        await change.store.put(stamp, run);
        await change.done;
      });
      return kept();
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

/** All of it or nothing. */
async function write(
  base: IDBPDatabase<Shelves>,
  header: RunHeader | null,
  entries: readonly Written[],
): Promise<void> {
  const stores = ["runs", "entries", "alive"] as const;
  const change = base.transaction(stores, "readwrite", { durability: "strict" });
  const whole = change.done.catch((error: unknown) => ({ error }));
  try {
    if (header !== null) {
      await Promise.all(stores.map((name) => change.objectStore(name).clear()));
      await change.objectStore("runs").put(header);
    }
    for (const each of entries) await change.objectStore("entries").add(each);
  } catch (error) {
    change.abort();
    throw error;
  }
  const failure = await whole;
  if (failure !== undefined) throw failure.error;
}
