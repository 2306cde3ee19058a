// A development measured while it ran in, its lines and warnings out: each stretch a sum by hand.
// Apart from the other working because it is counted in parts of the whole, not in time.
import { temperatureAfter } from "../trade/drift.ts";
import { timeAt } from "../trade/time-temperature.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { type Temperature, writeTenths } from "../units/temperature.ts";
import { writeNumber } from "../units/written-number.ts";
import type { Development, Measured } from "./development.ts";
import type { Warning, WorkingLine } from "./line.ts";
import * as messages from "./messages.ts";

/** Simpson's rule over each stretch, which comes within a thousandth of the closed form. */
export function measuredLines(
  like: Temperature,
  { measured }: Development,
): readonly WorkingLine[] {
  if (!measured) return [];
  const stretches = measured.stretches.map(({ from, to, done }) => {
    const [a, m, b] = [from.celsius, (from.celsius + to.celsius) / 2, to.celsius].map((celsius) =>
      writeNumber(timeAt(measured.curve, celsius), 1),
    );
    const seconds = writeNumber(to.seconds - from.seconds, 1);
    return {
      label: `Measured from ${writeClockTime(from.seconds)}`,
      expression:
        `to ${writeClockTime(to.seconds)} it goes from ${writeTenths(like, from.celsius)} to ${writeTenths(like, to.celsius)}, ` +
        `where all of it would take ${a} s, ${m} s half-way and ${b} s: ` +
        `${seconds} / 6 × (1 / ${a} + 4 / ${m} + 1 / ${b}) = ${writeNumber(done, 4)}`,
      result: `${writeNumber(done * 100, 1)} % done`,
    };
  });
  return [...stretches, lastLine(like, measured)];
}

function lastLine(like: Temperature, measured: Measured): WorkingLine {
  const { curve, after, left, readings, seconds } = measured;
  const last = readings.at(-1) ?? { seconds: 0, celsius: 0 };
  const result = writeClockTime(seconds);
  const label = "Measured, done at";
  if (left === 0) {
    return { label, expression: "the whole is done before the last reading", result };
  }
  const [now, part] = [writeNumber(last.seconds, 1), writeNumber(left, 4)];
  const at = writeTenths(like, last.celsius);
  if (!after) {
    const whole = writeNumber(timeAt(curve, last.celsius), 1);
    return {
      label,
      expression: `${part} is left, at ${at} as last read: ${now} s + ${part} × ${whole} s = ${writeNumber(seconds, 1)} s`,
      result,
    };
  }
  const drift = { start: last.celsius, ...after };
  const times = [0, (seconds - last.seconds) / 2, seconds - last.seconds].map((later) =>
    writeNumber(timeAt(curve, temperatureAfter(drift, later)), 1),
  );
  return {
    label,
    expression:
      `${part} is left, drifting from ${at} toward ${writeTenths(like, after.room)}; all of it would take ${times[0]} s, then ${times[1]} s, then ${times[2]} s: ` +
      `${now} s + ${part} × 6 / (1 / ${times[0]} + 4 / ${times[1]} + 1 / ${times[2]}) = ${writeNumber(seconds, 1)} s`,
    result,
  };
}

export function measuredWarnings({ measured }: Development): readonly Warning[] {
  const last = measured?.readings.at(-1);
  if (!measured || !last || last.seconds <= measured.seconds + 0.5) return [];
  return [messages.readingsPastEnd(writeClockTime(measured.seconds), writeClockTime(last.seconds))];
}
