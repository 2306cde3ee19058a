// A section heard outside a run, as it will sound: for Walk through, and for whoever is new here.
import type { Section } from "../timeline/score.ts";
import type { BrowserAudio } from "./browser-audio.ts";
import type { BrowserPlayer } from "./browser-player.ts";
import type { Hearing } from "./runs.ts";

/** How long the loudspeaker may need to wake before the first sound, seconds. */
const WAKE = 0.1;
/**
 * Sounds are placed so far ahead, seconds: what is known of the clocks when sound has only begun is not exact,
 * and nothing is lost here if a busy page comes late.
 */
const AHEAD = 3;

/** @param from seconds into the section at which it begins. */
export function openHearing(
  audio: BrowserAudio,
  player: BrowserPlayer,
  section: Section,
  from: number,
): Hearing {
  audio.check();
  const start = player.now() + WAKE - from;
  const cues = section.cues.filter((cue) => cue.at >= from);
  const last = cues.reduce((end, cue) => Math.max(end, cue.until), from);
  const elapsed = () => player.now() - start;
  let placedTo = 0;
  let resolve = () => {};
  const over = new Promise<void>((done) => {
    resolve = done;
  });

  function look(): void {
    audio.check();
    const to = elapsed() + AHEAD;
    for (const cue of cues) {
      if (cue.at >= placedTo && cue.at < to) player.play(cue, start + cue.at);
    }
    placedTo = to;
    if (elapsed() > last) stop();
  }

  const timer = setInterval(look, 1000);
  function stop(): void {
    clearInterval(timer);
    player.close();
    resolve();
  }

  look();
  performance.mark("tankside-hearing", { detail: start });
  return { elapsed, stop, over };
}
