// Whether knocks are listened for, as one port for the page's life: off until someone turns it on. What is
// heard is a press of the run that is on; where none is, it is nothing.
import { type ReadonlySignal, signal } from "@preact/signals";
import type { BrowserAudio } from "./browser-audio.ts";
import type { MicrophoneRefusal } from "./hearing.ts";
import { type KnockParts, type Listening, listenForKnocks } from "./knock-microphone.ts";
import type { OwnSound } from "./knocks.ts";

export interface KnockPort {
  /** `asking`: the browser may be asking the person for leave. */
  readonly on: ReadonlySignal<"off" | "asking" | "on" | MicrophoneRefusal>;
  /** To be called from a press. */
  turn(on: boolean): void;
}

interface KnockPortParts {
  readonly audio: Pick<BrowserAudio, "awake" | "onAnother">;
  /** @param at seconds on the steady clock. */
  readonly heard: (at: number) => void;
  /** What the program itself sounds, on the context's clock. */
  readonly ownSounds: () => readonly OwnSound[];
  /** The device's microphone, if not given. */
  readonly listens?: (parts: KnockParts) => Promise<Listening>;
}

export function openKnockPort(parts: KnockPortParts): KnockPort {
  const { audio, heard, ownSounds, listens = listenForKnocks } = parts;
  const on = signal<KnockPort["on"]["value"]>("off");
  let stop = () => {};
  /** Counts the turns, so that one that was turned back while the browser asked comes to nothing. */
  let latest = 0;

  async function listen(mine: number): Promise<void> {
    on.value = "asking";
    const context = await audio.awake();
    const ended = () => {
      if (mine !== latest) return;
      turn(false);
      on.value = "busy";
    };
    const listening = await listens({ context, heard, ownSounds, ended });
    if (mine !== latest) {
      if (listening.kind === "listening") listening.stop();
      return;
    }
    if (listening.kind === "listening") stop = listening.stop;
    on.value = listening.kind === "listening" ? "on" : listening.why;
  }

  function turn(wanted: boolean): void {
    latest += 1;
    stop();
    stop = () => {};
    if (wanted) void listen(latest);
    else on.value = "off";
  }

  // What hears by a context that is dead hears nothing any more.
  audio.onAnother(() => {
    if (on.value === "on") turn(true);
  });
  return { on, turn };
}
