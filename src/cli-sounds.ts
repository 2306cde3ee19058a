// The command line's words and sounds: built if they are missing, read from their files.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Worksheet } from "./plan/worksheet.ts";
import { sessionOf } from "./take-along.ts";
import type { Session } from "./track/files.ts";
import { spokenIn } from "./units/language.ts";
import { buildSounds } from "./voice/build.ts";
import { readIndex } from "./voice/pack.ts";
import { tellProgress } from "./voice/progress.ts";

const soundFile = (name: string) =>
  readFileSync(new URL(`../public/sound/${name}`, import.meta.url));
const soundJson = (name: string) => JSON.parse(soundFile(name).toString("utf8"));

/** The session of a worksheet, and the way to its sounds for those who want them. */
export async function openedFor(worksheet: Worksheet): Promise<Session> {
  const language = spokenIn(worksheet.language);
  await buildSounds(tellProgress(), [language], ["run"]);
  return sessionOf(worksheet, {
    index: readIndex(soundJson(`${language}.json`)),
    pack: async () => soundFile(`${language}.pack`),
    kitIndex: async () => soundJson("tones.json"),
    kit: async () => soundFile("tones.pcm"),
    stretcher: async () =>
      readFileSync(createRequire(import.meta.url).resolve("@echogarden/sonic-wasm/sonic.wasm")),
    encoder: async () => soundFile("lame.wasm"),
  });
}
