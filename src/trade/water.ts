// Water, as the mixing of baths needs it: how dense it is, and how warm two waters are together.

/**
 * Density of air-free water, kg/m³ (g/l), from 0 to 100 °C at one atmosphere.
 *
 * Sources: to 40 °C Tanaka et al., Metrologia 38 (2001) 301, equation 1, stated uncertainty below
 * 0.001 kg/m³; above it Kell, J. Chem. Eng. Data 20 (1975) 97, equation 16, made for 0 to 150 °C. Where
 * they meet they differ by 0.001 kg/m³.
 * @returns null outside 0 to 100 °C.
 */
export function waterDensity(celsius: number): number | null {
  if (!(celsius >= 0 && celsius <= 100)) return null;
  return celsius <= 40 ? tanaka(celsius) : kell(celsius);
}

function tanaka(celsius: number): number {
  const [a1, a2, a3, a4, a5] = [-3.983035, 301.797, 522528.9, 69.34881, 999.97495];
  return a5 * (1 - ((celsius + a1) ** 2 * (celsius + a2)) / (a3 * (celsius + a4)));
}

function kell(celsius: number): number {
  const series = [999.83952, 16.945176, -7.9870401e-3, -4.6170461e-5, 1.0556302e-7, -2.8054253e-10];
  const above = series.reduce((sum, factor, power) => sum + factor * celsius ** power, 0);
  return above / (1 + 1.687985e-2 * celsius);
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
