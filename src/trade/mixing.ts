// Stock at one temperature and two taps at others in, how much of each for a volume at a temperature out.
// Alone, because two balances must hold at once: of heat, and of weight, since warm water is lighter.
import { mixedCelsius, waterDensity } from "./water.ts";

/** ml, and °C as it is measured out. */
export interface Pour {
  readonly millilitres: number;
  readonly celsius: number;
}

export interface Wanted {
  /** ml of the whole, at `celsius`. */
  readonly total: number;
  readonly celsius: number;
  readonly stock: Pour;
  /** °C of the two taps. */
  readonly cold: number;
  readonly hot: number;
}

/** Grams; what the pours weigh as water. */
interface Weights {
  readonly total: number;
  readonly stock: number;
  readonly water: number;
  readonly cold: number;
  readonly hot: number;
}

export type Mixing =
  | { readonly kind: "mix"; readonly cold: Pour; readonly hot: Pour; readonly weights: Weights }
  /** °C that the coldest and the warmest mix would have, one of them the nearest to what is wanted. */
  | { readonly kind: "out-of-reach"; readonly coldest: number; readonly warmest: number }
  /** The two taps run at one temperature, so nothing can be chosen. */
  | { readonly kind: "one-tap"; readonly celsius: number }
  /** Some temperature lies outside 0 to 100 °C, where this is no water. */
  | { readonly kind: "no-water" };

/** °C: 32 °F typed is 0 °C to rounding. */
const hair = 1e-6;

/** °C; taps closer than this are one. */
const sameTap = 0.05;

/**
 * How much from each tap, ml as measured at the tap:
 * mh = (M·T − ms·Ts − mw·Tc) / (Th − Tc), mc = mw − mh, each weight over its density.
 *
 * The balance of heat without loss to vessel and room, all parts taken to be as dense and to hold as
 * much heat as water: stock solutions are a few per cent denser and hold as much less by weight, which
 * nearly cancels by volume. Good to about half a degree (common practice); so stir, measure, correct.
 */
export function mixingFor({ total, celsius, stock, cold, hot }: Wanted): Mixing {
  if ([celsius, stock.celsius, cold, hot].some((it) => it < -hair || it > 100 + hair)) {
    return { kind: "no-water" };
  }
  const whole = weightOf({ millilitres: total, celsius });
  const ofStock = weightOf(stock);
  const water = whole - ofStock;
  const withWater = (at: number) => (ofStock * stock.celsius + water * at) / whole;
  if (Math.abs(hot - cold) < sameTap) return { kind: "one-tap", celsius: withWater(cold) };
  const ofHot = (whole * celsius - ofStock * stock.celsius - water * cold) / (hot - cold);
  const ofCold = water - ofHot;
  // A millionth of the water either way is rounding, not a tap that runs backwards.
  if (Math.min(ofHot, ofCold) < -1e-6 * water) {
    const ends = [withWater(cold), withWater(hot)];
    return { kind: "out-of-reach", coldest: Math.min(...ends), warmest: Math.max(...ends) };
  }
  const measured = (weight: number, at: number): Pour => ({
    millilitres: Math.max(weight, 0) / (densityAt(at) / 1000),
    celsius: at,
  });
  return {
    kind: "mix",
    cold: measured(ofCold, cold),
    hot: measured(ofHot, hot),
    weights: { total: whole, stock: ofStock, water, cold: ofCold, hot: ofHot },
  };
}

/** What the pours come to: ml at the temperature they reach together, and that temperature, °C. */
export function pouredTogether(pours: readonly Pour[]): Pour {
  const parts = pours.map((pour) => ({ amount: weightOf(pour), celsius: pour.celsius }));
  const celsius = mixedCelsius(parts) ?? 0;
  const whole = parts.reduce((sum, { amount }) => sum + amount, 0);
  return { millilitres: whole / (densityAt(celsius) / 1000), celsius };
}

/** To the nearest mark of a graduate, half up; both in one unit. */
export function toMark(amount: number, mark: number): number {
  return Math.floor(amount / mark + 0.5 + 1e-9) * mark;
}

/** Grams. */
function weightOf({ millilitres, celsius }: Pour): number {
  return (millilitres * densityAt(celsius)) / 1000;
}

/** kg/m³; a caller's temperatures have been looked at before. */
function densityAt(celsius: number): number {
  return waterDensity(Math.min(Math.max(celsius, 0), 100)) ?? 1000;
}
