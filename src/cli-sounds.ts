// The command line's words and sounds: built if they are missing, read from their files.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Plan } from "./plan/plan.ts";
import type { Worksheet } from "./plan/worksheet.ts";
import type { Script } from "./script/script.ts";
import { scriptIn } from "./script/scripts.ts";
import { lengthsOf } from "./timeline/lengths.ts";
import type { Timeline } from "./timeline/score.ts";
import type { Sources } from "./timeline/sound.ts";
import { compile } from "./timeline/timeline.ts";
import { openKit } from "./tones/kit.ts";
import { spokenIn } from "./units/language.ts";
import { buildSounds } from "./voice/build.ts";
import { openPack } from "./voice/pack.ts";
import { tellProgress } from "./voice/progress.ts";
import { openStretch } from "./voice/stretch.ts";

const soundFile = (name: string) =>
  readFileSync(new URL(`../public/sound/${name}`, import.meta.url));
const soundJson = (name: string) => JSON.parse(soundFile(name).toString("utf8"));

/** The timeline of a worksheet, and the way to its sounds for those who want them. */
export async function compiledFor(
  worksheet: Worksheet,
  plan: Plan,
): Promise<{ timeline: Timeline; script: Script; sources: () => Promise<Sources> }> {
  const language = spokenIn(worksheet.language);
  await buildSounds(tellProgress(), [language]);
  const index = soundJson(`${language}.json`);
  const rate = worksheet.voice?.rate ?? 1;
  const script = await scriptIn(language);
  return {
    script,
    timeline: compile(worksheet, plan, script, lengthsOf(index, rate)),
    async sources() {
      const pack = await openPack(index, soundFile(`${language}.pack`));
      const kit = openKit(soundJson("tones.json"), soundFile("tones.pcm"));
      const wasm = createRequire(import.meta.url).resolve("@echogarden/sonic-wasm/sonic.wasm");
      const stretch = await openStretch(readFileSync(wasm));
      return {
        phrase: (text) => stretch(pack.decode(text), rate),
        tone: (name) => kit.samples(name),
      };
    },
  };
}
