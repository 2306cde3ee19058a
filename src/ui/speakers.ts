// Stores in, who speaks on this device out: the choice, the recorded clips of each language, and what a
// run is to be spoken by.
import { type ReadonlySignal, signal } from "@preact/signals";
import type { SpeakerChoice, SpeakerStore } from "../logbook/speaker-store.ts";
import type { VoiceStore } from "../logbook/voice-store.ts";
import { type Language, languageOf } from "../units/language.ts";
import type { DevicePace } from "../voice/device-pace.ts";
import { bundled, type Speaker } from "../voice/speaker.ts";
import { type VoiceShelf, voiceShelf } from "./voice-shelf.ts";

export interface Speakers {
  readonly choice: ReadonlySignal<SpeakerChoice>;
  /** False where the browser will not keep it: then it holds until the page goes away. */
  choose(choice: SpeakerChoice): boolean;
  shelf(language: Language): VoiceShelf;
  /** Null where the voice has not been measured. */
  pace(voice: string): DevicePace | null;
  keepPace(voice: string, pace: DevicePace): boolean;
  /** For a run in a language: the bundled voice wherever the chosen one cannot speak it. */
  speaker(language: Language): Promise<Speaker>;
}

export function openSpeakers(voices: VoiceStore, choices: SpeakerStore): Speakers {
  const choice = signal(choices.load());
  const shelves = new Map<Language, VoiceShelf>();

  function shelf(language: Language): VoiceShelf {
    const known = shelves.get(language) ?? voiceShelf(voices, language);
    shelves.set(language, known);
    return known;
  }

  async function own(language: Language): Promise<Speaker> {
    const mine = shelf(language);
    await mine.ready;
    return { kind: "clips", own: mine.clips.value };
  }

  return {
    choice,
    choose(next) {
      choice.value = next;
      return choices.keep(next);
    },
    shelf,
    pace: choices.pace,
    keepPace: choices.keepPace,
    async speaker(language) {
      const chosen = choice.value;
      switch (chosen.kind) {
        case "bundled":
          return bundled;
        case "own":
          return own(language);
        case "device": {
          const pace = choices.pace(chosen.voice);
          if (pace === null || languageOf(chosen.language) !== language) return bundled;
          return { kind: "device", voice: chosen.voice, pace };
        }
      }
    },
  };
}
