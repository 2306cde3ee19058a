// The microphone as a port: opened once for a sitting, then begun and ended phrase by phrase. Samples at
// 24 kHz out, as the room sounded: nothing that browsers do to flatter a telephone call is wanted.
import { resampled } from "../voice/resample.ts";
import captureUrl from "./capture-worklet.ts?worker&url";

export type MicrophoneRefusal =
  /** The person, or the device's owner, said no. */
  | "denied"
  /** There is none, or none that is plugged in. */
  | "none"
  /** Another program has it, or it broke. */
  | "busy"
  /** The browser cannot, or will not on a page such as this. */
  | "unable";

type Opened =
  | { readonly kind: "open"; readonly microphone: Microphone }
  | { readonly kind: "refused"; readonly why: MicrophoneRefusal };

export interface Microphone {
  /** From here on it is recorded; what was begun before is dropped. */
  begin(): void;
  /** 24 kHz, mono: all since `begin`, at most 20 s. */
  end(): Float32Array;
  /** How loud it is now, 0 (−60 dBFS and below) to 1 (full scale). */
  level(): number;
  /** Lets go of it, so that no light is left on. */
  close(): void;
}

export interface Recorder {
  /** To be called from a press. Never rejects. */
  open(): Promise<Opened>;
}

/** Recording goes no further, seconds: someone forgot to press. */
const LONGEST = 20;
/** The meter falls by so much a second, of its whole height. */
const FALL = 1.5;

export function browserRecorder(): Recorder {
  return {
    async open() {
      if (navigator.mediaDevices?.getUserMedia === undefined)
        return { kind: "refused", why: "unable" };
      let stream: MediaStream | null = null;
      try {
        stream = await navigator.mediaDevices.getUserMedia({
          audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false },
        });
        return { kind: "open", microphone: await listening(stream) };
      } catch (error) {
        release(stream);
        return { kind: "refused", why: refusalOf(error) };
      }
    },
  };
}

function refusalOf(error: unknown): MicrophoneRefusal {
  switch (error instanceof DOMException ? error.name : "") {
    case "NotAllowedError":
    case "SecurityError":
      return "denied";
    case "NotFoundError":
    case "OverconstrainedError":
      return "none";
    case "NotReadableError":
    case "AbortError":
      return "busy";
    default:
      return "unable";
  }
}

async function listening(stream: MediaStream): Promise<Microphone> {
  const context = new AudioContext();
  try {
    await context.resume();
    await context.audioWorklet.addModule(captureUrl);
  } catch (error) {
    void context.close();
    throw error;
  }
  const source = context.createMediaStreamSource(stream);
  const capture = new AudioWorkletNode(context, "capture", {
    numberOfOutputs: 0,
    channelCount: 1,
    channelCountMode: "explicit",
  });
  source.connect(capture);
  let parts: Float32Array[] | null = null;
  let samples = 0;
  let loud = { level: 0, at: 0 };
  const levelAt = (now: number) => Math.max(0, loud.level - FALL * (now - loud.at));
  capture.port.onmessage = ({ data }: MessageEvent<Float32Array>) => {
    const now = context.currentTime;
    const level = meterLevel(data);
    if (level >= levelAt(now)) loud = { level, at: now };
    if (parts === null || samples > LONGEST * context.sampleRate) return;
    parts.push(data);
    samples += data.length;
  };
  return {
    begin() {
      parts = [];
      samples = 0;
    },
    end() {
      const whole = joined(parts ?? [], samples);
      parts = null;
      return resampled(whole, context.sampleRate);
    },
    level: () => levelAt(context.currentTime),
    close() {
      release(stream);
      void context.close();
    },
  };
}

/** Of a part's highest sample: 0 for −60 dBFS and below, 1 for full scale, even steps of dB between. */
function meterLevel(samples: Float32Array): number {
  const peak = samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
  return Math.min(1, Math.max(0, 1 + (20 * Math.log10(peak)) / 60));
}

function joined(parts: readonly Float32Array[], samples: number): Float32Array {
  const whole = new Float32Array(samples);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

function release(stream: MediaStream | null): void {
  for (const track of stream?.getTracks() ?? []) track.stop();
}
