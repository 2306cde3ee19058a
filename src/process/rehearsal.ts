// Worksheet and plan in, the steps of a rehearsal with water out: all that the hands do, as in a run, with the
// rests between shortened and nothing dark. Alone, because it is the one place where times are not the plan's.
import type { Plan } from "../plan/plan.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import type { Deed, Moment } from "./moments.ts";
import type { Outline, Tell } from "./outline.ts";
import { LEAD, outlineOf, type Step, stepsOf } from "./process.ts";

export interface Rehearsal {
  /** What is left of a rest, 0 to 1; at 0 it lasts as long as the words in it need. */
  readonly factor: number;
  /** Whether reasons are told before each bath, and what a step says more of when asked is said unasked. */
  readonly why: boolean;
}

/**
 * A rest is shortened to no less than this, seconds: a sentence is told after it began, and what comes next is called
 * and counted in from 3.2 s ahead.
 */
export const LEAST_REST = 8;

/** Between these the hands rest: neighbours among the moments, the second later than the first. */
const restsAfter: readonly Deed[] = ["full", "rest", "tap"];
const restsUntil: readonly Deed[] = ["agitate", "pour-out"];

/** Times are kept to the microsecond, as the moments are. */
const exact = (seconds: number): number => Math.round(seconds * 1e6) / 1e6;

/**
 * The steps of a rehearsal: an opening that tells what it is, the run's own, and what to practise.
 * @param practise what is told at the end, found by then.
 */
export function rehearsalSteps(
  worksheet: Worksheet,
  plan: Plan,
  { factor, why }: Rehearsal,
  practise: readonly Tell[] = [],
): readonly Step[] {
  // Nor is anything waited for in the dark.
  const steps = stepsOf(worksheet, plan, LEAD)
    .filter(({ closes }) => closes === null)
    .map((step) => shortened(step, factor))
    .map((step) => ({ ...(why ? withItsHow(step) : step), dark: false }));
  const reasons = why ? reasonsFor(steps, outlineOf(worksheet)) : new Map<Step, Step>();
  return [
    telling("rehearse", [...opening, waits]),
    ...steps.flatMap((step, i) => {
      const next = steps[i + 1];
      const reason = reasons.get(step);
      // What tells last before a bath, and last of all, leaves the press to what comes: here that only tells.
      const leaves = step.stays.length === 0 && (next === undefined || next.stays.length > 0);
      const isAsked = next !== undefined && !reasons.has(next);
      return [
        ...(reason === undefined ? [] : [reason]),
        leaves && !isAsked ? { ...step, tells: [...step.tells, waits] } : step,
      ];
    }),
    telling("practise", practise),
  ];
}

const opening = ["rehearse", "rehearse.light", "rehearse.film", "rehearse.mark"];
const waits = "next.section";

const telling = (id: string, tells: readonly Tell[]): Step => ({
  id,
  dark: false,
  seconds: 0,
  moments: [],
  stays: [],
  tells,
  niceties: [],
  closes: null,
  more: [],
  jams: false,
  film: "packed",
  past: 0,
});

/** The same step with its rests shortened: no pour and no bout is any longer, shorter or more often. */
export function shortened(step: Step, factor: number): Step {
  const cuts = cutsOf(step.moments, factor);
  const moved = (at: number): number => {
    const sooner = cuts.reduce((sum, { until, by }) => (until <= at ? sum + by : sum), 0);
    return sooner === 0 ? at : exact(at - sooner);
  };
  return {
    ...step,
    seconds: moved(step.seconds),
    moments: step.moments.map((moment) => ({ ...moment, at: moved(moment.at) })),
    stays: step.stays.map((stay) => ({
      ...stay,
      pourIn: moved(stay.pourIn),
      full: moved(stay.full),
      clock: moved(stay.clock),
      pourOut: moved(stay.pourOut),
      empty: moved(stay.empty),
    })),
  };
}

/** A rest that ends `until` then is shortened by so many seconds. */
interface Cut {
  readonly until: number;
  readonly by: number;
}

function cutsOf(moments: readonly Moment[], factor: number): readonly Cut[] {
  return moments.flatMap((moment, i) => {
    const before = moments[i - 1];
    if (before === undefined || !isRest(before, moment)) return [];
    const rest = moment.at - before.at;
    const kept = Math.max(factor * rest, Math.min(rest, LEAST_REST));
    return kept < rest ? [{ until: moment.at, by: rest - kept }] : [];
  });
}

const isRest = (from: Moment, to: Moment): boolean =>
  restsAfter.includes(from.do) && restsUntil.includes(to.do) && to.at > from.at;

/** The why and the how of a step, which a run tells when asked, before the press that ends it. */
function withItsHow(step: Step): Step {
  const asks = step.tells.at(-1);
  const isAsked = typeof asks === "string" && asks.startsWith("press.");
  const until = isAsked ? step.tells.length - 1 : step.tells.length;
  const { tells, more } = step;
  return { ...step, tells: [...tells.slice(0, until), ...more, ...tells.slice(until)] };
}

/** Of the baths first, each once. */
function whysOf(moments: readonly Moment[], why: Outline["why"]): readonly string[] {
  const all = [
    ...moments.flatMap(({ bath }) => (bath === null ? [] : (why.bath[bath] ?? []))),
    ...moments.flatMap((moment) => why.deed[moment.do] ?? []),
  ];
  return [...new Set(all)];
}

/** The how and the why of a step by itself: what a rehearsal says of it that a run says only when asked, or never. */
export function reasonsOf(
  worksheet: Worksheet,
  { more = [], moments }: { readonly more?: readonly string[]; readonly moments: Step["moments"] },
): readonly string[] {
  return [...more, ...whysOf(moments, outlineOf(worksheet).why)];
}

/** To each bath that has a reason untold so far, a step that only tells it. */
function reasonsFor(steps: readonly Step[], { why }: Outline): ReadonlyMap<Step, Step> {
  const told = new Set<string>();
  const before = new Map<Step, Step>();
  for (const step of steps) {
    const fresh = whysOf(step.moments, why).filter((key) => !told.has(key));
    if (fresh.length === 0) continue;
    for (const key of fresh) told.add(key);
    const id = before.size === 0 ? "why" : `why-${before.size + 1}`;
    before.set(step, telling(id, fresh));
  }
  return before;
}
