// A section in, the same as a list out: when, what the hands do, what is said. The score for whoever
// listens to the page, and the places from which a step can be heard.
import type { Moment } from "../process/moments.ts";
import type { Section } from "../timeline/score.ts";
import type { Method } from "../trade/method.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { lateWords } from "./language.ts";

export interface Entry {
  /** Seconds from the press. */
  readonly at: number;
  /** null where only words are heard. */
  readonly hands: string | null;
  readonly says: readonly string[];
}

/** In order of time. A bout's inversions are one entry; what happens at one time is another one. */
export function entriesOf(section: Section, method: Method): readonly Entry[] {
  const byTime = new Map<number, { hands: string[]; says: string[] }>();
  const at = (seconds: number) => {
    const found = byTime.get(seconds) ?? { hands: [], says: [] };
    byTime.set(seconds, found);
    return found;
  };
  for (const [i, moment] of section.moments.entries()) {
    const deed = deedOf(section.moments, i, method);
    if (deed !== null) at(moment.at).hands.push(deed);
  }
  for (const cue of section.cues) if (cue.says !== undefined) at(cue.at).says.push(cue.says);
  return [...byTime]
    .toSorted(([a], [b]) => a - b)
    .map(([seconds, { hands, says }]) => ({
      at: seconds,
      hands: hands.length === 0 ? null : lateWords.value.deeds.joined(hands),
      says,
    }));
}

function deedOf(moments: readonly Moment[], i: number, method: Method): string | null {
  const moment = moments[i];
  if (moment === undefined) return null;
  const bath = moment.bath ?? "";
  switch (moment.do) {
    case "pour-in":
      return lateWords.value.deeds.pourIn(bath);
    case "full":
      return lateWords.value.deeds.full;
    case "agitate": {
      let end = i + 1;
      while (moments[end]?.do === "invert") end += 1;
      const turns = lateWords.value.turnsInWords[method](end - i - 1);
      const until = moments[end]?.at;
      return until === undefined
        ? turns
        : lateWords.value.deeds.until(turns, writeClockTime(until));
    }
    case "invert":
      return null;
    case "rest":
      return lateWords.value.deeds.rest;
    case "tap":
      return lateWords.value.deeds.tap(moment.count ?? 1);
    case "pour-out":
      return lateWords.value.deeds.pourOut(bath);
    case "empty":
      return lateWords.value.deeds.empty;
  }
}

/** The entry that is on at a time, by index; −1 before the first. */
export function entryAt(entries: readonly Entry[], seconds: number): number {
  return entries.findLastIndex((entry) => entry.at <= seconds);
}
