// Ten seconds of a guided pour for a newcomer: the practice worksheet with a quick pair of hands,
// compiled like any other, and heard up to its first rest.
import type { Runs } from "../live/runs.ts";
import { planOf } from "../plan/plan.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import { usualLanguage } from "../units/language.ts";
import { demos } from "./demo.ts";
import { language } from "./language.ts";

/** Count-in, pour and first inversions fall within ten seconds of the press. */
const LEAD = 4.9;

const worksheet: Worksheet = {
  ...demos.gullrock,
  tank: { ...demos.gullrock.tank, pourIn: 1 },
  agitation: { first: 8, every: 30, for: 8, perInversion: 1.6, taps: 2 },
  voice: { detail: "full", rate: 1 },
};

/** Resolves when the last sound has died. */
export async function hearAPour(runs: Runs): Promise<void> {
  const spoken =
    language.value === usualLanguage ? worksheet : { ...worksheet, language: language.value };
  const timeline = await runs.compile(spoken, planOf(spoken), LEAD);
  const developer = timeline.sections.find(({ id }) => id === "developer");
  if (developer === undefined) throw new Error("The practice worksheet has a developer.");
  const rest = developer.moments.find((moment) => moment.do === "rest")?.at ?? 0;
  const cues = developer.cues.filter((cue) => cue.until < rest + 5);
  await (await runs.hear(timeline, { ...developer, cues })).over;
}
