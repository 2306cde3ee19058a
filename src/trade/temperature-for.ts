// A time curve and a time in, the temperature that gives it out: the leaflet, asked backwards.
// Alone, because backwards there may be no answer, or one that lies too far from the rows to be trusted.
import { perDegreeBetween, type TimeCurve } from "./time-temperature.ts";

export type TemperatureFor =
  | {
      readonly kind: "temperature";
      readonly celsius: number;
      /** °C beyond the nearest point; 0 among them. */
      readonly beyond: number;
    }
  /** Times that do not fall as it gets warmer have no one temperature for each. */
  | { readonly kind: "not-falling" };

/**
 * °C at which the curve has so many seconds: the inverse of `timeAt`, ln(time) being linear in
 * temperature from point to point, T = Ta + ln(ta / t) / k.
 */
export function temperatureFor(curve: TimeCurve, seconds: number): TemperatureFor {
  const { points, perDegree } = curve;
  const [coldest] = points;
  const warmest = points.at(-1);
  if (!coldest || !warmest) throw new Error("a time curve has at least one point");
  const falls = points.every((point, index) => {
    const next = points[index + 1];
    return next === undefined || next.seconds < point.seconds;
  });
  if (!falls || perDegree <= 0) return { kind: "not-falling" };
  const own = points.find((point) => point.seconds === seconds);
  if (own) return { kind: "temperature", celsius: own.celsius, beyond: 0 };
  // The pair whose times lie about the one sought, or the pair at the nearer end.
  const next = points.findIndex((point) => point.seconds < seconds);
  const last = points.length - 1;
  const upper = next === -1 ? last : Math.max(next, Math.min(1, last));
  const [to, from] = [points[upper], points[upper - 1]];
  const slope = from && to ? perDegreeBetween(from, to) : perDegree;
  const start = from ?? coldest;
  const celsius = start.celsius + Math.log(start.seconds / seconds) / slope;
  const beyond = Math.max(coldest.celsius - celsius, celsius - warmest.celsius, 0);
  return { kind: "temperature", celsius, beyond };
}
