// Words and sounds fetched from beside the page, opened for playing.

import sonicWasm from "@echogarden/sonic-wasm/sonic.wasm?url";
import type { PackName, Script } from "../script/script.ts";
import { scriptIn } from "../script/scripts.ts";
import type { Sources } from "../timeline/sound.ts";
import { type Kit, openKit } from "../tones/kit.ts";
import type { Language } from "../units/language.ts";
import { openPack, type Pack, type PackIndex, packFile, readIndex } from "../voice/pack.ts";
import { noClips, type OwnClips, phraseOf } from "../voice/speaker.ts";
import { openStretch, type Stretch } from "../voice/stretch.ts";
import { keptBytes } from "./kept-bytes.ts";

export interface Sounds {
  readonly script: Script;
  readonly index: PackIndex;
  readonly pack: Pack;
  readonly kit: Kit;
  readonly stretch: Stretch;
}

/**
 * A voice pack is kept with the browser once it was fetched, so that its language can be run without
 * a network from then on; the rest comes with the page.
 * @throws where something cannot be fetched.
 */
export async function fetchSounds(language: Language): Promise<Sounds> {
  const [script, { index, packBytes }, kitIndex, kitBytes, wasm] = await Promise.all([
    scriptIn(language),
    fetchPack(language, "run"),
    fetchJson("sound/tones.json"),
    fetchBytes("sound/tones.pcm"),
    fetchBytes(sonicWasm),
  ]);
  return {
    script,
    index,
    pack: await openPack(index, packBytes),
    kit: openKit(kitIndex, kitBytes),
    stretch: await openStretch(wasm),
  };
}

/** The same, still packed: for a worker, which opens them itself; the encoder of tracks with them. */
export async function fetchPackedSounds(language: Language) {
  const [{ index, packBytes }, kitIndex, kit, stretcher, encoder] = await Promise.all([
    fetchPack(language, "run"),
    fetchJson("sound/tones.json"),
    fetchBytes("sound/tones.pcm"),
    fetchBytes(sonicWasm),
    fetchBytes("sound/lame.wasm"),
  ]);
  return { index, pack: packBytes, kitIndex, kit, stretcher, encoder };
}

/** What only asking by ear says; kept likewise. @throws where it cannot be fetched. */
export async function fetchEarPack(language: Language): Promise<Pack> {
  const { index, packBytes } = await fetchPack(language, "ear");
  return openPack(index, packBytes);
}

async function fetchPack(language: Language, pack: PackName) {
  const file = `sound/${packFile(language, pack)}`;
  const index = readIndex(await fetchJson(`${file}.json`));
  const packBytes = await keptBytes(`${file}.pack`, index.made, fetchBytes);
  return { index, packBytes };
}

/**
 * The samples of a pack and a kit, phrases stretched to `rate`.
 * @param own clips that say the sentences they can say whole, as in the lengths compiled with.
 */
export function sourcesAt(
  { pack, kit, stretch }: Sounds,
  rate: number,
  own: OwnClips = noClips,
): Sources {
  return {
    phrase: (text, sentence) => stretch(phraseOf(text, sentence, own, pack.decode), rate),
    tone: (name) => kit.samples(name),
  };
}

async function fetched(path: string): Promise<Response> {
  const response = await fetch(new URL(path, document.baseURI));
  if (!response.ok) throw new Error(`${path}: ${response.status}`);
  return response;
}

const fetchJson = async (path: string) => (await fetched(path)).json();
const fetchBytes = async (path: string) =>
  new Uint8Array(await (await fetched(path)).arrayBuffer());
