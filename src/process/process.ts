// Worksheet and plan in, steps out: each a press of the person's, with what the hands do after it
// and which sentences belong to it. The times follow from the arithmetic alone, never from words.
import { fillSeconds } from "../plan/fills.ts";
import type { Plan, PlannedBath } from "../plan/plan.ts";
import type { Afterwards, Worksheet } from "../plan/worksheet.ts";
import { type Fate, processBaths } from "../trade/baths.ts";
import {
  asItHappened,
  type Happened,
  type HappenedIn,
  handoverAfter,
  nothingHappened,
  pastOf,
  pourInOf,
} from "./happened.ts";
import type { Moment } from "./moments.ts";
import type { Outline, Tell } from "./outline.ts";
import { bwNegative } from "./outlines/bw-negative.ts";
import { momentsOf, type Pour, pourOf } from "./pour.ts";
import { toldSteps } from "./told-steps.ts";

/** A bath's stay, with where it comes from and where it goes. */
export interface Stay extends Pour {
  /** `"1"` is the first vessel from the left; `"tap"` needs none. */
  readonly vessel: string;
  readonly afterwards: Afterwards;
}

/** Where light and wrong baths find the film: in its cassette, in the open, behind a locked lid, or fixed. */
export type FilmIs = "packed" | "open" | "tank" | "fixed";

export interface Step {
  readonly id: string;
  readonly dark: boolean;
  /** 0 where the step only tells and waits; with no moments, a wait that a press may end at any time. */
  readonly seconds: number;
  readonly moments: readonly Moment[];
  readonly stays: readonly Stay[];
  /** Sentences of a step that only tells. */
  readonly tells: readonly Tell[];
  /** Those of them that are said at full detail only. */
  readonly niceties: readonly string[];
  /** What is said as a wait ends, by key. */
  readonly closes: string | null;
  /** Told when asked for, by key. */
  readonly more: readonly string[];
  /** The film may jam in it. */
  readonly jams: boolean;
  readonly film: FilmIs;
  /** Up to here it is past, seconds: in a run, when something was last learnt of it. Nothing is said before. */
  readonly past: number;
}

const outlines: { readonly [process: string]: Outline } = { "bw-negative": bwNegative };

/** Seconds from the press to the first pour-in: time to take the vessel up and land on the count-in. */
export const LEAD = 8;
/** Seconds kept after the last vessel is empty, in which the next step is told. */
const TAIL = 15;

/** Every step of a run, in order; what happened otherwise than planned moves the rest of its own step. */
export function stepsOf(
  worksheet: Worksheet,
  plan: Plan,
  lead = LEAD,
  happenedIn: HappenedIn = {},
): readonly Step[] {
  const outline = outlineOf(worksheet);
  const { method } = worksheet.tank;
  const open = method === "tray" || method === "hanger";
  const groups = bathGroups(plan, outline);
  const fixedAt = groups.findIndex((group) => group.some((bath) => bath.id === outline.fixedBy));
  const baths = groups.map((group, i) => {
    const happened = happenedIn[group[0]?.id ?? ""] ?? nothingHappened;
    const film = fixedAt >= 0 && i > fixedAt ? "fixed" : open ? "open" : "tank";
    return bathStep(group, worksheet, plan, outline, {
      dark: film === "open",
      film,
      lead,
      happened,
    });
  });
  const told = toldSteps(outline, worksheet);
  return [...told.before, ...baths, ...told.after];
}

export function outlineOf({ process }: Worksheet): Outline {
  const outline = outlines[process];
  if (outline === undefined) throw new Error(`No outline for the process "${process}".`);
  return outline;
}

function bathGroups(plan: Plan, outline: Outline): readonly (readonly PlannedBath[])[] {
  const groups: PlannedBath[][] = [];
  for (const bath of plan.baths) {
    const last = groups.at(-1);
    const together = outline.together.some(
      (ids) => ids.includes(bath.id) && last?.every((before) => ids.includes(before.id)),
    );
    if (together && last !== undefined) last.push(bath);
    else groups.push([bath]);
  }
  return groups;
}

function bathStep(
  group: readonly PlannedBath[],
  worksheet: Worksheet,
  plan: Plan,
  outline: Outline,
  {
    dark,
    film,
    lead,
    happened,
  }: Pick<Step, "dark" | "film"> & { readonly lead: number; readonly happened: Happened },
): Step {
  const stays: Stay[] = [];
  const moments: Moment[] = [];
  for (const bath of group) {
    const { times, agitations } = fillsOf(bath, worksheet);
    for (const [i, seconds] of times.entries()) {
      const before = stays.at(-1);
      const planned =
        before === undefined
          ? lead
          : before.empty + handoverAfter(stays.length - 1, happened, worksheet);
      const at = pourInOf(stays.length, planned, before?.empty ?? 0, happened);
      const pour = asItHappened(
        pourOf(bath.id, at, seconds, worksheet),
        stays.length,
        happened,
        worksheet,
      );
      stays.push({
        ...pour,
        vessel: vesselOf(bath.id, plan, outline),
        afterwards: afterwardsOf(bath.id, worksheet),
      });
      moments.push(...momentsOf(pour, agitations[i] ?? null));
    }
  }
  const seconds = (stays.at(-1)?.empty ?? 0) + TAIL;
  return {
    id: group[0]?.id ?? "",
    dark,
    seconds,
    moments,
    stays,
    tells: [],
    niceties: [],
    closes: null,
    more: [],
    jams: false,
    film,
    past: pastOf(happened),
  };
}

/** A bath is one stay in the tank; a wash by fills and dumps is one for each fill. */
function fillsOf(bath: PlannedBath, worksheet: Worksheet) {
  const fills = worksheet.baths?.[bath.id]?.fills;
  if (fills === undefined) return { times: [bath.seconds], agitations: [bath.agitation] };
  const { perInversion } = worksheet.agitation;
  return {
    times: fills.map((inversions) => fillSeconds(worksheet, inversions)),
    agitations: fills.map((inversions) => {
      const seconds = inversions * perInversion;
      return { first: seconds, every: seconds, for: seconds, perInversion, taps: 0 };
    }),
  };
}

/** Vessels stand in a row in the order of their baths; running water needs none. */
function vesselOf(bath: string, plan: Plan, outline: Outline): string {
  if (outline.fromTheTap.includes(bath)) return "tap";
  const row = plan.baths.filter((other) => !outline.fromTheTap.includes(other.id));
  return String(row.findIndex((other) => other.id === bath) + 1);
}

/** What becomes of a bath once it is poured out. */
export function afterwardsOf(bath: string, worksheet: Worksheet): Afterwards {
  const asked = worksheet.baths?.[bath]?.afterwards;
  if (asked !== undefined) return asked;
  const fate: Fate =
    processBaths[worksheet.process]?.find((facts) => facts.id === bath)?.fate ?? "waste";
  if (fate !== "by-dilution") return fate;
  const { dilution = "stock", filmsBefore = 0 } = worksheet.developer;
  return dilution === "stock" || filmsBefore > 0 ? "return" : "waste";
}
