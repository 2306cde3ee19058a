// The journal while a run is on: entries are stamped with the clocks as they are written, kept at once, and
// never changed. Time of the run is counted here and nowhere else.
import type { Clocks } from "./clocks.ts";
import { type Entry, type Happening, timeOf } from "./journal.ts";

export interface Book {
  entries(): readonly Entry[];
  /** @param at seconds on the steady clock; now, if not given. */
  write(happening: Happening, at?: number): void;
  /** Seconds of the run, now or at a time on the steady clock. */
  time(at?: number): number;
}

export function openBook(
  clocks: () => Clocks,
  keep: (entry: Entry) => void,
  before: readonly Entry[] = [],
): Book {
  let entries = before;
  return {
    entries: () => entries,
    write(happening, at) {
      const { life, steady, wall } = clocks();
      const ago = at === undefined ? 0 : steady - at;
      const entry: Entry = { life, steady: steady - ago, wall: wall - ago * 1000, ...happening };
      entries = [...entries, entry];
      keep(entry);
    },
    time(at) {
      const here = clocks();
      return timeOf(entries, at === undefined ? here : { ...here, steady: at });
    },
  };
}
