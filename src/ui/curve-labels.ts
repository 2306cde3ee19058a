// A curve with its lines and signs drawn in, a place for each of its words out: close to what it names,
// clear of other words and of signs, and off the lines where it can be. Alone, because it is a search.
import { candidates, type Label, reachOf, trace } from "./curve-label-places.ts";
import type { Box, CurveDrawing, Picture, Point } from "./curve-model.ts";
import { lineHeight, widestOf, wrapped } from "./score-type.ts";

/** Words, and the box that holds them. */
export interface Placed {
  readonly lines: readonly string[];
  readonly box: Box;
}

type Drawn = Pick<Picture, "plot" | "lines" | "marks" | "levels" | "bands">;

/** A place that is within the plot, with what it hides reckoned into its cost. */
interface Place extends Placed {
  readonly cost: number;
}

/** Costs of a place: for each point of a line that it covers, each sign, hatching, words broken in two. */
const [covers, hides, hatched, broken] = [3, 400, 12, 15];
/** The cost of words for which there is no place clear of other words; they are left out. */
const leftOut = 1000;

/**
 * Each word takes the best place left by those before it. Which comes first is tried all round, and the
 * best whole is kept. What is left out for want of room is told beside the drawing in a sentence too.
 */
export function placedLabels(drawing: CurveDrawing, drawn: Drawn): readonly Placed[] {
  const open = placesOf(labelsOf(drawing, drawn), drawn);
  let best: { readonly placed: readonly Placed[]; readonly cost: number } | null = null;
  for (let first = 0; first < open.length; first += 1) {
    const placed: Placed[] = [];
    let cost = 0;
    for (const places of [...open.slice(first), ...open.slice(0, first)]) {
      const free = places.find(({ box }) => !placed.some((other) => overlap(other.box, box, 2)));
      if (free) placed.push(free);
      cost += free?.cost ?? leftOut;
    }
    if (best === null || cost < best.cost) best = { placed, cost };
  }
  return best?.placed ?? [];
}

/** For each word its places, the best first. */
function placesOf(labels: readonly Label[], drawn: Drawn): readonly (readonly Place[])[] {
  const { plot } = drawn;
  const traced = [...drawn.lines.map(({ points }) => points), ...drawn.levels].flatMap(trace);
  const signs = drawn.marks.map(({ x, y, sign }) =>
    grown({ left: x, top: y, right: x, bottom: y }, reachOf[sign]),
  );
  return labels.map((label) => {
    const own = label.kind === "line" ? trace(label.points) : [];
    const places = linesOf(label, plot).flatMap((lines, breaks) =>
      candidates(label, widestOf(lines), lines.length * lineHeight, plot).map(({ box, cost }) => ({
        lines,
        box,
        cost: cost + broken * breaks,
      })),
    );
    return places
      .filter(({ box }) => holds(plot, box))
      .map((place) => {
        const { box } = place;
        const crossed = countIn(traced, box);
        const others = countIn(traced, grown(box, 8)) - crossed - countIn(own, grown(box, 8));
        const hidden = signs.filter((sign) => overlap(sign, box, 2)).length;
        const onBand = label.kind !== "band" && drawn.bands.some((it) => overlap(it.box, box, 0));
        const taken = covers * crossed + Math.max(0, others) / 2;
        return { ...place, cost: place.cost + taken + hides * hidden + (onBand ? hatched : 0) };
      })
      .sort((a, b) => a.cost - b.cost);
  });
}

/** Its words in lines that keep to the plot; those beside a sign may also be broken once. */
function linesOf(label: Label, plot: Box): readonly (readonly string[])[] {
  const whole = wrapped(label.text, measureOf(label, plot));
  if (label.kind !== "mark" || whole.length > 1) return [whole];
  return [whole, wrapped(label.text, widestOf(whole) * 0.65)];
}

/** The words of a drawing, those first that are looked for first. */
function labelsOf(drawing: CurveDrawing, drawn: Drawn): readonly Label[] {
  const labels: Label[] = [];
  drawing.marks.forEach(({ label }, index) => {
    const mark = drawn.marks[index];
    if (label && mark) labels.push({ kind: "mark", text: label, mark });
  });
  drawing.levels.forEach(({ label }, index) => {
    const line = drawn.levels[index];
    if (line) labels.push({ kind: "level", text: label, line });
  });
  drawing.bands.forEach(({ label }, index) => {
    const band = drawn.bands[index];
    if (band) labels.push({ kind: "band", text: label, ...band });
  });
  drawing.lines.forEach(({ label }, index) => {
    const line = drawn.lines[index];
    if (label && line) labels.push({ kind: "line", text: label, points: line.points });
  });
  const first = (label: Label) => label.kind === "mark" && label.mark.sign === "today";
  return [...labels.filter(first), ...labels.filter((label) => !first(label))];
}

/** Units that a line of words may take: within its band, if that is not too narrow. */
function measureOf(label: Label, plot: Box): number {
  const wide = plot.right - plot.left;
  if (label.kind === "band" && label.along === "across") {
    return Math.min(Math.max(label.box.right - label.box.left - 8, wide * 0.34), wide * 0.7);
  }
  return wide * 0.7;
}

function grown({ left, top, right, bottom }: Box, by: number): Box {
  return { left: left - by, top: top - by, right: right + by, bottom: bottom + by };
}

/** A little may stand out to the right, where nothing else is. */
function holds(outer: Box, box: Box): boolean {
  return (
    box.left >= outer.left + 2 &&
    box.right <= outer.right + 4 &&
    box.top >= outer.top &&
    box.bottom <= outer.bottom - 1
  );
}

function overlap(a: Box, b: Box, apart: number): boolean {
  return (
    a.left < b.right + apart &&
    b.left < a.right + apart &&
    a.top < b.bottom + apart &&
    b.top < a.bottom + apart
  );
}

function countIn(points: readonly Point[], { left, top, right, bottom }: Box): number {
  return points.filter(({ x, y }) => x > left && x < right && y > top && y < bottom).length;
}
