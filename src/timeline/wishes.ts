// A step in, what ought to be said about it out: each wish with its moment, its window and its
// weight. Whether there is room for it, and in how many words, is decided elsewhere.
import type { Worksheet } from "../plan/worksheet.ts";
import type { Moment } from "../process/moments.ts";
import type { Stay, Step } from "../process/process.ts";
import { marks, type Slots } from "../script/script.ts";
import { agitationWishes } from "./agitation-wishes.ts";
import { afterwardsWishes, pourInWishes, pourOutWish, remainingWishes } from "./pour-wishes.ts";
import { AFTER_PRESS, plain, SETTLE, type Wish, weights } from "./wish.ts";

/** What a step that lasts has to tell is told by then, seconds: before its first count. */
const TOLD_BY = 50;
/** A count of minutes keeps so far, seconds, from what closes the step. */
const COUNT_CLEAR = 15;

/** All wishes of a step, in order of the ends of their windows. `next` is the step that the following press starts. */
export function wishesOf(
  step: Step,
  next: Step | undefined,
  worksheet: Worksheet,
): readonly Wish[] {
  const wishes =
    step.stays.length === 0
      ? tellingWishes(step)
      : step.stays.flatMap((stay, i) => stayWishes(step, stay, i, worksheet));
  const end = step.stays.at(-1)?.empty ?? AFTER_PRESS;
  return [...wishes.toSorted(byWindow), ...gateWishes(step, next, end)];
}

const byWindow = (a: Wish, b: Wish): number =>
  a.latestEnd - b.latestEnd || a.earliest - b.earliest || b.weight - a.weight;

function told(key: string, slots: Slots, from: number, weight: number): Wish {
  return {
    ...plain,
    key,
    slots,
    earliest: from,
    latestEnd: Number.POSITIVE_INFINITY,
    liked: { by: "start", at: from },
    weight,
  };
}

/** All that a step tells; one that lasts tells it at once, then counts the minutes, and closes with its own. */
function tellingWishes(step: Step): readonly Wish[] {
  const { tells, niceties, closes, seconds } = step;
  const spoken = tells.map((tell) => {
    const { key, slots } = typeof tell === "string" ? { key: tell, slots: {} } : tell;
    return {
      ...told(key, slots, AFTER_PRESS, weights.gate),
      nicety: niceties.includes(key),
      ...(seconds > 0 ? { latestEnd: Math.min(seconds, TOLD_BY) } : {}),
    };
  });
  const counted = marks
    .filter((minutes) => minutes * 60 + COUNT_CLEAR < seconds)
    .map((minutes) => {
      const at = minutes * 60;
      const count = told("where.minutes", { minutes }, at, weights.remaining);
      return { ...count, kind: "remaining" as const, latestEnd: at + COUNT_CLEAR / 2 };
    });
  if (closes === null) return spoken;
  const end: Wish = {
    ...told(closes, {}, Math.max(AFTER_PRESS, seconds - COUNT_CLEAR / 2), weights.gate),
    kind: "remaining",
    latestEnd: seconds,
    liked: { by: "end", at: seconds },
  };
  return [...spoken, ...counted, end];
}

/** At the end of a step: what the next press begins, and that it waits for a press. */
function gateWishes(step: Step, next: Step | undefined, end: number): readonly Wish[] {
  const from = end + SETTLE;
  const stay = next?.stays[0];
  const keys: readonly (readonly [string, Slots])[] =
    stay !== undefined
      ? [
          ["gate.bath", { bath: stay.bath }],
          ["gate.vessel", { vessel: stay.vessel }],
          [stay.vessel === "tap" ? "gate.tap" : "gate.press", {}],
        ]
      : next !== undefined && step.stays.length > 0
        ? [["next.section", {}]]
        : [];
  return keys.map(([key, slots]) => ({
    ...told(key, slots, from, weights.gate),
    ...(step.seconds > 0 ? { latestEnd: step.seconds } : {}),
  }));
}

function stayWishes(step: Step, stay: Stay, i: number, worksheet: Worksheet): readonly Wish[] {
  const before = step.stays[i - 1];
  const after = step.stays[i + 1];
  const place = placesOf(step.moments, stay);
  return [
    ...pourInWishes(stay, before, place.pourIn, worksheet.tank.method),
    ...agitationWishes(step.moments, stay, worksheet),
    ...remainingWishes(stay, worksheet),
    pourOutWish(stay, before, place.pourOut),
    ...afterwardsWishes(stay, before, after, place.pourOut),
  ];
}

function placesOf(moments: readonly Moment[], stay: Stay) {
  const find = (deed: string, at: number) =>
    moments.findIndex((moment) => moment.do === deed && moment.at === at);
  return { pourIn: find("pour-in", stay.pourIn), pourOut: find("pour-out", stay.pourOut) };
}
