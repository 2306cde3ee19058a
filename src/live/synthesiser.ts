// The voices of the device as a port: what they are, and a way to make one speak. They cannot be
// captured, nor told how long to take, and may never answer: whoever uses them watches over that.

interface SystemVoice {
  readonly name: string;
  /** BCP 47. */
  readonly language: string;
}

/** What is heard of one utterance; any of it may never come, or come after it was cancelled. */
export interface Utterance {
  started(): void;
  ended(): void;
  failed(): void;
}

export interface Synthesiser {
  voices(): readonly SystemVoice[];
  /** Calls back whenever the voices have become others, until the returned function is called. */
  whenChanged(act: () => void): () => void;
  /** At the voice's own pace. */
  speak(text: string, voice: string, utterance: Utterance): void;
  /** Ends whatever is being spoken or waits to be. */
  cancel(): void;
}

/** Null where the browser has no such thing. */
export function browserSynthesiser(): Synthesiser | null {
  const synthesis = "speechSynthesis" in globalThis ? globalThis.speechSynthesis : undefined;
  if (synthesis === undefined) return null;
  return {
    voices: () => synthesis.getVoices().map(({ name, lang }) => ({ name, language: lang })),
    whenChanged(act) {
      synthesis.addEventListener("voiceschanged", act);
      return () => synthesis.removeEventListener("voiceschanged", act);
    },
    speak(text, voice, { started, ended, failed }) {
      const said = new SpeechSynthesisUtterance(text);
      const known = synthesis.getVoices().find(({ name }) => name === voice);
      if (known === undefined) {
        failed();
        return;
      }
      said.voice = known;
      said.lang = known.lang;
      said.onstart = started;
      said.onend = ended;
      said.onerror = failed;
      synthesis.speak(said);
    },
    cancel: () => synthesis.cancel(),
  };
}

/** Seconds, and a way to be called later: any clock will do that goes on while nothing is heard. */
export interface Clock {
  now(): number;
  /** Returns the way to call it off. */
  after(seconds: number, act: () => void): () => void;
}
