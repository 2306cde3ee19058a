// Mixing and tempering as planned in, the figure to pour by and what is told at the sink out.
// Apart from the other answers because it is fetched after them.
import { mixingOf } from "../plan/mixing.ts";
import { temperingOf } from "../plan/tempering.ts";
import { temperingWarnings } from "../plan/tempering-lines.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import { gathered } from "./candidate.ts";
import { type Draft, filledRows, isFilled } from "./draft.ts";
import { nameOf } from "./field-names.ts";
import { asideOf } from "./fields.ts";
import { asideWords, words, writing } from "./language.ts";
import type { DraftReading } from "./work-out-model.ts";

/** `"160 ml of stock + 415 ml cold + 65 ml hot"`, as the graduate's marks have it; null where there is none. */
export function poursAnswer(worksheet: Worksheet): string | null {
  const rounded = mixingOf(worksheet)?.rounded;
  if (!rounded) return null;
  const write = (ml: number) => writing.value.millilitres(worksheet.tank.volume, ml);
  return [
    words.value.mixing.stock(write(rounded.stock.millilitres)),
    words.value.mixing.cold(write(rounded.cold.millilitres)),
    words.value.mixing.hot(write(rounded.hot.millilitres)),
  ].join(" + ");
}

/**
 * What is told at the sink: the advice that its own fields come to, whatever the rest of the page still
 * wants; or which of them is wanting. Empty before the first reading.
 */
export function sinkAnswer(draft: Draft, { faults, wanting }: DraftReading): string {
  if (!isFilled(draft, "tempering.target")) return words.value.tempering.noTarget;
  if (filledRows(draft, "tempering.readings") === 0) return "";
  const hindered = [...Object.keys(faults), ...wanting].find(
    (path) => asideOf(path) === "tempering",
  );
  if (hindered !== undefined) return words.value.tempering.hindered(nameOf(hindered));
  // Sound by now: nothing stands in the way of any of its fields.
  const { tempering } = gathered(draft).candidate as Required<Pick<Worksheet, "tempering">>;
  return temperingWarnings(temperingOf(tempering), asideWords.value)
    .map(({ text }) => text)
    .join(" ");
}
