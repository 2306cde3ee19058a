// What is said about one bath's stay in the tank, agitation apart: which bath and vessel before the
// pour, how much time is left, the pour-out, and what becomes of what was poured out.
import type { Worksheet } from "../plan/worksheet.ts";
import type { Stay } from "../process/process.ts";
import { marks } from "../script/script.ts";
import { toneSeconds } from "../tones/designs.ts";
import { AFTER_PRESS, AHEAD, plain, SETTLE, type Wish, weights } from "./wish.ts";

/** "Two minutes left" may start this much before its mark and end this much after. */
const MARK_EARLY = 1;
const MARK_LATE = 5;
/** A mark sooner than this after the tank is full, or nearer to the pour-out, tells nothing new. */
const MARK_WORTH = 10;
/** Words about a bath may begin once the one before it is pouring out, or after the press. */
function wordsFrom(before: Stay | undefined): number {
  return before === undefined ? AFTER_PRESS : before.pourOut + toneSeconds["pour-out"] + SETTLE;
}

export function pourInWishes(
  stay: Stay,
  before: Stay | undefined,
  moment: number,
  method: Worksheet["tank"]["method"],
): readonly Wish[] {
  const again = before?.bath === stay.bath;
  return [
    {
      ...plain,
      key: again ? "pour-in.again" : "pour-in.ready",
      slots: again ? {} : { vessel: stay.vessel, bath: stay.bath },
      kind: "prepare",
      moment,
      earliest: wordsFrom(before),
      latestEnd: stay.pourIn - AHEAD,
      liked: { by: "end", at: stay.pourIn - AHEAD },
      weight: weights.pourIn,
    },
    ...(stay.bath === "developer" ? pouringWishes(stay, method) : []),
  ];
}

/** While the first bath goes in: how to pour, and what closes the tank. Each is said before the next is. */
function pouringWishes(stay: Stay, method: Worksheet["tank"]["method"]): readonly Wish[] {
  const from = stay.pourIn + toneSeconds["pour-in"] + SETTLE;
  const pouring = (key: string, before: number): Wish => ({
    ...plain,
    key,
    earliest: from,
    latestEnd: stay.full - AHEAD - before,
    liked: { by: "start", at: from },
    weight: weights.nicety,
    nicety: true,
  });
  return [
    pouring("pour-in.steady", 3),
    ...(method === "inversion" ? [pouring("pour-in.cap", 1.5)] : []),
  ];
}

/** Minutes left, at the marks that are worth it. */
export function remainingWishes(stay: Stay, worksheet: Worksheet): readonly Wish[] {
  const end = worksheet.clock.ends === "empty" ? stay.empty : stay.pourOut;
  return marks.toReversed().flatMap((minutes) => {
    const mark = end - 60 * minutes;
    if (mark < stay.full + MARK_WORTH) return [];
    return [
      {
        ...plain,
        key: "remaining.minutes",
        slots: { mark: minutes },
        kind: "remaining" as const,
        earliest: mark - MARK_EARLY,
        latestEnd: mark + MARK_LATE,
        liked: { by: "start", at: mark } as const,
        weight: weights.remaining,
      },
    ];
  });
}

/** Heard between half a minute and three seconds before, as near to ten seconds before as there is room. */
export function pourOutWish(stay: Stay, before: Stay | undefined, moment: number): Wish {
  return {
    ...plain,
    key: "pour-out.ready",
    slots: { bath: stay.bath },
    kind: "prepare",
    moment,
    earliest: Math.max(stay.pourOut - 30, wordsFrom(before)),
    latestEnd: stay.pourOut - AHEAD,
    liked: { by: "end", at: stay.pourOut - 8 },
    weight: weights.pourOut,
  };
}

/** Where the bath goes is said once it is flowing; of fills and dumps, once. */
export function afterwardsWishes(
  stay: Stay,
  before: Stay | undefined,
  after: Stay | undefined,
  moment: number,
): readonly Wish[] {
  if (before?.bath === stay.bath) return [];
  const from = stay.pourOut + toneSeconds["pour-out"] + SETTLE;
  return [
    {
      ...plain,
      key: `afterwards.${stay.afterwards}`,
      slots: { bath: stay.bath },
      moment,
      earliest: from,
      latestEnd: after === undefined ? stay.empty + 5 : after.pourIn - AHEAD - 1,
      liked: { by: "start", at: from },
      weight: weights.afterwards,
    },
  ];
}
