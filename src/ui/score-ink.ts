// What wants to be drawn in, stretches of time out: open where there is ink, folded where there is
// none for a while, and parted wherever nothing crosses, so that a line can end there.

/** `[from, to)`, seconds. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

export interface OpenSpan extends Span {
  readonly kind: "open";
  /** Where its ink ends, which may be after its time does. */
  readonly inked: number;
}

export interface FoldedSpan extends Span {
  readonly kind: "folded";
}

/** Seconds drawn between ink and a fold, so that nothing touches it. */
const MARGIN = 0.6;

/**
 * Parts a stretch of time by its inks; the spans cover it, one after another.
 * @param fold seconds without ink from which it pays to fold.
 */
export function spansOf(
  { from, to }: Span,
  inks: readonly Span[],
  fold: number,
): readonly (OpenSpan | FoldedSpan)[] {
  const runs = runsOf(inks);
  if (runs.length === 0) return to > from ? [{ kind: "folded", from, to }] : [];
  const spans: (OpenSpan | FoldedSpan)[] = [];
  let begin = from;
  for (const [i, run] of runs.entries()) {
    // Before the first run and after the last, a fold may reach to the very edge.
    if (i === 0 && run.from - from - MARGIN >= fold) {
      begin = run.from - MARGIN;
      spans.push({ kind: "folded", from, to: begin });
    }
    const next = runs[i + 1];
    const gap = (next?.from ?? to) - run.to;
    const margins = next === undefined ? MARGIN : 2 * MARGIN;
    const folds = gap - margins >= fold;
    const end = folds ? run.to + MARGIN : next === undefined ? to : run.to + gap / 2;
    spans.push({ kind: "open", from: begin, to: end, inked: run.to });
    begin = folds ? end + gap - margins : end;
    if (folds) spans.push({ kind: "folded", from: end, to: begin });
  }
  return spans;
}

/** Inks that touch, as one. */
function runsOf(inks: readonly Span[]): readonly Span[] {
  const runs: { from: number; to: number }[] = [];
  for (const { from, to } of inks.toSorted((a, b) => a.from - b.from)) {
    const last = runs.at(-1);
    if (last && from <= last.to) last.to = Math.max(last.to, to);
    else runs.push({ from, to });
  }
  return runs;
}
