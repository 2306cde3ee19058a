// A section that is on and the same section compiled at another detail in; out, what is heard of it
// from now on. Pure, because the change comes in the middle of a bath and no moment may move by it.
import type { Cue, Section } from "../timeline/score.ts";
import { clockEnd } from "./position.ts";
import { PAUSE } from "./where.ts";

/**
 * The section to go on with: what is past as it was, what is to come as the other has it.
 *
 * Tones are the same in both. Words of the other begin once what is being said is over. A preparation
 * that the other has already had its time for is kept from the section that is on, so that no moment
 * loses its warning by the change. A section that only tells is told to its end as it was begun.
 *
 * @param elapsed seconds since the press.
 */
export function followed(on: Section, other: Section, elapsed: number): Section {
  if (clockEnd(on) === 0) return on;
  const past = on.cues.filter((cue) => cue.at < elapsed);
  const saying = past.filter(isVoice).reduce((until, cue) => Math.max(until, cue.until), 0);
  const free = Math.max(elapsed, saying + PAUSE);
  const tones = other.cues.filter((cue) => !isVoice(cue) && cue.at >= elapsed);
  const words = other.cues.filter((cue) => isVoice(cue) && cue.at >= free);
  const warned = (moment: number | null) =>
    [...past, ...words].some((cue) => isWarning(cue) && cue.moment === moment);
  const kept = on.cues.filter(
    (cue) =>
      isWarning(cue) &&
      cue.at >= free &&
      !warned(cue.moment) &&
      other.cues.some((missed) => isWarning(missed) && missed.moment === cue.moment),
  );
  const clear = words.filter((cue) => kept.every((warning) => !meet(cue, warning)));
  const cues = [...past, ...tones, ...clear, ...kept].sort((a, b) => a.at - b.at);
  return { ...other, cues };
}

const isVoice = (cue: Cue): boolean => cue.channel === "voice";

const isWarning = (cue: Cue): boolean => isVoice(cue) && cue.kind === "prepare";

function meet(a: Cue, b: Cue): boolean {
  return a.at < b.until + PAUSE && b.at < a.until + PAUSE;
}
