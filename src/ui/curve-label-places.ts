// A word of a curve's drawing in, the places where a reader would look for it out, the better liked
// first. Alone, because it knows what each kind of word stands beside, and nothing of its neighbours.
import type { Box, Point, Sign } from "./curve-model.ts";

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

/** Where words so many units wide and high may stand. */
export function candidates(
  label: Label,
  wide: number,
  high: number,
  plot: Box,
): readonly Candidate[] {
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
export function trace(points: readonly Point[]): readonly Point[] {
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

/** A box about its middle. */
function around(x: number, y: number, wide: number, high: number): Box {
  return { left: x - wide / 2, top: y - high / 2, right: x + wide / 2, bottom: y + high / 2 };
}
