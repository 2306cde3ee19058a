// A section in, the stays of its baths in the tank out; and a time within it, which of them "I pour only now"
// and "the tank is empty now" can mean. Times are seconds from the section's press.
import type { Section } from "../timeline/score.ts";

export interface StayTimes {
  readonly bath: string;
  readonly pourIn: number;
  readonly full: number;
  readonly pourOut: number;
  readonly empty: number;
}

/** A tank is said to be emptied no sooner than this before its time, seconds: else it is a slip. */
const EARLY = 60;
/** That a bath is poured only now is said no later than this after its time, seconds. */
const LATE = 60;

export function staysOf(section: Section): readonly StayTimes[] {
  const of = (deed: string) => section.moments.filter((moment) => moment.do === deed);
  const [ins, fulls, outs, empties] = [of("pour-in"), of("full"), of("pour-out"), of("empty")];
  return ins.map((moment, stay) => ({
    bath: moment.bath ?? "",
    pourIn: moment.at,
    full: fulls[stay]?.at ?? moment.at,
    pourOut: outs[stay]?.at ?? moment.at,
    empty: empties[stay]?.at ?? moment.at,
  }));
}

/** The stay that is being poured late at a time: the last whose pour-in was called for, for a minute. */
export function pouringLate(section: Section, elapsed: number): number | null {
  const stay = staysOf(section).findLastIndex(({ pourIn }) => pourIn <= elapsed);
  const times = staysOf(section)[stay];
  if (times === undefined || elapsed >= times.pourOut) return null;
  return elapsed - times.pourIn <= LATE ? stay : null;
}

/**
 * The stay whose tank may be empty at a time: full once, and shortly before its pour-out at the soonest. Of two in
 * question it is the one whose time is nearer: who is half a minute late has not emptied the next bath as early.
 */
export function emptying(section: Section, elapsed: number): number | null {
  const off = ({ empty }: StayTimes): number => Math.abs(elapsed - empty);
  const may = staysOf(section)
    .map((times, stay) => ({ ...times, stay }))
    .filter(({ full, pourOut }) => Math.max(full, pourOut - EARLY) <= elapsed)
    .toSorted((a, b) => off(a) - off(b));
  return may[0]?.stay ?? null;
}
