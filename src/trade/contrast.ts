// Gradients measured after several development times in, the law by which contrast grows out, and
// with it the time for a wanted gradient. Alone, because it is the one curve here fitted to tests.
import { leastOf } from "./least.ts";
import { contrastSpan, densitometerError } from "./sensitometry.ts";

/** The mean gradient of a film developed for so many seconds, above 0, all else being the same. */
export interface ContrastTest {
  readonly seconds: number;
  readonly gradient: number;
}

/** gradient = limit · (1 − e^(−K t)), fitted to tests. */
export interface FittedContrast {
  readonly kind: "fitted";
  /** G∞, the gradient that no time gets beyond. */
  readonly limit: number;
  /** K, per minute of development. */
  readonly perMinute: number;
  /** Root mean square of what the law is off by, in gradient, over the tests. */
  readonly misfit: number;
  /** Seconds, the shortest and the longest time tested: outside them the law is a guess. */
  readonly from: number;
  readonly to: number;
  /** By time, the shortest first. */
  readonly tests: readonly ContrastTest[];
}

/**
 * Why no law can be fitted, in the order in which it is looked for:
 *
 * - `too-few`: fewer than two tests.
 * - `one-time`: all tests within less than a second of one another.
 * - `contradictory`: a gradient of 0 or less; or one that, a second or more later, is lower by more than
 *   0.02, the densitometer's error; or no growth at all from the shortest time to the longest.
 * - `straight`: gradient grows in proportion to time or faster, or so nearly so that its bend is less
 *   than a densitometer can tell. No limit shows then; a longer test would find it.
 */
export type ContrastFault = "too-few" | "one-time" | "contradictory" | "straight";

export type ContrastFit =
  | FittedContrast
  | {
      readonly kind: "unfit";
      readonly why: ContrastFault;
      /** By time, the shortest first. */
      readonly tests: readonly ContrastTest[];
    };

export type ContrastTime =
  /** `within` the times tested, to the half second that a whole second is rounded by. */
  | { readonly kind: "time"; readonly seconds: number; readonly within: boolean }
  | { readonly kind: "beyond-limit"; readonly limit: number };

/** Seconds; times nearer to one another than this are one time. */
const sameTime = 1;

/**
 * K t of the longest test below which the law is taken for a straight line: its limit would be twenty
 * times the highest gradient tested, its bend within the tests under one part in a hundred of that.
 */
const leastBend = 0.05;

/** K t of the shortest test above which it had reached its limit to less than 0.01 %: no growth shows. */
const levelFrom = 10;

const scanSteps = 240;

/** Of golden sections, each to 0.618 of the last: past what rounding leaves of a minimum. */
const sections = 60;

/**
 * The growth law through tests, in any order; seconds above 0, all numbers finite.
 *
 * Law: Mees, "Zeitentwicklung", Jahrbuch für Photographie 25 (1911), for density and contrast. Two
 * tests are met exactly, more by least squares in gradient. For a given K the best limit is a closed
 * form, so K alone is sought: over a scan in even ratios, then by golden section about its best.
 */
export function fitContrast(given: readonly ContrastTest[]): ContrastFit {
  const tests = [...given].sort((a, b) => a.seconds - b.seconds || a.gradient - b.gradient);
  if (!tests.every(isMeasured)) throw new RangeError("a test is finite, its time above 0");
  const [shortest, longest] = [tests[0], tests.at(-1)];
  const unfit = (why: ContrastFault): ContrastFit => ({ kind: "unfit", why, tests });
  if (!shortest || !longest || tests.length < 2) return unfit("too-few");
  const [from, to] = [shortest.seconds, longest.seconds];
  if (to - from < sameTime) return unfit("one-time");
  if (contradict(tests)) return unfit("contradictory");

  const [low, high] = [Math.log(leastBend / to), Math.log(levelFrom / from)];
  const off = (logK: number) => limitFor(tests, Math.exp(logK)).squares;
  const best = leastOf(off, low, high, scanSteps, sections);
  if (best.step === 0) return unfit("straight");
  if (best.step === scanSteps) return unfit("contradictory");

  const perSecond = Math.exp(best.at);
  const { limit, squares } = limitFor(tests, perSecond);
  const misfit = Math.sqrt(squares / tests.length);
  return { kind: "fitted", limit, perMinute: 60 * perSecond, misfit, from, to, tests };
}

/** The gradient after so many seconds, 0 or more. */
export function gradientAt(fit: FittedContrast, seconds: number): number {
  return fit.limit * grown(fit.perMinute / 60, seconds);
}

/** t = −ln(1 − gradient / limit) / K, for a gradient of 0 or more; none reaches the limit itself. */
export function timeForGradient(fit: FittedContrast, gradient: number): ContrastTime {
  const share = gradient / fit.limit;
  if (share >= 1) return { kind: "beyond-limit", limit: fit.limit };
  const seconds = (-60 * Math.log1p(-share)) / fit.perMinute;
  const within = seconds >= fit.from - 0.5 && seconds <= fit.to + 0.5;
  return { kind: "time", seconds, within };
}

/** Stops of contrast less and more that `gradientForStops` answers for. */
const [fewestStops, mostStops] = [-4, 3];

/**
 * The gradient at which a subject whose range is shorter by `stops` fills the density range that a usual
 * one fills at `gradient`. 1 is N+1, more contrast for a flat subject; −1 is N−1, less for a harsh one.
 *
 * gradient · 1.30 / (1.30 − stops · log10 2): the usual range is taken as the Δlog H of ISO 6. Common
 * practice for a stop or so either way; other usual ranges are in print and give other steps. Null
 * outside −4 to +3 stops: a fourth stop more would leave a subject of a third of a stop.
 */
export function gradientForStops(gradient: number, stops: number): number | null {
  if (!(stops >= fewestStops && stops <= mostStops)) return null;
  return (gradient * contrastSpan) / (contrastSpan - stops * Math.log10(2));
}

function isMeasured({ seconds, gradient }: ContrastTest): boolean {
  return Number.isFinite(seconds) && seconds > 0 && Number.isFinite(gradient);
}

/** No film of this law gives such tests: see `ContrastFault`. A hair is left for rounding. */
function contradict(tests: readonly ContrastTest[]): boolean {
  const fallsAfter = (early: ContrastTest) =>
    tests.some(
      (late) =>
        late.seconds - early.seconds >= sameTime &&
        early.gradient - late.gradient > densitometerError + 1e-9,
    );
  return tests.some((test) => test.gradient <= 0 || fallsAfter(test));
}

/** 1 − e^(−K t), K per second: the share of the limit reached. Keeps its digits where K t is small. */
function grown(perSecond: number, seconds: number): number {
  return -Math.expm1(-perSecond * seconds);
}

/** The limit that is off least for one K, Σ γ f / Σ f² with f the share grown, and its sum of squares. */
function limitFor(tests: readonly ContrastTest[], perSecond: number) {
  let [product, square] = [0, 0];
  for (const { seconds, gradient } of tests) {
    const share = grown(perSecond, seconds);
    product += gradient * share;
    square += share * share;
  }
  const limit = product / square;
  let squares = 0;
  for (const { seconds, gradient } of tests)
    squares += (gradient - limit * grown(perSecond, seconds)) ** 2;
  return { limit, squares };
}
