// A clip in, Opus packets out: speech at about 16 kb/s in frames of 60 ms. Build only. At this
// rate the recogniser of master.ts hears what it hears without Opus.
import { Encoder } from "@evan/opus";

export type CodedRate = 16000 | 24000;
/** How hard the coder tries, 0 to 10. */
export type Pains = Encoder["complexity"];

export const bitrate = 16_000;
/** Seconds that are coded together, and that the encoder looks ahead. */
const frameLength = 0.06;
const lookahead = 0.0065;

/** Opened once for each rate: a clip begins from a fresh state, and only that. */
const encoders = new Map<CodedRate, Encoder>();

function encoderAt(sampleRate: CodedRate): Encoder {
  const known = encoders.get(sampleRate);
  if (known !== undefined) {
    known.reset();
    return known;
  }
  const encoder = new Encoder({ channels: 1, sample_rate: sampleRate, application: "voip" });
  encoder.bitrate = bitrate;
  encoder.bandwidth = "wideband";
  encoder.signal = "voice";
  encoders.set(sampleRate, encoder);
  return encoder;
}

/**
 * Packets that decode to the clip, `preSkip` samples late, and some silence.
 * @param pains at 10 it takes twice as long as at 5.
 */
export const encode = (
  samples: Float32Array,
  sampleRate: CodedRate,
  pains: Pains,
): readonly Uint8Array[] => {
  const frame = frameLength * sampleRate;
  const encoder = encoderAt(sampleRate);
  encoder.complexity = pains;
  const packets: Uint8Array[] = [];
  for (let from = 0; from < samples.length + lookahead * sampleRate; from += frame) {
    const pcm = new Int16Array(frame);
    for (let i = 0; i < frame; i++)
      pcm[i] = Math.round(32767 * Math.max(-1, Math.min(1, samples[from + i] ?? 0)));
    packets.push(encoder.encode(pcm));
  }
  return packets;
};
