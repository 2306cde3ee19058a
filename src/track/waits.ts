// A wait's length in, what is heard in it out: how soon it goes on, and a soft tone wherever it would be silent
// for long, so that silence is not taken for a dead player. Times are seconds from the start of the wait.
import type { Script } from "../script/script.ts";
import type { Lengths } from "../timeline/lengths.ts";
import type { Cue } from "../timeline/score.ts";
import { confirmCue } from "../timeline/signals.ts";
import { WAITING_CONFIRM } from "../timeline/waiting.ts";

/** Seconds left at which it is said how soon it goes on, most first. */
const TOLD = [3600, 1800, 900, 300, 120, 60, 30, 10] as const;
/** Seconds between the last word before the wait and the first in it, and between the last in it and what comes. */
const PAUSE = 0.6;

interface Words {
  readonly script: Script;
  readonly lengths: Lengths;
  readonly speaks: boolean;
}

/** @param kind whoever plays a wait over and over is not told that it ends. */
export function waitCues(
  wait: number,
  kind: "pass" | "stay",
  { script, lengths, speaks }: Words,
): readonly Cue[] {
  const told =
    speaks && kind === "pass"
      ? TOLD.flatMap((left) => soonCue(wait, left, script, lengths) ?? [])
      : [];
  const cues: Cue[] = [];
  let heard = 0;
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

/** "It starts in ten seconds", said ten seconds before it does; null where the wait has no room for it. */
function soonCue(wait: number, left: number, script: Script, lengths: Lengths): Cue | null {
  const phrases =
    left < 60
      ? script.say("soon.seconds", "brief", { seconds: left })
      : script.say("soon.minutes", "brief", { mark: left / 60 });
  const seconds = lengths.spoken(phrases);
  const at = wait - left;
  if (seconds === null || at < PAUSE || at + seconds > wait - PAUSE) return null;
  return {
    at,
    until: at + seconds,
    channel: "voice",
    kind: "tell",
    moment: null,
    says: phrases.join(" "),
    sounds: phrases,
  };
}
