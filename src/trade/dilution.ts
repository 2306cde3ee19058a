// A volume and its parts in, what to measure out.
// Alone, so that the mix on the sheet and the mix in the warning are one sum.
import type { Dilution } from "../units/parts.ts";

/** ml, unrounded. */
export interface Mix {
  readonly stock: number;
  readonly water: number;
  readonly total: number;
}

/** stock = total · a / (a + b), in the unit of `total`. */
export function mixOf(total: number, { stock, water }: Dilution): Mix {
  const parts = stock + water;
  return { stock: (total * stock) / parts, water: (total * water) / parts, total };
}

/** The total that holds so much stock: the same sum, turned round. */
export function totalHolding(stock: number, parts: Dilution): number {
  return (stock * (parts.stock + parts.water)) / parts.stock;
}
