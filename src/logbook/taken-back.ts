// What taking a file in has written, and what stood in its place before, in; all of it put back as it was, by one
// transaction. What has been changed since is nobody's to take away: it stays, and is counted.
import { type Base, inOne } from "./base.ts";
import { type Kind, kinds } from "./kinds.ts";
import { changeLines } from "./line-blocks.ts";
import { lineOf, type RunLine } from "./run-line.ts";
import { isRunRecord } from "./run-record.ts";
import type { Settings } from "./settings-shelf.ts";

/** One entry that a file changed. */
export interface Changed {
  readonly kind: Kind;
  readonly key: string;
  /** undefined: there was none. */
  readonly was: unknown;
  readonly is: unknown;
}

/** All that a file changed: held by whoever may want it back, for as long as they may. */
export interface Before {
  readonly changed: readonly Changed[];
  /** The choices that it brought, where there were none. */
  readonly settings: Settings;
  /** What had been left to be done to the choices when it came; undefined: nothing. */
  readonly settingsLeft: unknown;
}

/** Noted in the base by the transaction that changes the rest, and done after it, since localStorage is in none. */
export const SETTINGS_TO_COME = "settings to come";
export const SETTINGS_TO_GO = "settings to go";

/** @returns how many stayed because they have been changed since. */
export function takenBack(base: Base, before: Before): Promise<number> {
  return inOne(base, [...kinds.map(({ shelf }) => shelf), "lines", "notes"], async (writing) => {
    let stayed = 0;
    const lines = new Map<string, RunLine | null>();
    for (const kind of kinds) {
      const shelf = writing.objectStore(kind.shelf);
      const changed = before.changed.filter((one) => one.kind === kind);
      // All asked for at once: ten thousand questions in turn would take a while.
      const now: readonly unknown[] = await Promise.all(changed.map(({ key }) => shelf.get(key)));
      for (const [i, { key, was, is }] of changed.entries()) {
        const here = now[i];
        if (here === undefined && was === undefined) continue;
        if (here === undefined || !kind.same(here, is)) {
          stayed += 1;
          continue;
        }
        unawaited(was === undefined ? shelf.delete(key) : shelf.put(was, key));
        if (kind.shelf === "runs") lines.set(key, isRunRecord(was) ? lineOf(was) : null);
      }
    }
    const notes = writing.objectStore("notes");
    if (before.settingsLeft === undefined) await notes.delete(SETTINGS_TO_COME);
    else await notes.put(before.settingsLeft, SETTINGS_TO_COME);
    await notes.put(before.settings, SETTINGS_TO_GO);
    await changeLines(writing, lines);
    return stayed;
  });
}

/** A write that fails ends its transaction, which is heard of there. */
export function unawaited(write: Promise<unknown>): void {
  write.catch(() => {});
}
