// A person's own times as measured in, the middle ones as lines, and a word where they are uneven, out.
// Alone, because they are the tank's and the person's, and no bath's.
import { isUneven, paceOf } from "../trade/hands.ts";
import * as messages from "./bath-messages.ts";
import type { Warning, WorkingLine } from "./line.ts";
import type { PlanWords } from "./words/words.ts";
import type { Worksheet } from "./worksheet.ts";

interface Timed {
  readonly label: string;
  readonly times: readonly number[];
  /** Seconds that the worksheet reckons with. */
  readonly used: number;
}

function timedIn({ hands }: PlanWords, { tank, agitation }: Worksheet): readonly Timed[] {
  const { pourIn = [], pourOut = [], perInversion = [] } = tank.measured ?? {};
  return [
    { label: hands.labels.pourIn, times: pourIn, used: tank.pourIn },
    { label: hands.labels.pourOut, times: pourOut, used: tank.pourOut },
    { label: hands.labels.perInversion, times: perInversion, used: agitation.perInversion },
  ].filter(({ times }) => times.length > 0);
}

export function handsLines(words: PlanWords, worksheet: Worksheet): readonly WorkingLine[] {
  const { hands, writes } = words;
  const seconds = (time: number) => `${writes.number(time, 1)} s`;
  return timedIn(words, worksheet).flatMap(({ label, times }) => {
    const pace = paceOf(times);
    if (pace === null) return [];
    const each = [...times].sort((a, b) => a - b).map(seconds);
    return [
      {
        label,
        expression: hands.times({
          times: writes.list(each),
          spread: seconds(pace.spread),
          only: each.length === 1,
        }),
        result: seconds(pace.median),
      },
    ];
  });
}

/** Seconds; a worksheet rounds to tenths, so less than this is no difference. */
const sameTime = 0.15;

export function handsWarnings(words: PlanWords, worksheet: Worksheet): readonly Warning[] {
  return timedIn(words, worksheet).flatMap(({ label, times, used }) => {
    const pace = paceOf(times);
    if (pace === null) return [];
    return [
      ...(isUneven(pace) ? [messages.unevenHands(words, label, pace.spread, pace.median)] : []),
      ...(Math.abs(used - pace.median) > sameTime
        ? [messages.notAsMeasured(words, label, used, pace.median)]
        : []),
    ];
  });
}
