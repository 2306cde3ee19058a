// A section in, the same as a list out: when, what the hands do, what is said. The score for whoever
// listens to the page, and the places from which a step can be heard.
import type { Moment } from "../process/moments.ts";
import type { Section } from "../timeline/score.ts";
import type { Method } from "../trade/method.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { deedWords, turnsInWords } from "./walk-words.ts";

export interface Entry {
  /** Seconds from the press. */
  readonly at: number;
  /** null where only words are heard. */
  readonly hands: string | null;
  readonly says: readonly string[];
}

export interface Naming {
  readonly method: Method;
  /** What a bath is called within a sentence. */
  readonly bath: (id: string) => string;
}

/** In order of time. A bout's inversions are one entry; what happens at one time is another one. */
export function entriesOf(section: Section, naming: Naming): readonly Entry[] {
  const byTime = new Map<number, { hands: string[]; says: string[] }>();
  const at = (seconds: number) => {
    const found = byTime.get(seconds) ?? { hands: [], says: [] };
    byTime.set(seconds, found);
    return found;
  };
  for (const [i, moment] of section.moments.entries()) {
    const deed = deedOf(section.moments, i, naming);
    if (deed !== null) at(moment.at).hands.push(deed);
  }
  for (const cue of section.cues) if (cue.says !== undefined) at(cue.at).says.push(cue.says);
  return [...byTime]
    .toSorted(([a], [b]) => a - b)
    .map(([seconds, { hands, says }]) => ({
      at: seconds,
      hands: hands.length === 0 ? null : hands.join(", "),
      says,
    }));
}

function deedOf(moments: readonly Moment[], i: number, naming: Naming): string | null {
  const moment = moments[i];
  if (moment === undefined) return null;
  const bath = moment.bath === null ? "" : naming.bath(moment.bath);
  switch (moment.do) {
    case "pour-in":
      return deedWords.pourIn(bath);
    case "full":
      return deedWords.full;
    case "agitate": {
      let end = i + 1;
      while (moments[end]?.do === "invert") end += 1;
      const turns = turnsInWords[naming.method](end - i - 1);
      const until = moments[end]?.at;
      return until === undefined ? turns : deedWords.until(turns, writeClockTime(until));
    }
    case "invert":
      return null;
    case "rest":
      return deedWords.rest;
    case "tap":
      return deedWords.tap(moment.count ?? 1);
    case "pour-out":
      return deedWords.pourOut(bath);
    case "empty":
      return deedWords.empty;
  }
}

/** The entry that is on at a time, by index; −1 before the first. */
export function entryAt(entries: readonly Entry[], seconds: number): number {
  return entries.findLastIndex((entry) => entry.at <= seconds);
}
