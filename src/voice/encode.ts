// A clip in, Opus packets out: speech at about 16 kb/s in frames of 60 ms. Build only. At this
// rate the recogniser of master.ts hears what it hears without Opus.
import OpusScript from "opusscript";

export type CodedRate = 16000 | 24000;

export const bitrate = 16_000;
/** Seconds that are coded together, and that the encoder looks ahead. */
const frameLength = 0.06;
const lookahead = 0.0065;

/** libopus's own numbers (opus_defines.h). */
const control = { complexity: 4010, bandwidth: 4008, signal: 4024, reset: 4028 };
const wideband = 1103;
const voice = 3001;

/** Opened once for each rate: a clip begins from a fresh state, and only that. */
const encoders = new Map<CodedRate, OpusScript>();

function encoderAt(sampleRate: CodedRate): OpusScript {
  const known = encoders.get(sampleRate);
  if (known !== undefined) {
    known.encoderCTL(control.reset, 0);
    return known;
  }
  const encoder = new OpusScript(sampleRate, 1, OpusScript.Application.VOIP);
  encoder.setBitrate(bitrate);
  encoder.encoderCTL(control.bandwidth, wideband);
  encoder.encoderCTL(control.signal, voice);
  encoders.set(sampleRate, encoder);
  return encoder;
}

/**
 * Packets that decode to the clip, `preSkip` samples late, and some silence.
 * @param pains how hard the coder tries, 0 to 10: at 10 it takes twice as long as at 5.
 */
export const encode = (
  samples: Float32Array,
  sampleRate: CodedRate,
  pains: number,
): readonly Uint8Array[] => {
  const frame = frameLength * sampleRate;
  const encoder = encoderAt(sampleRate);
  encoder.encoderCTL(control.complexity, pains);
  const packets: Uint8Array[] = [];
  for (let from = 0; from < samples.length + lookahead * sampleRate; from += frame) {
    const pcm = new Int16Array(frame);
    for (let i = 0; i < frame; i++)
      pcm[i] = Math.round(32767 * Math.max(-1, Math.min(1, samples[from + i] ?? 0)));
    packets.push(new Uint8Array(encoder.encode(Buffer.from(pcm.buffer), frame)));
  }
  return packets;
};
