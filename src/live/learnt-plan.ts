// A plan and the thermometer readings taken in its run in, the plan for them out: the development ends when
// the integral over what was measured says so. Alone, because only numbers change; every word stays.
import type { Plan } from "../plan/plan.ts";
import { planWith } from "../plan/plan-with.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import type { HappenedIn } from "../process/happened.ts";
import { LEAD, stepsOf } from "../process/process.ts";
import { writeClockTime } from "../units/clock-time.ts";
import type { Read } from "./journal.ts";

/** @param readings in seconds from their section's press; the developer's own clock is what they are planned on. */
export function planLearnt(
  worksheet: Worksheet,
  plan: Plan,
  happened: HappenedIn,
  readings: readonly Read[],
): Plan {
  if (readings.length === 0) return plan;
  const steps = stepsOf(worksheet, plan, LEAD, happened);
  const rows = readings.flatMap(({ section, at, temperature }) => {
    const stay = steps.find(({ id }) => id === section)?.stays[0];
    if (stay === undefined) return [];
    return [{ at: writeClockTime(Math.max(0, Math.round(at - stay.clock))), temperature }];
  });
  const developer = { ...worksheet.developer, readings: rows };
  const planned = planWith([], { ...worksheet, developer });
  return {
    ...plan,
    developmentSeconds: planned.developmentSeconds,
    baths: plan.baths.map((bath, i) => ({ ...bath, ...planned.baths[i], label: bath.label })),
  };
}
