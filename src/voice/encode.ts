// A clip in, Opus packets out: speech at about 16 kb/s in frames of 60 ms. Build only. At this
// rate the recogniser of master.ts hears what it hears without Opus.
import OpusScript from "opusscript";

export const bitrate = 16_000;
/** Samples that are coded together, and that the encoder looks ahead, at the engine's 16 kHz. */
const frame = 960;
const lookahead = 104;

/** libopus's own numbers (opus_defines.h). */
const control = { complexity: 4010, bandwidth: 4008, signal: 4024 };
const wideband = 1103;
const voice = 3001;

/**
 * Packets that decode to the clip, `preSkip` samples late, and some silence.
 * @param samples at 16 kHz.
 */
export const encode = (samples: Float32Array): readonly Uint8Array[] => {
  const encoder = new OpusScript(16000, 1, OpusScript.Application.VOIP);
  encoder.setBitrate(bitrate);
  encoder.encoderCTL(control.complexity, 10);
  encoder.encoderCTL(control.bandwidth, wideband);
  encoder.encoderCTL(control.signal, voice);
  const packets: Uint8Array[] = [];
  for (let from = 0; from < samples.length + lookahead; from += frame) {
    const pcm = new Int16Array(frame);
    for (let i = 0; i < frame; i++)
      pcm[i] = Math.round(32767 * Math.max(-1, Math.min(1, samples[from + i] ?? 0)));
    packets.push(new Uint8Array(encoder.encode(Buffer.from(pcm.buffer), frame)));
  }
  encoder.delete();
  return packets;
};
