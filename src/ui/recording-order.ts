// What to record first: the phrases that the worksheet on the page will really say, in the order in which
// they are first heard; then the rest of the script in its own.
import type { Timeline } from "../timeline/score.ts";

export interface RecordingOrder {
  readonly phrases: readonly string[];
  /** How many of them, from the first, this worksheet says. */
  readonly wanted: number;
}

/** @param timeline null where no worksheet is whole. */
export function recordingOrder(
  timeline: Timeline | null,
  script: readonly string[],
): RecordingOrder {
  const known = new Set(script);
  const cues = timeline?.sections.flatMap((section) => section.cues) ?? [];
  const said = cues.flatMap((cue) => (cue.channel === "voice" ? cue.sounds : []));
  const wanted = new Set(said.filter((text) => known.has(text)));
  return { phrases: [...new Set([...wanted, ...script])], wanted: wanted.size };
}

/** The next phrase without a clip after `at`, going round; `at` itself where there is none. */
export function nextMissing(
  phrases: readonly string[],
  has: (text: string) => boolean,
  at: number,
): number {
  for (let step = 1; step <= phrases.length; step += 1) {
    const place = (at + step) % phrases.length;
    if (!has(phrases[place] ?? "")) return place;
  }
  return at;
}
