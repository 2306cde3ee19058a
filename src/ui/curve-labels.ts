// The words of a curve's drawing in, a place for each out: close to what it names, clear of other words
// and of signs, and off the lines where it can be. Alone, because it is a search and not a drawing.
import type { Box, Point, Sign } from "./curve-model.ts";
import { lineHeight, widestOf, wrapped } from "./score-type.ts";

type Mark = Point & { readonly sign: Sign };

export type Label =
  | { readonly kind: "mark"; readonly text: string; readonly mark: Mark }
  | { readonly kind: "level"; readonly text: string; readonly line: readonly [Point, Point] }
  | {
      readonly kind: "band";
      readonly text: string;
      readonly box: Box;
      readonly along: "across" | "up";
    }
  | { readonly kind: "line"; readonly text: string; readonly points: readonly Point[] };

/** Words, and the box that holds them. */
export interface Placed {
  readonly lines: readonly string[];
  readonly box: Box;
}

interface Drawn {
  readonly lines: readonly (readonly Point[])[];
  readonly marks: readonly Mark[];
}

/** Units from the middle of a sign to its edge. */
export const reachOf: Readonly<Record<Sign, number>> = { row: 5, odd: 8, today: 11, sought: 10 };

/** Units kept free between words and what they name. */
const clear = 5;
/** Units between points looked at along a line. */
const fine = 3;

/** A place for words, and how little it is liked. */
interface Candidate {
  readonly box: Box;
  readonly cost: number;
}

/**
 * In the order given, each takes the best place that is left within the plot. Words for which there is no
 * place clear of other words are left out: what the drawing says is told beside it in a sentence too.
 */
export function placedLabels(labels: readonly Label[], plot: Box, drawn: Drawn): readonly Placed[] {
  const traced = drawn.lines.map(trace);
  const signs = drawn.marks.map(({ x, y, sign }) =>
    around(x, y, 2 * reachOf[sign], 2 * reachOf[sign]),
  );
  const placed: Placed[] = [];
  for (const label of labels) {
    const lines = wrapped(label.text, (plot.right - plot.left) * 0.7);
    const [wide, high] = [widestOf(lines), lines.length * lineHeight];
    const own = label.kind === "line" ? trace(label.points) : [];
    let best: Candidate | null = null;
    for (const { box, cost } of candidates(label, wide, high, plot)) {
      if (!holds(plot, box) || placed.some((other) => overlap(other.box, box, 2))) continue;
      const crossed = traced.reduce((sum, line) => sum + countIn(line, box), 0);
      const near = traced.reduce((sum, line) => sum + countIn(line, grown(box, 8)), 0);
      const mine = countIn(own, grown(box, 8));
      const hidden = signs.filter((sign) => overlap(sign, box, 2)).length;
      const total = cost + 3 * crossed + 60 * hidden + Math.max(0, near - crossed - mine) / 2;
      if (best === null || total < best.cost) best = { box, cost: total };
    }
    if (best) placed.push({ lines, box: best.box });
  }
  return placed;
}

function candidates(label: Label, wide: number, high: number, plot: Box): readonly Candidate[] {
  switch (label.kind) {
    case "mark": {
      const { x, y, sign } = label.mark;
      return [0, 6, 14, 26].flatMap((away) => {
        const off = reachOf[sign] + clear + away;
        return asides.map(([dx, dy], order) => ({
          // Beside the sign, or above or beneath it and slid along so far that it still touches its column.
          box: around(
            x + dx * (dy === 0 ? off + wide / 2 : wide / 2),
            y + dy * (off - 3 + high / 2),
            wide,
            high,
          ),
          cost: 2 * away + order / 2,
        }));
      });
    }
    case "level": {
      const [from, to] = label.line;
      const upright = from.x === to.x;
      return steps(20).flatMap((part) => {
        const x = to.x + (from.x - to.x) * part;
        const y = to.y + (from.y - to.y) * part;
        return [-1, 1].map((side) => ({
          box: upright
            ? around(x - side * (wide / 2 + clear), y + high / 2, wide, high)
            : around(x - wide / 2, y + side * (high / 2 + 2), wide, high),
          cost: part * 6 + (side === 1 ? 2 : 0),
        }));
      });
    }
    case "band": {
      const { box, along } = label;
      const middle = { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
      const inside = (at: number, low: number, up: number, size: number) =>
        Math.min(Math.max(at, low + size / 2), up - size / 2);
      return steps(20).map((part) => ({
        box:
          along === "across"
            ? around(
                inside(middle.x, plot.left, plot.right, wide),
                plot.top + clear + high / 2 + part * (plot.bottom - plot.top),
                wide,
                high,
              )
            : around(
                plot.right - clear - wide / 2 - part * (plot.right - plot.left),
                inside(middle.y, plot.top, plot.bottom, high),
                wide,
                high,
              ),
        cost: part * 6,
      }));
    }
    case "line": {
      const path = trace(label.points);
      return steps(24).flatMap((part) => {
        const point = path[Math.round((1 - part) * (path.length - 1))];
        if (!point) return [];
        return directions.map(([dx, dy]) => ({
          box: around(
            point.x + dx * (clear + wide / 2),
            point.y + dy * (clear + high / 2),
            wide,
            high,
          ),
          cost: part * 2,
        }));
      });
    }
  }
}

/** Where words may stand beside a sign, in halves of their width and height; the better liked first. */
const asides: readonly (readonly [number, number])[] = [
  [1, 0],
  [-1, 0],
  ...[1, 0.75, 0.5, 0, -0.5, -0.75, -1].flatMap((dx): [number, number][] => [
    [dx, -1],
    [dx, 1],
  ]),
];

/** Where they may stand beside a point of a line. */
const directions: readonly (readonly [number, number])[] = [
  [1, -1],
  [1, 1],
  [-1, 1],
  [-1, -1],
  [1, 0],
  [0, -1],
  [0, 1],
  [-1, 0],
];

/** 0 to 1 in so many even steps. */
function steps(count: number): readonly number[] {
  return Array.from({ length: count + 1 }, (_, index) => index / count);
}

/** Points close together all along a line. */
function trace(points: readonly Point[]): readonly Point[] {
  return points.flatMap((point, index) => {
    const next = points[index + 1];
    if (!next) return [point];
    const count = Math.max(1, Math.ceil(Math.hypot(next.x - point.x, next.y - point.y) / fine));
    return Array.from({ length: count }, (_, step) => ({
      x: point.x + ((next.x - point.x) * step) / count,
      y: point.y + ((next.y - point.y) * step) / count,
    }));
  });
}

function around(x: number, y: number, wide: number, high: number): Box {
  return { left: x - wide / 2, top: y - high / 2, right: x + wide / 2, bottom: y + high / 2 };
}

function grown({ left, top, right, bottom }: Box, by: number): Box {
  return { left: left - by, top: top - by, right: right + by, bottom: bottom + by };
}

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
