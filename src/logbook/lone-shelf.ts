// A database of one shelf, for what has no part in the one base: opened at the first use, and anew where a browser
// has lost it.
import { type DBSchema, type IDBPDatabase, openDB } from "idb";

interface Kept extends DBSchema {
  kept: { key: string; value: unknown };
}

export type OpenLoneShelf = () => Promise<IDBPDatabase<Kept>>;

/** Rejects where the browser would not, and then tries anew: `indexedDB` may be missing, or throw by its very name. */
export function loneShelf(name: string): OpenLoneShelf {
  let opened: Promise<IDBPDatabase<Kept>> | null = null;
  const forget = () => {
    opened = null;
  };

  async function open(): Promise<IDBPDatabase<Kept>> {
    const base = await openDB<Kept>(name, 1, {
      upgrade: (made) => void made.createObjectStore("kept"),
      // It is to be deleted, or of a newer version elsewhere: nobody waits for this page.
      blocking() {
        base.close();
        forget();
      },
      terminated: forget,
    });
    return base;
  }

  return () => {
    opened ??= open().catch((error: unknown) => {
      forget();
      throw error;
    });
    return opened;
  };
}
