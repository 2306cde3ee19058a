// Lines of runs in, what they say month by month out: the developer's temperature, and by how much each bath was
// emptied later than planned. The drawing and the table show the same figures.
import { max, median, min } from "d3-array";
import type { RunLine } from "../logbook/run-line.ts";

/** The middle of a month's figures, with the least and the most. */
export interface Span {
  readonly least: number;
  readonly middle: number;
  readonly most: number;
}

export interface Month {
  /** Of its first moment, by the device's clock, ms since 1970. */
  readonly at: number;
  readonly runs: number;
  /** °C. */
  readonly celsius: Span;
  /** Seconds, by bath. */
  readonly strays: ReadonlyMap<string, Span>;
}

/** The month that a run was begun in: its first moment, by the device's clock, ms since 1970. */
export function monthOf({ begunAt }: RunLine): number {
  const begun = new Date(begunAt);
  return new Date(begun.getFullYear(), begun.getMonth()).getTime();
}

/** The oldest first; months without a run are left out. */
export function monthsOf(lines: readonly RunLine[]): readonly Month[] {
  const byMonth = new Map<number, RunLine[]>();
  for (const line of lines) {
    const at = monthOf(line);
    const others = byMonth.get(at);
    if (others === undefined) byMonth.set(at, [line]);
    else others.push(line);
  }
  return [...byMonth]
    .toSorted(([a], [b]) => a - b)
    .map(([at, all]) => ({
      at,
      runs: all.length,
      celsius: spanOf(all.map(({ celsius }) => celsius)),
      strays: straysOf(all),
    }));
}

function straysOf(lines: readonly RunLine[]): ReadonlyMap<string, Span> {
  const byBath = new Map<string, number[]>();
  for (const { strays } of lines)
    for (const [bath, by] of strays) {
      const others = byBath.get(bath);
      if (others === undefined) byBath.set(bath, [by]);
      else others.push(by);
    }
  return new Map([...byBath].map(([bath, all]) => [bath, spanOf(all)]));
}

function spanOf(figures: readonly number[]): Span {
  return {
    least: min(figures) ?? 0,
    middle: median(figures) ?? 0,
    most: max(figures) ?? 0,
  };
}

/** Baths that any month knows, in the order of the runs. */
export const bathsIn = (months: readonly Month[]): readonly string[] => [
  ...new Set(months.flatMap(({ strays }) => [...strays.keys()])),
];

/** A row of the drawing: spans along the months, between two values that are written beside it. */
export interface Row {
  readonly name: string;
  readonly least: string;
  readonly most: string;
  readonly marks: readonly {
    readonly x: number;
    readonly top: number;
    readonly middle: number;
    readonly bottom: number;
  }[];
  /** Where nothing strayed; null: there is no such line. */
  readonly zero: number | null;
}

/** Of one row, units of the drawing. */
export const HIGH = 56;
export const WIDE = 600;
const EDGE = 8;

export function rowOf(
  name: string,
  months: readonly Month[],
  of: (month: Month) => Span | undefined,
  write: (value: number) => string,
  through: number | null,
): Row {
  const spans = months.flatMap((month) => {
    const span = of(month);
    return span === undefined ? [] : [{ at: month.at, span }];
  });
  const fixed = through === null ? [] : [through];
  const least = min([...spans.map(({ span }) => span.least), ...fixed]) ?? 0;
  const most = max([...spans.map(({ span }) => span.most), ...fixed]) ?? 0;
  const y = (value: number) =>
    most === least ? HIGH / 2 : EDGE + ((most - value) / (most - least)) * (HIGH - 2 * EDGE);
  const [first, last] = [months[0]?.at ?? 0, months.at(-1)?.at ?? 0];
  const x = (at: number) =>
    last === first ? WIDE / 2 : EDGE + ((at - first) / (last - first)) * (WIDE - 2 * EDGE);
  return {
    name,
    least: write(least),
    most: write(most),
    marks: spans.map(({ at, span }) => ({
      x: x(at),
      top: y(span.most),
      middle: y(span.middle),
      bottom: y(span.least),
    })),
    zero: through === null ? null : y(through),
  };
}
