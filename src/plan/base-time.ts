// Leaflet and film in, the rows whose times count for it out, with the stops they leave to be made up.
// Alone, because which rows are used is the first thing a person checks.
import { stopsOver } from "../trade/rating.ts";
import {
  alongOther,
  curveThrough,
  type TimeCurve,
  type TimePoint,
  usualPerDegree,
} from "../trade/time-temperature.ts";
import { toCelsius } from "../units/temperature.ts";
import { secondsOf } from "./clock-readings.ts";
import type { Developer, Film, LeafletRow } from "./worksheet.ts";

/** A row as the formulas see it, with what was typed and where it stands in the worksheet. */
export interface LeafletPoint extends TimePoint {
  readonly row: LeafletRow;
  readonly index: number;
}

export interface BaseTime {
  /** Cold to warm. */
  readonly rows: readonly LeafletPoint[];
  /** Stops over (above 0) or under (below 0) that the rows do not cover yet. */
  readonly stops: number;
  /** The rows are the leaflet's own for the film's rating, so nothing is added for stops. */
  readonly ownRows: boolean;
}

/** What the film was metered at; undefined where neither it nor the box speed was said. */
export function effectiveRating(film: Film): number | undefined {
  return film.exposureIndex ?? film.boxSpeed;
}

/** The leaflet's rows, cold to warm. The times have been read before: a worksheet holds no others. */
export function leafletPoints(leaflet: readonly LeafletRow[]): readonly LeafletPoint[] {
  return leaflet
    .map((row, index) => ({
      row,
      index,
      celsius: toCelsius(row.temperature),
      seconds: secondsOf(row.time),
    }))
    .sort((a, b) => a.celsius - b.celsius);
}

/**
 * Rows of the film's own rating are used alone. Otherwise the rows with no rating or the box speed's
 * are, and log2(box speed / exposure index) stops remain. No rows: the leaflet cannot serve this film.
 */
export function baseTimeFor(film: Film, leaflet: readonly LeafletPoint[]): BaseTime {
  const rating = effectiveRating(film);
  const own = leaflet.filter(({ row }) => rating !== undefined && row.exposureIndex === rating);
  if (own.length > 0) return { rows: own, stops: 0, ownRows: true };
  const rows = leaflet.filter(
    ({ row }) => row.exposureIndex === undefined || row.exposureIndex === film.boxSpeed,
  );
  const { boxSpeed, exposureIndex } = film;
  const known = boxSpeed !== undefined && exposureIndex !== undefined;
  return { rows, stops: known ? stopsOver(boxSpeed, exposureIndex) : 0, ownRows: false };
}

/** Where the slope of the time with temperature was taken from. */
export type SlopeSource = "rows" | "per-degree" | "other-rows" | "usual";

/**
 * The curve of the rows used. A row alone takes the slope given with it, else the shape of the
 * leaflet's other rows (the rating next to the film's that has two temperatures), else the usual slope.
 */
export function curveOf(
  developer: Developer,
  film: Film,
  { rows }: BaseTime,
  leaflet: readonly LeafletPoint[],
): { readonly curve: TimeCurve; readonly slope: SlopeSource } {
  const curve = curveThrough(rows, developer.perDegree ?? usualPerDegree);
  const [alone, second] = curve.points;
  if (!alone) throw new Error("planning starts from a leaflet with a usable row");
  if (second) return { curve, slope: "rows" };
  if (developer.perDegree !== undefined) return { curve, slope: "per-degree" };
  const other = otherCurves(film, rows, leaflet)[0];
  return other
    ? { curve: alongOther(alone, other), slope: "other-rows" }
    : { curve, slope: "usual" };
}

/** Curves of the ratings that are not used and have a slope, the rating next to the film's first. */
function otherCurves(
  film: Film,
  used: readonly LeafletPoint[],
  leaflet: readonly LeafletPoint[],
): readonly TimeCurve[] {
  const rating = effectiveRating(film);
  const stopsAway = (speed: number | undefined) =>
    speed === undefined || rating === undefined ? 0 : Math.abs(stopsOver(speed, rating));
  return byRating(leaflet.filter((point) => !used.includes(point)))
    .sort((a, b) => stopsAway(a.rating ?? film.boxSpeed) - stopsAway(b.rating ?? film.boxSpeed))
    .map(({ rows }) => curveThrough(rows))
    .filter((curve) => curve.points.length > 1);
}

/** Rows grouped by the rating they were given for; cold to warm within each. */
export function byRating(
  leaflet: readonly LeafletPoint[],
): { readonly rating: number | undefined; readonly rows: readonly LeafletPoint[] }[] {
  const ratings = [...new Set(leaflet.map(({ row }) => row.exposureIndex))];
  return ratings.map((rating) => ({
    rating,
    rows: leaflet.filter(({ row }) => row.exposureIndex === rating),
  }));
}
