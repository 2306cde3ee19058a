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
 * What opus-decoder 0.7.12 keeps to itself. Its own `reset` makes a fresh state only in a later turn of the event
 * loop, and each leaves some memory behind, of which none is left after some hundreds of clips; a clip must be there
 * when it is asked for, and must not depend on which was decoded before it. Tests decode clips in two orders, and one
 * thousands of times.
 */
interface Inside {
  readonly _common: {
    readonly wasm: { readonly HEAP: ArrayBuffer; malloc(bytes: number): number };
  };
}

export const openDecoder = async (): Promise<Decode> => {
  const decoder = new OpusDecoder({ sampleRate: 24000, channels: 1, preSkip: 0 });
  await decoder.ready;
  const { wasm } = (decoder as unknown as Inside)._common;
  // All that it has lies below what it would be given next, and decoding asks for no more: a few hundred kilobytes,
  // which are put back to what they were when it was born.
  const born = new Uint8Array(wasm.HEAP).slice(0, wasm.malloc(1));
  return (packets) => {
    new Uint8Array(wasm.HEAP).set(born);
    const { channelData, errors } = decoder.decodeFrames([...packets]);
    const [samples] = channelData;
    if (samples === undefined || errors.length > 0)
      throw new Error(`A clip cannot be decoded: ${errors[0]?.message ?? "no channel"}.`);
    return samples;
  };
};
