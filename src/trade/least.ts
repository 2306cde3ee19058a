// A function of one number in, where it is least out: looked for along an even row, then narrowed by golden
// section. Alone, because two laws here are fitted by it, and neither is the place to explain it.

export interface Least {
  readonly at: number;
  readonly value: number;
  /** Which of the row, from 0 to `tries`, was the best: at an end, nothing was enclosed. */
  readonly step: number;
}

const golden = (Math.sqrt(5) - 1) / 2;

/**
 * The least value of `of` between two bounds, where the row is fine enough to fall into its valley.
 * @param tries steps of the row; @param sections golden sections about its best, each to 0.618 of the last.
 */
export function leastOf(
  of: (x: number) => number,
  from: number,
  to: number,
  tries: number,
  sections: number,
): Least {
  const at = (step: number) => from + ((to - from) * step) / tries;
  let [step, value] = [0, of(from)];
  for (let i = 1; i <= tries; i += 1) {
    const here = of(at(i));
    if (here < value) [step, value] = [i, here];
  }
  let [a, b] = [at(Math.max(step - 1, 0)), at(Math.min(step + 1, tries))];
  let [x, y] = [b - golden * (b - a), a + golden * (b - a)];
  let [atX, atY] = [of(x), of(y)];
  for (let i = 0; i < sections; i += 1) {
    if (atX <= atY) {
      [b, y, atY] = [y, x, atX];
      x = b - golden * (b - a);
      atX = of(x);
    } else {
      [a, x, atX] = [x, y, atY];
      y = a + golden * (b - a);
      atY = of(y);
    }
  }
  const [narrowed, lowest] = atX <= atY ? [x, atX] : [y, atY];
  return lowest <= value ? { at: narrowed, value: lowest, step } : { at: at(step), value, step };
}
