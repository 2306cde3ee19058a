// The clips of one language: what is recorded, and the acts on it, each of which can be taken back. Kept
// through a port, and what the browser will not keep is held as long as the page is open.
import { computed, type ReadonlySignal, signal } from "@preact/signals";
import type { VoiceChange, VoiceStore } from "../logbook/voice-store.ts";
import type { Language } from "../units/language.ts";
import { noClips, type OwnClips } from "../voice/speaker.ts";

export interface VoiceShelf {
  readonly language: Language;
  readonly clips: ReadonlySignal<OwnClips>;
  readonly canUndo: ReadonlySignal<boolean>;
  /** Resolves once what was kept has been read; false where the browser would not let it. */
  readonly ready: Promise<boolean>;
  /** False where the browser did not keep it: then it is here until the page goes away. */
  change(change: VoiceChange): Promise<boolean>;
  /** Takes the last change back; false as above. */
  undo(): Promise<boolean>;
}

/** The calls to the store go one after the other, in the order of the acts. */
export function voiceShelf(store: VoiceStore, language: Language): VoiceShelf {
  const clips = signal<OwnClips>(noClips);
  const past = signal<readonly VoiceChange[]>([]);

  const ready = store.load(language).then((found) => {
    // What was recorded while the rest was being read stays above it.
    if (found.kind === "found") clips.value = new Map([...found.clips, ...clips.value]);
    return found.kind === "found";
  });
  let last: Promise<unknown> = ready;

  function apply(change: VoiceChange): Promise<boolean> {
    const next = new Map(clips.value);
    for (const [text, samples] of change) {
      if (samples === null) next.delete(text);
      else next.set(text, samples);
    }
    clips.value = next;
    const kept = last.then(() => store.change(language, change));
    last = kept;
    return kept;
  }

  return {
    language,
    clips,
    canUndo: computed(() => past.value.length > 0),
    ready,
    async change(change) {
      await ready;
      const inverse = new Map(
        [...change.keys()].map((text) => [text, clips.value.get(text) ?? null]),
      );
      past.value = [...past.value, inverse];
      return apply(change);
    },
    async undo() {
      const inverse = past.value.at(-1);
      if (inverse === undefined) return true;
      past.value = past.value.slice(0, -1);
      return apply(inverse);
    },
  };
}
