// A person's recorded phrases, kept in this browser clip by clip, a database a language. A browser may
// refuse to keep anything: that comes back as data, and the program goes on without.

import type { OwnClips } from "../voice/speaker.ts";
import { loneShelf, type OpenLoneShelf } from "./lone-shelf.ts";
import { soon } from "./soon.ts";

type FoundVoice =
  | { readonly kind: "found"; readonly clips: OwnClips }
  | { readonly kind: "refused" };

/** By phrase; null takes a clip out. */
export type VoiceChange = ReadonlyMap<string, Int16Array | null>;

/** Never rejects. */
export interface VoiceStore {
  /** What is kept in a shape of another make is passed over. */
  load(language: string): Promise<FoundVoice>;
  /** All of it or nothing; false means that the browser would not, and all is as it was. */
  change(language: string, change: VoiceChange): Promise<boolean>;
}

/** A whole voice is tens of megabytes; but a store that has not answered after so long will not, ms. */
const PATIENCE = 20_000;

export function voiceStore(patience = PATIENCE): VoiceStore {
  const shelves = new Map<string, OpenLoneShelf>();
  function shelf(language: string): OpenLoneShelf {
    const known = shelves.get(language) ?? loneShelf(`tankside-voice-${language}`);
    shelves.set(language, known);
    return known;
  }

  return {
    async load(language) {
      try {
        const reading = (await soon(shelf(language)(), patience)).transaction("kept");
        const [phrases, clips] = await soon(
          Promise.all([reading.store.getAllKeys(), reading.store.getAll()]),
          patience,
        );
        const kept = phrases.map((phrase, i) => [phrase, clips[i]] as const);
        return { kind: "found", clips: new Map(kept.filter(isClip)) };
      } catch {
        return { kind: "refused" };
      }
    },
    async change(language, change) {
      let abort = () => {};
      let givenUp = false;
      async function written(): Promise<void> {
        const base = await shelf(language)();
        // Told that it was not kept, nobody may find it kept after all.
        if (givenUp) return;
        const writing = base.transaction("kept", "readwrite");
        abort = () => writing.abort();
        // Heard of below, unless a write has thrown before that.
        writing.done.catch(() => {});
        for (const [phrase, samples] of change) {
          const write =
            samples === null ? writing.store.delete(phrase) : writing.store.put(samples, phrase);
          // One that fails ends the transaction, which is heard of there.
          write.catch(() => {});
        }
        await writing.done;
      }
      try {
        await soon(written(), patience);
        return true;
      } catch {
        givenUp = true;
        try {
          abort();
        } catch {
          // It has ended already, by the refusal that is told.
        }
        return false;
      }
    },
  };
}

function isClip(entry: readonly [unknown, unknown]): entry is readonly [string, Int16Array] {
  const [phrase, samples] = entry;
  return typeof phrase === "string" && samples instanceof Int16Array && samples.length > 0;
}
