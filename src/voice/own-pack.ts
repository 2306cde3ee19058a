// A person's own voice as one file, and back: a zip with an index and one WAV a phrase, so that other
// programs can open what is in it. Reading is strict, and what cannot be used comes back as a reason.

import type { Unzipped } from "fflate";
import { wavHeader } from "../tones/wav.ts";
import { isObject } from "../units/object.ts";
import type { OwnClips } from "./speaker.ts";
import { sumOf, zipSums } from "./zip-sums.ts";

export interface OwnPack {
  readonly language: string;
  /** What its owner calls it. */
  readonly name: string;
  readonly clips: OwnClips;
}

export type ReadPack =
  | {
      readonly kind: "pack";
      readonly pack: OwnPack;
      /** Phrases that the script does not have: left out. */
      readonly unknown: readonly string[];
    }
  | { readonly kind: "refused"; readonly why: WhyNoPack };

export type WhyNoPack =
  /** Nothing that was ever saved here. */
  | { readonly kind: "foreign" }
  | { readonly kind: "other-version" }
  | { readonly kind: "damaged" }
  | { readonly kind: "too-large" }
  | { readonly kind: "other-language"; readonly language: string }
  /** A clip that is not 16 bits, 24 kHz, mono. */
  | { readonly kind: "other-sound"; readonly file: string };

/** What stands in `index.json`. */
interface Index {
  readonly tanksideVoice: 1;
  readonly language: string;
  readonly name: string;
  readonly sampleRate: 24000;
  readonly phrases: readonly IndexEntry[];
}

interface IndexEntry {
  readonly text: string;
  readonly file: string;
  readonly samples: number;
}

const INDEX = "index.json";
const HEADER = 44;
/** Bytes of a file, and of all that is in it, unpacked: a script of 500 phrases of 8 s is 192 MB. */
const MOST = 256 * 2 ** 20;
/** Samples of a clip: 8 s, as own-clip.ts allows. */
const LONGEST = 8 * 24_000;
/** A zip states when its files were made; ours always the same, so that the same voice is the same bytes. */
const made = new Date(1980, 0, 1);

/** The same pack gives the same bytes. */
export async function writeOwnPack(pack: OwnPack): Promise<Uint8Array> {
  const { zipSync } = await import("fflate");
  const phrases = [...pack.clips].map(([text, { length }], i) => ({
    text,
    file: `${String(i + 1).padStart(3, "0")}.wav`,
    samples: length,
  }));
  const { language, name } = pack;
  const index: Index = { tanksideVoice: 1, language, name, sampleRate: 24000, phrases };
  const files: Record<string, Uint8Array> = {
    [INDEX]: new TextEncoder().encode(`${JSON.stringify(index, null, 2)}\n`),
  };
  for (const { text, file } of phrases) files[file] = wavOf(pack.clips.get(text));
  return zipSync(files, { level: 1, mtime: made });
}

/**
 * @param language the one whose script is spoken, as a BCP 47 tag.
 * @param phrases all that the script can say.
 */
export async function readOwnPack(
  bytes: Uint8Array,
  language: string,
  phrases: readonly string[],
): Promise<ReadPack> {
  if (bytes.length > MOST) return refused({ kind: "too-large" });
  const files = await unpacked(bytes);
  if ("kind" in files) return refused(files);
  const index = indexOf(files.get(INDEX));
  if ("kind" in index) return refused(index);
  if (index.language !== language)
    return refused({ kind: "other-language", language: index.language });
  const known = new Set(phrases);
  const clips = new Map<string, Int16Array>();
  for (const { text, file, samples } of index.phrases) {
    const clip = clipOf(files.get(file), file, samples);
    if ("kind" in clip) return refused(clip);
    if (known.has(text)) clips.set(text, clip);
  }
  const unknown = index.phrases.map(({ text }) => text).filter((text) => !known.has(text));
  return { kind: "pack", pack: { language, name: index.name, clips }, unknown };
}

const refused = (why: WhyNoPack): ReadPack => ({ kind: "refused", why });

/** Every file of a zip, each as its checksum says it was. */
async function unpacked(bytes: Uint8Array): Promise<ReadonlyMap<string, Uint8Array> | WhyNoPack> {
  const zip = bytes[0] === 0x50 && bytes[1] === 0x4b;
  if (!zip) return { kind: "foreign" };
  const sums = zipSums(bytes);
  if (sums === null) return { kind: "damaged" };
  const { unzipSync } = await import("fflate");
  let size = 0;
  let files: Unzipped;
  try {
    files = unzipSync(bytes, {
      filter({ originalSize }) {
        size += originalSize;
        return size <= MOST;
      },
    });
  } catch {
    return { kind: "damaged" };
  }
  if (size > MOST) return { kind: "too-large" };
  const damaged = Object.entries(files).some(([name, file]) => sums.get(name) !== sumOf(file));
  return damaged ? { kind: "damaged" } : new Map(Object.entries(files));
}

function indexOf(file: Uint8Array | undefined): Index | WhyNoPack {
  if (file === undefined) return { kind: "foreign" };
  let index: unknown;
  try {
    index = JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(file));
  } catch {
    return { kind: "foreign" };
  }
  if (!isObject(index) || !("tanksideVoice" in index)) return { kind: "foreign" };
  if (index.tanksideVoice !== 1) return { kind: "other-version" };
  return isIndex(index) ? index : { kind: "damaged" };
}

function isIndex(index: object): index is Index {
  const { language, name, sampleRate, phrases }: Partial<Record<keyof Index, unknown>> = index;
  if (typeof language !== "string" || typeof name !== "string" || sampleRate !== 24000)
    return false;
  if (!Array.isArray(phrases) || !phrases.every(isEntry)) return false;
  return [phrases.map(({ text }) => text), phrases.map(({ file }) => file)].every(
    (each) => new Set(each).size === each.length,
  );
}

function isEntry(entry: unknown): entry is IndexEntry {
  return (
    isObject(entry) &&
    typeof entry.text === "string" &&
    typeof entry.file === "string" &&
    Number.isInteger(entry.samples)
  );
}

function wavOf(samples: Int16Array = new Int16Array()): Uint8Array {
  const bytes = new Uint8Array(HEADER + samples.length * 2);
  bytes.set(wavHeader(samples.length, 24_000));
  const view = new DataView(bytes.buffer);
  for (const [i, sample] of samples.entries()) view.setInt16(HEADER + i * 2, sample, true);
  return bytes;
}

/** Only what is written here is read: a header of 44 bytes, then the samples that the index counts. */
function clipOf(
  wav: Uint8Array | undefined,
  file: string,
  samples: number,
): Int16Array | WhyNoPack {
  if (wav === undefined) return { kind: "damaged" };
  const stated = (wav.length - HEADER) / 2;
  const header = stated >= 0 && Number.isInteger(stated) ? wavHeader(stated, 24_000) : null;
  if (header === null || !header.every((byte, i) => wav[i] === byte))
    return { kind: "other-sound", file };
  if (stated !== samples || samples < 1) return { kind: "damaged" };
  if (samples > LONGEST) return { kind: "too-large" };
  const view = new DataView(wav.buffer, wav.byteOffset, wav.byteLength);
  return Int16Array.from({ length: samples }, (_, i) => view.getInt16(HEADER + i * 2, true));
}
