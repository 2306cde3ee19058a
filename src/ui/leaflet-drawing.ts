// A leaflet's rows, the curve through them and today's point in, the drawing of time by temperature out.
// Alone, because what of a leaflet is known and what is guessed must be told apart in one place.
import { beyond, type TimeCurve, type TimePoint, timeAt } from "../trade/time-temperature.ts";
import { writeClockTime } from "../units/clock-time.ts";
import type { Temperature } from "../units/temperature.ts";
import { clockAxis, degreeAxis, unitOf } from "./curve-axes.ts";
import type { CurveDrawing, Point } from "./curve-model.ts";
import { lateWords, writing } from "./language.ts";

interface LeafletRow extends TimePoint {
  /** Out of line with the others. */
  readonly odd: boolean;
}

export interface LeafletCurve {
  readonly curve: TimeCurve;
  readonly rows: readonly LeafletRow[];
  /** By which every time of the leaflet is lengthened for this film; 1 if not at all. */
  readonly factor: number;
  readonly today: TimePoint;
  /** A time wanted, and the temperature that gives it. */
  readonly sought: TimePoint | null;
  /** In its unit the drawing is labelled. */
  readonly like: Temperature;
}

/** Seconds; shorter times are hard to pour evenly. Common practice. */
const leastTime = 300;

/** °C beyond the rows that the curve is carried on, in dashes; further only to a point of today. */
const carriedOn = 2;

/** Times outside those of rows and points, by so many times, are left out: they would flatten the rest. */
const outside = 1.6;

/** Points along a curve. */
const fineness = 40;

export function leafletDrawing(given: LeafletCurve): CurveDrawing {
  const { curve, rows, factor, today, sought, like } = given;
  const known: readonly TimePoint[] = rows.length > 0 ? rows : curve.points;
  const points = sought ? [today, sought] : [today];
  const [coldest, warmest] = endsOf(known);
  const further = Math.min(carriedOn, Math.max(0.5, (warmest - coldest) / 5 || carriedOn));
  const [cold, warm] = endsOf([
    ...points,
    { celsius: coldest - further },
    { celsius: warmest + further },
  ]);
  const times = [...known, ...points].map(({ seconds }) => seconds);
  const seen = ({ y }: Point) =>
    y >= Math.min(...times) / outside && y <= Math.max(...times) * outside;
  const along = (from: number, to: number, times: number) => {
    const own = points.map(({ celsius }) => celsius).filter((it) => it > from && it < to);
    const even = Array.from({ length: fineness }, (_, i) => from + ((to - from) * i) / fineness);
    return [...even, ...own, to]
      .sort((a, b) => a - b)
      .map((celsius) => ({ x: celsius, y: timeAt(curve, celsius) * times }))
      .filter(seen);
  };
  const lines = [
    {
      stroke: "solid",
      points: along(coldest, warmest, 1),
      label: lateWords.value.leafletCurve.leaflet,
    },
    { stroke: "dashed", points: along(cold, coldest, 1) },
    { stroke: "dashed", points: along(warmest, warm, 1) },
    ...(factor === 1
      ? []
      : [
          {
            stroke: "dotted",
            points: along(cold, warm, factor),
            label: lateWords.value.leafletCurve.thisFilm,
          } as const,
        ]),
  ] as const;
  const drawn = lines.flatMap((line) => line.points);
  const up = clockAxis(
    lateWords.value.leafletCurve.up,
    [...times, ...drawn.map(({ y }) => y)],
    "up",
  );
  const at = (point: TimePoint) => writtenPoint(point, like);
  return {
    title: lateWords.value.leafletCurve.title,
    says: said(given, known),
    across: degreeAxis(lateWords.value.leafletCurve.across(unitOf(like)), [cold, warm], like),
    up,
    lines: lines.filter((line) => line.points.length > 1),
    marks: [
      ...rows.map((row) => ({
        ...pointOf(row),
        ...(row.odd
          ? ({ sign: "odd", label: lateWords.value.leafletCurve.outOfLine } as const)
          : ({ sign: "row" } as const)),
      })),
      ...(sought ? [{ ...pointOf(sought), sign: "sought", label: at(sought) } as const] : []),
      { ...pointOf(today), sign: "today", label: at(today) },
    ],
    levels:
      up.from < leastTime && leastTime < up.to
        ? [
            {
              along: "up",
              at: leastTime,
              label: lateWords.value.leafletCurve.least(writeClockTime(leastTime)),
            },
          ]
        : [],
    bands: [],
  };
}

function said(
  { rows, factor, today, sought, like }: LeafletCurve,
  known: readonly TimePoint[],
): string {
  const inOrder = [...known].sort((a, b) => a.celsius - b.celsius);
  const [first, last] = [inOrder[0], inOrder.at(-1)];
  const count = lateWords.value.leafletCurve.rows(known.length);
  const odd = rows.filter((row) => row.odd).length;
  const at = (point: TimePoint) => writtenPoint(point, like);
  return [
    first && last && first !== last
      ? lateWords.value.leafletCurve.from(count, at(first), at(last))
      : first && lateWords.value.leafletCurve.alone(count, at(first)),
    odd > 0 && lateWords.value.leafletCurve.odd(odd),
    factor !== 1 && lateWords.value.leafletCurve.times(writing.value.number(factor)),
    lateWords.value.leafletCurve.today(at(today)),
    beyond(known, today.celsius) && lateWords.value.leafletCurve.beyond,
    sought && lateWords.value.leafletCurve.sought(at(sought)),
  ]
    .filter(Boolean)
    .join(" ");
}

/** `"9:29 at 69 °F"`. */
function writtenPoint({ celsius, seconds }: TimePoint, like: Temperature): string {
  return lateWords.value.leafletCurve.at(
    writeClockTime(seconds),
    writing.value.tenths(like, celsius),
  );
}

function pointOf({ celsius, seconds }: TimePoint): Point {
  return { x: celsius, y: seconds };
}

/** The coldest and the warmest, °C. */
function endsOf(points: readonly Pick<TimePoint, "celsius">[]): readonly [number, number] {
  const all = points.map(({ celsius }) => celsius);
  return [Math.min(...all), Math.max(...all)];
}
