// What a bench hands back: a title, and rows of named figures as they are to be printed.
export interface Table {
  readonly title: string;
  readonly rows: readonly { readonly [column: string]: string | number }[];
}

/** The middle value and the extremes of some figures. */
export function spread(figures: readonly number[]) {
  const sorted = figures.toSorted((a, b) => a - b);
  return {
    least: sorted[0] ?? Number.NaN,
    median: sorted[Math.floor(sorted.length / 2)] ?? Number.NaN,
    most: sorted.at(-1) ?? Number.NaN,
  };
}
