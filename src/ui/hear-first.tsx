// "Did you hear this, with the tap running?" A test as loud as the run, and its two answers, in that order. What
// follows from the answer is the place's affair.
import { useEffect, useRef, useState } from "preact/hooks";
import type { SoundCheck } from "../live/sound-check.ts";
import type { Language } from "../units/language.ts";
import { lateWords } from "./language.ts";

export type Heard = "yes" | "no" | "not-said";

interface HearFirstProps {
  /** What the voice speaks. */
  readonly language: Language;
  readonly soundCheck: Pick<SoundCheck, "say" | "stop">;
  readonly heard: Heard;
  readonly answer: (heard: Heard) => void;
}

type Test = "not-yet" | "playing" | "played" | "failed";

export function HearFirst({ language, soundCheck, heard, answer }: HearFirstProps) {
  const [test, setTest] = useState<Test>("not-yet");
  /** Counts the times it was played: one that a new one has cut off ends nothing. */
  const playing = useRef(0);
  useEffect(
    () => () => {
      playing.current += 1;
      soundCheck.stop();
    },
    [soundCheck],
  );

  async function play(): Promise<void> {
    playing.current += 1;
    const mine = playing.current;
    answer("not-said");
    setTest("playing");
    const ended = await soundCheck.say(language).then(
      () => "played" as const,
      () => "failed" as const,
    );
    if (mine === playing.current) setTest(ended);
  }

  /** Once it was played, its answers come next; after a no, it again. */
  const isNext = test !== "played" || heard === "no";
  const words = lateWords.value.hearFirst;
  return (
    <section class="hear-first" aria-label={words.title}>
      <h2>{words.title}</h2>
      <p>{words.how}</p>
      <button type="button" class={isNext ? "first" : "first second"} onClick={play}>
        {test === "playing" ? words.playing : test === "played" ? words.playAgain : words.play}
        <span>{words.playHint}</span>
      </button>
      <p role="status">{statusOf(test)}</p>
      {test === "played" && (
        <div class="hear-answers">
          <button type="button" aria-pressed={heard === "yes"} onClick={() => answer("yes")}>
            {words.heard}
          </button>
          <button type="button" aria-pressed={heard === "no"} onClick={() => answer("no")}>
            {words.notHeard}
          </button>
        </div>
      )}
      <div role="status">
        {test === "played" && heard === "yes" && <p>{words.good}</p>}
        {test === "played" && heard === "no" && <Advice />}
      </div>
    </section>
  );
}

const Advice = () => (
  <>
    <p>{lateWords.value.hearFirst.mend}</p>
    <ul>
      {lateWords.value.hearFirst.advice.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  </>
);

function statusOf(test: Test): string {
  const words = lateWords.value.hearFirst;
  switch (test) {
    case "not-yet":
      return "";
    case "playing":
      return words.listen;
    case "failed":
      return words.failed;
    case "played":
      return words.ask;
  }
}
