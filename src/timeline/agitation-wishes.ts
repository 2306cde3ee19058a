// What is said about agitation in one bath: how it begins, what ends the first bouts, what is next.
import type { Worksheet } from "../plan/worksheet.ts";
import type { Moment } from "../process/moments.ts";
import type { Stay } from "../process/process.ts";
import type { Slots } from "../script/script.ts";
import { toneSeconds } from "../tones/designs.ts";
import { AHEAD, plain, SETTLE, type Wish, weights } from "./wish.ts";

/** How many bouts of a bath after the first are announced in words; after that the count-in is enough. */
const SOON_BOUTS = 2;
const TAP_REMINDERS = 3;
/** A bath moved without a break for no longer than this, seconds, needs no word that it goes on. */
const LONG_BOUT = 28;

/** What the hands are told of agitation: how it begins, what ends the first bouts, what the next will be. */
export function agitationWishes(
  moments: readonly Moment[],
  stay: Stay,
  worksheet: Worksheet,
): readonly Wish[] {
  const { method } = worksheet.tank;
  const within = [...moments.entries()].filter(
    ([, { at, bath }]) => bath === stay.bath && at >= stay.full && at < stay.pourOut,
  );
  const starts = within.filter(([, moment]) => moment.do === "agitate");
  const ends = within.filter(([, moment]) => moment.do === "rest");
  const taps = within.filter(([, moment]) => moment.do === "tap");
  const wishes: Wish[] = [];

  const [first, ...later] = starts;
  if (first !== undefined) {
    const [index, { at }] = first;
    wishes.push({
      ...plain,
      key: `agitate.first.${method}`,
      kind: "prepare",
      moment: index,
      earliest: stay.pourIn + toneSeconds["pour-in"] + SETTLE,
      latestEnd: at - AHEAD,
      liked: { by: "end", at: at - AHEAD },
      weight: weights.agitate,
    });
    const tellsHow = ends.length === 0 ? "agitate.through" : "agitate.turn";
    const long = stay.pourOut - at > LONG_BOUT;
    if (
      tellsHow === "agitate.through" ? long : method === "inversion" && stay.bath === "developer"
    ) {
      const from = at + toneSeconds.agitate + 3;
      wishes.push({
        ...plain,
        key: tellsHow,
        moment: index,
        earliest: from,
        latestEnd: Math.min(from + 10, stay.pourOut),
        liked: { by: "start", at: from },
        weight: weights.nicety,
        nicety: tellsHow === "agitate.turn",
      });
    }
  }
  for (const [index, { at, count = 1 }] of taps.slice(0, TAP_REMINDERS)) {
    wishes.push(afterRest("rest.tap", { times: count }, index, at, weights.tap, false));
  }
  const rested = ends[0];
  if (rested !== undefined && stay.bath === "developer") {
    wishes.push(afterRest("rest.set-down", {}, rested[0], rested[1].at, weights.nicety, true));
  }
  for (const [index, { at }] of later.slice(0, SOON_BOUTS)) {
    wishes.push({
      ...plain,
      key: `agitate.soon.${method}`,
      kind: "prepare",
      moment: index,
      earliest: at - 12,
      latestEnd: at - AHEAD,
      liked: { by: "end", at: at - AHEAD },
      weight: weights.soon,
    });
  }
  return wishes;
}

function afterRest(
  key: string,
  slots: Slots,
  moment: number,
  at: number,
  weight: number,
  nicety: boolean,
): Wish {
  const from = at + toneSeconds.rest + SETTLE;
  // Set-down follows the tap, so its window closes later.
  const latestEnd = from + (nicety ? 9 : 5);
  return {
    ...plain,
    key,
    slots,
    moment,
    earliest: from,
    latestEnd,
    liked: { by: "start", at: from },
    weight,
    nicety,
  };
}
