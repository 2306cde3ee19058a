// A position in, what the run's screen shows out. Pure: the screen only draws it.
import type { Position } from "../live/position.ts";
import { saidBefore } from "../live/where.ts";
import type { Deed } from "../process/moments.ts";
import { processBaths } from "../trade/baths.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { agitateWords, deedWords, duringRun } from "./run-words.ts";

const bathNames = new Map(
  Object.values(processBaths)
    .flat()
    .map(({ id, label }) => [id, label.toLowerCase()]),
);

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

export function runScreenOf(position: Position, method: string): RunScreen {
  const deed = (of: Deed) =>
    of === "agitate" ? (agitateWords[method] ?? deedWords.agitate) : deedWords[of];
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
          second === undefined ? null : duringRun.after(deed(second.deed), countdown(second.in)),
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
  if (doing === null) return duringRun.untilPour;
  if (doing === "pour-out") return duringRun.emptying;
  return duringRun.leftIn(bathNames.get(bath ?? "") ?? "");
}

const said = (cues: readonly { readonly says?: string }[]): readonly string[] =>
  cues.flatMap(({ says }) => (says === undefined ? [] : [says]));

/** Whole seconds still to go: 0:01 until the moment itself. */
const countdown = (seconds: number): string =>
  writeClockTime(Math.max(0, Math.ceil(seconds - 1e-6)));
