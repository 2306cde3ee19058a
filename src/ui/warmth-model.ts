// Mixing and tempering as planned in, the figure to pour by and what is told at the sink out.
// Apart from the other answers because it is fetched after them.
import { mixingOf } from "../plan/mixing.ts";
import type { Plan } from "../plan/plan.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import { inUnitOf, writeVolume } from "../units/volume.ts";
import { warningsAbout } from "./answer-model.ts";
import { mixingWords, temperingWords } from "./bench-words.ts";
import type { Draft } from "./draft.ts";

/** `"160 ml of stock + 415 ml cold + 65 ml hot"`, as the graduate's marks have it; null where there is none. */
export function poursAnswer(worksheet: Worksheet): string | null {
  const rounded = mixingOf(worksheet)?.rounded;
  if (!rounded) return null;
  const write = (ml: number) => writeVolume(inUnitOf(worksheet.tank.volume, ml));
  return [
    `${write(rounded.stock.millilitres)} ${mixingWords.stock}`,
    `${write(rounded.cold.millilitres)} ${mixingWords.cold}`,
    `${write(rounded.hot.millilitres)} ${mixingWords.hot}`,
  ].join(" + ");
}

/** What is told at the sink: the advice, or what is still wanted for it. */
export function sinkAnswer(draft: Draft, readings: number, plan: Plan | null): string {
  if ((draft["tempering.target"] ?? "").trim() === "") return temperingWords.noTarget;
  const told = plan ? warningsAbout(plan, ["tempering"]) : [];
  if (told.length > 0) return told.map(({ text }) => text).join(" ");
  return readings === 0 ? "" : temperingWords.needsMore;
}
