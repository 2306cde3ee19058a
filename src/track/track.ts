// A timeline in, all that its track is made of out, on the track's one clock: every cue at its place, what is
// heard while a press is waited for, and the chapters. Sound, captions and marks are all made of this.
import type { Script } from "../script/script.ts";
import type { Lengths } from "../timeline/lengths.ts";
import type { Cue, Section, Timeline } from "../timeline/score.ts";
import { waitsFrom } from "../timeline/waiting.ts";
import { layOut, type SectionStart } from "./layout.ts";
import { SHORTEST_STAY, waitCues } from "./waits.ts";

/** Where a press would be the track goes on after the wait; or the wait is marked, to be played over and over. */
export const waitKinds = ["pass", "stay"] as const;
export type WaitKind = (typeof waitKinds)[number];

export interface TrackWish {
  /** Seconds of waiting where a press would be. */
  readonly gap: number;
  readonly waits: WaitKind;
}

/** What `render` waits unless it is told otherwise, seconds. */
export const usualGap = 60;
/** The longest wait that may be asked for, seconds. */
export const longestGap = 3600;

/** A timeline, with the means to say more in the same voice. */
export interface Spoken {
  readonly timeline: Timeline;
  readonly script: Script;
  readonly lengths: Lengths;
  /** False where tones alone are wanted. */
  readonly speaks: boolean;
}

/** A cue with its place on the track's clock. */
export interface TrackCue {
  readonly cue: Cue;
  /** Seconds from the start of the track. */
  readonly at: number;
  readonly until: number;
  /** The section that it is of; null while a press is waited for. */
  readonly section: Section | null;
}

export interface Chapter {
  readonly title: string;
  readonly at: number;
  readonly until: number;
  /** A wait that a player may play over and over. */
  readonly loops: boolean;
}

export interface Track {
  readonly starts: readonly SectionStart[];
  readonly seconds: number;
  /** In order of time. */
  readonly cues: readonly TrackCue[];
  /** What the hands do, on the track's clock; named by section, deed and count. */
  readonly moments: readonly { readonly name: string; readonly at: number }[];
  readonly chapters: readonly Chapter[];
}

export function trackOf(spoken: Spoken, { gap, waits }: TrackWish): Track {
  const { timeline, script } = spoken;
  const { starts, seconds } = layOut(timeline, gap);
  const cues: TrackCue[] = [];
  const chapters: Chapter[] = [];
  for (const [i, section] of timeline.sections.entries()) {
    const start = starts[i]?.at ?? 0;
    const over = start + waitsFrom(section);
    const next = starts[i + 1]?.at ?? over;
    cues.push(...section.cues.map((cue) => placed(cue, start, section)));
    const waiting = next - over;
    cues.push(...waitCues(waiting, waits, spoken).map((cue) => placed(cue, over, null)));
    const loops = waits === "stay" && waiting >= SHORTEST_STAY;
    chapters.push({ title: section.title, at: start, until: loops ? over : next, loops: false });
    if (loops) chapters.push({ title: script.write("waiting"), at: over, until: next, loops });
  }
  const moments = timeline.sections.flatMap((section, i) =>
    section.moments.map((moment, n) => ({
      name: `${section.id}-${n + 1}-${moment.do}`,
      at: (starts[i]?.at ?? 0) + moment.at,
    })),
  );
  return { starts, seconds, cues: cues.toSorted((a, b) => a.at - b.at), moments, chapters };
}

const placed = (cue: Cue, start: number, section: Section | null): TrackCue => ({
  cue,
  at: start + cue.at,
  until: start + cue.until,
  section,
});
