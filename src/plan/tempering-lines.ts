// A tempering worked out in; its lines and its advice out: how it cools, when it is there, what to do.
// Apart from the sum itself, because each number here is rounded to what can be trusted of it.
import { temperatureAfter } from "../trade/drift.ts";
import { bathFor, iceFor } from "../trade/ice.ts";
import type { Fitted, Reach } from "../trade/tempering.ts";
import { beyond, timeAt } from "../trade/time-temperature.ts";
import {
  readTimeOfDay,
  writeAboutTime,
  writeClockTime,
  writeTimeOfDay,
} from "../units/clock-time.ts";
import { degreesOf, writeDegrees, writeTemperature, writeTenths } from "../units/temperature.ts";
import { toMillilitres } from "../units/volume.ts";
import { writeNumber } from "../units/written-number.ts";
import { ownCurve } from "./backwards.ts";
import type { Development } from "./development.ts";
import type { Warning, WorkingLine } from "./line.ts";
import { isThere, movesToward, type TemperingPlan } from "./tempering.ts";
import * as messages from "./warmth-messages.ts";

/** Minutes in which a colder or warmer bath is asked to do it. */
const soon = 10;

/** Minutes; a wait longer than this is no answer while a tank stands ready. */
const tooLong = 30;

/** °C of a water bath that can be had: above freezing, and no hotter than hands bear. */
const bearable = { from: 0.5, to: 45 };

export function temperingLines(
  plan: TemperingPlan,
  development: Development,
): readonly WorkingLine[] {
  const { fit, reach, wish } = plan;
  const readings = wish.readings.map(
    ({ at, temperature }) => `${at} ${writeTemperature(temperature)}`,
  );
  const count = wish.readings.length;
  return [
    {
      label: "Thermometer",
      expression: readings.join(", "),
      result: count === 1 ? "1 reading" : `${count} readings`,
    },
    ...(fit.kind === "fitted" && reach ? fittedLines(plan, fit, reach) : []),
    asItIs(plan, development),
  ];
}

function fittedLines(plan: TemperingPlan, fit: Fitted, reach: Reach): readonly WorkingLine[] {
  const { wish, last } = plan;
  const { drift, settles, misfit } = fit;
  const like = wish.target;
  const [room, start] = [degreesOf(like, drift.room), degreesOf(like, drift.start)];
  const halfway = writeNumber(drift.halfway, 1);
  const cooling = {
    label: "It goes",
    expression:
      `${room} + (${start} − ${room}) × 2^(−minutes / ${halfway}), half-way to ${writeTenths(like, drift.room)} every ${halfway} min; it may settle from ${degreesOf(like, settles.from)} to ${writeTenths(like, settles.to)}; ` +
      `the readings lie ${writeDegrees(like, misfit)} off it in the mean`,
    result: `settles at ${writeTenths(like, drift.room)}`,
  };
  return [cooling, ...reachLines(plan, fit, reach), ...bathLines(plan, fit, last.seconds)];
}

/** The time to the target, from the start of the readings' clock, with what the readings leave open. */
function reachLines(plan: TemperingPlan, { drift }: Fitted, reach: Reach): readonly WorkingLine[] {
  if (reach.kind === "never" || reach.at === null) return [];
  const { wish, target } = plan;
  const like = wish.target;
  const [room, start] = [degreesOf(like, drift.room), degreesOf(like, drift.start)];
  const goal = degreesOf(like, target);
  const range =
    reach.kind === "unsure"
      ? `${aboutTime(reach.from)} at the soonest, or never`
      : `${aboutTime(reach.range.from)} to ${aboutTime(reach.range.to)}`;
  return [
    {
      label: `At ${writeTemperature(wish.target)}`,
      expression:
        `${writeNumber(drift.halfway, 1)} min × log2((${start} − ${room}) / (${goal} − ${room})) = ${writeNumber(reach.at / 60, 1)} min on the readings' clock; ` +
        `what the thermometer leaves open: ${range}${onTheWall(plan, reach.at)}`,
      result: `about ${aboutTime(reach.at)}`,
    },
  ];
}

/** The bath that would do it soon, and the ice for it, where the one there is would not. */
function bathLines(plan: TemperingPlan, { drift }: Fitted, now: number): readonly WorkingLine[] {
  const { reach, wish, target } = plan;
  if (isThere(plan) || (reach?.kind === "reached" && reach.at - now <= tooLong * 60)) return [];
  const like = wish.target;
  const here = temperatureAfter(drift, now);
  const bath = bathFor({ now: here, target, halfway: drift.halfway, minutes: soon });
  if (bath === null || bath < bearable.from || bath > bearable.to) return [];
  const gone = 2 ** (-soon / drift.halfway);
  const part = writeNumber(gone, 4);
  const line = {
    label: `Bath for ${soon} minutes`,
    expression: `2^(−${soon} / ${writeNumber(drift.halfway, 1)}) = ${part}; (${degreesOf(like, target)} − ${degreesOf(like, here)} × ${part}) / (1 − ${part})`,
    result: writeTenths(like, bath),
  };
  return [line, ...iceLines(plan, bath)];
}

function iceLines({ wish, fit }: TemperingPlan, to: number): readonly WorkingLine[] {
  if (wish.bathVolume === undefined || fit.kind !== "fitted" || fit.bath === null) return [];
  const [water, from] = [toMillilitres(wish.bathVolume), fit.bath];
  // Of the temperature as it is told, so that the sum can be done again.
  const ice = iceFor({ water, from, to: Math.round(to * 10) / 10 });
  if (ice === null) return [];
  const [a, b] = [writeNumber(from, 1), writeNumber(to, 1)];
  return [
    {
      label: "Ice for it",
      expression: `${writeNumber(water)} g of water from ${a} °C to ${b} °C: ${writeNumber(water)} × (${a} − ${b}) / (79.7 + ${b})`,
      result: `${writeNumber(Math.round(ice / 5) * 5)} g`,
    },
  ];
}

/** The way that always works: develop at what it is, for the right time at a steady temperature. */
function asItIs({ wish, last, fit }: TemperingPlan, development: Development): WorkingLine {
  const here = fit.kind === "fitted" ? temperatureAfter(fit.drift, last.seconds) : last.celsius;
  const nearest = last.celsius;
  const time = writeClockTime(timeAt(ownCurve(development), nearest));
  const outside = beyond(development.base.rows, nearest);
  const guess = outside
    ? `; that is ${writeDegrees(wish.target, outside.degrees)} beyond the leaflet's rows`
    : "";
  const off = Math.abs(here - nearest) > 0.5 ? ", read once more before you use it" : "";
  return {
    label: "Or as it is",
    expression: `at ${writeTenths(wish.target, nearest)}, as last read, this film takes ${time}${guess}${off}`,
    result: guess === "" ? time : `${time}, a guess`,
  };
}

export function temperingWarnings(plan: TemperingPlan): readonly Warning[] {
  const { fit, reach, wish, last } = plan;
  const target = writeTemperature(wish.target);
  if (isThere(plan)) return [messages.isAtTarget(target)];
  if (fit.kind === "unfit") return [messages.temperingUnfit(fit.why)];
  if (!movesToward(plan, fit)) return [messages.movesAway(target)];
  switch (reach?.kind) {
    case "never":
      return [
        messages.neverReaches(
          target,
          writeTenths(wish.target, reach.nearest),
          asksIce(plan, reach.nearest),
        ),
      ];
    case "unsure":
      return [messages.mayNotReach(target)];
    case "reached": {
      const from = (at: number) => aboutTime(at - last.seconds);
      return reach.at - last.seconds > tooLong * 60
        ? [messages.takesLong(target, from(reach.at))]
        : [
            messages.waitFor(
              target,
              from(reach.at),
              `${from(reach.range.from)} to ${from(reach.range.to)}`,
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

/** `"much later"` past a day. */
function aboutTime(seconds: number): string {
  return seconds > 86_400 ? "much later" : writeAboutTime(seconds);
}

function onTheWall({ wish }: TemperingPlan, seconds: number): string {
  if (wish.began === undefined) return "";
  const began = readTimeOfDay(wish.began);
  return began.kind === "read"
    ? `; by the wall that is ${writeTimeOfDay(began.seconds + Math.round(seconds / 10) * 10)}`
    : "";
}
