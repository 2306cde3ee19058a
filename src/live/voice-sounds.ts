// What the recording of a voice and asking by ear may ask of the sounds, as a port: implemented beside the runs,
// which have the run's pack open already, and by hand in tests.
import type { Script } from "../script/script.ts";
import type { Language } from "../units/language.ts";

export interface VoiceSounds {
  /**
   * Fetched if that has not been done; rejects where it cannot be had.
   * @param pack to be asked by ear, what that says is fetched too.
   */
  script(language: Language, pack?: "ear"): Promise<Script>;
  /** A phrase in the bundled voice. To be called from a press; resolves when it is over or hushed. */
  say(text: string, language: Language): Promise<void>;
  /** A clip as it would sound in a run, under the same conditions. */
  play(samples: Int16Array): Promise<void>;
  /** Ends whatever is heard of these. */
  hush(): void;
}
