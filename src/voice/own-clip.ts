// What a microphone heard of one phrase in, a clip fit to stand beside those of the pack out: cleared
// of rumble, cut to what is said, and set to the pack's loudness. Or the reason why it cannot be one.
import { fadeEnds } from "./fade.ts";
import { frame, type Heard, heardSpeech } from "./heard-speech.ts";
import { levelled } from "./level.ts";

export type OwnClip =
  /** 16 bits, 24 kHz, mono; a whole number of hundredths of a second. */
  | { readonly kind: "clip"; readonly samples: Int16Array }
  | { readonly kind: "refused"; readonly why: WhyNot };

export type WhyNot =
  | { readonly kind: "too-quiet" }
  | { readonly kind: "clipped" }
  /** Nobody speaks in it, or no louder than the room. */
  | { readonly kind: "noise" }
  | { readonly kind: "too-short" }
  /** Seconds. */
  | { readonly kind: "too-long"; readonly lasts: number; readonly most: number };

/** LUFS and dBTP: those of the bundled voice (see clip.ts). */
const target = { loudness: -20, ceiling: -3 };
/** Hz, and the two sections of a fourth-order Butterworth filter: below it lies no voice. */
const rumble = { below: 70, q: [0.541, 1.307] };
/** A peak under this, dBFS, would have to be raised so far that its noise came along. */
const QUIETEST = -40;
/** From here on a sample is taken for one that was cut off; so many of them make a clipped clip. */
const CUT_OFF = { from: 0.985, samples: 12 };
/** dB: with the loud parts no further above the noise than this, nobody speaks. */
const ABOVE_NOISE = 8;
/** Frames; no word is shorter. */
const SHORTEST = 15;
/** A person may take so much longer than the script allows its sentence, and never longer than this. */
const LONGER = 1.6;
const LONGEST = 8;
/** Kept before and after what is heard, frames: onsets and last breaths are softer than any floor. */
const KEPT = { before: 2, after: 4 };
/** Samples: 5 ms and 12 ms. */
const FADE = { in: 120, out: 288 };

/**
 * @param recorded 24 kHz, mono, as it was heard, with or without silence around the words.
 * @param within seconds that the script allows the sentence.
 */
export function ownClip(recorded: Float32Array, within: number): OwnClip {
  const peak = recorded.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
  if (20 * Math.log10(peak) < QUIETEST) return refused({ kind: "too-quiet" });
  const cutOff = recorded.filter((sample) => Math.abs(sample) >= CUT_OFF.from).length;
  if (cutOff >= CUT_OFF.samples) return refused({ kind: "clipped" });
  const clear = withoutRumble(recorded);
  const heard = heardSpeech(clear);
  if (heard.aboveNoise < ABOVE_NOISE) return refused({ kind: "noise" });
  if (heard.spoken < SHORTEST) return refused({ kind: "too-short" });
  const said = cut(clear, heard);
  const most = Math.min(LONGER * within, LONGEST);
  const lasts = said.length / 24_000;
  if (lasts > most) return refused({ kind: "too-long", lasts, most });
  return { kind: "clip", samples: toSixteenBits(levelled(said, target)) };
}

const refused = (why: WhyNot): OwnClip => ({ kind: "refused", why });

function withoutRumble(samples: Float32Array): Float32Array {
  return rumble.q.reduce((left, q) => highPass(left, rumble.below, q), samples);
}

/** Second order, by the bilinear transform; begins as if its first sample had always been there. */
function highPass(samples: Float32Array, below: number, q: number): Float32Array {
  const k = Math.tan((Math.PI * below) / 24_000);
  const a0 = 1 + k / q + k * k;
  const [a1, a2] = [(2 * (k * k - 1)) / a0, (1 - k / q + k * k) / a0];
  const first = samples[0] ?? 0;
  let [x1, x2, y1, y2] = [first, first, 0, 0];
  return samples.map((x) => {
    const y = (x - 2 * x1 + x2) / a0 - a1 * y1 - a2 * y2;
    [x2, x1, y2, y1] = [x1, x, y1, y];
    return y;
  });
}

/** Whole frames, faded at both ends; silence where the recording ends sooner. */
function cut(samples: Float32Array, { from, to }: Heard): Float32Array {
  const first = Math.max(0, from - KEPT.before);
  const last = Math.min(Math.ceil(samples.length / frame), to + KEPT.after);
  const said = new Float32Array((last - first) * frame);
  said.set(samples.subarray(first * frame, last * frame));
  fadeEnds(said, FADE.in, FADE.out);
  return said;
}

const toSixteenBits = (samples: Float32Array): Int16Array =>
  Int16Array.from(samples, (sample) => Math.round(sample * 32768));
