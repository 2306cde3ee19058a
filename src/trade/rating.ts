// A film's box speed and the speed it was metered at in, stops and their factor on the time out.
// Alone, because a stop is counted one way here and nowhere else.

/** Fraction of the time taken off for a stop over, and added for a stop under. */
export interface PerStop {
  readonly pull: number;
  readonly push: number;
}

/** Common practice: 10 % less for a stop over; 35 to 50 % more for a stop under. */
export const usualPerStop: PerStop = { pull: 0.1, push: 0.4 };

/** log2(box speed / exposure index): above 0 the film had more light than the box asks, below 0 less. */
export function stopsOver(boxSpeed: number, exposureIndex: number): number {
  return Math.log2(boxSpeed / exposureIndex);
}

/** (1 − pull)^n for n stops over, (1 + push)^n for n stops under; fractions of a stop count. */
export function ratingFactor(stops: number, { pull, push }: PerStop): number {
  return stops >= 0 ? (1 - pull) ** stops : (1 + push) ** -stops;
}
