// A wash and what was carried into it in, what it leaves on the film by plain dilution out.
// Alone, because the sum rests on an assumption that has to be said each time.
import {
  type CarriedOver,
  carriedResidue,
  changesFor,
  leftByChanges,
  leftByFlow,
  minutesFor,
  residueLimit,
  usualThiosulfate,
} from "../trade/washing.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { nominalFilmArea } from "../units/film-size.ts";
import { toMillilitres, type Volume, writeMillilitres, writeVolume } from "../units/volume.ts";
import { writeNumber } from "../units/written-number.ts";
import * as messages from "./bath-messages.ts";
import { nominalFilms } from "./film-area.ts";
import type { Warning, WorkingLine } from "./line.ts";
import type { PlannedBath } from "./plan.ts";
import type { Worksheet } from "./worksheet.ts";

/** How the water is changed: so many fills, or running for so long. */
type Way =
  | { readonly kind: "changes"; readonly count: number }
  | { readonly kind: "running"; readonly flow: Volume; readonly minutes: number };

interface WashPlan extends CarriedOver {
  readonly carryOver: Volume;
  /** ml of each fill. */
  readonly fill: number;
  readonly way: Way;
  /** g/m² on the film before and after. */
  readonly carried: number;
  readonly left: number;
}

/** Null where there is no wash, or nobody said what is carried into it. */
function washOf(worksheet: Worksheet, baths: readonly PlannedBath[]): WashPlan | null {
  const wish = worksheet.baths?.wash;
  const wash = baths.find(({ id }) => id === "wash");
  if (wash === undefined || wish?.carryOver === undefined) return null;
  const films = nominalFilms(worksheet.films);
  const over: CarriedOver = {
    kept: toMillilitres(wish.carryOver),
    thiosulfate: wish.thiosulfate ?? usualThiosulfate,
    area: films * nominalFilmArea,
  };
  const fill = toMillilitres(worksheet.tank.volume);
  const way: Way = wish.flow
    ? { kind: "running", flow: wish.flow, minutes: wash.seconds / 60 }
    : { kind: "changes", count: wish.fills?.length ?? 1 };
  const part =
    way.kind === "running"
      ? leftByFlow(over.kept, fill, toMillilitres(way.flow), way.minutes)
      : leftByChanges(over.kept, fill, way.count);
  const carried = carriedResidue(over);
  return { ...over, carryOver: wish.carryOver, fill, way, carried, left: carried * part };
}

export function washLines(
  worksheet: Worksheet,
  baths: readonly PlannedBath[],
): readonly WorkingLine[] {
  const plan = washOf(worksheet, baths);
  if (!plan) return [];
  const { kept, fill, thiosulfate, area, carried, left, way, carryOver } = plan;
  const volume = (ml: number) => writeMillilitres(worksheet.tank.volume, ml);
  const own = (ml: number) => writeMillilitres(carryOver, ml);
  const grams = (thiosulfate * kept) / 1000;
  const whole = writeNumber(kept + fill, 1);
  const from = writeNumber(carried, 2);
  const after =
    way.kind === "changes"
      ? `${from} × (${writeNumber(kept, 1)} / ${whole})^${way.count}`
      : `${from} × ${writeNumber(kept, 1)} / ${whole} × e^(−${writeNumber(toMillilitres(way.flow), 1)} × ${writeNumber(way.minutes, 2)} / ${whole})`;
  return [
    {
      label: "Carried into the wash",
      expression: `${own(kept)} of fixer with ${writeNumber(thiosulfate)} g of thiosulfate a litre: ${writeNumber(grams, 3)} g / ${writeNumber(area / 10_000, 4)} m² = ${from} g/m² on the film`,
      result: `${from} g/m²`,
    },
    {
      label: "Left by the wash",
      expression: `${wayWords(way, volume(fill))}, if each soak comes to rest with the water in the film: ${after} = ${writeNumber(left, 4)}; the limit is ${residueLimit} g/m²`,
      result: residue(left),
    },
    neededLine(plan, volume(fill)),
  ];
}

function wayWords(way: Way, fill: string): string {
  if (way.kind === "running") {
    return `a fill of ${fill}, then ${writeVolume(way.flow)} a minute for ${writeClockTime(way.minutes * 60)}`;
  }
  return way.count === 1 ? `one fill of ${fill}` : `${way.count} fills of ${fill}`;
}

function neededLine({ kept, fill, carried, way }: WashPlan, each: string): WorkingLine {
  const [k, whole] = [writeNumber(kept, 1), writeNumber(kept + fill, 1)];
  if (way.kind === "running") {
    const flow = toMillilitres(way.flow);
    const minutes = minutesFor(kept, fill, flow, carried, residueLimit);
    const first = writeNumber(carried * leftByChanges(kept, fill, 1), 4);
    return {
      label: "Minutes needed",
      expression: `the first fill leaves ${first} g/m²; ln(${first} / ${residueLimit}) × ${whole} / ${writeNumber(flow, 1)} = ${writeNumber(minutes)} min`,
      result: minutes > 0 ? writeClockTime(Math.ceil(minutes * 60)) : "none",
    };
  }
  const changes = changesFor(kept, fill, carried, residueLimit);
  const exact = Math.log(carried / residueLimit) / Math.log((kept + fill) / kept);
  return {
    label: "Changes needed",
    expression: `ln(${writeNumber(carried)} / ${residueLimit}) / ln(${whole} / ${k}) = ${writeNumber(exact)}, rounded up, with fills of ${each}`,
    result: changes === 1 ? "1 change" : `${changes} changes`,
  };
}

export function washWarnings(
  worksheet: Worksheet,
  baths: readonly PlannedBath[],
): readonly Warning[] {
  const plan = washOf(worksheet, baths);
  if (!plan || plan.left <= residueLimit) return [];
  const { kept, fill, carried, way } = plan;
  const cure =
    way.kind === "changes"
      ? `It takes ${changesFor(kept, fill, carried, residueLimit)} changes of water.`
      : `Let the water run for ${writeClockTime(Math.ceil(minutesFor(kept, fill, toMillilitres(way.flow), carried, residueLimit) * 60))}.`;
  return [messages.washShort(residue(plan.left), `${residueLimit} g/m²`, cure)];
}

/** g/m²; what no sum of this kind can tell from nothing is said to be less. */
function residue(left: number): string {
  return left < 1e-4 ? "less than 0.0001 g/m²" : `${writeNumber(left, 4)} g/m²`;
}
