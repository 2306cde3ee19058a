// A step in, what ought to be said about it out: each wish with its moment, its window and its
// weight. Whether there is room for it, and in how many words, is decided elsewhere.
import type { Worksheet } from "../plan/worksheet.ts";
import type { Moment } from "../process/moments.ts";
import type { Stay, Step } from "../process/process.ts";
import { type Slots, sayable } from "../script/script.ts";
import { toneSeconds } from "../tones/designs.ts";
import type { CueKind } from "./score.ts";

export interface Wish {
  readonly key: string;
  readonly slots: Slots;
  readonly kind: CueKind;
  /** Index into the step's moments. */
  readonly moment: number | null;
  readonly earliest: number;
  readonly latestEnd: number;
  /** Where the listener likes it: as early as may be, or ending near a time. */
  readonly liked: { readonly by: "start" | "end"; readonly at: number };
  readonly weight: number;
  /** A nicety for learners: said at full detail only. */
  readonly nicety: boolean;
}

/** Weights order what gives way to what; only their ratios matter. Pour-outs outweigh all the rest together. */
const weights = {
  pourOut: 100_000,
  pourIn: 1600,
  gate: 1200,
  agitate: 800,
  afterwards: 700,
  remaining: 400,
  tap: 300,
  soon: 150,
  nicety: 80,
} as const;

/** Seconds. A spoken preparation ends 3 s ahead of its moment; a little more clears the count-in. */
const AHEAD = 3.2;
/** After a tone has died, the ear is given this long before words. */
const SETTLE = 0.1;
/** "Two minutes left" may start this much before its mark and end this much after. */
const MARK_EARLY = 1;
const MARK_LATE = 5;
/** A mark sooner than this after the tank is full, or nearer to the pour-out, tells nothing new. */
const MARK_WORTH = 10;
/** Minutes left that are worth hearing: the last five, then every fifth, then every quarter hour. */
const MARKS = [120, 105, 90, 75, 60, 55, 50, 45, 40, 35, 30, 25, 20, 15, 10, 5, 4, 3, 2, 1];
/** How many bouts of a bath after the first are announced in words; after that the count-in is enough. */
const SOON_BOUTS = 2;
const TAP_REMINDERS = 3;
/** A bath moved without a break for no longer than this, seconds, needs no word that it goes on. */
const LONG_BOUT = 28;

/** The first words after a press begin here, once the press itself has been answered by its tone. */
const AFTER_PRESS = 0.4;

const no = { kind: "tell", moment: null, slots: {}, nicety: false } as const;

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
    ...no,
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
    ...pourInWishes(stay, before, place.pourIn),
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

/** Words about a bath may begin once the one before it is pouring out, or after the press. */
function wordsFrom(before: Stay | undefined): number {
  return before === undefined ? AFTER_PRESS : before.pourOut + toneSeconds["pour-out"] + SETTLE;
}

function pourInWishes(stay: Stay, before: Stay | undefined, moment: number): readonly Wish[] {
  const again = before?.bath === stay.bath;
  return [
    {
      ...no,
      key: again ? "pour-in.again" : "pour-in.ready",
      slots: again ? {} : { vessel: stay.vessel, bath: stay.bath },
      kind: "prepare",
      moment,
      earliest: wordsFrom(before),
      latestEnd: stay.pourIn - AHEAD,
      liked: { by: "end", at: stay.pourIn - AHEAD },
      weight: weights.pourIn,
    },
    ...(stay.bath === "developer"
      ? [
          {
            ...no,
            key: "pour-in.steady",
            earliest: stay.pourIn + toneSeconds["pour-in"] + SETTLE,
            // Said before the cap is, so its window closes first.
            latestEnd: stay.full - AHEAD - 2,
            liked: { by: "start", at: stay.pourIn } as const,
            weight: weights.nicety,
            nicety: true,
          },
        ]
      : []),
  ];
}

/** What the hands are told of agitation: how it begins, what ends the first bouts, what the next will be. */
function agitationWishes(
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
      ...no,
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
        ...no,
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
      ...no,
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
    ...no,
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

function remainingWishes(stay: Stay, worksheet: Worksheet): readonly Wish[] {
  const end = worksheet.clock.ends === "empty" ? stay.empty : stay.pourOut;
  return MARKS.flatMap((minutes) => {
    const mark = end - 60 * minutes;
    if (mark < stay.full + MARK_WORTH || sayable("minutes", minutes) !== minutes) return [];
    return [
      {
        ...no,
        key: "remaining.minutes",
        slots: { minutes },
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
function pourOutWish(stay: Stay, before: Stay | undefined, moment: number): Wish {
  return {
    ...no,
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
function afterwardsWishes(
  stay: Stay,
  before: Stay | undefined,
  after: Stay | undefined,
  moment: number,
): readonly Wish[] {
  if (before?.bath === stay.bath) return [];
  const from = stay.pourOut + toneSeconds["pour-out"] + SETTLE;
  return [
    {
      ...no,
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
