// What the developer should do in, the bath or the ice that does it out: tempering asked backwards.
// Alone, because it needs no readings, only the half-way time and the heat of melting.

/**
 * °C of the water bath with which a developer goes from `now` to `target` in so many minutes, `halfway` being
 * the minutes in which it goes half-way to the bath: (target − now · q) / (1 − q), q = 2^(−minutes / halfway),
 * which is Newton's cooling solved for the room. May lie where no water is; that is for the caller to say.
 * @returns null without a time above 0.
 */
export function bathFor(wanted: {
  readonly now: number;
  readonly target: number;
  readonly halfway: number;
  readonly minutes: number;
}): number | null {
  const { now, target, halfway, minutes } = wanted;
  if (!(minutes > 0 && halfway > 0)) return null;
  // 1 − q, kept exact where the minutes are few.
  const gone = -Math.expm1((-Math.LN2 * minutes) / halfway);
  const bath = now + (target - now) / gone;
  return Number.isFinite(bath) ? bath : null;
}

/**
 * °C by which the heat that melts ice would cool as much water: 333.6 kJ/kg over 4.186 kJ/(kg·K).
 * Physics from memory; tables differ by less than half a per cent.
 */
export const meltingDegrees = 333.6 / 4.186;

/**
 * Grams of melting ice, at 0 °C, that bring so many ml of water from one temperature to another, the melted
 * ice included: m · (L/c + to) = water · (from − to), a millilitre being a gram. No loss to vessel or room.
 * Drier and colder ice does a little more, wet ice less.
 * @returns null where no ice does it: no water, not to be cooled, or to be cooled to 0 °C or below.
 */
export function iceFor(wanted: {
  readonly water: number;
  readonly from: number;
  readonly to: number;
}): number | null {
  const { water, from, to } = wanted;
  if (!(water > 0 && to > 0 && to < from)) return null;
  return (water * (from - to)) / (meltingDegrees + to);
}
