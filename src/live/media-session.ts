// The keys of a headset and of a locked screen, in a browser: whichever it is, it is a press. What they show
// is the section's name on black, since a bright picture on a locked screen would fog a film; in the dark, nothing.
import type { Section } from "../timeline/score.ts";

/** One black pixel: without a picture, some systems show one of their own. */
const BLACK =
  "data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR42mNgAAAAAgAB5Sfe/AAAAABJRU5ErkJggg==";

/** A title without a letter: with none at all, browsers put the page's in its place. */
const NOTHING = "\u00a0";

/** A headset's one button sends play and pause by turns, its others the rest. */
const actions: readonly MediaSessionAction[] = [
  "play",
  "pause",
  "stop",
  "nexttrack",
  "previoustrack",
  "seekto",
  "seekforward",
  "seekbackward",
];

/** By so much, seconds, may a position that is shown be wrong. */
const OFF = 0.5;

export interface MediaKeys {
  /** What is on; `elapsed` of its seconds, which are 0 where it only waits. */
  show(section: Pick<Section, "title" | "seconds" | "dark"> | null, elapsed: number): void;
  close(): void;
}

/** @param pressed with a handler of its own for each key, no key really pauses anything. */
export function openMediaKeys(pressed: () => void): MediaKeys {
  const session = navigator.mediaSession as MediaSession | undefined;
  let shown: string | null = null;
  let counted = { seconds: 0, began: 0 };
  keepsPlaying("playback");
  for (const action of actions) handle(action, pressed);

  function handle(action: MediaSessionAction, handler: (() => void) | null): void {
    try {
      session?.setActionHandler(action, handler);
    } catch {
      // A browser throws for an action that it has never heard of.
    }
  }

  return {
    show(section, elapsed) {
      if (session === undefined) return;
      const dark = section?.dark ?? false;
      const title = dark ? NOTHING : (section?.title ?? "");
      // Whatever is told anew may light a locked screen: in the dark, nothing is.
      if (dark && shown === title) return;
      session.playbackState = "playing";
      const seconds = dark ? 0 : (section?.seconds ?? 0);
      const began = performance.now() / 1000 - elapsed;
      // From one position a system counts on by itself: it is told of another where that would be wrong.
      const counts = seconds === counted.seconds && Math.abs(began - counted.began) < OFF;
      if (shown === title && counts) return;
      counted = { seconds, began };
      if (seconds > 0) {
        const position = Math.max(0, Math.min(seconds, elapsed));
        session.setPositionState?.({ duration: seconds, position, playbackRate: 1 });
      } else session.setPositionState?.();
      if (shown === title) return;
      shown = title;
      const artwork = [{ src: BLACK, sizes: "1x1", type: "image/png" }];
      const artist = dark ? NOTHING : "Tankside";
      session.metadata = new MediaMetadata({ title, artist, artwork });
    },
    close() {
      for (const action of actions) handle(action, null);
      keepsPlaying("auto");
      if (session === undefined) return;
      session.metadata = null;
      session.playbackState = "none";
    },
  };
}

/** Where a browser asks what its sound is for: a silent switch and a locked screen then leave it alone. */
function keepsPlaying(type: "playback" | "auto"): void {
  const { audioSession } = navigator as { audioSession?: { type: string } };
  if (audioSession !== undefined) audioSession.type = type;
}
