// Fixer carried into the wash in, what the water leaves of it on the film out, by plain dilution.
// Alone, because the model is simple and its assumption is not: it must be said wherever it is used.
//
// The assumption: at every change the water in the emulsion has come to the strength of the water
// around it, and all that stays behind at the end dries on the film. The first is hopeful (a short soak
// is no equilibrium), the second errs on the safe side.

/**
 * Most thiosulfate that may stay, g/m²: ANSI IT9.1-1996 for images that are to last, as cited by
 * Nishimura, Conservation DistList 1997/1157; test method ISO 18917.
 */
export const residueLimit = 0.014;

/**
 * g/l of thiosulfate in a working fixer where nobody says: a plain bath of 240 g of crystalline sodium
 * thiosulfate a litre holds 240 × 112.1 / 248.2 of it. Common practice; rapid fixers are about alike.
 */
export const usualThiosulfate = 108;

export interface CarriedOver {
  /** ml of liquid that stay in tank, reel and film at each emptying. */
  readonly kept: number;
  /** g/l of thiosulfate in it as the wash begins. */
  readonly thiosulfate: number;
  /** cm² of film. */
  readonly area: number;
}

/** g/m² on the film were it dried as it leaves the fixer. */
export function carriedResidue({ kept, thiosulfate, area }: CarriedOver): number {
  const [litres, squareMetres] = [kept / 1000, area / 10_000];
  return (thiosulfate * litres) / squareMetres;
}

/** The part that is left after so many changes: (kept / (kept + fill))^changes; both volumes in one unit. */
export function leftByChanges(kept: number, fill: number, changes: number): number {
  return (kept / (kept + fill)) ** changes;
}

/**
 * The part that is left in running water: the first fill thins it once, then the tank, well stirred,
 * is diluted as e^(−flow · minutes / volume), and emptied. `flow` is the volume a minute.
 */
export function leftByFlow(kept: number, fill: number, flow: number, minutes: number): number {
  return leftByChanges(kept, fill, 1) * Math.exp((-flow * minutes) / (kept + fill));
}

/** Least whole number of changes after which no more than `limit` of what was carried over is left. */
export function changesFor(kept: number, fill: number, carried: number, limit: number): number {
  if (carried <= limit) return 0;
  const each = Math.log(leftByChanges(kept, fill, 1));
  const changes = Math.ceil(Math.log(limit / carried) / each - 1e-9);
  return Math.max(changes, 1);
}

/** Minutes of running water after which no more than `limit` is left; 0 where the first fill does it. */
export function minutesFor(
  kept: number,
  fill: number,
  flow: number,
  carried: number,
  limit: number,
): number {
  const afterFill = carried * leftByChanges(kept, fill, 1);
  return afterFill <= limit ? 0 : (Math.log(afterFill / limit) * (kept + fill)) / flow;
}
