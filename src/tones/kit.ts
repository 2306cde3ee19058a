// A built tone kit: an index and one run of 16-bit PCM in, the samples of each tone out.
import type { ToneName } from "./designs.ts";

export interface KitIndex {
  /** Hash of all that went in: designs, levels, engine. */
  readonly made: string;
  /** First sample and number of samples of each tone. */
  readonly tones: {
    readonly [name in ToneName]: { readonly from: number; readonly samples: number };
  };
}

export interface Kit {
  /** 24 kHz, mono, from −1 to 1. */
  samples(name: ToneName): Float32Array;
}

/** @param bytes little-endian 16-bit samples, as in `tones.pcm`. */
export function openKit(index: KitIndex, bytes: Uint8Array): Kit {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const opened = new Map<ToneName, Float32Array>();
  return {
    samples(name) {
      const known = opened.get(name);
      if (known !== undefined) return known;
      const { from, samples } = index.tones[name];
      const tone = Float32Array.from(
        { length: samples },
        (_, i) => view.getInt16((from + i) * 2, true) / 32768,
      );
      opened.set(name, tone);
      return tone;
    },
  };
}
