// The microphone as a port: opened once for a sitting, then begun and ended phrase by phrase. Samples at
// 24 kHz out, as the room sounded.
import { resampled } from "../voice/resample.ts";
import { type MicrophoneRefusal, openHearing, type Part } from "./hearing.ts";

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
/** Samples in a part: about 40 ms. */
const PART = 2048;
/** The meter falls by so much a second, of its whole height. */
const FALL = 1.5;

export const browserRecorder = (): Recorder => ({ open: opened });

async function opened(): Promise<Opened> {
  let parts: Part[] | null = null;
  let loud = { level: 0, at: 0 };
  const levelAt = (now: number) => Math.max(0, loud.level - FALL * (now - loud.at));
  const hearing = await openHearing({
    context: null,
    part: PART,
    heard(part) {
      const level = meterLevel(part.samples);
      if (level >= levelAt(part.at)) loud = { level, at: part.at };
      if (parts !== null && part.at - (parts[0] ?? part).at <= LONGEST) parts.push(part);
    },
  });
  if (hearing.kind === "refused") return hearing;
  const { context } = hearing;
  const microphone: Microphone = {
    begin() {
      parts = [];
    },
    end() {
      const whole = joined(parts ?? []);
      parts = null;
      return resampled(whole, context.sampleRate);
    },
    level: () => levelAt(context.currentTime),
    close: hearing.close,
  };
  return { kind: "open", microphone };
}

/** Of a part's highest sample: 0 for −60 dBFS and below, 1 for full scale, even steps of dB between. */
function meterLevel(samples: Float32Array): number {
  const peak = samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
  return Math.min(1, Math.max(0, 1 + (20 * Math.log10(peak)) / 60));
}

function joined(parts: readonly Part[]): Float32Array {
  const whole = new Float32Array(parts.reduce((sum, { samples }) => sum + samples.length, 0));
  let at = 0;
  for (const { samples } of parts) {
    whole.set(samples, at);
    at += samples.length;
  }
  return whole;
}
