// Thermometer readings of a vessel in a water bath in; out, when it reaches a temperature, or how near it comes.
// Alone, because it says how sure that is: few readings, each only good to half a degree, give an interval.
import {
  type CurvePoint,
  coldest,
  edge,
  errorSquared,
  likely,
  limitOf,
  nearestCurve,
  squaresOfAnyBend,
  squaresThrough,
  straight,
  warmest,
} from "./cooling-fit.ts";
import { type Drift, type ThermometerReading, temperatureAfter } from "./drift.ts";

export interface Range {
  readonly from: number;
  readonly to: number;
}

export interface Fitted {
  readonly kind: "fitted";
  /** The curve of least squares; `start` is °C at 0 s of the readings' clock. */
  readonly drift: Drift;
  /** °C at which it may settle, 95 %, never outside 0 to 100 °C. */
  readonly settles: Range;
  /** °C by which readings and bath miss the curve, root of the mean square. */
  readonly misfit: number;
  /** In order of time. */
  readonly readings: readonly ThermometerReading[];
  readonly bath: number | null;
  readonly readable: number;
}

/**
 * - `too-few`: not two readings at different times, or, without the bath's temperature, not three.
 * - `too-close`: all within less than a minute.
 * - `still`: the slope of the straight line through them is less than 1.96 of its errors.
 * - `noisy`: they turn about more than once by over five times `readable`, or miss the curve by over three times.
 * - `contradictory`: they turn back once by so much; or move away from the bath; or fit some other bend, or
 *   some other bath, better by more than three errors.
 */
type Unfit = "too-few" | "too-close" | "still" | "noisy" | "contradictory";

export type CoolingFit =
  | Fitted
  | {
      readonly kind: "unfit";
      readonly why: Unfit;
      readonly readings: readonly ThermometerReading[];
    };

const leastSpan = 60;
/** In `readable`: chance alone turns a score of readings so far back in fewer than one series of fifty. */
const turnsBy = 5;
/** In errors: from here on it is not chance. */
const tooFar = 3;
/** °C: a temperature typed in °F is the one typed in °C to rounding, at an edge too. */
const hair = 1e-6;

/**
 * The curve of Newton's cooling through readings of a developer, by least squares.
 *
 * The bath's temperature was read with the same thermometer, and counts as a reading at the end of time:
 * as good as the others and no better. So where there are spare readings `drift.room` may differ from it a little.
 * A reading that no thermometer for vessels shows, or before 0 s, is left out. The work grows with the number of
 * readings alone: a few ms for a dozen.
 * @param readings their clock may begin at any time up to the first: `seconds` is 0 or more.
 * @param bath °C, or null where nobody knows.
 * @param readable standard deviation of one reading, °C: 0.25 for a thermometer read to half a degree.
 */
export function fitCooling(
  readings: readonly ThermometerReading[],
  bath: number | null,
  readable: number,
): CoolingFit {
  const inOrder = readings
    .filter(({ seconds, celsius }) => seconds >= 0 && seconds <= rest / 2 && measurable(celsius))
    .toSorted((a, b) => a.seconds - b.seconds);
  const known = bath !== null && measurable(bath) ? bath : null;
  const error = Math.max(readable, 0.001);
  const unfit = (why: Unfit): CoolingFit => ({ kind: "unfit", why, readings: inOrder });
  const [first, last] = [inOrder[0], inOrder.at(-1)];
  const times = new Set(inOrder.map(({ seconds }) => seconds)).size;
  if (!first || !last || times < (known === null ? 3 : 2)) return unfit("too-few");
  if (last.seconds - first.seconds < leastSpan) return unfit("too-close");
  const turns = turnings(inOrder, turnsBy * error + hair);
  if (turns > 0) return unfit(turns > 1 ? "noisy" : "contradictory");
  const { slope, spread } = straight(inOrder);
  if (slope ** 2 * spread <= likely * error ** 2) return unfit("still");

  const points = pointsOf(inOrder, known);
  const { room, lead, halfway, squares } = nearestCurve(points);
  const free = squaresOfAnyBend(inOrder);
  const gain = squares - free;
  if (lead * slope >= 0) return unfit("contradictory");
  if (gain > tooFar ** 2 * errorSquared(error, free, inOrder.length)) return unfit("contradictory");
  const misfit = Math.sqrt(squares / points.length);
  if (misfit > tooFar * error) return unfit("noisy");
  const drift = { start: room + lead * 2 ** (first.seconds / 60 / halfway), room, halfway };
  const limit = limitOf(squares, error, points.length);
  const fits = (celsius: number) => squaresThrough(points, { seconds: Infinity, celsius }) <= limit;
  const settles = {
    from: edge(fits, room, coldest, error / 4),
    to: edge(fits, room, warmest, error / 4),
  };
  return {
    kind: "fitted",
    drift,
    settles,
    misfit,
    readings: inOrder,
    bath: known,
    readable: error,
  };
}

/** Seconds are of the readings' clock; what lies before the last reading is already past. */
export type Reach =
  | { readonly kind: "reached"; readonly at: number; readonly range: Range }
  /** Some curves that fit reach it, not before `from`, others never do; `at` is the best curve's, if it does. */
  | { readonly kind: "unsure"; readonly from: number; readonly at: number | null }
  /** °C at which it settles, and may settle. */
  | { readonly kind: "never"; readonly nearest: number; readonly range: Range };

/** No half-way time is so long that anything moves after this: s. */
const rest = 60 * 24 * 3600;
/** Of the whole way, what is left where the target is the very temperature at which it settles. */
const sameShare = 1e-9;

/**
 * When the developer is at `target` °C, with an interval of 95 %.
 *
 * By profile: a time is in the interval where some curve that has the target just then misses the readings by
 * no more than the best curve does and 3.84 s² more, s being `readable` or, where readings are spare and
 * scatter more, their own standard deviation. A bare estimate would be a false second: three readings good to half
 * a degree may leave minutes open. Before the first reading the answer only says that it is past.
 */
export function whenAt(fit: Fitted, target: number): Reach {
  const { drift, settles, misfit, readings, bath, readable } = fit;
  const sinks = drift.start > drift.room;
  const beyond = sinks ? target < settles.from - hair : target > settles.to + hair;
  if (beyond) return { kind: "never", nearest: drift.room, range: settles };
  const points = pointsOf(readings, bath);
  const limit = limitOf(misfit ** 2 * points.length, readable, points.length);
  const fits = (seconds: number) => squaresThrough(points, { seconds, celsius: target }) <= limit;
  // Reckoned from the first reading, as a clock started long before may put 0 s beyond all measure.
  const first = readings[0]?.seconds ?? 0;
  const share = (target - drift.room) / (temperatureAfter(drift, first) - drift.room);
  const at = share > sameShare ? first - 60 * drift.halfway * Math.log2(share) : null;
  const open = sinks ? target <= settles.to + hair : target >= settles.from - hair;
  const step = drift.halfway * 4;
  if (open || at === null) return { kind: "unsure", from: edge(fits, at ?? rest, -rest, step), at };
  return {
    kind: "reached",
    at,
    range: { from: edge(fits, at, -rest, step), to: edge(fits, at, rest, step) },
  };
}

function pointsOf(readings: readonly CurvePoint[], bath: number | null): readonly CurvePoint[] {
  return bath === null ? readings : [...readings, { seconds: Infinity, celsius: bath }];
}

/** How often the readings turn about, coming back by more than so many °C from their furthest. */
function turnings(readings: readonly ThermometerReading[], by: number): number {
  const begin = readings[0]?.celsius ?? 0;
  let [low, high, way, turns] = [begin, begin, 0, 0];
  for (const { celsius } of readings) {
    [low, high] = [Math.min(low, celsius), Math.max(high, celsius)];
    const up = way !== 1 && celsius - low > by;
    const down = way !== -1 && high - celsius > by;
    if (!up && !down) continue;
    if (way !== 0) turns += 1;
    way = up ? 1 : -1;
    [low, high] = [celsius, celsius];
  }
  return turns;
}

/** °C that a thermometer for vessels can show, with room to spare. */
function measurable(celsius: number): boolean {
  return Math.abs(celsius) <= 1000;
}
