// A curve in its own units in; out, where every line, sign and word of its drawing stands, for a given
// width. Alone, so that the drawing can be measured without a screen.
import { type Placed, placedLabels } from "./curve-labels.ts";
import { lineHeight, textWidth, widestOf, wrapped } from "./score-type.ts";

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Axis {
  readonly label: string;
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly number[];
  readonly write: (value: number) => string;
}

export type Stroke = "solid" | "dashed" | "dotted";

/** A row or a reading; one that is out of line with the others; the point of today; the point sought. */
export type Sign = "row" | "odd" | "today" | "sought";

/** A curve with what is known about it, in the units of its axes. */
export interface CurveDrawing {
  readonly title: string;
  /** The essence in a sentence or two, for those who do not see it. */
  readonly says: string;
  readonly across: Axis;
  readonly up: Axis;
  readonly lines: readonly {
    readonly points: readonly Point[];
    readonly stroke: Stroke;
    readonly label?: string;
  }[];
  readonly marks: readonly (Point & { readonly sign: Sign; readonly label?: string })[];
  /** A thin ruled line right through, at a value `along` one axis. */
  readonly levels: readonly {
    readonly along: "across" | "up";
    readonly at: number;
    readonly label: string;
  }[];
  /** A hatched stretch of one axis. */
  readonly bands: readonly {
    readonly along: "across" | "up";
    readonly from: number;
    readonly to: number;
    readonly label: string;
  }[];
}

/** Units: CSS px on screen at the usual size of text, y downwards. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** `text` is null where its neighbours' words leave no room; the tick stands all the same. */
interface Tick {
  readonly at: number;
  readonly text: string | null;
}

export interface Picture {
  readonly width: number;
  readonly height: number;
  /** What the axes enclose. */
  readonly plot: Box;
  readonly across: readonly Tick[];
  readonly up: readonly Tick[];
  readonly acrossName: Placed;
  readonly upName: Placed;
  readonly lines: readonly { readonly points: readonly Point[]; readonly stroke: Stroke }[];
  readonly marks: readonly (Point & { readonly sign: Sign })[];
  readonly levels: readonly (readonly [Point, Point])[];
  readonly bands: readonly { readonly box: Box; readonly along: "across" | "up" }[];
  readonly labels: readonly Placed[];
}

/** Units from an axis to the words of its ticks. */
const gap = 8;
/** Units left free between the words of two ticks. */
const between = 10;

export function pictureOf(drawing: CurveDrawing, width: number): Picture {
  const { across, up } = drawing;
  const upName = wrapped(up.label, width);
  const acrossName = wrapped(across.label, width);
  const halfTick = widestOf(across.ticks.map(across.write)) / 2;
  const plot: Box = {
    left: Math.ceil(widestOf(up.ticks.map(up.write)) + gap),
    top: upName.length * lineHeight + gap,
    right: Math.floor(width - Math.max(6, halfTick)),
    bottom: upName.length * lineHeight + gap + Math.round(Math.min(width * 0.66, 280)),
  };
  const x = scale(across, plot.left, plot.right);
  const y = scale(up, plot.bottom, plot.top);
  const lines = drawing.lines.map(({ points, stroke }) => ({
    stroke,
    points: points.map((point) => ({ x: x(point.x), y: y(point.y) })),
  }));
  const marks = drawing.marks.map((mark) => ({ x: x(mark.x), y: y(mark.y), sign: mark.sign }));
  const levels = drawing.levels.map(({ along, at }): readonly [Point, Point] =>
    along === "up"
      ? [
          { x: plot.left, y: y(at) },
          { x: plot.right, y: y(at) },
        ]
      : [
          { x: x(at), y: plot.bottom },
          { x: x(at), y: plot.top },
        ],
  );
  const bands = drawing.bands.map(({ along, from, to }) => ({
    along,
    box:
      along === "across"
        ? { ...plot, left: x(from), right: x(to) }
        : { ...plot, top: y(to), bottom: y(from) },
  }));
  const names = plot.bottom + gap + lineHeight;
  return {
    width,
    height: names + acrossName.length * lineHeight + 2,
    plot,
    across: spaced(across, x, textWidth),
    up: spaced(up, y, () => lineHeight - between / 2),
    acrossName: textAt(acrossName, plot.right + halfTick - widestOf(acrossName), names),
    upName: textAt(upName, 0, 0),
    lines,
    marks,
    levels,
    bands,
    labels: placedLabels(drawing, { plot, lines, marks, levels, bands }),
  };
}

/** Words with their left upper corner at a point. */
function textAt(lines: readonly string[], left: number, top: number): Placed {
  const start = Math.max(0, left);
  const box = {
    left: start,
    top,
    right: start + widestOf(lines),
    bottom: top + lines.length * lineHeight,
  };
  return { lines, box };
}

function scale({ from, to }: Axis, low: number, high: number): (value: number) => number {
  return (value) => low + ((value - from) / (to - from)) * (high - low);
}

/** Words at every tick, or at every second, third … counted from 0, if they would touch one another. */
function spaced(axis: Axis, at: (value: number) => number, size: (text: string) => number) {
  const [first = 0, second = first + 1] = axis.ticks;
  const before = Math.round(first / (second - first));
  const all = axis.ticks.map((value) => ({ at: at(value), text: axis.write(value) }));
  const keeps = (index: number, every: number) => (before + index) % every === 0;
  const apart = (every: number) => {
    const kept = all.filter((_, index) => keeps(index, every));
    return kept.every(({ at, text }, index) => {
      const next = kept[index + 1];
      return !next || Math.abs(next.at - at) >= (size(text) + size(next.text)) / 2 + between;
    });
  };
  let every = 1;
  while (every < all.length && !apart(every)) every += 1;
  return all.map(({ at, text }, index) => ({ at, text: keeps(index, every) ? text : null }));
}
