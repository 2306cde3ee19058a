// The one database of what is kept between visits: opened at the first use, brought up to date from whatever
// older version left behind. One, so that a file is taken in whole or not at all: by one transaction.
import {
  type DBSchema,
  deleteDB,
  type IDBPDatabase,
  type IDBPTransaction,
  openDB,
  type StoreNames,
} from "idb";
import { soon } from "./soon.ts";

/** What a shelf holds may be of another make: each store checks what it reads. */
export interface Shelves extends DBSchema {
  /** By when they were begun too, so that the newest are found without reading any other. */
  runs: { key: string; value: unknown; indexes: { begunAt: number } };
  /** What a list says of each run, some hundreds a record, made from them: never in a file, and made anew at any time. */
  lines: { key: string; value: unknown };
  pictures: { key: string; value: unknown };
  tanks: { key: string; value: unknown };
  worksheets: { key: string; value: unknown };
  bottles: { key: string; value: unknown };
  /** The house's own lists. */
  rooms: { key: string; value: unknown };
  /** Of the base itself: what is yet to be done to it, by name. */
  notes: { key: string; value: unknown };
}

export type Shelf = StoreNames<Shelves>;
export type Base = IDBPDatabase<Shelves>;

/** Opens the base, or hands out the one that is open; rejects where the browser would not, and then tries anew. */
export type OpenBase = () => Promise<Base>;

export const BASE = "tankside";

/**
 * The shelves that each version added, the first one first. A new kind of thing to keep is a line here and one
 * in kinds.ts; what stands here already is never changed.
 */
const added: readonly (readonly Shelf[])[] = [
  ["runs", "lines", "pictures", "tanks", "worksheets", "notes"],
  ["bottles", "rooms"],
];

/** Before there was one, each store had a database of its own, with one shelf. */
const older: readonly { readonly name: string; readonly shelf: Shelf }[] = [
  { name: "tankside-runs", shelf: "runs" },
  { name: "tankside-tanks", shelf: "tanks" },
  { name: "tankside-worksheet", shelf: "worksheets" },
  { name: "tankside-bottles", shelf: "bottles" },
  { name: "tankside-room", shelf: "rooms" },
];
const OLDER_SHELF = "kept";
/** Noted of each, so that one more joins at any time. */
const moved = (name: string) => `${name} is moved`;

export function logbookBase(): OpenBase {
  let opened: Promise<Base> | null = null;

  async function open(): Promise<Base> {
    const base = await openDB<Shelves>(BASE, added.length, {
      upgrade(made, from, _, making) {
        for (const shelf of added.slice(from).flat()) made.createObjectStore(shelf);
        if (from < 1) making.objectStore("runs").createIndex("begunAt", "begunAt");
      },
      // Another page wants to bring it up to date: this one opens it anew when it next wants it.
      blocking() {
        base.close();
        opened = null;
      },
      terminated() {
        opened = null;
      },
    });
    const noted = new Set(await base.getAllKeys("notes"));
    const left = older.filter(({ name }) => !noted.has(moved(name)));
    if (left.length > 0) await moveOlder(base, left);
    return base;
  }

  return () => {
    opened ??= open().catch((error: unknown) => {
      opened = null;
      throw error;
    });
    return opened;
  };
}

/**
 * What an older version kept, moved as it stands, whatever it is. All of it by one transaction: killed before its
 * end, it is done again at the next visit; the older bases go only after it.
 */
async function moveOlder(base: Base, left: typeof older): Promise<void> {
  const found = await Promise.all(
    left.map(async ({ name, shelf }) => ({ name, shelf, entries: await entriesOf(name) })),
  );
  try {
    await inOne(base, [...left.map(({ shelf }) => shelf), "notes"], async (moving) => {
      for (const { name, shelf, entries } of found) {
        const into = moving.objectStore(shelf);
        for (const [key, value] of entries) {
          // Kept meanwhile by a page that came first: what is there is at least as new.
          if ((await into.get(key)) === undefined) await into.put(value, key);
        }
        await moving.objectStore("notes").put(true, moved(name));
      }
    });
  } catch (error) {
    base.close();
    throw error;
  }
  for (const { name } of found) void soon(deleteDB(name)).catch(() => {});
}

async function entriesOf(name: string): Promise<readonly (readonly [string, unknown])[]> {
  const base = await openIfThere(name);
  if (base === null) return [];
  try {
    if (!base.objectStoreNames.contains(OLDER_SHELF)) return [];
    const reading = base.transaction(OLDER_SHELF);
    const [keys, values] = await Promise.all([
      reading.store.getAllKeys(),
      reading.store.getAll() as Promise<unknown[]>,
    ]);
    return keys.map((key, i) => [String(key), values[i]] as const);
  } finally {
    base.close();
  }
}

/** A base that is not there is not made by being looked for. */
async function openIfThere(name: string): Promise<IDBPDatabase | null> {
  let isThere = true;
  try {
    return await openDB(name, undefined, {
      upgrade(_, __, ___, making) {
        isThere = false;
        making.done.catch(() => {});
        making.abort();
      },
    });
  } catch (error) {
    if (!isThere) return null;
    throw error;
  }
}

export type Writing = IDBPTransaction<Shelves, Shelf[], "readwrite">;

/** All that is written by an act, or nothing of it: rejects with what hindered it, and all is as it was. */
export async function inOne<T>(
  base: Base,
  shelves: readonly Shelf[],
  act: (writing: Writing) => Promise<T>,
): Promise<T> {
  const writing = base.transaction([...shelves], "readwrite", { durability: "strict" });
  const failed = writing.done.then(
    () => null,
    (error: unknown) => ({ error }),
  );
  try {
    const came = await act(writing);
    const failure = await failed;
    if (failure !== null) throw failure.error;
    return came;
  } catch (error) {
    try {
      writing.abort();
    } catch {
      // It has ended already.
    }
    const failure = await failed;
    // A write may only say that its transaction has gone; why it went, that says itself.
    throw refusalOf(failure?.error) === "no room" ? failure?.error : error;
  }
}

/** Why nothing was written. */
export type Refusal = "no room" | "refused";

/** Browsers say so by this name, some by a number of old. */
export function refusalOf(error: unknown): Refusal {
  const full = error instanceof Error || error instanceof DOMException ? error.name : "";
  return full === "QuotaExceededError" ? "no room" : "refused";
}
