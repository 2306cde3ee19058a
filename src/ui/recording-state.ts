// Ports in, the recording of a voice phrase by phrase out: where one is, what the microphone is at, and
// what can be done next. Screens call these acts and show the signals.
import { type ReadonlySignal, signal } from "@preact/signals";
import type { MicrophoneRefusal } from "../live/hearing.ts";
import type { Microphone, Recorder } from "../live/recorder.ts";
import type { VoiceSounds } from "../live/voice-sounds.ts";
import { ownClip, type WhyNot } from "../voice/own-clip.ts";
import { nextMissing, type RecordingOrder } from "./recording-order.ts";
import type { VoiceShelf } from "./voice-shelf.ts";

export type Take =
  | { readonly kind: "ready" }
  /** The browser may be asking the person for leave. */
  | { readonly kind: "opening" }
  | { readonly kind: "no-microphone"; readonly why: MicrophoneRefusal }
  | { readonly kind: "recording" }
  | { readonly kind: "taken"; readonly samples: Int16Array }
  | { readonly kind: "refused"; readonly why: WhyNot };

/** What came of the last act, for the line that tells it. */
export type Told = "kept" | "not-kept" | "removed" | "undone" | "run-on" | "no-sound" | null;

export interface RecordingPorts {
  readonly recorder: Recorder;
  readonly sounds: VoiceSounds;
  /** Whether a run is on: then nothing is recorded. */
  readonly running: () => boolean;
}

export interface Recording {
  readonly order: RecordingOrder;
  /** Index into the order's phrases. */
  readonly at: ReadonlySignal<number>;
  readonly take: ReadonlySignal<Take>;
  readonly told: ReadonlySignal<Told>;
  /** Begins to record, or ends it. To be called from a press. */
  press(): Promise<void>;
  /** Keeps what was taken, and goes on to the next phrase without a clip. */
  keep(): Promise<void>;
  /** What was taken, or else what is kept of this phrase. */
  hear(): Promise<void>;
  /** The phrase in the bundled voice. */
  say(): Promise<void>;
  /** One phrase on or back; what was taken and not kept is dropped. */
  step(by: 1 | -1): void;
  remove(): Promise<void>;
  undo(): Promise<void>;
  /** 0 to 1; 0 while there is no microphone. */
  level(): number;
  /** Lets go of the microphone. */
  leave(): void;
}

/** @param limits seconds that the script allows each phrase. */
export function openRecording(
  order: RecordingOrder,
  limits: ReadonlyMap<string, number>,
  shelf: VoiceShelf,
  { recorder, sounds, running }: RecordingPorts,
): Recording {
  const has = (text: string) => shelf.clips.value.has(text);
  const at = signal(nextMissing(order.phrases, has, -1));
  const take = signal<Take>({ kind: "ready" });
  const told = signal<Told>(null);
  let microphone: Microphone | null = null;
  let left = false;
  const phrase = () => order.phrases[at.value] ?? "";

  function go(to: number): void {
    at.value = to;
    take.value = { kind: "ready" };
  }

  async function begin(): Promise<void> {
    sounds.hush();
    if (microphone === null) {
      take.value = { kind: "opening" };
      const opened = await recorder.open();
      if (opened.kind === "refused") {
        take.value = { kind: "no-microphone", why: opened.why };
        return;
      }
      // Left while the browser was asking.
      if (left) {
        opened.microphone.close();
        return;
      }
      microphone = opened.microphone;
    }
    microphone.begin();
    take.value = { kind: "recording" };
  }

  function end(): void {
    const clip = ownClip(microphone?.end() ?? new Float32Array(), limits.get(phrase()) ?? 0);
    take.value = clip.kind === "clip" ? { kind: "taken", samples: clip.samples } : clip;
  }

  async function heard(sound: Promise<void>): Promise<void> {
    told.value = null;
    await sound.catch(() => {
      told.value = "no-sound";
    });
  }

  return {
    order,
    at,
    take,
    told,
    async press() {
      told.value = null;
      if (take.value.kind === "recording") end();
      else if (running()) told.value = "run-on";
      else if (take.value.kind !== "opening") await begin();
    },
    async keep() {
      if (take.value.kind !== "taken") return;
      const change = new Map([[phrase(), take.value.samples]]);
      const kept = shelf.change(change);
      go(nextMissing(order.phrases, (text) => has(text) || change.has(text), at.value));
      told.value = (await kept) ? "kept" : "not-kept";
    },
    async hear() {
      const clip =
        take.value.kind === "taken" ? take.value.samples : shelf.clips.value.get(phrase());
      if (clip !== undefined && take.value.kind !== "recording") await heard(sounds.play(clip));
    },
    async say() {
      if (take.value.kind !== "recording") await heard(sounds.say(phrase(), shelf.language));
    },
    step(by) {
      if (take.value.kind === "recording") microphone?.end();
      sounds.hush();
      told.value = null;
      go((at.value + by + order.phrases.length) % order.phrases.length);
    },
    async remove() {
      if (!has(phrase())) return;
      take.value = { kind: "ready" };
      told.value = (await shelf.change(new Map([[phrase(), null]]))) ? "removed" : "not-kept";
    },
    async undo() {
      if (shelf.canUndo.value) told.value = (await shelf.undo()) ? "undone" : "not-kept";
    },
    level: () => microphone?.level() ?? 0,
    leave() {
      left = true;
      sounds.hush();
      microphone?.close();
      microphone = null;
    },
  };
}
