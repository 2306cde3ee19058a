// The words of a stretch, hung like flags: each from a mast that stands where its speech begins, so
// high that it clears the flags to its right and that no flag crosses another's mast.
import type { Cue } from "../timeline/score.ts";
import { handScale, type Numbered, type Word } from "./score-shape.ts";
import { lineHeight, widestOf, wrapped } from "./score-type.ts";

/** Units a line of words may take over working hands; where only words are heard, as long as they last. */
const WIDEST = 124;
const LEAST = 104;
/** Units between a flag and what stands beside or beneath it. */
const CLEAR = 10;
/** Units from the speech's bar up to the lowest flag. */
const MAST = 9;

/** Speech in lines, with the units it is wide. */
interface Worded {
  readonly lines: readonly string[];
  readonly width: number;
}

function worded(cue: Cue, scale: number): Worded {
  const measure =
    scale === handScale ? WIDEST : Math.max(LEAST, (cue.until - cue.at) * scale - CLEAR);
  const lines = wrapped(cue.says ?? "", measure);
  return { lines, width: widestOf(lines) };
}

/** Seconds that the words of a cue need, drawn or spoken, whichever is more. */
export function wordsUntil(cue: Cue, scale: number): number {
  return Math.max(cue.until, cue.at + (worded(cue, scale).width + CLEAR) / scale);
}

/** @param bar y of the bars. @param from seconds at the left edge. */
export function placedWords(
  cues: readonly Numbered<Cue>[],
  from: number,
  scale: number,
  bar: number,
): readonly Word[] {
  const hung: { readonly word: Word; readonly right: number }[] = [];
  for (const [index, cue] of cues.toReversed()) {
    const { lines, width } = worded(cue, scale);
    const x = (cue.at - from) * scale;
    const right = x + width + CLEAR;
    const beneath = hung.filter(({ word }) => word.x < right).map(({ word }) => word.y);
    const bottom = Math.min(bar - MAST, ...beneath.map((y) => y - CLEAR / 2));
    const y = bottom - lines.length * lineHeight;
    const spoken = (cue.until - cue.at) * scale;
    hung.push({ word: { cue: index, x, spoken, lines, y }, right });
  }
  return hung.map(({ word }) => word).toReversed();
}
