// A position in, what the run's screen shows out. Pure: the screen only draws it.
import type { Position } from "../live/position.ts";
import { lateHandsAt } from "../live/rest.ts";
import type { Run } from "../live/run-shape.ts";
import { saidBefore } from "../live/where.ts";
import type { Deed } from "../process/moments.ts";
import type { Method } from "../trade/method.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { lateWords } from "./language.ts";

export type RunScreen =
  | {
      readonly kind: "timed";
      readonly dark: boolean;
      readonly title: string;
      readonly now: string | null;
      /** The next thing to do, in words, and when. */
      readonly next: string | null;
      readonly nextIn: string;
      readonly after: string | null;
      readonly left: string;
      readonly leftLabel: string;
    }
  | {
      readonly kind: "waiting";
      readonly dark: boolean;
      readonly title: string | null;
      readonly says: readonly string[];
      readonly next: string;
    }
  | { readonly kind: "over"; readonly dark: boolean; readonly says: readonly string[] };

/** What can be told of the run besides a press, where it stands. */
export interface Offers {
  readonly poured: boolean;
  readonly emptied: boolean;
  readonly takeBack: boolean;
}

export function offersOf(run: Run): Offers {
  const { poured, emptied } = lateHandsAt(run.position(), run.rehearses);
  return { poured, emptied, takeBack: run.canTakeBack() };
}

export function runScreenOf(position: Position, method: Method): RunScreen {
  const deed = (of: Deed) =>
    of === "agitate" ? lateWords.value.moves[method] : lateWords.value.runDeeds[of];
  switch (position.kind) {
    case "timed": {
      const { section, doing, ahead, left } = position;
      const [first, second] = ahead;
      return {
        kind: "timed",
        dark: section.dark,
        title: section.title,
        now: doing === null ? null : deed(doing),
        next: first === undefined ? null : deed(first.deed),
        nextIn: first === undefined ? "" : countdown(first.in),
        after:
          second === undefined
            ? null
            : lateWords.value.duringRun.after(deed(second.deed), countdown(second.in)),
        left: countdown(doing === null ? (first?.in ?? left) : left),
        leftLabel: leftLabel(doing, position.bath),
      };
    }
    case "waiting":
      return {
        kind: "waiting",
        dark: position.section?.dark ?? false,
        title: position.section?.title ?? null,
        says: position.section === null ? [] : said(saidBefore(position.section)),
        next: position.next.title,
      };
    case "over":
      return {
        kind: "over",
        dark: position.section.dark,
        says: said(saidBefore(position.section)),
      };
  }
}

function leftLabel(doing: Deed | null, bath: string | null): string {
  if (doing === null) return lateWords.value.duringRun.untilPour;
  if (doing === "pour-out") return lateWords.value.duringRun.emptying;
  return lateWords.value.duringRun.leftIn(bath ?? "");
}

const said = (cues: readonly { readonly says?: string }[]): readonly string[] =>
  cues.flatMap(({ says }) => (says === undefined ? [] : [says]));

/** A second is drawn so long after it turned, seconds: a timer that comes too soon would find the one before. */
const TURNED = 0.02;

/**
 * Seconds until a number on the screen turns, each of which counts to a moment of its own; at most about one, since what
 * else is on it changes with the time too. Asked for no more often than that, it costs ten minutes' run the least.
 */
export function turnsIn(position: Position): number {
  if (position.kind !== "timed") return 1;
  const counted = [position.left, ...position.ahead.slice(0, 2).map((next) => next.in)];
  return TURNED + Math.min(1, ...counted.map((seconds) => seconds - Math.floor(seconds)));
}

/** Whole seconds still to go: 0:01 until the moment itself. */
const countdown = (seconds: number): string =>
  writeClockTime(Math.max(0, Math.ceil(seconds - 1e-6)));
