// What a run is made of and what it can be asked: types alone. Times given to it are seconds on the steady clock.
import type { HappenedIn } from "../process/happened.ts";
import type { Wrong } from "../process/wrongs.ts";
import type { Timeline } from "../timeline/score.ts";
import type { Temperature } from "../units/temperature.ts";
import type { Telling } from "./answers.ts";
import type { Clocks } from "./clocks.ts";
import type { Detail } from "./detail.ts";
import type { Entry, Journal, Read, Reader, Way } from "./journal.ts";
import type { Judged } from "./judged.ts";
import type { Outlet } from "./outlet.ts";
import type { Position } from "./position.ts";
import type { Teller } from "./teller.ts";
import type { Wordings } from "./where.ts";

/** What was learnt while a run was on, to be planned with. */
export interface Learnt {
  readonly happened: HappenedIn;
  readonly readings: readonly Read[];
  readonly detail: Detail;
  /** How the moments of a rehearsal were met; none in a run. */
  readonly judged: readonly Judged[];
}

export interface RunParts {
  readonly timeline: Timeline;
  readonly detail: Detail;
  /** Of a run that is gone on with: its journal so far. */
  readonly entries?: readonly Entry[];
  /** With water: a press in a timed bath is a mark, and nothing that happens moves a moment. */
  readonly rehearses?: boolean;
  readonly clocks: () => Clocks;
  readonly teller: Teller;
  /** The same worksheet, compiled for what was learnt. */
  readonly compiled: (learnt: Learnt) => Timeline;
  /** Keeps an entry, for good. */
  readonly keep: (entry: Entry) => void;
  readonly outlet: Outlet;
  /** After each change: to show it, and to keep the record. */
  readonly changed: () => void;
}

export interface Run {
  readonly rehearses: boolean;
  /** In a rehearsal's timed bath: the hands begin to pour, or to move the tank. False anywhere else. */
  mark(at: number): boolean;
  /** Where the run waits, its next section begins. */
  goOn(at: number): boolean;
  /** "I pour only now": the bath counts from `at`. False where there is nothing to pour. */
  poured(at: number): boolean;
  /** "The tank is empty now." */
  emptied(at: number): boolean;
  /** A thermometer in the developer: moves the end, and says by how much. */
  read(temperature: Temperature, by?: Reader): boolean;
  /** The last change never was, where it is not older than 3 s. */
  takeBack(at: number): boolean;
  /** Whether there is one to take back. */
  canTakeBack(): boolean;
  /** Something is told of as wrong: written down. */
  wrong(wrong: Wrong): void;
  hush(on: boolean): void;
  isHushed(): boolean;
  sayAt(detail: Detail): void;
  detail(): Detail;
  /** From here on it is heard another way. */
  through(outlet: Outlet, way: Way): void;
  /** Says something where there is room, so many seconds from now on; null where there are no words for it. */
  say(wordings: Wordings, after?: number): Telling | null;
  /** When all that was to be answered is over, seconds on the steady clock. */
  answeredAt(): number;
  /** What was to be answered is not any more. */
  fallSilent(): void;
  where(after?: number): void;
  position(): Position;
  journal(): Journal;
  /** When the section that is on was pressed for, seconds on the steady clock. */
  begunAt(): number;
  /**
   * To be called about every second, and when a page comes back.
   * @param sounding whether the audio clock went on.
   * @param off seconds by which what was laid ahead lies wrong, where that is known.
   */
  look(sounding: boolean, off?: number): void;
  ended(how: "done" | "left"): void;
  close(): void;
}
