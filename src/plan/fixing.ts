// A clearing time in, the fixer's time by the rule chosen, how spent it is, its lines and warnings out.
// Alone, because it is the only bath whose time comes from a test made on the spot.
import { fixingSeconds, isSpent, slowing, spentAt, usualClearingRule } from "../trade/clearing.ts";
import * as messages from "./bath-messages.ts";
import { secondsOf } from "./clock-readings.ts";
import type { Warning, WorkingLine } from "./line.ts";
import type { PlanWords } from "./words/words.ts";
import type { BathWish, Clearing, Worksheet } from "./worksheet.ts";

/** Seconds that a fixer's clearing time asks; null where none was taken. */
export function clearedSeconds(wish: BathWish | undefined): number | null {
  return wish?.clearing
    ? fixingSeconds(secondsOf(wish.clearing.time), ruleOf(wish.clearing))
    : null;
}

/** `"clears in 1:15; 75 s × 2"`: how the fixer's time came about. */
export function fixingExpression({ baths }: PlanWords, wish: BathWish): string | null {
  if (!wish.clearing) return null;
  const { time } = wish.clearing;
  const rule = ruleOf(wish.clearing);
  const sum = `${secondsOf(time)} s × ${rule}`;
  return wish.time === undefined
    ? baths.clears({ time, sum })
    : baths.clearsButGiven({ time, sum, result: `${secondsOf(time) * rule} s` });
}

export function fixerLines(
  { fixer, writes }: PlanWords,
  worksheet: Worksheet,
): readonly WorkingLine[] {
  const clearing = clearingIn(worksheet);
  if (clearing?.fresh === undefined) return [];
  const [now, fresh] = [secondsOf(clearing.time), secondsOf(clearing.fresh)];
  const times = writes.number(slowing(now, fresh));
  return [
    {
      label: fixer.label,
      expression: fixer.cleared({
        fresh: clearing.fresh,
        sum: `${now} / ${fresh} = ${times}`,
        spent: writes.number(spentAt),
      }),
      result: fixer.times({ times }),
    },
  ];
}

export function fixerWarnings(words: PlanWords, worksheet: Worksheet): readonly Warning[] {
  const clearing = clearingIn(worksheet);
  if (clearing === undefined) return [];
  const now = secondsOf(clearing.time);
  const fresh = clearing.fresh === undefined ? null : secondsOf(clearing.fresh);
  const given = worksheet.baths?.fixer?.time;
  const asked = fixingSeconds(now, ruleOf(clearing));
  return [
    ...(fresh !== null && isSpent(now, fresh)
      ? [messages.fixerSpent(words, slowing(now, fresh))]
      : []),
    ...(fresh !== null && now < fresh ? [messages.clearedQuicker(words)] : []),
    ...(given !== undefined && secondsOf(given) < asked
      ? [messages.fixerShort(words, secondsOf(given), asked, ruleOf(clearing))]
      : []),
  ];
}

/** Of a fixer that is used. */
function clearingIn({ baths }: Worksheet): Clearing | undefined {
  return baths?.fixer?.skip === true ? undefined : baths?.fixer?.clearing;
}

function ruleOf({ times }: Clearing): 2 | 3 {
  return times ?? usualClearingRule;
}
