// A section that is on and the same section compiled anew in (at another detail, or for what really
// happened); out, what is heard of it from now on. Pure, because the change comes in the middle of a bath.
import type { Cue, Section, Timeline } from "../timeline/score.ts";
import { clockEnd } from "./position.ts";
import { HUSH, PAUSE } from "./where.ts";

/** Two times closer than this, seconds, are the same one. */
const SAME = 1e-3;

/**
 * The section to go on with: what is past as it was, what is to come as the other has it.
 *
 * Tones are the same in both. Words of the other begin once what is being said is over. A preparation
 * that the other has already had its time for is kept from the section that is on, so that no moment
 * loses its warning by the change; where moments moved, the other was compiled with that in mind. A section
 * that only tells is told to its end as it was begun.
 *
 * @param elapsed seconds since the press.
 */
function followed(on: Section, other: Section, elapsed: number): Section {
  if (clockEnd(on) === 0) return on;
  const moved = JSON.stringify(on.moments) !== JSON.stringify(other.moments);
  // A moment that was moved to this very time is one that the hands told of: they need no call to it.
  const from = moved ? elapsed + SAME : elapsed;
  const tones = other.cues.filter((cue) => !isVoice(cue) && cue.at >= from);
  const nows = tones.filter(({ kind }) => kind === "now");
  // What is being said when a moment moves under it is cut off.
  const coversNow = (cue: Cue) =>
    isVoice(cue) && nows.some(({ at }) => cue.until > elapsed && cue.until > at - HUSH);
  const past = on.cues.filter((cue) => cue.at < elapsed && !coversNow(cue));
  const saying = past.filter(isVoice).reduce((until, cue) => Math.max(until, cue.until), 0);
  const free = Math.max(elapsed, saying + PAUSE);
  const words = other.cues.filter((cue) => isVoice(cue) && cue.at >= free);
  const warned = (moment: number | null) =>
    [...past, ...words].some((cue) => isWarning(cue) && cue.moment === moment);
  const kept = on.cues.filter(
    (cue) =>
      !moved &&
      isWarning(cue) &&
      cue.at >= free &&
      !warned(cue.moment) &&
      other.cues.some((missed) => isWarning(missed) && missed.moment === cue.moment),
  );
  const clear = words.filter((cue) => kept.every((warning) => !meet(cue, warning)));
  const cues = [...past, ...tones, ...clear, ...kept].sort((a, b) => a.at - b.at);
  return { ...other, cues };
}

/** The same of a whole timeline: sections that are over stay as they were heard. */
export function goneOnWith(
  before: Timeline,
  other: Timeline,
  index: number,
  on: Section,
  elapsed: number,
): Timeline {
  const sections = other.sections.map((section, place) => {
    if (place > index) return section;
    return place === index ? followed(on, section, elapsed) : (before.sections[place] ?? section);
  });
  return { ...other, sections };
}

const isVoice = (cue: Cue): boolean => cue.channel === "voice";

const isWarning = (cue: Cue): boolean => isVoice(cue) && cue.kind === "prepare";

function meet(a: Cue, b: Cue): boolean {
  return a.at < b.until + PAUSE && b.at < a.until + PAUSE;
}
