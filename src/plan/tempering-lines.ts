// A tempering worked out in; its lines and its advice out: how it cools, when it is there, what to do.
// Apart from the sum itself, because each number here is rounded to what can be trusted of it.
// Past 200 lines because each line and each piece of advice has figures of its own.
import { temperatureAfter } from "../trade/drift.ts";
import { bathFor, iceFor, meltingDegrees } from "../trade/ice.ts";
import type { Fitted, Reach } from "../trade/tempering.ts";
import { beyond, timeAt } from "../trade/time-temperature.ts";
import {
  readTimeOfDay,
  writeAboutTime,
  writeClockTime,
  writeTimeOfDay,
} from "../units/clock-time.ts";
import { toMillilitres } from "../units/volume.ts";
import { ownCurve } from "./backwards.ts";
import type { Development } from "./development.ts";
import type { Warning, WorkingLine } from "./line.ts";
import { isThere, movesToward, type TemperingPlan } from "./tempering.ts";
import * as messages from "./warmth-messages.ts";
import { englishAsides } from "./words/english-asides.ts";
import type { AsideWords } from "./words/words.ts";

/** Minutes in which a colder or warmer bath is asked to do it. */
const soon = 10;

/** Minutes; a wait longer than this is no answer while a tank stands ready. */
const tooLong = 30;

/** °C of a water bath that can be had: above freezing, and no hotter than hands bear. */
const bearable = { from: 0.5, to: 45 };

export function temperingLines(
  words: AsideWords,
  plan: TemperingPlan,
  development: Development,
): readonly WorkingLine[] {
  const { fit, reach, wish } = plan;
  const { tempering: says, writes } = words;
  const readings = wish.readings.map(({ at, temperature }) =>
    says.reading({ at, temperature: writes.temperature(temperature) }),
  );
  return [
    {
      label: says.thermometer,
      expression: writes.list(readings),
      result: says.readings({ count: wish.readings.length }),
    },
    ...(fit.kind === "fitted" && reach ? fittedLines(words, plan, fit, reach) : []),
    asItIs(words, plan, development),
  ];
}

function fittedLines(
  words: AsideWords,
  plan: TemperingPlan,
  fit: Fitted,
  reach: Reach,
): readonly WorkingLine[] {
  const { tempering: says, writes } = words;
  const { wish, last } = plan;
  const { drift, settles, misfit } = fit;
  const like = wish.target;
  const [room, start] = [writes.degreesOf(like, drift.room), writes.degreesOf(like, drift.start)];
  const halfway = writes.number(drift.halfway, 1);
  const temperature = writes.tenths(like, drift.room);
  const cooling = {
    label: says.goes,
    expression: says.goesSum({
      sum: `${room} + (${start} − ${room}) × 2^(−${says.minutes} / ${halfway})`,
      room: temperature,
      halfway,
      from: writes.degreesOf(like, settles.from),
      to: writes.tenths(like, settles.to),
      misfit: writes.degrees(like, misfit),
    }),
    result: says.settles({ temperature }),
  };
  return [
    cooling,
    ...reachLines(words, plan, fit, reach),
    ...bathLines(words, plan, fit, last.seconds),
  ];
}

/** The time to the target, from the start of the readings' clock, with what the readings leave open. */
function reachLines(
  words: AsideWords,
  plan: TemperingPlan,
  { drift }: Fitted,
  reach: Reach,
): readonly WorkingLine[] {
  if (reach.kind === "never" || reach.at === null) return [];
  const { tempering: says, writes } = words;
  const { wish, target } = plan;
  const like = wish.target;
  const [room, start] = [writes.degreesOf(like, drift.room), writes.degreesOf(like, drift.start)];
  const goal = writes.degreesOf(like, target);
  const about = (seconds: number) => aboutTime(words, seconds);
  const range =
    reach.kind === "unsure"
      ? says.orNever({ soonest: about(reach.from) })
      : says.range({ from: about(reach.range.from), to: about(reach.range.to) });
  const sum = `${writes.number(drift.halfway, 1)} min × log2((${start} − ${room}) / (${goal} − ${room})) = ${writes.number(reach.at / 60, 1)} min`;
  return [
    {
      label: says.reached({ temperature: writes.temperature(wish.target) }),
      expression: `${says.reachedSum({ sum, range })}${onTheWall(words, plan, reach.at)}`,
      result: reach.at > day ? says.muchLater : says.about({ time: about(reach.at) }),
    },
  ];
}

/** The bath that would do it soon, and the ice for it, where the one there is would not. */
function bathLines(
  words: AsideWords,
  plan: TemperingPlan,
  { drift }: Fitted,
  now: number,
): readonly WorkingLine[] {
  const { tempering: says, writes } = words;
  const { reach, wish, target } = plan;
  if (isThere(plan) || (reach?.kind === "reached" && reach.at - now <= tooLong * 60)) return [];
  const like = wish.target;
  const here = temperatureAfter(drift, now);
  const bath = bathFor({ now: here, target, halfway: drift.halfway, minutes: soon });
  if (bath === null || bath < bearable.from || bath > bearable.to) return [];
  const gone = 2 ** (-soon / drift.halfway);
  const part = writes.number(gone, 4);
  const line = {
    label: says.bathFor({ count: soon }),
    expression: `2^(−${soon} / ${writes.number(drift.halfway, 1)}) = ${part}; (${writes.degreesOf(like, target)} − ${writes.degreesOf(like, here)} × ${part}) / (1 − ${part})`,
    result: writes.tenths(like, bath),
  };
  return [line, ...iceLines(words, plan, bath)];
}

function iceLines(
  { tempering: says, writes }: AsideWords,
  { wish, fit }: TemperingPlan,
  to: number,
): readonly WorkingLine[] {
  if (wish.bathVolume === undefined || fit.kind !== "fitted" || fit.bath === null) return [];
  const water = toMillilitres(wish.bathVolume);
  const from = fit.bath;
  // Of the temperature as it is told, so that the sum can be done again.
  const ice = iceFor({ water, from, to: Math.round(to * 10) / 10 });
  if (ice === null) return [];
  const [a, b, all] = [writes.number(from, 1), writes.number(to, 1), writes.number(water)];
  return [
    {
      label: says.ice,
      expression: says.iceSum({
        water: `${all} g`,
        from: `${a} °C`,
        to: `${b} °C`,
        sum: `${all} × (${a} − ${b}) / (${writes.number(meltingDegrees, 1)} + ${b})`,
      }),
      result: `${writes.number(Math.round(ice / 5) * 5)} g`,
    },
  ];
}

/** The way that always works: develop at what it is, for the right time at a steady temperature. */
function asItIs(
  { tempering: says, writes }: AsideWords,
  { wish, last, fit }: TemperingPlan,
  development: Development,
): WorkingLine {
  const here = fit.kind === "fitted" ? temperatureAfter(fit.drift, last.seconds) : last.celsius;
  const nearest = last.celsius;
  const time = writeClockTime(timeAt(ownCurve(development), nearest));
  const outside = beyond(development.base.rows, nearest);
  const guess = outside
    ? `; ${says.beyond({ by: writes.degrees(wish.target, outside.degrees) })}`
    : "";
  const off = Math.abs(here - nearest) > 0.5 ? `, ${says.readAgain}` : "";
  const sum = says.asItIsSum({ temperature: writes.tenths(wish.target, nearest), time });
  return {
    label: says.asItIs,
    expression: `${sum}${guess}${off}`,
    result: outside ? says.guess({ time }) : time,
  };
}

export function temperingWarnings(
  plan: TemperingPlan,
  words: AsideWords = englishAsides,
): readonly Warning[] {
  const { tempering: says, writes } = words;
  const { fit, reach, wish, last } = plan;
  const target = writes.temperature(wish.target);
  if (isThere(plan)) return [messages.isAtTarget(words, target)];
  if (fit.kind === "unfit") return [messages.temperingUnfit(words, fit.why)];
  if (!movesToward(plan, fit)) return [messages.movesAway(words, target)];
  switch (reach?.kind) {
    case "never":
      return [
        messages.neverReaches(
          words,
          target,
          writes.tenths(wish.target, reach.nearest),
          asksIce(plan, reach.nearest),
        ),
      ];
    case "unsure":
      return [messages.mayNotReach(words, target)];
    case "reached": {
      const from = (at: number) => aboutTime(words, at - last.seconds);
      return reach.at - last.seconds > tooLong * 60
        ? [messages.takesLong(words, target, from(reach.at))]
        : [
            messages.waitFor(
              words,
              target,
              from(reach.at),
              says.range({ from: from(reach.range.from), to: from(reach.range.to) }),
            ),
          ];
    }
    case undefined:
      return [];
  }
}

/** Whether ice would do it, and the bath's volume is still to be said. */
function asksIce({ wish, target }: TemperingPlan, settles: number): boolean {
  return target < settles && wish.bathVolume === undefined;
}

/** Seconds. */
const day = 86_400;

/** `"much later"` past a day. */
function aboutTime({ tempering }: AsideWords, seconds: number): string {
  return seconds > day ? tempering.muchLater : writeAboutTime(seconds);
}

function onTheWall({ tempering }: AsideWords, { wish }: TemperingPlan, seconds: number): string {
  if (wish.began === undefined) return "";
  const began = readTimeOfDay(wish.began);
  if (began.kind === "unread") return "";
  const time = writeTimeOfDay(began.seconds + Math.round(seconds / 10) * 10);
  return `; ${tempering.onTheWall({ time })}`;
}
