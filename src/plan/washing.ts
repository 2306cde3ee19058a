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
import { toMillilitres, type Volume } from "../units/volume.ts";
import * as messages from "./bath-messages.ts";
import { nominalFilms } from "./film-area.ts";
import type { Warning, WorkingLine } from "./line.ts";
import type { PlannedBath } from "./plan.ts";
import type { PlanWords } from "./words/words.ts";
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
  words: PlanWords,
  worksheet: Worksheet,
  baths: readonly PlannedBath[],
): readonly WorkingLine[] {
  const plan = washOf(worksheet, baths);
  if (!plan) return [];
  const { wash, writes } = words;
  const { kept, fill, thiosulfate, area, carried, left, way, carryOver } = plan;
  const each = writes.millilitres(worksheet.tank.volume, fill);
  const grams = (thiosulfate * kept) / 1000;
  const whole = writes.number(kept + fill, 1);
  const from = writes.number(carried, 2);
  const part = `${from} × ${writes.number(kept, 1)} / ${whole}`;
  const after =
    way.kind === "changes"
      ? `${from} × (${writes.number(kept, 1)} / ${whole})^${way.count}`
      : `${part} × e^(−${writes.number(toMillilitres(way.flow), 1)} × ${writes.number(way.minutes, 2)} / ${whole})`;
  return [
    {
      label: wash.carriedLabel,
      expression: wash.carried({
        volume: writes.millilitres(carryOver, kept),
        strength: `${writes.number(thiosulfate)} g`,
        sum: `${writes.number(grams, 3)} g / ${writes.number(area / 10_000, 4)} m² = ${from} g/m²`,
      }),
      result: `${from} g/m²`,
    },
    {
      label: wash.leftLabel,
      expression: wash.left({
        way: wayWords(words, way, each),
        sum: `${after} = ${writes.number(left, 4)}`,
        limit: limitIn(words),
      }),
      result: residue(words, left),
    },
    neededLine(words, plan, each),
  ];
}

function wayWords({ wash, writes }: PlanWords, way: Way, fill: string): string {
  return way.kind === "running"
    ? wash.running({
        fill,
        flow: writes.volume(way.flow),
        time: writeClockTime(way.minutes * 60),
      })
    : wash.fills({ fill, count: way.count });
}

function neededLine(
  { wash, writes }: PlanWords,
  { kept, fill, carried, way }: WashPlan,
  each: string,
): WorkingLine {
  const [k, whole] = [writes.number(kept, 1), writes.number(kept + fill, 1)];
  const limit = writes.typed(residueLimit);
  if (way.kind === "running") {
    const flow = toMillilitres(way.flow);
    const minutes = minutesFor(kept, fill, flow, carried, residueLimit);
    const first = writes.number(carried * leftByChanges(kept, fill, 1), 4);
    return {
      label: wash.minutesLabel,
      expression: wash.minutes({
        first: `${first} g/m²`,
        sum: `ln(${first} / ${limit}) × ${whole} / ${writes.number(flow, 1)} = ${writes.number(minutes)} min`,
      }),
      result: minutes > 0 ? writeClockTime(Math.ceil(minutes * 60)) : wash.noMinutes,
    };
  }
  const changes = changesFor(kept, fill, carried, residueLimit);
  const exact = Math.log(carried / residueLimit) / Math.log((kept + fill) / kept);
  return {
    label: wash.changesLabel,
    expression: wash.changes({
      sum: `ln(${writes.number(carried)} / ${limit}) / ln(${whole} / ${k}) = ${writes.number(exact)}`,
      fill: each,
    }),
    result: wash.changeCount({ count: changes }),
  };
}

export function washWarnings(
  words: PlanWords,
  worksheet: Worksheet,
  baths: readonly PlannedBath[],
): readonly Warning[] {
  const plan = washOf(worksheet, baths);
  if (!plan || plan.left <= residueLimit) return [];
  const cure = cureFor(words, plan);
  return [messages.washShort(words, residue(words, plan.left), limitIn(words), cure)];
}

function cureFor({ warnings }: PlanWords, { kept, fill, carried, way }: WashPlan): string {
  if (way.kind === "changes") {
    return warnings.moreChanges({ count: changesFor(kept, fill, carried, residueLimit) });
  }
  const minutes = minutesFor(kept, fill, toMillilitres(way.flow), carried, residueLimit);
  return warnings.moreRunning({ time: writeClockTime(Math.ceil(minutes * 60)) });
}

function limitIn({ writes }: PlanWords): string {
  return `${writes.typed(residueLimit)} g/m²`;
}

/** g/m² below which no sum of this kind can tell a residue from nothing. */
const least = 1e-4;

function residue({ wash, writes }: PlanWords, left: number): string {
  return left < least
    ? wash.lessThan({ residue: `${writes.number(least, 4)} g/m²` })
    : `${writes.number(left, 4)} g/m²`;
}
