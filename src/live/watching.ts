// The clocks, read again and again, in; what they show written into the journal out, at once and in its place: before
// all that is written from then on. Alone, because a run only needs to know what it owes, and whether it is heard.
import type { Clocks } from "./clocks.ts";
import { type Gap, heardAt, type Lost, silentAt, type Watch, watchFrom, writtenAt } from "./gap.ts";

export interface Watching {
  /**
   * A look that comes every second.
   * @returns what is to be told of now, and whether anything was written.
   */
  look(sounding: boolean): { readonly lost: Lost | null; readonly isNew: boolean };
  /** Before a change is written. Whether anything was. */
  first(): boolean;
  /** What will be told of once it is heard again. */
  owed(): Lost | null;
  /** That is to be told of, or need not be. */
  owes(lost: Lost | null): void;
  /** Whether sound stood still at the last look. */
  isSilent(): boolean;
}

export function openWatching(clocks: () => Clocks, write: (gap: Gap) => void): Watching {
  let watch: Watch = watchFrom(clocks());

  function note(found: { readonly watch: Watch; readonly gaps: readonly Gap[] }): boolean {
    watch = found.watch;
    for (const gap of found.gaps) write(gap);
    return found.gaps.length > 0;
  }

  return {
    look(sounding) {
      const found = sounding ? heardAt(watch, clocks()) : silentAt(watch, clocks());
      return { lost: found.lost, isNew: note(found) };
    },
    first: () => note(writtenAt(watch, clocks())),
    owed: () => watch.owed,
    owes(owed) {
      watch = { ...watch, owed };
    },
    isSilent: () => watch.silent,
  };
}
