// Two copies of one bottle in, one that holds what either knows out: the same, whichever is taken into which. Alone,
// because an entry that is added in one place comes after all that stand there, and of two places neither came first.
import type { Bottle, Entry } from "./bottle.ts";
import { sameness } from "./bottle-store.ts";

/** In the order in which they were written, by the clock of whoever wrote them; of one moment, in the order of ids. */
const asWritten = (a: Entry, b: Entry): number =>
  a.at - b.at || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

/** Every entry once, and a run's bath once: the one that was written first. */
export function inBoth(here: Bottle, there: Bottle): Bottle {
  const [one, other] = [here.entries[0], there.entries[0]];
  if (one === undefined) return there;
  const first = other === undefined || asWritten(one, other) <= 0 ? one : other;
  const all = [...here.entries, ...there.entries].toSorted(asWritten);
  const kept = new Map<string, Entry>([[sameness(first), first]]);
  for (const entry of all) {
    if (!kept.has(sameness(entry))) kept.set(sameness(entry), entry);
  }
  // What took back the one that goes takes back the one that stays.
  const staysFor = new Map(all.map((entry) => [entry.id, kept.get(sameness(entry))?.id]));
  const entries = [...kept.values()].map((entry) =>
    entry.kind === "undone" || entry.kind === "redone"
      ? { ...entry, entry: staysFor.get(entry.entry) ?? entry.entry }
      : entry,
  );
  return { ...there, ...here, entries };
}
