// "Where are we?" A position in, the phrases that answer it out, in three lengths; and the place for them, and
// for all else that nobody planned, so that no answer covers a moment, its count-in, or a call to pour out.
import { type Form, forms, type Script, sayable } from "../script/script.ts";
import type { Lengths } from "../timeline/lengths.ts";
import { quietOf, type Stretch } from "../timeline/quiet.ts";
import type { Cue, Section } from "../timeline/score.ts";
import { clockEnd, type Position } from "./position.ts";

/** An answer that cannot begin within this many seconds is cut shorter instead. */
const PATIENCE = 2;
/** Seconds of silence kept around an answer, and before a moment. */
export const PAUSE = 0.5;
export const HUSH = 1;

export interface Answer {
  readonly phrases: readonly string[];
  /** Seconds from the press that started the section. */
  readonly at: number;
  readonly until: number;
}

/** One thing to say, in its lengths: the fullest first. */
export type Wordings = readonly (readonly string[])[];

/**
 * Where in a section something is said that was not planned, and in which length: as soon as there is room
 * between the moments. Null where the pack has no words for it.
 * @param from the soonest it may begin, seconds into the section.
 */
export function placeFor(
  wordings: Wordings,
  from: number,
  cues: readonly Cue[],
  lengths: Lengths,
): Answer | null {
  const quiet = quietOf(hushed(cues, from));
  let best: Answer | null = null;
  for (const phrases of wordings) {
    const seconds = lengths.spoken(phrases);
    if (phrases.length === 0 || seconds === null) continue;
    const at = quiet.nextFree(from, seconds);
    if (best === null || at < best.at) best = { phrases, at, until: at + seconds };
    if (at - from <= PATIENCE) break;
  }
  return best;
}

/** "Where are we?", answered. */
export function whereWordings(position: Position, script: Script): Wordings {
  return forms.map((form) => answerPhrases(position, form, script));
}

/** The stretches an answer keeps out of: moments with their count-ins, what is being said now, and preparations. */
function hushed(cues: readonly Cue[], from: number): readonly Stretch[] {
  return cues.flatMap((cue) => hushedBy(cue, from) ?? []);
}

function hushedBy(cue: Cue, from: number): Stretch | null {
  switch (cue.kind) {
    case "now":
      return { from: cue.at - HUSH, to: cue.until };
    case "count-in":
      return { from: cue.at - PAUSE, to: cue.until };
    case "prepare":
      return { from: cue.at - PAUSE, to: cue.until + PAUSE };
    case "tell":
    case "remaining":
      return cue.at < from && cue.until > from ? { from: cue.at, to: cue.until + PAUSE } : null;
    case "beat":
    case "confirm":
      return null;
  }
}

function answerPhrases(position: Position, form: Form, script: Script): readonly string[] {
  switch (position.kind) {
    case "timed": {
      const { bath, left, ahead } = position;
      const coming = ahead[0]?.deed;
      return [
        ...(bath === null || form === "shortest" ? [] : script.say("where.bath", form, { bath })),
        ...leftPhrases(left, form, script),
        ...script.say(coming === undefined ? "next.section" : `next.${coming}`, form),
      ];
    }
    case "waiting":
      return script.say("where.waiting", form);
    case "over":
      return script.say("where.over", form);
  }
}

/** Minutes and seconds, rounded down to what the voice can say. */
function leftPhrases(left: number, form: Form, script: Script): readonly string[] {
  const minutes = sayable("minutes", Math.floor(left / 60));
  const seconds = left >= 3600 ? null : sayable("seconds", Math.floor(left % 60));
  // In one sentence where there are both: "half a minute left" by itself would be taken for all of it.
  if (minutes !== null && seconds !== null) {
    return script.say("where.both", form, { minutes, seconds });
  }
  if (minutes !== null) return script.say("where.minutes", form, { minutes });
  return seconds === null ? [] : script.say("where.seconds", form, { seconds });
}

/** What is said again while the run waits: all that a telling section told, counts aside, or how a timed one ended. */
export function saidBefore(section: Section): readonly Cue[] {
  const from = clockEnd(section);
  return section.cues.filter(({ channel, kind, at }) => {
    return channel === "voice" && kind !== "remaining" && at >= from;
  });
}
