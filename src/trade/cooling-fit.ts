// Temperatures and times in, the curve of Newton's cooling that lies nearest to them out, and how near any such
// curve can come that goes through a given point. Alone, because it is least squares and knows no trade.
import { linearRegression } from "simple-statistics";
import { leastOf } from "./least.ts";

/** A temperature at a time. At Infinity it is what the curve settles at: the water bath's own reading. */
export interface CurvePoint {
  readonly seconds: number;
  readonly celsius: number;
}

/** room + lead · 2^(−(s − first) / (60 · halfway)), `first` being the earliest point's seconds. */
interface Curve {
  readonly room: number;
  readonly lead: number;
  /** Minutes. */
  readonly halfway: number;
  /** Sum of the squares by which the points miss the curve, °C². */
  readonly squares: number;
}

/** Minutes in which a vessel may go half-way: from a film of metal in running water to a tank in a cupboard. */
const shortest = 0.3;
const longest = 24 * 60;

/** Of χ² with one degree of freedom, 95 % lie below. */
export const likely = 1.96 ** 2;

/** °C between which anything in a bath of water settles. */
export const coldest = 0;
export const warmest = 100;

/** Half-way times tried, evenly in their logarithm; the best is then narrowed between its neighbours. */
const tries = 32;

/**
 * The curve of least squares that settles from 0 to 100 °C.
 *
 * Separable: for one half-way time the rest is a straight line over x = 2^(−s / half-way), so only the
 * half-way time is searched for. Needs two points of different times; two without the bath fit any half-way time.
 */
export function nearestCurve(points: readonly CurvePoint[]): Curve {
  const { first, shortestHere } = clockOf(points);
  const curveAt = (halfway: number) => lineOver(points, halfway, first);
  return curveAt(bestHalfway((it) => curveAt(it).squares, shortestHere, 60));
}

function lineOver(points: readonly CurvePoint[], halfway: number, first: number): Curve {
  const pairs = points.map((it): [number, number] => [
    left(it.seconds - first, halfway),
    it.celsius,
  ]);
  const line = linearRegression(pairs);
  const room = Math.min(Math.max(line.b, coldest), warmest);
  // Where the line would settle beyond what water can, the best is at that bound, and one slope is left.
  const lead = room === line.b ? line.m : sum(pairs, ([x, y]) => x * (y - room)) / sum(pairs, xx);
  return { room, lead, halfway, squares: sum(pairs, ([x, y]) => (y - room - lead * x) ** 2) };
}

/**
 * Least sum of squares, °C², of all curves that have so many °C at so many seconds and settle from 0 to
 * 100 °C; at Infinity seconds, of those that settle there.
 *
 * The curve is celsius + A · (2^(−s/h) − 2^(−seconds/h)): one factor A for each half-way time h.
 */
export function squaresThrough(points: readonly CurvePoint[], through: CurvePoint): number {
  const { first, shortestHere } = clockOf(points);
  const from = Math.min(first, through.seconds);
  const squaresAt = (halfway: number) => {
    const there = left(through.seconds - from, halfway);
    let [xx, xy, yy] = [0, 0, 0];
    for (const { seconds, celsius } of points) {
      const x = left(seconds - from, halfway) - there;
      const y = celsius - through.celsius;
      xx += x * x;
      xy += x * y;
      yy += y * y;
    }
    const free = xx > 0 ? xy / xx : 0;
    const bounds = [(through.celsius - warmest) / there, (through.celsius - coldest) / there];
    const factor = there > 0 ? within(free, bounds[0] ?? free, bounds[1] ?? free) : free;
    return yy + factor * (factor * xx - 2 * xy);
  };
  return squaresAt(bestHalfway(squaresAt, shortestHere, 28));
}

/**
 * Least sum of squares, °C², of curves that may also speed up away from where they began, which nothing
 * left to itself in a bath does: what the points themselves would have, whatever cooling says.
 */
export function squaresOfAnyBend(points: readonly CurvePoint[]): number {
  const slowing = nearestCurve(points).squares;
  const mirrored = points.map(({ seconds, celsius }) => ({ seconds: -seconds, celsius }));
  return Math.min(slowing, nearestCurve(mirrored).squares);
}

/** °C per second of the straight line through points of finite times, and the spread of those times, s². */
export function straight(points: readonly CurvePoint[]) {
  const slope = linearRegression(points.map(({ seconds, celsius }) => [seconds, celsius])).m;
  const middle = sum(points, ({ seconds }) => seconds) / points.length;
  return { slope, spread: sum(points, ({ seconds }) => (seconds - middle) ** 2) };
}

/** °C²: the thermometer's error, or the scatter's where points beyond the curve's three numbers show a greater. */
export function errorSquared(readable: number, squares: number, count: number): number {
  return count > 3 ? Math.max(readable ** 2, squares / (count - 3)) : readable ** 2;
}

/** Up to this sum of squares, °C², a curve still fits: 95 %. */
export function limitOf(squares: number, readable: number, count: number): number {
  return squares + likely * errorSquared(readable, squares, count);
}

/** How far from `inside`, which fits, towards `end` it still fits: steps that double, then halving. */
export function edge(
  fits: (at: number) => boolean,
  inside: number,
  end: number,
  step: number,
): number {
  if (inside === end) return end;
  const way = Math.sign(end - inside);
  let [near, far, stride] = [inside, inside, step];
  do {
    near = far;
    far = way * Math.min(way * (far + way * stride), way * end);
    stride *= 2;
  } while (far !== end && fits(far));
  if (far === end && fits(end)) return end;
  for (let i = 0; i < 24; i += 1) {
    const middle = (near + far) / 2;
    if (fits(middle)) near = middle;
    else far = middle;
  }
  return near;
}

/** The part of a difference that is left after so many seconds. */
function left(seconds: number, halfway: number): number {
  return Math.exp((-Math.LN2 / 60 / halfway) * seconds);
}

/**
 * The earliest point, and the shortest half-way time that is worth trying: at least a nine-hundredth of the clock
 * so far, that the temperature at 0 s of that clock can still be written as a number.
 */
function clockOf(points: readonly CurvePoint[]) {
  const first = points.reduce((least, { seconds }) => Math.min(least, seconds), Infinity);
  const shortestHere = Math.min(Math.max(shortest, Math.abs(first) / 60 / 900), longest);
  return { first, shortestHere };
}

/** Half-way time of the least squares, sought evenly in its logarithm. */
function bestHalfway(squaresAt: (halfway: number) => number, least: number, steps: number): number {
  const of = (logarithm: number) => squaresAt(Math.exp(logarithm));
  return Math.exp(leastOf(of, Math.log(least), Math.log(longest), tries, steps).at);
}

function within(value: number, least: number, most: number): number {
  return Math.min(Math.max(value, least), most);
}

function xx([x]: readonly [number, number]): number {
  return x * x;
}

function sum<T>(items: readonly T[], of: (item: T) => number): number {
  return items.reduce((total, item) => total + of(item), 0);
}
