// Water, as the mixing of baths needs it: how dense it is, and how warm two waters are together.

/**
 * Density of air-free water, kg/m³, from 0 to 40 °C at one atmosphere.
 * Source: Tanaka et al., Metrologia 38 (2001) 301, equation 1; stated uncertainty below 0.001 kg/m³.
 * @returns null outside the range that the formula was made for.
 */
export function waterDensity(celsius: number): number | null {
  if (!(celsius >= 0 && celsius <= 40)) return null;
  const [a1, a2, a3, a4, a5] = [-3.983035, 301.797, 522528.9, 69.34881, 999.97495];
  return a5 * (1 - ((celsius + a1) ** 2 * (celsius + a2)) / (a3 * (celsius + a4)));
}

export interface Warmth {
  /** Any unit of amount, the same for all parts. */
  readonly amount: number;
  readonly celsius: number;
}

/**
 * °C of parts poured together, by the balance of heat: no loss to the vessel or the room, and the
 * same heat in each millilitre of every part, which holds for photographic baths to a few per cent.
 * @returns null where there is nothing to mix.
 */
export function mixedCelsius(parts: readonly Warmth[]): number | null {
  const amount = parts.reduce((sum, part) => sum + part.amount, 0);
  if (!(amount > 0)) return null;
  return parts.reduce((sum, part) => sum + part.amount * part.celsius, 0) / amount;
}
