// The stretches in which nothing may be said, and the search for room between them.

/** `[from, to)`, seconds. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

export interface Quiet {
  /** The earliest start at or after `from` from which `seconds` of speech touch no quiet stretch. */
  nextFree(from: number, seconds: number): number;
  /** The latest start at or before `from` of which the same holds; −∞ where there is none after 0. */
  previousFree(from: number, seconds: number): number;
}

/** Sums of seconds may miss a bound by this much and still keep it. */
const FUZZ = 1e-9;

export function quietOf(stretches: readonly Stretch[]): Quiet {
  const merged: { from: number; to: number }[] = [];
  for (const { from, to } of stretches.toSorted((a, b) => a.from - b.from)) {
    const last = merged.at(-1);
    if (last !== undefined && from <= last.to) last.to = Math.max(last.to, to);
    else merged.push({ from, to });
  }

  /** Index of the first stretch that ends after `at`. */
  function firstEndingAfter(at: number): number {
    let low = 0;
    let high = merged.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((merged[middle]?.to ?? 0) > at + FUZZ) high = middle;
      else low = middle + 1;
    }
    return low;
  }

  return {
    nextFree(from, seconds) {
      let at = from;
      for (let i = firstEndingAfter(at); ; i += 1) {
        const stretch = merged[i];
        if (stretch === undefined || at + seconds <= stretch.from + FUZZ) return at;
        at = stretch.to;
      }
    },
    previousFree(from, seconds) {
      let at = from;
      for (let i = firstEndingAfter(at + seconds); ; i -= 1) {
        const stretch = merged[i];
        if (stretch !== undefined && stretch.from < at + seconds - FUZZ && stretch.to > at + FUZZ) {
          at = stretch.from - seconds;
        } else if (stretch !== undefined && stretch.to <= at + FUZZ) {
          return at;
        }
        if (i < 0) return at;
      }
    },
  };
}
