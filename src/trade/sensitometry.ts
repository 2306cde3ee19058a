// The densities of a developed step wedge in, its speed point, mean gradient and speed out.
// Alone, because it is a standard's criterion, and asks only for numbers read off one strip of film.

/** A strip of film exposed in even steps, as a densitometer reads it. All numbers are finite. */
export interface Wedge {
  /** Density of the unexposed, developed film. */
  readonly baseFog: number;
  /** log10 of exposure from one step to the next, above 0; 0.15 and 0.30 are usual. */
  readonly stepLog: number;
  /** log10 of the first step's exposure in lux seconds; null where it is not known. */
  readonly firstLog: number | null;
  /** Base and fog included, the least exposed step first. */
  readonly densities: readonly number[];
}

/**
 * Why a wedge cannot be read, in the order in which it is looked for:
 *
 * - `too-few`: fewer than two steps, so that nothing lies between them.
 * - `falls`: somewhere a step is lower than the one before by more than 0.02, which is all that a
 *   densitometer's error excuses (common practice). A wedge typed the wrong way round ends here.
 * - `starts-above`: the first step is above the speed point's density already; just on it is not above.
 * - `never-reaches`: no step comes up to that density.
 * - `too-short`: the last step lies nearer to the speed point than Δlog H 1.30; just there is enough.
 */
export type WedgeFault = "too-few" | "falls" | "starts-above" | "never-reaches" | "too-short";

export type WedgeReading =
  | {
      readonly kind: "read";
      /** log10 of exposure in lux seconds, or from the first step where `firstLog` is null. */
      readonly speedPoint: number;
      /** Mean gradient from the speed point over Δlog H 1.30. */
      readonly gradient: number;
      /** ΔD over the same stretch. 0 or less is possible where the film hardly answered. */
      readonly rise: number;
      /** The film was developed to the contrast at which the standard lets a speed be stated. */
      readonly meetsIso: boolean;
      /** Arithmetic speed; null where `firstLog` is null. Says nothing unless `meetsIso`. */
      readonly speed: number | null;
    }
  | { readonly kind: "unread"; readonly why: WedgeFault };

/** Density above base and fog at the speed point, ISO 6:1993. */
const speedDensity = 0.1;

/** Δlog H from the speed point over which contrast is measured, ISO 6:1993. */
export const contrastSpan = 1.3;

/** ΔD that ISO 6:1993 asks over that span. */
const isoRise = 0.8;

/** How far ΔD may lie from it; from memory. */
const isoTolerance = 0.05;

/** S = 0.8 / Hm, Hm in lux seconds; ISO 6, from memory. */
const speedConstant = 0.8;

/** A later step may be lower by so much for the densitometer's error alone; common practice. */
export const densitometerError = 0.02;

/** Densities and log exposures closer than this are the same: far below any reading, above rounding. */
const sameReading = 1e-9;

/**
 * Reads a wedge by the criterion of ISO 6:1993: the speed point lies where density first comes up to
 * 0.10 above base and fog, and the contrast is ΔD from there over Δlog H 1.30, which is 0.80 in a film
 * developed as the standard asks. Between steps density is linear in log exposure.
 */
export function readWedge(wedge: Wedge): WedgeReading {
  const { baseFog, stepLog, firstLog, densities } = wedge;
  mustBeFinite([baseFog, stepLog, firstLog ?? 0, ...densities]);
  if (stepLog <= 0) throw new RangeError("a wedge's steps are above 0 apart");
  const net = densities.map((density) => density - baseFog);
  if (net.length < 2) return unread("too-few");
  if (net.some((density, i) => (net[i - 1] ?? density) - density > densitometerError + sameReading))
    return unread("falls");

  const reached = net.findIndex((density) => density >= speedDensity - sameReading);
  if (reached === -1) return unread("never-reaches");
  if (reached === 0 && at(net, 0) > speedDensity + sameReading) return unread("starts-above");
  const steps = reached === 0 ? 0 : crossing(net, reached);
  const far = steps + contrastSpan / stepLog;
  if ((far - (net.length - 1)) * stepLog > sameReading) return unread("too-short");

  const rise = between(net, far) - speedDensity;
  const speedPoint = (firstLog ?? 0) + steps * stepLog;
  return {
    kind: "read",
    speedPoint,
    gradient: rise / contrastSpan,
    rise,
    meetsIso: Math.abs(rise - isoRise) <= isoTolerance + sameReading,
    speed: firstLog === null ? null : speedConstant / 10 ** speedPoint,
  };
}

/** S° = 1 + 10 log10 S, rounded to a whole degree, of an arithmetic speed above 0; ISO 6. */
export function logSpeed(arithmetic: number): number {
  return Math.round(1 + 10 * Math.log10(arithmetic));
}

function unread(why: WedgeFault): WedgeReading {
  return { kind: "unread", why };
}

/** Steps from the first at which density comes up to the speed point's, just before step `reached`. */
function crossing(net: readonly number[], reached: number): number {
  const [below, above] = [at(net, reached - 1), at(net, reached)];
  return reached - 1 + Math.min((speedDensity - below) / (above - below), 1);
}

/** Density at so many steps from the first, linear between two. */
function between(net: readonly number[], steps: number): number {
  const from = Math.min(Math.floor(steps), net.length - 2);
  const part = steps - from;
  return at(net, from) * (1 - part) + at(net, from + 1) * part;
}

function at(net: readonly number[], step: number): number {
  const density = net[step];
  if (density === undefined) throw new Error(`a wedge has no step ${step}`);
  return density;
}

function mustBeFinite(numbers: readonly number[]): void {
  if (!numbers.every(Number.isFinite)) throw new RangeError("a wedge is of finite numbers");
}
