// What a probe tells, reading by reading, in; out, which of it is worth giving to a run, so that the end of a
// development is not moved at every flicker. Pure, with time as an argument. Temperatures in °C, times in s.

interface Probed {
  readonly celsius: number;
  readonly at: number;
}

export interface Steady {
  /** As they came, the latest last: no more of them than is looked back on. */
  readonly came: readonly Probed[];
  /** How many of the latest count: as many as came since the probe was last out of the tank, at most three. */
  readonly counting: number;
  /** What the run has been given last; null where it has none. */
  readonly given: Probed | null;
}

export const nothingProbed: Steady = { came: [], counting: 0, given: null };

export type Probing =
  /** The probe is not in the tank, or has just been put there. */
  | { readonly kind: "out" }
  /** Nothing in it that the run does not know, or too little of it yet. */
  | { readonly kind: "known" }
  | { readonly kind: "worth"; readonly celsius: number };

/** What a developer in a tank may have: whatever lies outside is a probe out of it, or a slip of the pen. */
export const inTank = { least: 10, most: 45 } as const;
/** Water in a tank does not change by more than this, within so many seconds or from a reading to the next. */
const JUMP = 3;
const JUMP_WITHIN = 5;
/** The middle of so many is taken. */
const MIDDLE_OF = 3;
/** One that came longer ago says nothing of now: three asked for every 20 s, and some of them missed. */
const STALE = 90;
const WORTH = 0.2;
/** However little it changed. */
const WORTH_AFTER = 120;
/** Of binary numbers. */
const rounding = 1e-6;

export const isInTank = (celsius: number): boolean =>
  celsius >= inTank.least && celsius <= inTank.most;

export function probed(
  steady: Steady,
  celsius: number,
  at: number,
): { readonly steady: Steady; readonly probing: Probing } {
  const before = steady.came.filter((each) => at - each.at <= STALE);
  const now = { celsius, at };
  const came = [...before.slice(-20), now];
  const jumped = before.some(
    (each, i) =>
      (i === before.length - 1 || at - each.at <= JUMP_WITHIN) &&
      Math.abs(celsius - each.celsius) > JUMP + rounding,
  );
  if (jumped || !isInTank(celsius)) {
    return { steady: { ...steady, came, counting: 0 }, probing: { kind: "out" } };
  }
  const counting = Math.min(MIDDLE_OF, steady.counting + 1, came.length);
  const settled = { ...steady, came, counting };
  if (counting < MIDDLE_OF) return { steady: settled, probing: { kind: "known" } };
  const middle = middleOf(came.slice(-MIDDLE_OF));
  const { given } = steady;
  const worth =
    given === null ||
    Math.abs(middle - given.celsius) > WORTH - rounding ||
    at - given.at >= WORTH_AFTER;
  return worth
    ? {
        steady: { ...settled, given: { celsius: middle, at } },
        probing: { kind: "worth", celsius: middle },
      }
    : { steady: settled, probing: { kind: "known" } };
}

/** The run had no use for it: the next one is as good as the first. */
export const notTaken = (steady: Steady): Steady => ({ ...steady, given: null });

function middleOf(readings: readonly Probed[]): number {
  const sorted = readings.map(({ celsius }) => celsius).toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}
