// The build of every sound: the script spoken into a voice pack, and the tones rendered into a kit,
// under public/sound/. What is there and was made of the same things is left as it is.
import { fork } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync } from "node:fs";
import { availableParallelism } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { toCardinal } from "n2words/en-US";
import source from "../../audio-scripts/en.json" with { type: "json" };
import { everyPhrase, openScript } from "../script/script.ts";
import { buildKit, kitHash } from "../tones/build.ts";
import { clipMade, voice } from "./clip.ts";
import { keptClip, writeWhole } from "./clip-store.ts";
import { engineBytes } from "./engine-file.ts";
import type { PackIndex, PhrasePlace } from "./pack.ts";

const folder = fileURLToPath(new URL("../../public/sound/", import.meta.url));

/** Tells how far the build is, from 0 to `of`. */
export type Progress = (what: string, done: number, of: number) => void;

export async function buildSounds(progress: Progress): Promise<void> {
  mkdirSync(folder, { recursive: true });
  if (!isMade("tones.json", "tones.pcm", kitHash())) {
    progress("Tones", 0, 1);
    const { index, bytes } = await buildKit();
    writeWhole(join(folder, "tones.pcm"), bytes);
    writeWhole(join(folder, "tones.json"), JSON.stringify(index));
    progress("Tones", 1, 1);
  }
  const phrases = everyPhrase(openScript(source, toCardinal));
  const engine = engineBytes();
  const made = createHash("sha256")
    .update(JSON.stringify([clipMade, engine.hash, phrases]))
    .digest("hex");
  if (isMade("en.json", "en.pack", made)) return;
  await speakMissing(phrases, engine.hash, (done, of) => progress("Voice", done, of));
  const { index, bytes } = packed(phrases, engine.hash, made);
  writeWhole(join(folder, "en.pack"), bytes);
  writeWhole(join(folder, "en.json"), JSON.stringify(index));
}

/** The index is written last, so what it states is there. */
function isMade(index: string, bytes: string, made: string): boolean {
  if (!existsSync(join(folder, index)) || !existsSync(join(folder, bytes))) return false;
  try {
    return JSON.parse(readFileSync(join(folder, index), "utf8")).made === made;
  } catch {
    return false;
  }
}

/** Speaks what the clip store lacks, in as many processes as the machine runs at once. */
async function speakMissing(
  phrases: readonly string[],
  engineHash: string,
  progress: (done: number, of: number) => void,
): Promise<void> {
  const missing = phrases.filter((text) => keptClip(engineHash, text) === null);
  const workers = Math.min(availableParallelism(), missing.length);
  let done = 0;
  progress(0, missing.length);
  await Promise.all(
    Array.from({ length: workers }, (_, worker) => {
      const share = missing.filter((_, i) => i % workers === worker);
      return spokenBy(share, () => {
        done += 1;
        progress(done, missing.length);
      });
    }),
  );
}

function spokenBy(phrases: readonly string[], spoken: () => void): Promise<void> {
  return new Promise((resolve, reject) => {
    const worker = fork(new URL("speak-phrases.ts", import.meta.url), {
      stdio: ["ignore", 2, 2, "ipc"],
    });
    worker.on("message", spoken);
    worker.on("error", reject);
    worker.on("exit", (code) =>
      code === 0 ? resolve() : reject(new Error(`The voice could not be spoken (exit ${code}).`)),
    );
    worker.send(phrases);
  });
}

function packed(phrases: readonly string[], engineHash: string, made: string) {
  const places: Record<string, PhrasePlace> = {};
  const parts: Uint8Array[] = [];
  let from = 0;
  for (const text of phrases) {
    const clip = keptClip(engineHash, text);
    if (clip === null) throw new Error(`“${text}” was not spoken.`);
    places[text] = { from, bytes: clip.bytes.length, samples: clip.samples };
    parts.push(clip.bytes);
    from += clip.bytes.length;
  }
  const index: PackIndex = {
    language: source.language,
    voice: voice.name,
    sampleRate: 24000,
    made,
    phrases: places,
  };
  return { index, bytes: Buffer.concat(parts) };
}
