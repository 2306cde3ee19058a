// A section in, the stays of its baths in the tank out; and a time within it, which of them "I pour only now"
// and "the tank is empty now" can mean. Times are seconds from the section's press.
import type { Section } from "../timeline/score.ts";

interface StayTimes {
  /** Its place among the section's stays. */
  readonly stay: number;
  readonly bath: string;
  readonly pourIn: number;
  readonly full: number;
  readonly pourOut: number;
  readonly empty: number;
}

/** A tank is said to be emptied no sooner than this before its time, seconds: else it is a slip. */
const EARLY = 60;
/** That a bath is poured only now is most often said within this after its time, seconds. */
const LATE = 60;

export function staysOf(section: Section): readonly StayTimes[] {
  const of = (deed: string) => section.moments.filter((moment) => moment.do === deed);
  const [ins, fulls, outs, empties] = [of("pour-in"), of("full"), of("pour-out"), of("empty")];
  return ins.map((moment, stay) => ({
    stay,
    bath: moment.bath ?? "",
    pourIn: moment.at,
    full: fulls[stay]?.at ?? moment.at,
    pourOut: outs[stay]?.at ?? moment.at,
    empty: empties[stay]?.at ?? moment.at,
  }));
}

/** The stay that is being poured late at a time: the last whose pour-in was called for, until it is called out. */
export function pouringLate(section: Section, elapsed: number): StayTimes | null {
  const times = staysOf(section).findLast(({ pourIn }) => pourIn <= elapsed);
  return times === undefined || elapsed >= times.pourOut ? null : times;
}

/** Whether its pour is so late that other things are more likely to be asked for. */
export const isLong = ({ pourIn }: StayTimes, elapsed: number): boolean => elapsed - pourIn > LATE;

/** What is known of a section's stays beside their times. */
export interface Known {
  /** Stays of which the hands said that their tank is empty. */
  readonly emptied: readonly number[];
  /** Stays of which the hands said that they pour in: the tank was empty before. */
  readonly poured: readonly number[];
  /** Stretches in which nothing was heard. */
  readonly silences: readonly Stretch[];
}

/** Half open, seconds from the section's press. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

export const isIn = (at: number, { from, to }: Stretch): boolean => at >= from && at < to;

export const nothingKnown: Known = { emptied: [], poured: [], silences: [] };

/** A bath is cut short this much more seldom than it runs over by as many seconds. */
const SELDOM = 3;

/**
 * The stay whose tank may be empty at a time: full once, and shortly before its pour-out at the soonest. Of those in
 * question it is the first whose call to pour out nobody heard: its bath may still have been in. Else it is the one whose
 * time is nearer, an early one being the less likely: who is half a minute late has not cut the next bath short.
 */
export function emptying(
  section: Section,
  elapsed: number,
  { emptied, poured, silences }: Known = nothingKnown,
): StayTimes | null {
  const over = Math.max(-1, ...emptied, ...poured.map((stay) => stay - 1));
  const may = staysOf(section).filter(
    ({ full, pourOut }) => Math.max(full, pourOut - EARLY) <= elapsed,
  );
  const open = may.filter(({ stay }) => stay > over);
  // Where none is left, what was said before was said too soon.
  if (open.length === 0) return may.at(-1) ?? null;
  const isCalled = ({ pourOut }: StayTimes): boolean => pourOut <= elapsed;
  const isHeard = (times: StayTimes): boolean =>
    isCalled(times) && !silences.some((silence) => isIn(times.pourOut, silence));
  const unheard = open.slice(open.findLastIndex(isHeard) + 1).find(isCalled);
  if (unheard !== undefined) return unheard;
  const off = ({ empty }: StayTimes): number =>
    elapsed < empty ? (empty - elapsed) * SELDOM : elapsed - empty;
  return open.toSorted((a, b) => off(a) - off(b))[0] ?? null;
}
