// The shelf of bottles, kept in this browser: entries are added to a bottle and never changed. A browser may
// refuse to keep anything: that comes back as data, and the program goes on without.

import type { OpenBase } from "./base.ts";
import { type Bottle, type Entry, isBottle } from "./bottle.ts";
import { inTime } from "./in-time.ts";
import { soon } from "./soon.ts";

type FoundBottles =
  | {
      readonly kind: "found";
      readonly bottles: readonly Bottle[];
      /** How many are kept in a shape of another make. They are left as they are. */
      readonly unread: number;
    }
  | { readonly kind: "refused" };

/**
 * Never rejects. False means that the browser would not, or that it came to nothing that can be read again as a
 * bottle, and all is as it was.
 */
export interface BottleStore {
  /** In the order in which they came to the shelf. */
  load(): Promise<FoundBottles>;
  /** A bottle with its first entry; one of that id stays as it is. */
  begin(bottle: Bottle): Promise<boolean>;
  /** Entries that a bottle has already, and a run's that it has, are not added again. */
  add(id: string, entries: readonly Entry[]): Promise<boolean>;
}

/** What makes an entry the same as another, whoever wrote it when. */
export function sameness(entry: Entry): string {
  return entry.kind === "drawn" ? `run ${entry.run} ${entry.bath}` : entry.id;
}

/** The bottle with those of the entries that it has not. */
export function withEntries(bottle: Bottle, entries: readonly Entry[]): Bottle {
  const has = new Set(bottle.entries.map(sameness));
  const fresh = entries.filter((entry) => {
    const isNew = !has.has(sameness(entry));
    has.add(sameness(entry));
    return isNew;
  });
  return fresh.length === 0 ? bottle : { ...bottle, entries: [...bottle.entries, ...fresh] };
}

export function bottleStore(open: OpenBase): BottleStore {
  /** Reads and writes at one go, so that no other page's entry is lost; false where `next` will have none of it. */
  async function change(id: string, next: (was: unknown) => Bottle | null): Promise<boolean> {
    try {
      return await inTime(open, ["bottles"], async (writing) => {
        const bottles = writing.objectStore("bottles");
        const bottle = next(await bottles.get(id));
        // What could not be read again would take the whole bottle from the shelf.
        if (!isBottle(bottle)) return false;
        await bottles.put(bottle, id);
        return true;
      });
    } catch {
      return false;
    }
  }

  return {
    async load() {
      try {
        const kept: readonly unknown[] = await soon((await open()).getAll("bottles"));
        const bottles = kept.filter(isBottle);
        return {
          kind: "found",
          bottles: bottles.toSorted((a, b) => begunAt(a) - begunAt(b) || (a.id < b.id ? -1 : 1)),
          unread: kept.length - bottles.length,
        };
      } catch {
        return { kind: "refused" };
      }
    },
    begin: (bottle) =>
      change(bottle.id, (was) => (was === undefined ? bottle : isBottle(was) ? was : null)),
    add: (id, entries) => change(id, (was) => (isBottle(was) ? withEntries(was, entries) : null)),
  };
}

function begunAt({ entries }: Bottle): number {
  return entries[0]?.at ?? 0;
}
