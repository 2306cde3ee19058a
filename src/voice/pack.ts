// A voice pack: an index with the true length of every phrase, and one run of bytes that holds
// their Opus packets. The lengths need no decoder, so the compiler reads the index alone; whoever
// plays opens the pack. Both are kept small: clips lie one behind the other, and none is there twice.
import type { PackName } from "../script/script.ts";
import { openDecoder, preSkip } from "./decoder.ts";
import { splitPackets } from "./packets.ts";

interface PhrasePlace {
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

/** What the two files of a pack are called, but for their ends. */
export const packFile = (language: string, pack: PackName): string =>
  pack === "run" ? language : `${language}-${pack}`;

/** Goes up whenever a kept index is laid out in another way, so that one of the old way is made anew. */
export const indexForm = 2;

/** An index as its file holds it. */
export interface KeptIndex extends Omit<PackIndex, "phrases"> {
  /** A clip's bytes and samples, behind those of the clip before; or the phrase that sounds just so. */
  readonly phrases: { readonly [text: string]: readonly [number, number] | string };
}

export function readIndex({ phrases, ...rest }: KeptIndex): PackIndex {
  const places: Record<string, PhrasePlace> = {};
  let from = 0;
  for (const [text, kept] of Object.entries(phrases)) {
    if (typeof kept === "string") continue;
    const [bytes, samples] = kept;
    places[text] = { from, bytes, samples };
    from += bytes;
  }
  const placeOf = (text: string): PhrasePlace => {
    const kept = phrases[text];
    const place = places[typeof kept === "string" ? kept : text];
    if (place === undefined) throw new Error(`The voice pack's index has no clip for "${text}".`);
    return place;
  };
  const all = Object.keys(phrases).map((text) => [text, placeOf(text)] as const);
  return { ...rest, phrases: Object.fromEntries(all) };
}

/** Clips by their phrases in; a clip that several phrases share is kept for the first of them. */
export function writePack(
  about: Omit<PackIndex, "phrases">,
  clips: ReadonlyMap<string, { readonly bytes: Uint8Array; readonly samples: number }>,
): { readonly index: KeptIndex; readonly parts: readonly Uint8Array[] } {
  const phrases: Record<string, readonly [number, number] | string> = {};
  const known = new Map<string, string>();
  for (const [text, { bytes, samples }] of clips) {
    const sound = `${samples} ${bytes.join(" ")}`;
    const like = known.get(sound);
    phrases[text] = like ?? [bytes.length, samples];
    if (like === undefined) known.set(sound, text);
  }
  // In the index's own order, whatever that makes of its keys: by it a reader finds them.
  const parts = Object.keys(phrases).flatMap((text) => {
    const clip = clips.get(text);
    return clip === undefined || typeof phrases[text] === "string" ? [] : [clip.bytes];
  });
  return { index: { ...about, phrases }, parts };
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
  /** By where the clip lies: phrases that share one are decoded once. */
  const heard = new Map<number, Float32Array>();
  return {
    index,
    decode(text) {
      const place = index.phrases[text];
      if (place === undefined) throw new Error(`The voice pack has no "${text}".`);
      const known = heard.get(place.from);
      if (known !== undefined) return known;
      const packets = splitPackets(bytes.subarray(place.from, place.from + place.bytes));
      const samples = decoded(packets).slice(preSkip, preSkip + place.samples);
      heard.set(place.from, samples);
      return samples;
    },
  };
}
