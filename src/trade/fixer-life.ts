// What a fixer's tally of films says and what its clearing test says in, whether they agree and which of them
// to trust out. Alone, because each misses what the other sees.
import { isSpent } from "./clearing.ts";

/** `silent`: there is no capacity to count to, or no test that can be compared with a fresh one. */
type Says = "good" | "spent" | "silent";

interface FixerLife {
  readonly tally: Says;
  readonly test: Says;
  /** Null where the two agree, or one of them is silent. */
  readonly trust: "tally" | "test" | null;
}

/**
 * Trust goes to the one that says spent. Spent by the test is twice the fresh clearing time (NAVEDTRA 14209).
 * Common practice, no source: a tally errs where films differ in what they leave behind, and a bath may still
 * clear quickly while it holds more silver than can be washed out.
 *
 * @param films of 80 sq in: how many the bath has served, and how many it serves in all, if anyone said.
 * @param clearing seconds: the last test and the fresh one of the same film.
 */
export function fixerLife(
  films: { readonly served: number; readonly all: number | null },
  clearing: { readonly last: number; readonly fresh: number } | null,
): FixerLife {
  const tally = films.all === null ? "silent" : films.served >= films.all - 1e-9 ? "spent" : "good";
  const test =
    clearing === null ? "silent" : isSpent(clearing.last, clearing.fresh) ? "spent" : "good";
  const disagree = tally !== test && tally !== "silent" && test !== "silent";
  return { tally, test, trust: disagree ? (tally === "spent" ? "tally" : "test") : null };
}
