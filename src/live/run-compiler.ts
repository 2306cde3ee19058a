// A run's header, its script and lengths in; what compiles it for what was learnt out: a run as planned and as it
// really went, a rehearsal with its rests shortened and, in the end, with what to practise.
import type { Plan } from "../plan/plan.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import { LEAD } from "../process/process.ts";
import { type Rehearsal, rehearsalSteps } from "../process/rehearsal.ts";
import type { Script } from "../script/script.ts";
import type { Lengths } from "../timeline/lengths.ts";
import type { Timeline } from "../timeline/score.ts";
import { compile, compileSteps } from "../timeline/timeline.ts";
import { practiseTells } from "./judged.ts";
import { planLearnt } from "./learnt-plan.ts";
import type { Learnt } from "./run-shape.ts";

interface Led {
  readonly worksheet: Worksheet;
  readonly plan: Plan;
  /** Where it is one. */
  readonly rehearsal?: Rehearsal | undefined;
}

export function runCompiler(
  { worksheet, plan, rehearsal }: Led,
  script: Script,
  lengths: Lengths,
): (learnt: Learnt) => Timeline {
  return ({ happened, readings, detail, judged }) => {
    const sheet = { ...worksheet, voice: { ...worksheet.voice, detail } };
    if (rehearsal !== undefined) {
      const steps = rehearsalSteps(sheet, plan, rehearsal, practiseTells(judged));
      return compileSteps(steps, sheet, plan, script, lengths);
    }
    const learnt = planLearnt(worksheet, plan, happened, readings);
    return compile(sheet, learnt, script, lengths, LEAD, happened);
  };
}
