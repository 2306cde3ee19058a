// A wait's length in, what is heard in it out: how soon it goes on, or that it waits, and a soft tone wherever it would
// be silent for long, so that silence is not taken for a dead player. Times are seconds from the start of the wait.
import type { Script } from "../script/script.ts";
import type { Lengths } from "../timeline/lengths.ts";
import type { Cue } from "../timeline/score.ts";
import { confirmCue } from "../timeline/signals.ts";
import { WAITING_CONFIRM } from "../timeline/waiting.ts";

/** Seconds left at which it is said how soon it goes on, most first. */
const TOLD = [3600, 1800, 900, 300, 120, 60, 30, 10] as const;
/** Seconds between the last word before the wait and the first in it, and between the last in it and what comes. */
const PAUSE = 0.6;
/** Seconds. A shorter wait is not played over and over: it would be a buzz. */
export const SHORTEST_STAY = 2;

interface Words {
  readonly script: Script;
  readonly lengths: Lengths;
  readonly speaks: boolean;
}

/**
 * @param kind whoever plays a wait over and over hears in each pass that it waits: in words where these do not come again
 * at once, else by a tone; and is never told that it ends.
 */
export function waitCues(wait: number, kind: "pass" | "stay", words: Words): readonly Cue[] {
  const told = toldIn(wait, kind, words);
  const cues: Cue[] = [];
  let heard = 0;
  if (kind === "stay" && told.length === 0 && wait >= SHORTEST_STAY) {
    heard = PAUSE;
    cues.push(confirmCue(heard));
  }
  for (const next of [...told, null]) {
    const quietTo = next?.at ?? wait;
    while (quietTo - heard > WAITING_CONFIRM) {
      heard += WAITING_CONFIRM;
      cues.push(confirmCue(heard));
    }
    if (next !== null) {
      cues.push(next);
      heard = next.until;
    }
  }
  return cues;
}

function toldIn(
  wait: number,
  kind: "pass" | "stay",
  { script, lengths, speaks }: Words,
): readonly Cue[] {
  if (!speaks) return [];
  if (kind === "pass")
    return TOLD.flatMap((left) => toldAt(wait - left, wait, soon(left, script), lengths));
  if (wait < WAITING_CONFIRM) return [];
  return toldAt(PAUSE, wait, script.say("where.waiting", "brief"), lengths);
}

/** "It starts in ten seconds", said ten seconds before it does. */
const soon = (left: number, script: Script): readonly string[] =>
  left < 60
    ? script.say("soon.seconds", "brief", { seconds: left })
    : script.say("soon.minutes", "brief", { mark: left / 60 });

/** None where the wait has no room for it. */
function toldAt(
  at: number,
  wait: number,
  phrases: readonly string[],
  lengths: Lengths,
): readonly Cue[] {
  const seconds = lengths.spoken(phrases);
  if (seconds === null || at < PAUSE || at + seconds > wait - PAUSE) return [];
  return [
    {
      at,
      until: at + seconds,
      channel: "voice",
      kind: "tell",
      moment: null,
      says: phrases.join(" "),
      sounds: phrases,
    },
  ];
}
