// The timeline's shape: what the ears get, as plain data that leaves the program.
// Types alone. Times are seconds from the press that starts the section.
import type { Plan } from "../plan/plan.ts";
import type { Moment } from "../process/moments.ts";
import type { FilmIs } from "../process/process.ts";

export type CueKind = "tell" | "prepare" | "count-in" | "now" | "beat" | "remaining" | "confirm";

export interface Cue {
  readonly at: number;
  /** When the last sound of it has died. */
  readonly until: number;
  readonly channel: "voice" | "tone" | "buzz";
  readonly kind: CueKind;
  /** Index into the section's moments. */
  readonly moment: number | null;
  /** Voice only: the words, in the worksheet's language. */
  readonly says?: string;
  /** What is played, in order: phrases of the voice pack, or one tone of the kit. */
  readonly sounds: readonly string[];
}

/** A cue that found no room, with its reason. */
export interface Left {
  readonly wanted: string;
  readonly why: string;
}

export interface Section {
  readonly id: string;
  readonly title: string;
  readonly dark: boolean;
  /** Where light and wrong baths find the film. */
  readonly film?: FilmIs;
  /** Sentences that are told when asked for, by key. */
  readonly more?: readonly string[];
  /** The film may jam in it. */
  readonly jams?: boolean;
  /** 0 for a section that only tells and waits. */
  readonly seconds: number;
  readonly moments: readonly Moment[];
  readonly cues: readonly Cue[];
  readonly left: readonly Left[];
}

export interface Timeline {
  readonly tankside: 1;
  readonly plan: Plan;
  /** What the sounds were chosen for: the pack's language and the pace of speech. */
  readonly voice: { readonly language: string; readonly rate: number };
  readonly sections: readonly Section[];
}
