// A microphone, a loudspeaker and a store of clips by hand: what is heard and kept is noted.
import type { MicrophoneRefusal } from "../../src/live/hearing.ts";
import type { Microphone } from "../../src/live/recorder.ts";
import type { VoiceChange, VoiceStore } from "../../src/logbook/voice-store.ts";
import type { RecordingPorts } from "../../src/ui/recording-state.ts";
import { english } from "../timeline/scene.ts";

/** A vowel and a little noise, half a second of silence at either side: a recording that is let pass. */
export function spokenFor(seconds: number, level = 0.2): Float32Array {
  const rate = 24_000;
  let seed = 7;
  return Float32Array.from({ length: (seconds + 1) * rate }, (_, i) => {
    seed = (seed * 48271) % 2147483647;
    const noise = 0.0005 * ((2 * seed) / 2147483647 - 1);
    const t = i / rate - 0.5;
    if (t < 0 || t > seconds) return noise;
    return noise + level * Math.sin(2 * Math.PI * 180 * t) * Math.sin(2 * Math.PI * 4 * t) ** 2;
  });
}

export function storeByHand(held: Record<string, Int16Array> = {}) {
  const state = { willKeep: true, willRead: true };
  const clips = new Map(Object.entries(held));
  const changes: VoiceChange[] = [];
  const store: VoiceStore = {
    load: async () =>
      state.willRead ? { kind: "found", clips: new Map(clips) } : { kind: "refused" },
    async change(_, change) {
      if (!state.willKeep) return false;
      changes.push(change);
      for (const [text, samples] of change) {
        if (samples === null) clips.delete(text);
        else clips.set(text, samples);
      }
      return true;
    },
  };
  return { store, clips, changes, state };
}

export function roomByHand() {
  const state = {
    heard: spokenFor(0.8),
    refuses: null as MicrophoneRefusal | null,
    open: 0,
    running: false,
    silent: false,
  };
  const played: (string | Int16Array)[] = [];
  const microphone: Microphone = {
    begin: () => played.push("begin"),
    end: () => state.heard,
    level: () => 0.7,
    close: () => {
      state.open -= 1;
    },
  };
  async function play(what: string | Int16Array): Promise<void> {
    if (state.silent) throw new Error("no loudspeaker");
    played.push(what);
  }
  const ports: RecordingPorts = {
    recorder: {
      async open() {
        if (state.refuses !== null) return { kind: "refused", why: state.refuses };
        state.open += 1;
        return { kind: "open", microphone };
      },
    },
    sounds: {
      script: async () => english,
      say: play,
      play,
      hush: () => played.push("hush"),
    },
    running: () => state.running,
  };
  return { ports, state, played };
}
