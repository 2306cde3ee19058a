// A worker of the build: phrases in on its channel, each spoken into the clip store; says when one is done.
import { openSpeaker } from "./clip.ts";
import { keepClip } from "./clip-store.ts";
import { engineBytes } from "./engine-file.ts";

const { bytes, hash } = engineBytes();
const speak = await openSpeaker(bytes);

process.on("message", async (phrases: readonly string[]) => {
  for (const text of phrases) {
    keepClip(hash, text, await speak(text));
    process.send?.(text);
  }
  process.exit(0);
});
