// Dictating a note: off until it is asked for, and where the browser may send what it hears away, until that has
// been said and agreed to. What is understood goes behind what is typed.
import { useEffect, useRef, useState } from "preact/hooks";
import type { Dictation } from "../live/dictation.ts";
import { lateWords, locale } from "./language.ts";

interface DictateProps {
  readonly dictation: Dictation;
  readonly heard: (words: string) => void;
}

type State = "off" | "asks" | "listens" | "failed";

export function Dictate({ dictation, heard }: DictateProps) {
  const [state, setState] = useState<State>("off");
  const stop = useRef(() => {});
  const hears = useRef(heard);
  hears.current = heard;
  useEffect(() => () => stop.current(), []);
  const said = lateWords.value.dictate;

  async function begin(): Promise<void> {
    if (await dictation.here(locale.value)) listen(true);
    else setState("asks");
  }

  function listen(onlyHere: boolean): void {
    setState("listens");
    stop.current = dictation.start({
      language: locale.value,
      onlyHere,
      heard: (words) => hears.current(words),
      over: (how) => setState(how === "failed" ? "failed" : "off"),
    });
  }

  return (
    <div class="dictate">
      {state === "listens" ? (
        <button type="button" onClick={() => stop.current()}>
          {said.stop}
        </button>
      ) : (
        <button type="button" class="plain" aria-expanded={state === "asks"} onClick={begin}>
          {said.start}
        </button>
      )}
      {state === "asks" && (
        <div class="asked">
          <p>{said.away}</p>
          <p class="choices">
            <button type="button" onClick={() => listen(false)}>
              {said.agree}
            </button>
            <button type="button" onClick={() => setState("off")}>
              {said.decline}
            </button>
          </p>
        </div>
      )}
      <p role="status">
        {state === "listens" && said.listening}
        {state === "failed" && said.failed}
      </p>
    </div>
  );
}
