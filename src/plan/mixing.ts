// Stock and two taps in, what to pour of each for the tank at a temperature out, with its lines and warnings.
// Alone, because it is done before the developer exists, and the plan's time does not rest on it.

import { mixOf } from "../trade/dilution.ts";
import {
  type Mixing,
  mixingFor,
  type Pour,
  pouredTogether,
  toMark,
  type Wanted,
} from "../trade/mixing.ts";
import { waterDensity } from "../trade/water.ts";
import { toCelsius } from "../units/temperature.ts";
import { mlPerFlOz, toMillilitres, type Volume } from "../units/volume.ts";
import type { Warning, WorkingLine } from "./line.ts";
import { dilutionOf } from "./planned-baths.ts";
import * as messages from "./warmth-messages.ts";
import type { AsideWords } from "./words/words.ts";
import type { MixingWish, Worksheet } from "./worksheet.ts";

/** What the graduate's marks make of it: ml, °C, and parts of water to one of stock. */
interface Rounded {
  readonly stock: Pour;
  readonly cold: Pour;
  readonly hot: Pour;
  readonly whole: Pour;
  readonly parts: number;
}

interface MixingPlan {
  readonly wish: MixingWish;
  /** The tank's volume as typed: in its unit the pours are told. */
  readonly tank: Volume;
  readonly wanted: Wanted;
  /** Parts of water to one of stock that are wanted. */
  readonly parts: number;
  /** ml from one mark of the graduate to the next. */
  readonly mark: number;
  readonly mixing: Mixing;
  /** Null where there is no mix, or the stock is less than half a mark. */
  readonly rounded: Rounded | null;
}

/** Null where the worksheet asks for none, or the stock is used as it is. */
export function mixingOf(worksheet: Worksheet): MixingPlan | null {
  const wish = worksheet.mixing;
  const dilution = dilutionOf(worksheet.developer);
  if (wish === undefined || dilution.water === 0) return null;
  const { total, stock } = mixOf(toMillilitres(worksheet.tank.volume), dilution);
  const wanted: Wanted = {
    total,
    celsius: toCelsius(wish.target),
    stock: { millilitres: stock, celsius: toCelsius(wish.stock) },
    cold: toCelsius(wish.cold),
    hot: toCelsius(wish.hot),
  };
  const mixing = mixingFor(wanted);
  const tank = worksheet.tank.volume;
  const mark = wish.mark ? toMillilitres(wish.mark) : usualMark(tank);
  const parts = dilution.water / dilution.stock;
  return { wish, tank, wanted, parts, mark, mixing, rounded: roundedTo(mark, wanted, mixing) };
}

function roundedTo(mark: number, { stock }: Wanted, mixing: Mixing): Rounded | null {
  if (mixing.kind !== "mix") return null;
  const onMark = (pour: Pour) => ({ ...pour, millilitres: toMark(pour.millilitres, mark) });
  const [ofStock, cold, hot] = [onMark(stock), onMark(mixing.cold), onMark(mixing.hot)];
  if (ofStock.millilitres === 0) return null;
  return {
    stock: ofStock,
    cold,
    hot,
    whole: pouredTogether([ofStock, cold, hot]),
    parts: (cold.millilitres + hot.millilitres) / ofStock.millilitres,
  };
}

/** ml: 5, or a quarter of a fluid ounce. */
function usualMark(tank: Volume): number {
  return "ml" in tank ? 5 : mlPerFlOz / 4;
}

export function mixingLines(
  { mixing: says, writes }: AsideWords,
  plan: MixingPlan,
): readonly WorkingLine[] {
  const { wish, tank, wanted, mixing, rounded } = plan;
  if (mixing.kind !== "mix") return [];
  const volume = (millilitres: number) => writes.millilitres(tank, millilitres);
  const { total, stock, water, cold, hot } = mixing.weights;
  const bare = (weight: number) => writes.number(weight, 1);
  const grams = (weight: number) => `${bare(weight)} g`;
  const at = (celsius: number) => writes.degreesOf(wish.target, celsius);
  const density = (celsius: number) =>
    `${writes.number((waterDensity(celsius) ?? 1000) / 1000, 4)} g`;
  const tenths = (celsius: number) => writes.tenths(wish.target, celsius);
  const hotSum =
    `(${bare(total)} × ${at(wanted.celsius)} − ${bare(stock)} × ${at(wanted.stock.celsius)} − ${bare(water)} × ${at(wanted.cold)})` +
    ` / (${at(wanted.hot)} − ${at(wanted.cold)}) = ${grams(hot)}`;
  return [
    {
      label: says.water,
      expression: says.waterSum({
        total: volume(wanted.total),
        target: tenths(wanted.celsius),
        weight: grams(total),
        stock: volume(wanted.stock.millilitres),
        at: tenths(wanted.stock.celsius),
        stockWeight: grams(stock),
        sum: `${bare(total)} − ${bare(stock)}`,
      }),
      result: grams(water),
    },
    {
      label: says.hot,
      expression: says.pourSum({
        sum: hotSum,
        at: tenths(wanted.hot),
        density: density(wanted.hot),
      }),
      result: volume(mixing.hot.millilitres),
    },
    {
      label: says.cold,
      expression: says.pourSum({
        sum: `${bare(water)} − ${bare(hot)} = ${grams(cold)}`,
        at: tenths(wanted.cold),
        density: density(wanted.cold),
      }),
      result: volume(mixing.cold.millilitres),
    },
    ...(rounded
      ? [
          {
            label: says.marks,
            expression: says.marksSum({
              stock: volume(rounded.stock.millilitres),
              cold: volume(rounded.cold.millilitres),
              hot: volume(rounded.hot.millilitres),
              whole: volume(rounded.whole.millilitres),
              dilution: `1+${writes.number(rounded.parts)}`,
            }),
            result: tenths(rounded.whole.celsius),
          },
        ]
      : []),
  ];
}

/** A dilution off by more than this part shows in the negative; common practice. */
const dilutionOff = 0.05;

export function mixingWarnings(words: AsideWords, plan: MixingPlan): readonly Warning[] {
  const { wish, tank, parts, mark, mixing, rounded } = plan;
  const { writes } = words;
  const tenths = (celsius: number) => writes.tenths(wish.target, celsius);
  switch (mixing.kind) {
    case "out-of-reach":
      return [
        messages.mixOutOfReach(
          words,
          tenths(toCelsius(wish.target)),
          tenths(mixing.coldest),
          tenths(mixing.warmest),
        ),
      ];
    case "one-tap":
      return [messages.oneTap(words, tenths(mixing.celsius))];
    case "no-water":
      return [messages.noWater(words)];
    case "mix": {
      if (rounded && Math.abs(rounded.parts / parts - 1) <= dilutionOff) return [];
      const made = rounded && `1+${writes.number(rounded.parts)}`;
      return [messages.marksTooCoarse(words, writes.millilitres(tank, mark), made)];
    }
  }
}
