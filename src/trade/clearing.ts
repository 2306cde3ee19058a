// The time a snip of film takes to clear in the fixer in; how long to fix, and how spent it is, out.
// Alone, because it is the one test of a bath that anyone can do, and two rules for it are in print.

/** Times the clearing time; the rule a person keeps to. */
export type ClearingRule = 2 | 3;

/**
 * Twice the clearing time: US Navy NAVEDTRA 14209. Three times: other books and courses, and common
 * practice with modern emulsions.
 */
export const usualClearingRule: ClearingRule = 2;

/** A fixer is spent when its clearing time has come to so many times that of the fresh bath: NAVEDTRA 14209. */
export const spentAt = 2;

/** Seconds in the fixer for a film that clears in so many. */
export function fixingSeconds(clearing: number, rule: ClearingRule): number {
  return clearing * rule;
}

/** How many times as long as fresh it takes to clear: 1 is fresh, `spentAt` spent. Both in one unit. */
export function slowing(clearing: number, fresh: number): number {
  return clearing / fresh;
}

export function isSpent(clearing: number, fresh: number): boolean {
  return slowing(clearing, fresh) >= spentAt - 1e-9;
}
