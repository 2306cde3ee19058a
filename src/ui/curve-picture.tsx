// A curve as it is seen: ink on paper, told apart by shape. Where everything stands is decided in
// curve-model.ts, for the width there is, so that words keep their size on any screen.
import { useLayoutEffect, useMemo, useRef, useState } from "preact/hooks";
import type { Placed } from "./curve-labels.ts";
import {
  type Box,
  type CurveDrawing,
  type Picture,
  type Point,
  pictureOf,
  type Sign,
} from "./curve-model.ts";
import { lineHeight } from "./score-type.ts";
import "./curve.css";
import { lateWords } from "./language.ts";

export function CurvePicture({ drawing }: { readonly drawing: CurveDrawing }) {
  const frame = useRef<HTMLElement>(null);
  const width = useUnitsOf(frame);
  const picture = useMemo(() => pictureOf(drawing, width), [drawing, width]);
  return (
    <figure class="curve" ref={frame}>
      <figcaption>{drawing.title}</figcaption>
      <svg
        role="img"
        aria-label={lateWords.value.curve.picture(drawing.title, drawing.says)}
        viewBox={`0 0 ${picture.width} ${picture.height}`}
        style={`--wide: ${picture.width}`}
      >
        <Drawn picture={picture} />
      </svg>
    </figure>
  );
}

/** Units that a drawing may be wide; below the least it is scaled down. */
const [least, usual, widest] = [280, 340, 500];

/** What an element is wide, in units: CSS px at the usual size of text, where the root is 18 px. */
function useUnitsOf(frame: { readonly current: HTMLElement | null }): number {
  const [units, setUnits] = useState(usual);
  useLayoutEffect(() => {
    const element = frame.current;
    if (!element) return;
    const measure = () => {
      const root = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
      const there = Math.floor((element.clientWidth * 18) / root);
      if (there > 0) setUnits(Math.min(Math.max(there, least), widest));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [frame]);
  return units;
}

function Drawn({ picture }: { readonly picture: Picture }) {
  const { plot, across, up, lines, marks, levels, bands, labels, acrossName, upName } = picture;
  const edge = picture.width - NEAR;
  return (
    <>
      {bands.map(({ box, along }) => (
        <path key={`${box.left} ${box.top}`} class="hatch" d={hatching(box, along)} />
      ))}
      {/* The hatching, and nothing else, makes way for words. */}
      {labels.map(({ box: { left, top, right, bottom } }) => (
        <rect key={`${left} ${top}`} x={left} y={top} width={right - left} height={bottom - top} />
      ))}
      <path class="grid" d={across.map(({ at }) => `M${at} ${plot.top}V${plot.bottom}`).join("")} />
      <path class="grid" d={up.map(({ at }) => `M${plot.left} ${at}H${plot.right}`).join("")} />
      <path class="axis" d={`M${plot.left} ${plot.top}V${plot.bottom}H${plot.right}`} />
      {bands.map(({ box, along }) => (
        <path key={`${box.left} ${box.top}`} class="level" d={endsOf(box, along)} />
      ))}
      {levels.map((level) => (
        <path key={path(level)} class="level" d={path(level)} />
      ))}
      {lines.map(({ points, stroke }) => (
        <path key={`${stroke} ${path(points)}`} class={stroke} d={path(points)} />
      ))}
      {marks.map(({ x, y, sign }) => (
        <Mark key={`${sign} ${x} ${y}`} x={x} y={y} sign={sign} />
      ))}
      {across.map(({ at, text }) => (
        <g key={at}>
          <path class="tick" d={`M${at} ${plot.bottom}v5`} />
          {text && (
            <text class="middle" x={at} y={plot.bottom + 8 + baseline}>
              {text}
            </text>
          )}
        </g>
      ))}
      {up.map(({ at, text }) => (
        <g key={at}>
          <path class="tick" d={`M${plot.left} ${at}h-5`} />
          {text && (
            <text class="end" x={plot.left - 8} y={at + 5.5}>
              {text}
            </text>
          )}
        </g>
      ))}
      <Words words={upName} edge={edge} />
      <Words words={acrossName} edge={edge} />
      {labels.map((label) => (
        <Words key={`${label.box.left} ${label.box.top}`} words={label} edge={edge} label />
      ))}
    </>
  );
}

/**
 * Words that end so near the right edge, units, are held there, at their right end: somebody may set them wider than
 * they were laid out.
 */
const NEAR = 2 * lineHeight;

/** Units from the top of a line of text down to where its letters stand. */
const baseline = 0.78 * lineHeight;

interface WordsProps {
  readonly words: Placed;
  /** Beyond it they are held at their right end. */
  readonly edge: number;
  readonly label?: boolean;
}

function Words({ words: { lines, box }, edge, label }: WordsProps) {
  const isHeld = box.right > edge;
  return (
    <text class={`${label ? "label" : "name"}${isHeld ? " end" : ""}`}>
      {lines.map((line, index) => (
        <tspan
          key={line}
          x={isHeld ? box.right : box.left}
          y={box.top + index * lineHeight + baseline}
        >
          {line}
        </tspan>
      ))}
    </text>
  );
}

function Mark({ x, y, sign }: Point & { readonly sign: Sign }) {
  switch (sign) {
    case "row":
      return <path class="full" d={`M${x - 4.5} ${y - 4.5}h9v9h-9z`} />;
    case "odd":
      return <path class="hollow" d={`M${x - 7} ${y - 7}h14v14h-14zl14 14m0 -14l-14 14`} />;
    case "sought":
      return <path class="hollow" d={`M${x} ${y - 9}l9 9l-9 9l-9 -9z`} />;
    case "today":
      return (
        <g>
          <circle class="hollow" cx={x} cy={y} r={10} />
          <circle class="full" cx={x} cy={y} r={3.5} />
        </g>
      );
  }
}

/** Units between two strokes of a hatching. */
const hatch = 9;

/** Slanting strokes through a box: up to the right for a stretch of the axis across, else down. */
function hatching(box: Box, along: "across" | "up"): string {
  const { left, top, right, bottom } = box;
  const [wide, high] = [right - left, bottom - top];
  const count = Math.ceil((wide + high) / hatch - 0.5);
  // Each begins on the left or the lower edge and ends on the upper or the right one.
  return Array.from({ length: count }, (_, index) => {
    const off = (index + 0.5) * hatch;
    const [x0, y0] = off < high ? [0, off] : [off - high, high];
    const [x1, y1] = off < wide ? [off, 0] : [wide, off - wide];
    return along === "across"
      ? `M${left + x0} ${top + y0}L${left + x1} ${top + y1}`
      : `M${left + x0} ${bottom - y0}L${left + x1} ${bottom - y1}`;
  }).join("");
}

function endsOf({ left, top, right, bottom }: Box, along: "across" | "up"): string {
  return along === "across"
    ? `M${left} ${top}V${bottom}M${right} ${top}V${bottom}`
    : `M${left} ${top}H${right}M${left} ${bottom}H${right}`;
}

/** Tenths of a unit: finer is not to be seen. */
function path(points: readonly Point[]): string {
  return points
    .map(({ x, y }, index) => `${index === 0 ? "M" : "L"}${x.toFixed(1)} ${y.toFixed(1)}`)
    .join("");
}
