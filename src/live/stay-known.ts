// A journal in, what it says of the stays of the section that is on out: what the hands told, and what nobody heard.
// Alone, because stays are times of a section, and whoever asks about those alone needs no journal.
import { type Entry, happenedIn, pressedLast, silencesIn } from "./journal.ts";
import { type Known, nothingKnown } from "./stays.ts";

export function stayKnown(entries: readonly Entry[]): Known {
  const happened = happenedIn(entries)[pressedLast(entries)?.section ?? ""];
  const silences = silencesIn(entries);
  if (happened === undefined) return { ...nothingKnown, silences };
  const staysIn = (times: { readonly [stay: number]: number }) => Object.keys(times).map(Number);
  return { emptied: staysIn(happened.emptied), poured: staysIn(happened.pouredIn), silences };
}
