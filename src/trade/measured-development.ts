// A time curve and thermometer readings taken while the film develops in, when it is done out.
// Alone, because what was measured outranks any model of how a tank drifts.
import { type Drift, driftedSeconds, type ThermometerReading } from "./drift.ts";
import { scaled, type TimeCurve, timeAt } from "./time-temperature.ts";

/** What the tank does after the last reading: °C that it drifts toward, minutes to go half-way; null: it stays. */
export type DriftAfter = Omit<Drift, "start">;

/** Between two readings, or up to the end where that comes first. */
interface Stretch {
  readonly from: ThermometerReading;
  readonly to: ThermometerReading;
  /** Of the whole development, done in this stretch. */
  readonly done: number;
}

export interface MeasuredDevelopment {
  /** Seconds on the bath's clock at which the development is done. */
  readonly seconds: number;
  readonly stretches: readonly Stretch[];
  /** What was left after the last reading, 0 to 1; 0 where it was done by then. */
  readonly left: number;
}

/**
 * When the integral of ds / time(T(s)) reaches 1, T going straight from reading to reading.
 *
 * From one point of the curve to the next ln(time) is linear in T, and T in s, so the rate is an
 * exponential of s and its integral closed: Δs · (r2 − r1) / ln(r2 / r1). No step size, no error but
 * rounding.
 * @param readings on the bath's clock, in any order, one of them at 0 s; of two at one time the later in the list counts.
 */
export function measuredDevelopment(
  curve: TimeCurve,
  readings: readonly ThermometerReading[],
  after: DriftAfter | null,
): MeasuredDevelopment {
  const path = inOrder(readings);
  const [start] = path;
  if (start?.seconds !== 0) throw new Error("a measured development starts with a reading at 0 s");
  const stretches: Stretch[] = [];
  let left = 1;
  let last = start;
  for (const next of path.slice(1)) {
    const { done, end } = along(curve, last, next, left);
    stretches.push({ from: last, to: end ?? next, done });
    if (end) return { seconds: end.seconds, stretches, left: 0 };
    left -= done;
    last = next;
  }
  const rest = scaled(curve, left);
  const more = after
    ? driftedSeconds(rest, { start: last.celsius, ...after })
    : timeAt(rest, last.celsius);
  return { seconds: last.seconds + more, stretches, left };
}

function inOrder(readings: readonly ThermometerReading[]): readonly ThermometerReading[] {
  const byTime = new Map(readings.map((reading) => [reading.seconds, reading]));
  return [...byTime.values()].sort((a, b) => a.seconds - b.seconds);
}

/** What is done on a straight way between two readings, or where on it `left` is used up. */
function along(
  curve: TimeCurve,
  from: ThermometerReading,
  to: ThermometerReading,
  left: number,
): { readonly done: number; readonly end: ThermometerReading | null } {
  const at = (part: number): ThermometerReading => ({
    seconds: from.seconds + part * (to.seconds - from.seconds),
    celsius: from.celsius + part * (to.celsius - from.celsius),
  });
  const cuts = curve.points
    .map(({ celsius }) => (celsius - from.celsius) / (to.celsius - from.celsius))
    .filter((part) => part > 0 && part < 1)
    .sort((a, b) => a - b);
  const ends = [...cuts, 1];
  let done = 0;
  for (const [index, part] of ends.entries()) {
    const [begin, end] = [at(ends[index - 1] ?? 0), at(part)];
    const piece = pieceOf(curve, begin, end);
    if (done + piece.done >= left) {
      const seconds = begin.seconds + piece.secondsFor(left - done);
      return { done: left, end: at((seconds - from.seconds) / (to.seconds - from.seconds)) };
    }
    done += piece.done;
  }
  return { done, end: null };
}

/** A way on which the rate of development is one exponential: what is done on it, and how far a part of that takes. */
function pieceOf(
  curve: TimeCurve,
  begin: ThermometerReading,
  end: ThermometerReading,
): { readonly done: number; readonly secondsFor: (part: number) => number } {
  const [r1, r2] = [1 / timeAt(curve, begin.celsius), 1 / timeAt(curve, end.celsius)];
  const seconds = end.seconds - begin.seconds;
  const folds = Math.log(r2 / r1);
  // So little change that the closed form would divide nought by nought.
  if (Math.abs(folds) < 1e-9) return { done: seconds * r1, secondsFor: (part) => part / r1 };
  const growth = folds / seconds;
  return {
    done: seconds === 0 ? 0 : (r2 - r1) / growth,
    secondsFor: (part) => Math.log1p((growth * part) / r1) / growth,
  };
}
