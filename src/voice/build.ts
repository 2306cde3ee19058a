// The build of every sound: the script spoken into its voice packs, and the tones rendered into a kit,
// under public/sound/, and the encoder of tracks beside them. What is there and was made of the same
// things is left as it is.
import { fork } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync } from "node:fs";
import { availableParallelism } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { everyPhrase, type PackName, packNames } from "../script/script.ts";
import { scriptIn } from "../script/scripts.ts";
import { buildKit, kitHash } from "../tones/build.ts";
import { encoderFile } from "../tones/build-encoder.ts";
import { type Language, languages } from "../units/language.ts";
import { clipMade } from "./clip.ts";
import { keptClip, writeWhole } from "./clip-store.ts";
import { indexForm, packFile, writePack } from "./pack.ts";
import { voices } from "./voices.ts";

const folder = fileURLToPath(new URL("../../public/sound/", import.meta.url));

/** Tells how far the build is, from 0 to `of`. */
export type Progress = (what: string, done: number, of: number) => void;

/**
 * @param spoken the languages whose packs are wanted.
 * @param wanted which of their packs.
 */
export async function buildSounds(
  progress: Progress,
  spoken: readonly Language[] = languages,
  wanted: readonly PackName[] = packNames,
): Promise<void> {
  mkdirSync(folder, { recursive: true });
  if (!isMade("tones.json", "tones.pcm", kitHash())) {
    progress("Tones", 0, 1);
    const { index, bytes } = await buildKit();
    writeWhole(join(folder, "tones.pcm"), bytes);
    writeWhole(join(folder, "tones.json"), JSON.stringify(index));
    progress("Tones", 1, 1);
  }
  placeEncoder();
  const all = spoken.flatMap((language) => wanted.map((pack) => wantedPack(language, pack)));
  const packs = (await Promise.all(all)).filter(
    ({ file, made }) => !isMade(`${file}.json`, `${file}.pack`, made),
  );
  await speakMissing(packs, (done, of) => progress("Voices", done, of));
  for (const pack of packs) {
    const { index, bytes } = packed(pack);
    writeWhole(join(folder, `${pack.file}.pack`), bytes);
    writeWhole(join(folder, `${pack.file}.json`), JSON.stringify(index));
  }
}

/** Never in place of one that stands there: it may be a person's own build. */
function placeEncoder(): void {
  const file = join(folder, "lame.wasm");
  if (!existsSync(file)) writeWhole(file, encoderFile());
}

/** A pack as it ought to be: `clips` is what each of its clips follows from, `made` all of it. */
interface WantedPack {
  readonly language: Language;
  readonly file: string;
  readonly phrases: readonly string[];
  readonly clips: string;
  readonly made: string;
}

async function wantedPack(language: Language, pack: PackName): Promise<WantedPack> {
  const phrases = everyPhrase(await scriptIn(language), pack);
  const clips = clipMade(voices[language]);
  const made = createHash("sha256")
    .update(JSON.stringify([indexForm, clips, phrases]))
    .digest("hex");
  return { language, file: packFile(language, pack), phrases, clips, made };
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

/** By phrase, what is spoken for it: of those that differ by a capital alone, one. */
function spokenAs(phrases: readonly string[]): ReadonlyMap<string, string> {
  const one = new Map(phrases.map((text) => [text.toLowerCase(), text]));
  return new Map(phrases.map((text) => [text, one.get(text.toLowerCase()) ?? text]));
}

/** Phrases to be spoken by a worker. */
export interface Batch {
  readonly language: Language;
  readonly texts: readonly string[];
}

/** What a worker is done with. */
export type Told = "phrase" | "batch";

/** Phrases: few enough that no worker waits long for another at the end. */
const BATCH = 40;
/** An engine or a coder may fall over under load: what it had not spoken is tried so often in all. */
const ATTEMPTS = 3;

/** Speaks what the clip store lacks, in a process more than the machine runs at once: each waits now and then. */
async function speakMissing(
  packs: readonly WantedPack[],
  progress: (done: number, of: number) => void,
  attempt = 1,
): Promise<void> {
  const missing = packs.flatMap(({ language, phrases, clips }) => {
    const texts = [...new Set(spokenAs(phrases).values())];
    return batchesOf(
      language,
      texts.filter((text) => keptClip(clips, text) === null),
    );
  });
  const all = missing.reduce((sum, { texts }) => sum + texts.length, 0);
  const workers = Math.min(availableParallelism() + 1, missing.length);
  let done = 0;
  progress(0, all);
  const next = handingOut(missing);
  // All are waited for: one that fails must not leave another speaking into the next attempt.
  const ended = await Promise.allSettled(
    Array.from({ length: workers }, () =>
      spokenBy(next, () => {
        done += 1;
        progress(done, all);
      }),
    ),
  );
  const failed = ended.find((end) => end.status === "rejected");
  if (failed === undefined) return;
  if (attempt === ATTEMPTS) throw failed.reason;
  await speakMissing(packs, progress, attempt + 1);
}

const batchesOf = (language: Language, texts: readonly string[]): readonly Batch[] =>
  Array.from({ length: Math.ceil(texts.length / BATCH) }, (_, i) => ({
    language,
    texts: texts.slice(i * BATCH, (i + 1) * BATCH),
  }));

/** Hands out batches: of the language that was spoken last, since opening another voice takes a second of a core. */
function handingOut(batches: readonly Batch[]): (last: Batch | null) => Batch | null {
  let left = batches;
  const leftOf = (language: Language) => left.filter((each) => each.language === language).length;
  return (last) => {
    const next =
      left.find(({ language }) => language === last?.language) ??
      left.toSorted((a, b) => leftOf(b.language) - leftOf(a.language))[0] ??
      null;
    left = left.filter((each) => each !== next);
    return next;
  };
}

function spokenBy(next: (last: Batch | null) => Batch | null, spoken: () => void): Promise<void> {
  return new Promise((resolve, reject) => {
    const worker = fork(new URL("speak-phrases.ts", import.meta.url), {
      stdio: ["ignore", 2, 2, "ipc"],
    });
    let batch: Batch | null = null;
    const goOn = () => {
      batch = next(batch);
      if (batch === null) worker.disconnect();
      else worker.send(batch);
    };
    worker.on("message", (told: Told) => (told === "batch" ? goOn() : spoken()));
    worker.on("error", reject);
    worker.on("exit", (code) =>
      code === 0 ? resolve() : reject(new Error(`The voice could not be spoken (exit ${code}).`)),
    );
    goOn();
  });
}

function packed({ language, phrases, clips, made }: WantedPack) {
  const spoken = new Map(
    [...spokenAs(phrases)].map(([text, as]) => {
      const clip = keptClip(clips, as);
      if (clip === null) throw new Error(`“${text}” was not spoken.`);
      return [text, clip] as const;
    }),
  );
  const { name: voice } = voices[language];
  const { index, parts } = writePack({ language, voice, sampleRate: 24000, made }, spoken);
  return { index, bytes: Buffer.concat(parts) };
}
