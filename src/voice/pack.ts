// A voice pack: an index with the true length of every phrase, and one run of bytes that holds
// their Opus packets. The lengths need no decoder, so the compiler reads the index alone; whoever
// plays opens the pack.
import { openDecoder, preSkip } from "./decoder.ts";
import { splitPackets } from "./packets.ts";

export interface PhrasePlace {
  /** Offset into the pack's bytes, and how many bytes. */
  readonly from: number;
  readonly bytes: number;
  /** Exact length of what is played, in samples at the pack's rate. */
  readonly samples: number;
}

export interface PackIndex {
  readonly language: string;
  readonly voice: string;
  readonly sampleRate: 24000;
  /** Hash of all that went in: words, voice, engine, chain. */
  readonly made: string;
  /** By the phrase's own text. */
  readonly phrases: Readonly<Record<string, PhrasePlace>>;
}

export interface Pack {
  readonly index: PackIndex;
  /**
   * A phrase at 24 kHz, exactly as long as the index states; decoded once, then kept.
   * @throws where the pack has no such phrase: its lengths were asked of another index.
   */
  decode(text: string): Float32Array;
}

/**
 * Samples of a phrase spoken at `rate` (1 as recorded, 1.6 fastest): the stretcher fits its
 * output to this very number, so a compiled length is the played one.
 */
export const samplesAtRate = (samples: number, rate: number): number => Math.round(samples / rate);

export async function openPack(index: PackIndex, bytes: Uint8Array): Promise<Pack> {
  const decoded = await openDecoder();
  const heard = new Map<string, Float32Array>();
  return {
    index,
    decode(text) {
      const known = heard.get(text);
      if (known !== undefined) return known;
      const place = index.phrases[text];
      if (place === undefined) throw new Error(`The voice pack has no "${text}".`);
      const packets = splitPackets(bytes.subarray(place.from, place.from + place.bytes));
      const samples = decoded(packets).slice(preSkip, preSkip + place.samples);
      heard.set(text, samples);
      return samples;
    },
  };
}
