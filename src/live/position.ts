// Where a run is: a pure function of its journal and the clocks. Nothing is counted on from tick to tick,
// so a page that slept, or died and was opened again, is where it would have been.
import type { Deed, Moment } from "../process/moments.ts";
import type { Section, Timeline } from "../timeline/score.ts";
import type { Stamp } from "./clocks.ts";
import { type Entry, type Journal, lastOf, pressedLast, timeOf } from "./journal.ts";

/** Which section runs, and when it was pressed for. Times are seconds of the run. */
export interface Begun {
  /** −1 before the first press. */
  readonly index: number;
  readonly pressedAt: number;
}

/** Before the first press there is nothing on but what is asked for. */
export const nothingOn: Section = {
  id: "",
  title: "",
  dark: false,
  seconds: 0,
  moments: [],
  cues: [],
  left: [],
};

const notBegun: Begun = { index: -1, pressedAt: 0 };

/** What the hands do next, and in how many seconds. */
interface Ahead {
  readonly deed: Deed;
  readonly bath: string | null;
  readonly in: number;
}

export type Position =
  /** Nothing runs until the next press; `section` is what was told or done last. */
  | { readonly kind: "waiting"; readonly section: Section | null; readonly next: Section }
  /** The clock rules. */
  | {
      readonly kind: "timed";
      readonly section: Section;
      readonly elapsed: number;
      readonly bath: string | null;
      /** What the hands are at now; null in the seconds before the first pour-in. */
      readonly doing: Deed | null;
      /** Seconds until this bath's pour-out begins; while it pours out, until the tank is empty. */
      readonly left: number;
      readonly ahead: readonly Ahead[];
    }
  | { readonly kind: "over"; readonly section: Section };

/** What a person must start or stop doing; the rest follows from the beat. */
const toldDeeds: readonly Deed[] = ["pour-in", "agitate", "rest", "pour-out"];

export function position(clocks: Stamp, { timeline, entries }: Journal): Position {
  return positionAt(timeline, begunBy(timeline, entries), timeOf(entries, clocks));
}

export function begunBy(timeline: Timeline, entries: readonly Entry[]): Begun {
  const last = pressedLast(entries);
  if (last === null) return notBegun;
  const index = timeline.sections.findIndex(({ id }) => id === last.section);
  return { index, pressedAt: last.at };
}

/** @param now seconds of the run. */
export function positionAt(timeline: Timeline, begun: Begun, now: number): Position {
  const section = timeline.sections[begun.index];
  const next = timeline.sections[begun.index + 1];
  const elapsed = now - begun.pressedAt;
  if (section !== undefined && elapsed < clockEnd(section)) {
    return { kind: "timed", section, elapsed, ...inBath(section.moments, elapsed) };
  }
  if (next !== undefined) return { kind: "waiting", section: section ?? null, next };
  if (section === undefined) throw new Error("A timeline without sections cannot be run.");
  return { kind: "over", section };
}

/** Whether a run is over and has told all. Asked every second: of most what was pressed last shows at once that it is not. */
export function isAllTold(clocks: Stamp, { timeline, entries }: Journal): boolean {
  const last = timeline.sections.at(-1);
  if (last === undefined || lastOf(entries, "pressed")?.section !== last.id) return false;
  const begun = begunBy(timeline, entries);
  const now = timeOf(entries, clocks);
  const isOver = positionAt(timeline, begun, now).kind === "over";
  return isOver && now - begun.pressedAt > (last.cues.at(-1)?.until ?? 0);
}

/** Seconds from the press at which the hands are free; 0 where a section only tells. */
export function clockEnd(section: Section): number {
  return section.moments.at(-1)?.at ?? 0;
}

function inBath(moments: readonly Moment[], elapsed: number) {
  const done = moments.filter((moment) => moment.at <= elapsed);
  const coming = moments.slice(done.length);
  const ahead = coming
    .filter((moment) => toldDeeds.includes(moment.do))
    .map(({ at, do: deed, bath }) => ({ deed, bath, in: at - elapsed }));
  const doing = done.findLast((moment) => toldDeeds.includes(moment.do))?.do ?? null;
  const ends = coming.find((moment) => moment.do === (doing === "pour-out" ? "empty" : "pour-out"));
  return {
    bath: (done.at(-1) ?? coming[0])?.bath ?? null,
    doing,
    left: (ends?.at ?? elapsed) - elapsed,
    ahead,
  };
}
