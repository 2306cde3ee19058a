// What the screens may ask of the sound before a run, as a port: implemented for a browser beside this file,
// and by hand in tests; and what is heard of the check, as cues of the kind that a run plays.
import type { Script } from "../script/script.ts";
import type { Lengths } from "../timeline/lengths.ts";
import type { Cue, CueKind } from "../timeline/score.ts";
import { type ToneName, toneSeconds } from "../tones/designs.ts";
import type { Language } from "../units/language.ts";

export interface SoundCheck {
  /**
   * To be called from a press. A few of the tones and a sentence, by whom and as loud as in a run; resolves when
   * it is over or stopped, rejects where it cannot be had.
   */
  say(language: Language): Promise<void>;
  /** To be called from a press. The beats to be tapped along to; rejects where they cannot be had. */
  beats(language: Language): Promise<Beats>;
  /** Ends whatever is heard of these. */
  stop(): void;
}

/** Beats that are being heard. */
export interface Beats {
  /**
   * Resolves when the last has died: when each was meant to sound, seconds on the clock of `performance.now()`,
   * by what the browser knows of its own delay. Null where they were stopped.
   */
  readonly over: Promise<readonly number[] | null>;
}

/** Between two beats for the hands, and between those that lead in, seconds. */
const HANDS = 0.8;
const LEAD = 1;
/** Silence around the words, seconds. */
const PAUSE = 0.6;

/**
 * All that a run hangs on, from the softest tone to the one that must not be mistaken: over and back for the hands,
 * words that announce, three beats, the call to pour out. About ten seconds.
 */
export function checkCues(script: Script, lengths: Lengths): readonly Cue[] {
  const phrases = script.say("pour-out.ready", "full", { bath: "developer" });
  const spoken = lengths.spoken(phrases);
  if (spoken === null) throw new Error("The voice cannot say a sentence of its own script.");
  const hands = [
    toneAt("agitate", 0, "now"),
    toneAt("back", HANDS, "beat"),
    toneAt("over", 2 * HANDS, "beat"),
  ];
  const from = 2 * HANDS + toneSeconds.over + PAUSE;
  const words: Cue = {
    at: from,
    until: from + spoken,
    channel: "voice",
    kind: "prepare",
    moment: null,
    says: phrases.join(" "),
    sounds: phrases,
  };
  const first = words.until + PAUSE;
  const beats = [0, 1, 2].map((beat) => toneAt("count", first + beat * LEAD, "count-in"));
  return [...hands, words, ...beats, toneAt("pour-out", first + 3 * LEAD, "now")];
}

export function toneAt(name: ToneName, at: number, kind: CueKind): Cue {
  const until = at + toneSeconds[name];
  return { at, until, channel: "tone", kind, moment: null, sounds: [name] };
}
