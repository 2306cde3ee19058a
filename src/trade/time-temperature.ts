// Points of time and temperature in, the time at any temperature out: warmer baths work faster.
// Alone, because it is the formula that every other sum of a development starts from.

/** A development time, seconds, at a temperature, °C. */
export interface TimePoint {
  readonly celsius: number;
  readonly seconds: number;
}

/**
 * Points from cold to warm, no two at one temperature. Between them ln(time) is linear in °C; beyond
 * them the nearest pair's slope goes on. `perDegree` is the slope of a point that stands alone.
 */
export interface TimeCurve {
  readonly points: readonly TimePoint[];
  readonly perDegree: number;
}

/**
 * k per °C where a leaflet gives one row and nothing else is known: time falls by a tenth a degree.
 * Common practice, trusted from 16 to 24 °C.
 */
export const usualPerDegree = 0.099;

/** Temperatures closer than this, °C, are the same one: far below any thermometer, above rounding. */
export const sameTemperature = 1e-6;

/** Seconds. No curve leads outside, however steep the rows that someone typed; keeps sums finite. */
const [leastTime, mostTime] = [1e-6, 1e9];

/** A curve through points in any order; of points at one temperature the first is kept. */
export function curveThrough(
  points: readonly TimePoint[],
  perDegree: number = usualPerDegree,
): TimeCurve {
  const sorted = [...points].sort((a, b) => a.celsius - b.celsius);
  const distinct = sorted.filter((point, index) => {
    const colder = sorted[index - 1];
    return colder === undefined || point.celsius - colder.celsius > sameTemperature;
  });
  return { points: distinct, perDegree };
}

/**
 * Seconds at a temperature, °C: t = ta · (tb / ta)^((T − Ta) / (Tb − Ta)), which is ln(time) linear in
 * temperature. At a point's own temperature its own time comes back exactly.
 *
 * After Wall, "Thermo-Entwicklung" (1910), whose coefficient is a difference of logarithms per degree.
 */
export function timeAt(curve: TimeCurve, celsius: number): number {
  const own = curve.points.find((it) => Math.abs(it.celsius - celsius) <= sameTemperature);
  if (own) return own.seconds;
  const [from, to] = pairFor(curve, celsius);
  const time = to
    ? from.seconds *
      (to.seconds / from.seconds) ** ((celsius - from.celsius) / (to.celsius - from.celsius))
    : from.seconds * Math.exp(-curve.perDegree * (celsius - from.celsius));
  return Math.min(Math.max(time, leastTime), mostTime);
}

/** The colder and the warmer point whose slope counts at a temperature, °C; one of a lone point. */
export function pairFor(
  { points }: TimeCurve,
  celsius: number,
): readonly [TimePoint, TimePoint | undefined] {
  const warmer = points.findIndex((point) => point.celsius > celsius);
  const last = points.length - 1;
  const upper = warmer === -1 ? last : Math.max(warmer, Math.min(1, last));
  const [to, from] = [points[upper], points[upper - 1]];
  if (!to) throw new Error("a time curve has at least one point");
  return from ? [from, to] : [to, undefined];
}

/**
 * k per °C between two points: ln(ta / tb) / (Tb − Ta), above 0 where warmer is faster.
 *
 * Print knows three "temperature coefficients" (this one in log10; the ratio of rates 10 °C apart; a
 * factor for 7 °C either side of 20 °C), so it is named for what it is.
 */
export function perDegreeBetween(a: TimePoint, b: TimePoint): number {
  return Math.log(a.seconds / b.seconds) / (b.celsius - a.celsius);
}

/** The shape of another curve, raised or lowered so that it runs through one point. */
export function alongOther(alone: TimePoint, other: TimeCurve): TimeCurve {
  const ratio = alone.seconds / timeAt(other, alone.celsius);
  const carried = other.points.map((it) => ({ ...it, seconds: it.seconds * ratio }));
  return curveThrough([alone, ...carried], other.perDegree);
}

/** Every time of a curve, so many times longer. */
export function scaled(curve: TimeCurve, factor: number): TimeCurve {
  const points = curve.points.map((it) => ({ ...it, seconds: it.seconds * factor }));
  return { ...curve, points };
}

/** The point nearest to a temperature that lies outside them, and by how many °C; null inside. */
export function beyond(
  points: readonly TimePoint[],
  celsius: number,
): { readonly nearest: number; readonly degrees: number } | null {
  const all = points.map((point) => point.celsius);
  const nearest = Math.min(Math.max(celsius, Math.min(...all)), Math.max(...all));
  const degrees = Math.abs(celsius - nearest);
  return degrees > sameTemperature ? { nearest, degrees } : null;
}
