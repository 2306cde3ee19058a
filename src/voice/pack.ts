// A voice pack: an index with the true length of every phrase, and one run of bytes that holds
// their Opus packets. The lengths need no decoder, so the compiler reads the index alone.

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

/**
 * Samples of a phrase spoken at `rate` (1 as recorded, 1.6 fastest): the stretcher fits its
 * output to this very number, so a compiled length is the played one.
 */
export const samplesAtRate = (samples: number, rate: number): number => Math.round(samples / rate);
