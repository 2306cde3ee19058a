// The page's one audio element, in a browser: it plays the bed while a run is heard in the room, so that media
// keys reach the page and a silent switch does not silence it, and the track while it is heard in the pocket.
import { bedNoise, bedSamples } from "../tones/bed.ts";
import { pcmOf, wavHeader } from "../tones/wav.ts";
import type { PocketPlayer } from "./pocket-shape.ts";
import { steadyClock } from "./steady-clock.ts";

export interface BrowserElement extends PocketPlayer {
  /** The bed alone, over and over. The first time is to come from a press, or browsers will not let it sound. */
  bed(): void;
  stop(): void;
}

/** A track that cannot be played within this, seconds, cannot be played. */
const PATIENCE = 8;
/** Some browsers keep the promise waiting for as long as they do not let it sound, seconds. */
const LET = 1;

export function browserElement(): BrowserElement {
  const element = new Audio();
  element.preload = "auto";
  let url: string | null = null;
  /** Whether it is to play. */
  let on = false;
  let paused = () => {};
  element.addEventListener("pause", () => {
    if (on) paused();
  });

  function take(sound: Blob, loop: boolean): void {
    const before = url;
    url = URL.createObjectURL(sound);
    element.loop = loop;
    element.src = url;
    if (before !== null) URL.revokeObjectURL(before);
  }

  async function tried(): Promise<"plays" | "not-let" | "cannot"> {
    on = true;
    const playing = element.play().then(
      () => "plays" as const,
      (error: unknown) => (isRefusal(error) ? "not-let" : "cannot"),
    );
    return Promise.race([playing, wait(LET).then(() => (element.paused ? "not-let" : "plays"))]);
  }

  const play = async () => (await tried()) === "plays";

  function asBefore(): void {
    paused = () => void play();
  }

  return {
    now: () => performance.now() / 1000,
    async load(track, at) {
      take(track, false);
      const mine = url;
      const known = new Promise<boolean>((resolve) => {
        element.addEventListener("loadedmetadata", () => resolve(true), { once: true });
        element.addEventListener("error", () => resolve(false), { once: true });
      });
      const ready = await Promise.race([known, wait(PATIENCE).then(() => false)]);
      if (!ready || mine !== url) return "cannot";
      element.currentTime = at();
      return tried();
    },
    seek(to) {
      element.currentTime = to;
    },
    position: () => element.currentTime,
    paused: () => element.paused,
    play,
    onPauseUnasked(act) {
      paused = act;
    },
    after: steadyClock.after,
    bed() {
      asBefore();
      take(bedTrack(), true);
      void play();
    },
    stop() {
      on = false;
      element.pause();
      element.removeAttribute("src");
      if (url !== null) URL.revokeObjectURL(url);
      url = null;
    },
  };
}

/** Browsers let a page sound from a press on, and not before. */
const isRefusal = (error: unknown): boolean =>
  error instanceof DOMException && error.name === "NotAllowedError";

/** The same noise, slower, Hz: a browser reads a file in pieces of so many bytes, and works at each. */
const BED_RATE = 8000;

function bedTrack(): Blob {
  const parts = [wavHeader(bedSamples, BED_RATE), pcmOf(bedNoise())];
  return new Blob(parts as Uint8Array<ArrayBuffer>[], { type: "audio/wav" });
}

/** Lets others have their turn: a timer would wait longer, and far longer in a page out of sight. */
export function breathe(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(null);
  });
}

const wait = (seconds: number): Promise<void> =>
  new Promise((resolve) => setTimeout(resolve, seconds * 1000));
