// A worksheet and the bytes of sounds in, the session that files are made of out: for the page's worker and the
// command line alike. It stands above the pipeline, since the stages know neither packs nor WebAssembly.
import { once } from "./once.ts";
import { planOf } from "./plan/plan.ts";
import { wordsIn } from "./plan/words/languages.ts";
import type { Worksheet } from "./plan/worksheet.ts";
import { scriptIn } from "./script/scripts.ts";
import { lengthsOf } from "./timeline/lengths.ts";
import { compile } from "./timeline/timeline.ts";
import { type KitIndex, openKit } from "./tones/kit.ts";
import { openMp3 } from "./tones/lame.ts";
import { type FileWish, fileOf, type Session, type SessionFile } from "./track/files.ts";
import { spokenIn } from "./units/language.ts";
import { openPack, type PackIndex } from "./voice/pack.ts";
import { noClips, type OwnClips, ownClipOf, phraseOf } from "./voice/speaker.ts";
import { openStretch } from "./voice/stretch.ts";

export interface SoundBytes {
  readonly index: PackIndex;
  readonly pack: () => Promise<Uint8Array>;
  readonly kitIndex: () => Promise<KitIndex>;
  readonly kit: () => Promise<Uint8Array>;
  readonly stretcher: () => Promise<BufferSource>;
  readonly encoder: () => Promise<BufferSource>;
}

/** @param own clips that a person has recorded: they say the sentences that they can say whole. */
export async function sessionOf(
  worksheet: Worksheet,
  bytes: SoundBytes,
  own: OwnClips = noClips,
): Promise<Session> {
  const language = spokenIn(worksheet.language);
  const rate = worksheet.voice?.rate ?? 1;
  const [words, script] = await Promise.all([wordsIn(language), scriptIn(language)]);
  const lengths = lengthsOf(bytes.index, rate, own);
  const timeline = compile(worksheet, planOf(worksheet, words), script, lengths);
  return {
    worksheet,
    timeline,
    script,
    lengths,
    speaks: worksheet.voice?.detail !== "tones",
    async sources() {
      const [pack, kit, stretch] = await Promise.all([
        bytes.pack().then((packed) => openPack(bytes.index, packed)),
        Promise.all([bytes.kitIndex(), bytes.kit()]).then(([index, pcm]) => openKit(index, pcm)),
        bytes.stretcher().then(openStretch),
      ]);
      /** By the own clip that says it, or by its text: one that is said often is unpacked and stretched once. */
      const unpacked = new Map<Int16Array | string, Float32Array>();
      return {
        phrase(text, sentence) {
          const key = ownClipOf(text, sentence, own) ?? text;
          const known =
            unpacked.get(key) ?? stretch(phraseOf(text, sentence, own, pack.decode), rate);
          unpacked.set(key, known);
          return known;
        },
        tone: (name) => kit.samples(name),
      };
    },
    encoder: () => bytes.encoder().then(openMp3),
  };
}

/** What a worker is handed first: a session, and its sounds as they were fetched. */
export interface WorkerSession {
  readonly worksheet: Worksheet;
  readonly own: OwnClips;
  readonly bytes: {
    readonly index: PackIndex;
    readonly pack: Uint8Array<ArrayBuffer>;
    readonly kitIndex: KitIndex;
    readonly kit: Uint8Array<ArrayBuffer>;
    readonly stretcher: Uint8Array<ArrayBuffer>;
    readonly encoder: Uint8Array<ArrayBuffer>;
  };
}

/** Null where it is longer than such a file can be. */
export type MakeFile = (wish: FileWish) => Promise<SessionFile | null>;

/** Sentences that are unpacked before it is looked whether a file was asked for. */
const TURN = 8;

/** Until a file is asked for, all that the session says is unpacked, so that no file waits for it. */
export async function fileMaker({ worksheet, own, bytes }: WorkerSession): Promise<MakeFile> {
  const opened = await sessionOf(
    worksheet,
    {
      index: bytes.index,
      pack: async () => bytes.pack,
      kitIndex: async () => bytes.kitIndex,
      kit: async () => bytes.kit,
      stretcher: async () => bytes.stretcher,
      encoder: async () => bytes.encoder,
    },
    own,
  );
  const session = { ...opened, sources: once(opened.sources) };
  const { phrase } = await session.sources();
  const said = session.timeline.sections
    .flatMap(({ cues }) => cues)
    .filter(({ channel }) => channel === "voice");
  let asked = false;
  // In turns: what is not unpacked as a file is asked for is unpacked while the browser takes what was made.
  const unpackFrom = (next: number): void => {
    const turn = asked ? [] : said.slice(next, next + TURN);
    for (const { sounds } of turn) for (const text of sounds) phrase(text, sounds);
    if (turn.length > 0) setTimeout(unpackFrom, 0, next + TURN);
  };
  unpackFrom(0);
  return (wish) => {
    asked = true;
    return fileOf(session, wish);
  };
}
