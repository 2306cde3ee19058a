// A development measured while it ran in, its lines and warnings out: each stretch a sum by hand.
// Apart from the other working because it is counted in parts of the whole, not in time.
import { temperatureAfter } from "../trade/drift.ts";
import { timeAt } from "../trade/time-temperature.ts";
import { writeClockTime } from "../units/clock-time.ts";
import type { Temperature } from "../units/temperature.ts";
import type { Development, Measured } from "./development.ts";
import type { Warning, WorkingLine } from "./line.ts";
import * as messages from "./messages.ts";
import type { PlanWords } from "./words/words.ts";

/** Simpson's rule over each stretch, which comes within a thousandth of the closed form. */
export function measuredLines(
  words: PlanWords,
  like: Temperature,
  { measured }: Development,
): readonly WorkingLine[] {
  if (!measured) return [];
  const { time, writes } = words;
  const stretches = measured.stretches.map(({ from, to, done }) => {
    const [a, m, b] = [from.celsius, (from.celsius + to.celsius) / 2, to.celsius].map((celsius) =>
      writes.number(timeAt(measured.curve, celsius), 1),
    );
    const seconds = writes.number(to.seconds - from.seconds, 1);
    return {
      label: time.measured.from({ from: writeClockTime(from.seconds) }),
      expression: time.measured.stretch({
        to: writeClockTime(to.seconds),
        before: writes.tenths(like, from.celsius),
        after: writes.tenths(like, to.celsius),
        start: `${a} s`,
        middle: `${m} s`,
        end: `${b} s`,
        sum: `${seconds} / 6 × (1 / ${a} + 4 / ${m} + 1 / ${b}) = ${writes.number(done, 4)}`,
      }),
      result: time.measured.done({ percent: writes.number(done * 100, 1) }),
    };
  });
  return [...stretches, lastLine(words, like, measured)];
}

function lastLine(words: PlanWords, like: Temperature, measured: Measured): WorkingLine {
  const says = words.time.measured;
  return {
    label: says.label,
    expression: measured.left === 0 ? says.before : whatIsLeft(words, like, measured),
    result: writeClockTime(measured.seconds),
  };
}

function whatIsLeft(
  { time: { measured: says }, writes }: PlanWords,
  like: Temperature,
  measured: Measured,
): string {
  const { curve, after, left, readings, seconds } = measured;
  const last = readings.at(-1) ?? { seconds: 0, celsius: 0 };
  const [now, part] = [writes.number(last.seconds, 1), writes.number(left, 4)];
  const at = writes.tenths(like, last.celsius);
  const done = `${writes.number(seconds, 1)} s`;
  if (!after) {
    const whole = writes.number(timeAt(curve, last.celsius), 1);
    return says.steady({ part, at, sum: `${now} s + ${part} × ${whole} s = ${done}` });
  }
  const drift = { start: last.celsius, ...after };
  const [a, m, b] = [0, (seconds - last.seconds) / 2, seconds - last.seconds].map((later) =>
    writes.number(timeAt(curve, temperatureAfter(drift, later)), 1),
  );
  return says.drifting({
    part,
    at,
    room: writes.tenths(like, after.room),
    start: `${a} s`,
    middle: `${m} s`,
    end: `${b} s`,
    sum: `${now} s + ${part} × 6 / (1 / ${a} + 4 / ${m} + 1 / ${b}) = ${done}`,
  });
}

export function measuredWarnings(words: PlanWords, { measured }: Development): readonly Warning[] {
  const last = measured?.readings.at(-1);
  if (!measured || !last || last.seconds <= measured.seconds + 0.5) return [];
  const [done, read] = [writeClockTime(measured.seconds), writeClockTime(last.seconds)];
  return [messages.readingsPastEnd(words, done, read)];
}
