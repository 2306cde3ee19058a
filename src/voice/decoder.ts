// Opus packets in, samples at 24 kHz out, in the browser and in Node from the same libopus, so
// that both play the very same samples. It stands alone for what it must do to the decoder:
// each clip is decoded from a fresh state, at once.
import { OpusDecoder } from "opus-decoder";

/**
 * Samples at 24 kHz by which a decoded clip comes late: libopus's encoder looks 6.5 ms ahead
 * (RFC 7845, pre-skip 312 at 48 kHz).
 */
export const preSkip = 156;

export type Decode = (packets: readonly Uint8Array[]) => Float32Array;

/**
 * What opus-decoder 0.7.12 keeps to itself. Its own `reset` makes a fresh state only in a later
 * turn of the event loop; a clip must be there when it is asked for, and must not depend on
 * which clip was decoded before it. A test decodes clips in two orders and compares.
 */
interface Inside {
  _decoder: number;
  readonly _common: {
    readonly wasm: {
      opus_frame_decoder_create(
        rate: number,
        channels: number,
        streams: number,
        coupled: number,
        mapping: number,
        preSkip: number,
        stereo: number,
      ): number;
      malloc(bytes: number): number;
      free(pointer: number): void;
    };
    allocateTypedArray(
      length: number,
      type: Uint8ArrayConstructor,
    ): { readonly ptr: number; readonly buf: Uint8Array };
  };
}

export const openDecoder = async (): Promise<Decode> => {
  const decoder = new OpusDecoder({ sampleRate: 24000, channels: 1, preSkip: 0 });
  await decoder.ready;
  const inside = decoder as unknown as Inside;
  const { wasm } = inside._common;
  const mapping = inside._common.allocateTypedArray(1, Uint8Array);
  mapping.buf[0] = 0;
  return (packets) => {
    // All there is of one lies in one piece. The library's own way to destroy it besides gives more back than that,
    // and its memory is out of joint after some 1,200 clips.
    wasm.free(inside._decoder);
    inside._decoder = wasm.opus_frame_decoder_create(24000, 1, 1, 0, mapping.ptr, 0, 0);
    const { channelData, errors } = decoder.decodeFrames([...packets]);
    const [samples] = channelData;
    if (samples === undefined || errors.length > 0)
      throw new Error(`A clip cannot be decoded: ${errors[0]?.message ?? "no channel"}.`);
    return samples;
  };
};
