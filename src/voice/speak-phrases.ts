// A worker of the build: phrases in on its channel, each spoken into the clip store; says when one is done.
import { languages } from "../units/language.ts";
import type { Missing } from "./build.ts";
import { clipMade, openSpeaker } from "./clip.ts";
import { keepClip } from "./clip-store.ts";
import { voices } from "./voices.ts";

process.on("message", async (missing: readonly Missing[]) => {
  for (const language of languages) {
    const phrases = missing.filter((phrase) => phrase.language === language);
    if (phrases.length === 0) continue;
    const made = clipMade(voices[language]);
    const speak = await openSpeaker(voices[language]);
    for (const { text } of phrases) {
      keepClip(made, text, await speak(text));
      process.send?.(text);
    }
  }
  process.exit(0);
});
