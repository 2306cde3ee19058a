// What the screens may ask of sound and of a run, as ports: implemented for a browser beside this
// file, and by hand in tests.
import type { ReadonlySignal } from "@preact/signals";
import type { Plan } from "../plan/plan.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import type { Section, Timeline } from "../timeline/score.ts";
import type { LiveRun } from "./run.ts";

export type Detail = "full" | "brief" | "tones";

/** A run that has begun, and what it follows. */
export interface Session {
  readonly id: string;
  readonly worksheet: Worksheet;
  readonly timeline: Timeline;
  /** How much is said from here on. */
  readonly detail: Detail;
  /** Whether the voice of the device has failed, and the bundled one speaks from then on. */
  readonly tookOver?: boolean;
  readonly run: LiveRun;
}

/** A section being heard outside a run. */
export interface Hearing {
  /** Seconds into the section. */
  elapsed(): number;
  stop(): void;
  /** Resolves when it has ended or was stopped. */
  readonly over: Promise<void>;
}

export interface Runs {
  /** Fetches a language's words and sounds ahead of need; what fails is tried again when it is needed. */
  prepare(language?: string): void;
  /**
   * Fetches words and sounds, if that has not been done; rejects where they cannot be had.
   * `lead`: seconds from a press to the first pour-in, where not the usual ones.
   */
  compile(worksheet: Worksheet, plan: Plan, lead?: number): Promise<Timeline>;
  /**
   * To be called from a press, or browsers will not let it sound. `elsewhere`: nothing was begun, since
   * another page of this browser leads a run.
   */
  begin(worksheet: Worksheet, plan: Plan): Promise<"begun" | "elsewhere">;
  /** The run that is on: it goes on whatever place is shown. */
  readonly current: ReadonlySignal<Session | null>;
  /** How much is said in what is left of the run that is on: compiled anew, no moment moved. */
  say(detail: Detail): Promise<void>;
  /** Ends the run that is on. */
  leave(): void;
  /** To be called from a press. Plays a section of a timeline as it will sound, from `from` seconds on. */
  hear(timeline: Timeline, section: Section, from?: number): Promise<Hearing>;
}
