// A step in, what ought to be said about it out: each wish with its moment, its window and its
// weight. Whether there is room for it, and in how many words, is decided elsewhere.
import type { Worksheet } from "../plan/worksheet.ts";
import type { Moment } from "../process/moments.ts";
import type { Stay, Step } from "../process/process.ts";
import type { Slots } from "../script/script.ts";
import { agitationWishes } from "./agitation-wishes.ts";
import { afterwardsWishes, pourInWishes, pourOutWish, remainingWishes } from "./pour-wishes.ts";
import { AFTER_PRESS, plain, SETTLE, type Wish, weights } from "./wish.ts";

/** All wishes of a step, in order of the ends of their windows. `next` is the step that the following press starts. */
export function wishesOf(
  step: Step,
  next: Step | undefined,
  worksheet: Worksheet,
): readonly Wish[] {
  const wishes =
    step.stays.length === 0
      ? step.tells.map((key) => told(key, {}, AFTER_PRESS, weights.gate))
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
