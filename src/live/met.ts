// What was to be marked and the marks that came, both in order of time, in; which mark was for which out: no two
// cross, and all in all they lie as near as they can. A mark by itself is for what is nearest.

export interface Due {
  /** Seconds. */
  readonly at: number;
  /** A pour is to be marked, a bout may be. */
  readonly is: "to-be-marked" | "may-be-marked";
}

/**
 * Seconds off that a moment without its mark counts for: one press is forgotten sooner than several in a row are as
 * far off as the next moment.
 */
const UNMET = 6;
/** A mark that was for nothing counts for no more, and for less the nearer to a pour: pressed once more for that. */
const STRAY = 15;
const AGAIN = 0.9;
/** What need not be marked has to be so much nearer to be meant. */
const FARTHER = 2;

export const apart = ({ at, is }: Due, mark: number): number =>
  Math.abs(mark - at) * (is === "to-be-marked" ? 1 : FARTHER);
export const unmet = ({ is }: Due): number => (is === "to-be-marked" ? UNMET : 0);
export const stray = (mark: number, due: readonly Due[]): number =>
  Math.min(
    STRAY,
    ...due.flatMap((each) => (each.is === "to-be-marked" ? AGAIN * apart(each, mark) : [])),
  );

interface Cell {
  readonly cost: number;
  readonly last: "met" | "unmet" | "stray" | "none";
}

/** By the place of what was due, the place of its mark. Dynamic programming over both lists, so it is exact. */
export function metBy(due: readonly Due[], marks: readonly number[]): ReadonlyMap<number, number> {
  const rows: Cell[][] = [];
  const cost = (i: number, j: number) => rows[i]?.[j]?.cost ?? Number.POSITIVE_INFINITY;
  for (let i = 0; i <= marks.length; i += 1) {
    const row: Cell[] = [];
    rows.push(row);
    for (let j = 0; j <= due.length; j += 1) {
      const [mark, each] = [marks[i - 1], due[j - 1]];
      const cells: Cell[] = i === 0 && j === 0 ? [{ cost: 0, last: "none" }] : [];
      // The first of those that cost the same stands: rather a mark for something than for nothing.
      if (mark !== undefined && each !== undefined) {
        cells.push({ cost: cost(i - 1, j - 1) + apart(each, mark), last: "met" });
      }
      if (each !== undefined) cells.push({ cost: cost(i, j - 1) + unmet(each), last: "unmet" });
      if (mark !== undefined)
        cells.push({ cost: cost(i - 1, j) + stray(mark, due), last: "stray" });
      row.push(cells.reduce((a, b) => (b.cost < a.cost ? b : a)));
    }
  }
  const met = new Map<number, number>();
  let [i, j] = [marks.length, due.length];
  while (i > 0 || j > 0) {
    const last = rows[i]?.[j]?.last;
    if (last === "met") met.set(j - 1, i - 1);
    if (last !== "unmet") i -= 1;
    if (last !== "stray") j -= 1;
  }
  return met;
}
