// Why and how of a step, spoken and written out when asked: what a rehearsal tells of it (reasonsOf), for whoever
// explains a session step by step. Apart from the hearing of the step, which sounds as the run will.
import { useLayoutEffect, useRef, useState } from "preact/hooks";
import type { VoiceSounds } from "../live/voice-sounds.ts";
import type { Language } from "../units/language.ts";
import { lateWords } from "./language.ts";

export interface Why {
  readonly on: boolean;
  readonly refused: boolean;
  /** What was told last. */
  readonly told: readonly string[];
  /** To be called from a press. */
  tell(): void;
  stop(): void;
}

/** @param keys of sentences of the script. */
export function useWhy(sounds: VoiceSounds, spoken: Language, keys: readonly string[]): Why {
  const [on, setOn] = useState(false);
  const [refused, setRefused] = useState(false);
  const [told, setTold] = useState<readonly string[]>([]);
  /** Counts what was asked for, so that what comes too late is known for it. */
  const asked = useRef(0);

  function stop(): void {
    asked.current += 1;
    sounds.hush();
    setOn(false);
  }

  async function tell(): Promise<void> {
    stop();
    const mine = asked.current;
    setOn(true);
    setRefused(false);
    try {
      const script = await sounds.script(spoken);
      const sentences = keys.map((key) => script.say(key, "full"));
      if (asked.current === mine) setTold(sentences.map((phrases) => phrases.join(" ")));
      for (const phrase of sentences.flat()) {
        if (asked.current !== mine) return;
        await sounds.say(phrase, spoken);
      }
    } catch {
      if (asked.current === mine) setRefused(true);
    }
    if (asked.current === mine) setOn(false);
  }

  // With the leaving itself: what is left must not go on sounding.
  useLayoutEffect(
    () => () => {
      asked.current += 1;
      sounds.hush();
    },
    [sounds],
  );
  return { on, refused, told, tell: () => void tell(), stop };
}

/** What was told stays in view. Not live: it is heard already. */
export function WhyTold({ why, spoken }: { readonly why: Why; readonly spoken: Language }) {
  return (
    <>
      <p role="status">{why.refused && lateWords.value.walk.notHeard}</p>
      {why.told.length > 0 && (
        <ul class="why-told" lang={spoken}>
          {why.told.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
    </>
  );
}
