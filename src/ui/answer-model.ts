// A plan in, what the page says of it out: figures in the units that were typed, the working cut to
// stand beneath its question, and one sentence for those who listen to the page.

import type { Topic, Warning, WorkingLine } from "../plan/line.ts";
import type { Plan, PlannedBath } from "../plan/plan.ts";
import type { Agitation, Worksheet } from "../plan/worksheet.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { inDegreesOf } from "../units/temperature.ts";
import { words, writing } from "./language.ts";

/** The mix in the tank's own unit. `water` is null where the stock is used as it is. */
export interface MixAnswer {
  readonly stock: string;
  readonly water: string | null;
  readonly total: string;
}

export function mixAnswer(worksheet: Worksheet, { mix }: Plan): MixAnswer {
  const write = (ml: number) => writing.value.millilitres(worksheet.tank.volume, ml);
  return {
    stock: write(mix.stock),
    water: mix.water === 0 ? null : write(mix.water),
    total: write(mix.total),
  };
}

/** The lines that stand beneath one question. */
export function workingAbout(plan: Plan, topic: Topic): readonly WorkingLine[] {
  return plan.working.filter(({ about }) => about === topic);
}

/** What is to be looked at before anything else; the other warnings stand beneath their own question. */
export const firstTopics: readonly Topic[] = ["time", "mix", "baths"];

export function warningsAbout(plan: Plan, topics: readonly Topic[]): readonly Warning[] {
  return plan.warnings.filter(({ about }) => topics.includes(about));
}

/** `"without a break for 30 s, then 5 s every 30 s, 2 taps after each"`. */
export function agitationAnswer(agitation: Agitation | null, bathSeconds: number): string {
  if (agitation === null) return words.value.answers.left;
  const { first, every, taps } = agitation;
  if ((agitation.for >= every && agitation.for > 0) || first >= bathSeconds) {
    return words.value.agitation.continuous;
  }
  const parts = [];
  if (first > 0) parts.push(words.value.agitation.first(span(first)));
  if (agitation.for > 0) parts.push(words.value.agitation.after(span(agitation.for), span(every)));
  if (parts.length === 0) return words.value.agitation.none;
  if (taps > 0) parts.push(words.value.agitation.taps(taps));
  return words.value.agitation.joined(parts);
}

/** Short spans in seconds, as hands count them; longer ones as a clock shows them. */
function span(seconds: number): string {
  return seconds < 90 ? `${writing.value.number(seconds, 1)} s` : writeClockTime(seconds);
}

/** In the unit typed for the bath, or for the developer where the bath has none of its own. */
export function bathTemperature(worksheet: Worksheet, bath: PlannedBath): string {
  if (bath.temperature === null) return words.value.answers.unsaid;
  const like = worksheet.baths?.[bath.id]?.temperature ?? worksheet.developer.temperature;
  return writing.value.temperature(inDegreesOf(like, bath.temperature));
}

export function bathAgitation(bath: PlannedBath): string {
  return agitationAnswer(bath.agitation, bath.seconds);
}

/** What a person who listens hears once they pause. */
export function spokenAnswer(worksheet: Worksheet, plan: Plan): string {
  const { stock, water } = mixAnswer(worksheet, plan);
  const mix = words.value.answers.spokenMix(stock, water);
  const answer = words.value.answers.spoken(writeClockTime(plan.developmentSeconds), mix);
  const warnings = warningsAbout(plan, firstTopics).map(({ severity, text }) =>
    words.value.answers.spokenWarning(words.value.answers.severity[severity], text),
  );
  return [answer, ...warnings].join(" ");
}
