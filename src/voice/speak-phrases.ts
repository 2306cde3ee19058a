// A worker of the build: batches of phrases in on its channel, each phrase spoken into the clip store; says when one
// is done, and when a batch is.
import type { Language } from "../units/language.ts";
import type { Batch, Told } from "./build.ts";
import { clipMade, openSpeaker } from "./clip.ts";
import { keepClip } from "./clip-store.ts";
import { voices } from "./voices.ts";

const tell = (told: Told) => process.send?.(told);
const speakers = new Map<Language, ReturnType<typeof openSpeaker>>();

process.on("message", async ({ language, texts }: Batch) => {
  const speaker = speakers.get(language) ?? openSpeaker(voices[language]);
  speakers.set(language, speaker);
  const speak = await speaker;
  const made = clipMade(voices[language]);
  for (const text of texts) {
    keepClip(made, text, await speak(text));
    tell("phrase");
  }
  tell("batch");
});

// Nothing is left to speak. The audio library keeps its thread, and Node would wait for it.
process.on("disconnect", () => process.exit(0));
