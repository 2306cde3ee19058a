// What the screens may ask of sound and of a run, as ports: implemented for a browser beside this
// file, and by hand in tests.
import type { ReadonlySignal } from "@preact/signals";
import type { Plan } from "../plan/plan.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import type { Rehearsal } from "../process/rehearsal.ts";
import type { Section, Timeline } from "../timeline/score.ts";
import type { WhoSpeaks } from "../voice/senses.ts";
import type { Saying, Turn } from "./beside.ts";
import type { Detail } from "./detail.ts";
import type { Guide } from "./guide.ts";
import type { Way } from "./journal.ts";
import type { Presser } from "./presser.ts";
import type { Run } from "./run-shape.ts";

/** A run that has begun, and what it follows. */
export interface Session {
  readonly id: string;
  readonly worksheet: Worksheet;
  /** Where it is a rehearsal with water: nothing of it is kept. */
  readonly rehearsal?: Rehearsal | undefined;
  /** As planned. */
  readonly plan: Plan;
  /** As compiled for what happened so far. */
  readonly timeline: Timeline;
  /** UTC, ms since 1970. */
  readonly begunAt: number;
  /** How much is said from here on. */
  readonly detail: Detail;
  readonly hushed: boolean;
  readonly way: Way;
  /** The ways that can be gone here. */
  readonly ways: readonly Way[];
  /** False where it cannot be heard until someone presses: the clock in the tank goes on. */
  readonly sounding: boolean;
  /** False where the browser would not keep what happened: a page that dies cannot find its place. */
  readonly kept: boolean;
  /** Who says the words of this run: chosen before it, since two voices would talk over each other. */
  readonly speaks: WhoSpeaks;
  /** The words that are due, for whoever reads them. */
  readonly saying: ReadonlySignal<Saying | null>;
  /** Which half of a turn the hands are at. */
  readonly turn: ReadonlySignal<Turn | null>;
  /** Whether the voice of the device has failed, and the bundled one speaks from then on. */
  readonly tookOver?: boolean;
  readonly run: Run;
  readonly guide: Guide;
  /** For whatever is pressed, wherever. */
  readonly presser: Presser;
}

/** A run whose page died, and which never ended. */
export interface Unfinished {
  readonly worksheet: Worksheet;
  /** UTC, ms since 1970. */
  readonly begunAt: number;
  /** Whether a bath may still be in the tank: then it goes on by itself when the page is opened again. */
  readonly isFresh: boolean;
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
   * another page of this browser leads a run, or this one does.
   * @param rehearsal with water: it leaves no record and no journal, and is over with its page.
   */
  begin(worksheet: Worksheet, plan: Plan, rehearsal?: Rehearsal): Promise<"begun" | "elsewhere">;
  /** The run that is on: it goes on whatever place is shown. */
  readonly current: ReadonlySignal<Session | null>;
  /** A run that was on when its page died, if there is one and no other page leads it. */
  unfinished(): Promise<Unfinished | null>;
  /**
   * Goes on with it where it would be by now; heard at once where the browser lets it sound, else from the
   * first press on.
   */
  goOnWithUnfinished(): Promise<"begun" | "elsewhere" | "gone">;
  /** Closes it: its record stays as it is. Nothing is closed where another page leads it. */
  dropUnfinished(): Promise<"dropped" | "elsewhere" | "gone">;
  /** To be called from a press, where a run that is on is not heard. */
  wake(): Promise<void>;
  /** The way in which the run that is on is heard. */
  go(way: Way): Promise<void>;
  /** Ends the run that is on. */
  leave(): void;
  /** To be called from a press. Plays a section of a timeline as it will sound, from `from` seconds on. */
  hear(timeline: Timeline, section: Section, from?: number): Promise<Hearing>;
}
