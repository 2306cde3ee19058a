// Words and sounds fetched from beside the page, opened for playing.

import sonicWasm from "@echogarden/sonic-wasm/sonic.wasm?url";
import { toCardinal } from "n2words/en-US";
import { openScript, type Script, type ScriptSource } from "../script/script.ts";
import type { Sources } from "../timeline/sound.ts";
import { type Kit, openKit } from "../tones/kit.ts";
import { openPack, type Pack, type PackIndex } from "../voice/pack.ts";
import { openStretch, type Stretch } from "../voice/stretch.ts";

export interface Sounds {
  readonly script: Script;
  readonly index: PackIndex;
  readonly pack: Pack;
  readonly kit: Kit;
  readonly stretch: Stretch;
}

/** @throws where something cannot be fetched. */
export async function fetchSounds(): Promise<Sounds> {
  const [{ default: source }, index, packBytes, kitIndex, kitBytes, wasm] = await Promise.all([
    import("../../audio-scripts/en.json"),
    fetchJson("sound/en.json"),
    fetchBytes("sound/en.pack"),
    fetchJson("sound/tones.json"),
    fetchBytes("sound/tones.pcm"),
    fetchBytes(sonicWasm),
  ]);
  return {
    script: openScript(source as ScriptSource, toCardinal),
    index,
    pack: await openPack(index, packBytes),
    kit: openKit(kitIndex, kitBytes),
    stretch: await openStretch(wasm),
  };
}

/** The samples of a pack and a kit, phrases stretched to `rate`. */
export function sourcesAt({ pack, kit, stretch }: Sounds, rate: number): Sources {
  return {
    phrase: (text) => stretch(pack.decode(text), rate),
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
