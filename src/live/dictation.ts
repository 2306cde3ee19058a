// Speech in, text out, by the browser's own recogniser, where it has one: on the device, or only once the person
// has agreed that what is heard may be sent away. Nothing is opened before it is asked for.

export interface Dictation {
  /** Whether words of a language are recognised on this device; where that cannot be told, they are not. */
  here(language: string): Promise<boolean>;
  /** To be called from a press. Each stretch of words is told once; `over`, once, whichever way it ended. */
  start(parts: DictationParts): () => void;
}

interface DictationParts {
  readonly language: string;
  /** Never anywhere else than on this device. */
  readonly onlyHere: boolean;
  readonly heard: (words: string) => void;
  readonly over: (how: "stopped" | "failed") => void;
}

/** As much of the Web Speech API as is used; browsers have it under two names. */
interface Recogniser extends EventTarget {
  lang: string;
  continuous: boolean;
  interimResults: boolean;
  processLocally?: boolean;
  start(): void;
  stop(): void;
}

interface Recognisers {
  new (): Recogniser;
  available?(asked: {
    readonly langs: readonly string[];
    readonly processLocally: boolean;
  }): Promise<string>;
}

interface Heard extends Event {
  readonly resultIndex: number;
  readonly results: ArrayLike<
    ArrayLike<{ readonly transcript: string }> & { readonly isFinal: boolean }
  >;
}

/** null where the browser has none. */
export function browserDictation(
  world: {
    readonly SpeechRecognition?: unknown;
    readonly webkitSpeechRecognition?: unknown;
  } = globalThis as object,
): Dictation | null {
  const Speech = (world.SpeechRecognition ?? world.webkitSpeechRecognition) as
    | Recognisers
    | undefined;
  if (Speech === undefined) return null;
  return {
    async here(language) {
      try {
        const asked = { langs: [language], processLocally: true };
        return (await Speech.available?.(asked)) === "available";
      } catch {
        return false;
      }
    },
    start({ language, onlyHere, heard, over }) {
      const recogniser = new Speech();
      recogniser.lang = language;
      recogniser.continuous = true;
      recogniser.interimResults = false;
      if (onlyHere) recogniser.processLocally = true;
      let failed = false;
      recogniser.addEventListener("result", (event) => {
        const { results, resultIndex } = event as Heard;
        for (const result of Array.from(results).slice(resultIndex)) {
          const words = result[0]?.transcript.trim() ?? "";
          if (result.isFinal && words !== "") heard(words);
        }
      });
      recogniser.addEventListener("error", () => {
        failed = true;
      });
      recogniser.addEventListener("end", () => over(failed ? "failed" : "stopped"), { once: true });
      try {
        recogniser.start();
      } catch {
        over("failed");
      }
      return () => recogniser.stop();
    },
  };
}
