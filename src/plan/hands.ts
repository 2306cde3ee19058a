// A person's own times as measured in, the middle ones as lines, and a word where they are uneven, out.
// Alone, because they are the tank's and the person's, and no bath's.
import { isUneven, paceOf } from "../trade/hands.ts";
import { writeNumber } from "../units/written-number.ts";
import * as messages from "./bath-messages.ts";
import type { Warning, WorkingLine } from "./line.ts";
import type { Worksheet } from "./worksheet.ts";

interface Timed {
  readonly label: string;
  readonly times: readonly number[];
  /** Seconds that the worksheet reckons with. */
  readonly used: number;
}

function timedIn({ tank, agitation }: Worksheet): readonly Timed[] {
  const { pourIn = [], pourOut = [], perInversion = [] } = tank.measured ?? {};
  return [
    { label: "Pouring in", times: pourIn, used: tank.pourIn },
    { label: "Pouring out", times: pourOut, used: tank.pourOut },
    { label: "An inversion", times: perInversion, used: agitation.perInversion },
  ].filter(({ times }) => times.length > 0);
}

export function handsLines(worksheet: Worksheet): readonly WorkingLine[] {
  return timedIn(worksheet).flatMap(({ label, times }) => {
    const pace = paceOf(times);
    if (pace === null) return [];
    const each = [...times].sort((a, b) => a - b).map((time) => `${writeNumber(time, 1)} s`);
    const middle = each.length === 1 ? "the only one" : "the middle one";
    return [
      {
        label,
        expression: `${each.join(", ")}: ${middle}; ${writeNumber(pace.spread, 1)} s from shortest to longest`,
        result: `${writeNumber(pace.median, 1)} s`,
      },
    ];
  });
}

/** Seconds; a worksheet rounds to tenths, so less than this is no difference. */
const sameTime = 0.15;

export function handsWarnings(worksheet: Worksheet): readonly Warning[] {
  return timedIn(worksheet).flatMap(({ label, times, used }) => {
    const pace = paceOf(times);
    if (pace === null) return [];
    return [
      ...(isUneven(pace) ? [messages.unevenHands(label, pace.spread, pace.median)] : []),
      ...(Math.abs(used - pace.median) > sameTime
        ? [messages.notAsMeasured(label, used, pace.median)]
        : []),
    ];
  });
}
