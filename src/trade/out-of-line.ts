// A leaflet's rows in, the one that does not go with the others out: most often a digit misread.
// Alone, because it judges what was typed by what the others say, and changes nothing.
import { linearRegression, linearRegressionLine } from "simple-statistics";
import { type TimePoint, usualPerDegree } from "./time-temperature.ts";

export interface OutOfLine {
  /** Its place among the points given. */
  readonly index: number;
  /** Seconds that the line through the others has at its temperature. */
  readonly expected: number;
}

/**
 * A row is out of line from so far off the others' line, as a fraction of its time; leaflets round to
 * a quarter of a minute and bend a little, which stays below. Common practice, no source.
 */
const least = 0.06;

/** And only where the others keep to their own line so many times better. */
const clearer = 3;

/**
 * The row furthest from the straight line of ln(time) over °C through the others (least squares), where
 * the others agree with each other far better than with it. Null where none stands out, and for fewer
 * than three rows, of which none can be judged.
 *
 * Of three rows any two agree, so the one is named whose going leaves the slope nearest the usual one.
 */
export function rowOutOfLine(points: readonly TimePoint[]): OutOfLine | null {
  if (points.length < 3) return null;
  const judged = points.flatMap((_, index) => judge(points, index) ?? []);
  const best = Math.min(...judged.map(({ rank }) => rank));
  return judged.find(({ rank }) => rank === best) ?? null;
}

/** A row as it looks to the others; null where it stands in line. The lower the rank, the likelier. */
function judge(
  points: readonly TimePoint[],
  index: number,
): (OutOfLine & { readonly rank: number }) | null {
  const point = points[index];
  const others = points.filter((_, place) => place !== index);
  const distinct = new Set(others.map(({ celsius }) => celsius)).size;
  if (!point || distinct < 2) return null;
  const line = linearRegression(others.map((it) => [it.celsius, Math.log(it.seconds)]));
  const through = linearRegressionLine(line);
  const off = (it: TimePoint) => Math.abs(Math.log(it.seconds) - through(it.celsius));
  const worst = Math.max(...others.map(off));
  if (off(point) < Math.log1p(least) || off(point) < clearer * worst) return null;
  const rank = others.length === 2 ? Math.abs(-line.m - usualPerDegree) : worst / off(point);
  return { index, expected: Math.exp(through(point.celsius)), rank };
}
