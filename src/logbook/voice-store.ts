// A person's recorded phrases, kept in this browser clip by clip, a database a language. A browser may
// refuse to keep anything: that comes back as data, and the program goes on without.

import { createStore, entries, promisifyRequest, type UseStore } from "idb-keyval";
import type { OwnClips } from "../voice/speaker.ts";
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
  const opened = new Map<string, UseStore>();
  // Opened at the first use, and inside a promise: `indexedDB` may be missing, or throw by its very name.
  function store(language: string): UseStore {
    const known = opened.get(language) ?? createStore(`tankside-voice-${language}`, "kept");
    opened.set(language, known);
    return known;
  }

  return {
    async load(language) {
      try {
        const kept: readonly [unknown, unknown][] = await soon(entries(store(language)), patience);
        return { kind: "found", clips: new Map(kept.filter(isClip)) };
      } catch {
        return { kind: "refused" };
      }
    },
    async change(language, change) {
      let writing: IDBTransaction | null = null;
      let givenUp = false;
      try {
        const written = store(language)("readwrite", async (clips) => {
          writing = clips.transaction;
          // Told that it was not kept, nobody may find it kept after all.
          if (givenUp) writing.abort();
          for (const [phrase, samples] of change) {
            if (samples === null) clips.delete(phrase);
            else clips.put(samples, phrase);
          }
          await promisifyRequest(writing);
        });
        await soon(written, patience);
        return true;
      } catch {
        givenUp = true;
        abort(writing);
        return false;
      }
    },
  };
}

function isClip(entry: readonly [unknown, unknown]): entry is [string, Int16Array] {
  const [phrase, samples] = entry;
  return typeof phrase === "string" && samples instanceof Int16Array && samples.length > 0;
}

function abort(writing: IDBTransaction | null): void {
  try {
    writing?.abort();
  } catch {
    // It has ended already, by the refusal that is told.
  }
}
