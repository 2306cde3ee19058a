// The built voice packs.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { PackName } from "../../src/script/script.ts";
import type { Language } from "../../src/units/language.ts";
import { type PackIndex, packFile, readIndex } from "../../src/voice/pack.ts";

/** One of the built sounds. */
export const soundFile = (name: string) =>
  readFileSync(new URL(`../../public/sound/${name}`, import.meta.url));

export const builtPack = (
  language: Language,
  pack: PackName = "run",
): { index: PackIndex; bytes: Uint8Array } => {
  const file = packFile(language, pack);
  return {
    index: readIndex(JSON.parse(soundFile(`${file}.json`).toString())),
    bytes: soundFile(`${file}.pack`),
  };
};

/** The English one. */
export const { index: packIndex, bytes: packBytes } = builtPack("en");
export const phrases = Object.keys(packIndex.phrases);

/** A file of an installed package. */
export const packaged = (path: string) =>
  new Uint8Array(readFileSync(createRequire(import.meta.url).resolve(path)));

/** Level of the loudest sample, dBFS. */
export const peak = (samples: Float32Array): number =>
  20 * Math.log10(samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0));
