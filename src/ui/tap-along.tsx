// By how much the headphones play late, measured by tapping along with wet hands: a delay in seconds out.
// What they come to is worked out in live/latency.ts. Past 200 lines because target, taps and result are one screen.
import type { Ref } from "preact";
import { useEffect, useId, useLayoutEffect, useRef, useState } from "preact/hooks";
import { delayOf, type MeasuredDelay, mostDelay } from "../live/latency.ts";
import type { SoundCheck } from "../live/sound-check.ts";
import type { Language } from "../units/language.ts";
import { fixed, lateWords } from "./language.ts";
import { isOnOther, pressOf, WetDialog } from "./wet-dialog.tsx";

export interface TapAlongPorts {
  readonly soundCheck: Pick<SoundCheck, "beats" | "stop">;
  /** ms on the clock of `performance.now()`. */
  readonly now?: () => number;
  readonly after: (ms: number, act: () => void) => () => void;
}

interface TapAlongProps extends TapAlongPorts {
  readonly language: Language;
  /** Seconds. */
  readonly keep: (delay: number) => void;
  readonly leave: () => void;
}

type Stage =
  | { readonly kind: "ready" | "fetching" | "tapping" | "failed" }
  | { readonly kind: "done"; readonly found: MeasuredDelay; readonly at: number };

/** After the last beat has died, the latest tap to it is waited for, ms: the longest delay, and a slow hand. */
const LAST_TAP = mostDelay * 1000 + 300;
/** Whoever goes on tapping is not to press what has come under the finger, ms. */
const STILL_TAPPING = 1000;

export function TapAlong({
  language,
  soundCheck,
  keep,
  leave,
  after,
  now = () => performance.now(),
}: TapAlongProps) {
  const [stage, setStage] = useState<Stage>({ kind: "ready" });
  const [taps, setTaps] = useState<readonly number[]>([]);
  /** As drawn or not: what is worked out at the end must have the last of them. */
  const all = useRef<readonly number[]>([]);
  const main = useRef<HTMLButtonElement>(null);
  const gone = useRef(() => {});
  const done = stage.kind === "done";
  useLayoutEffect(() => main.current?.focus(), [done]);
  useEffect(
    () => () => {
      gone.current();
      soundCheck.stop();
    },
    [soundCheck],
  );

  function gather(next: readonly number[]): void {
    all.current = next;
    setTaps(next);
  }

  async function begin(): Promise<void> {
    let left = false;
    gone.current = () => {
      left = true;
    };
    gather([]);
    setStage({ kind: "fetching" });
    try {
      const { over } = await soundCheck.beats(language);
      if (left) return;
      setStage({ kind: "tapping" });
      const beats = await over;
      if (left || beats === null) return;
      gone.current = after(LAST_TAP, () =>
        setStage({ kind: "done", found: delayOf(beats, all.current), at: now() }),
      );
    } catch {
      if (!left) setStage({ kind: "failed" });
    }
  }

  /** The sheet's one press. @param since ms since the finger came down. */
  function press(since: number): void {
    if (stage.kind === "ready" || stage.kind === "failed") void begin();
    if (stage.kind === "tapping") gather([...all.current, (now() - since) / 1000]);
  }

  const isMeant = () => !done || now() - stage.at >= STILL_TAPPING;
  const words = lateWords.value.tapAlong;
  return (
    <WetDialog
      label={words.name}
      leave={leave}
      keys={(event) => {
        if (event.key !== "Enter" && event.key !== " ") return false;
        if (event.repeat || !isMeant()) return true;
        if (done || isOnOther(event, main.current)) return false;
        press(ago(event));
        return true;
      }}
    >
      {done ? (
        <Result
          found={stage.found}
          main={main}
          keep={(delay) => isMeant() && keep(delay)}
          again={() => isMeant() && void begin()}
        />
      ) : (
        <Target stage={stage.kind} taps={taps.length} press={press} main={main} />
      )}
      <div class="wet-tools">
        <button type="button" onClick={() => isMeant() && leave()}>
          {words.leave}
        </button>
      </div>
      <p class="unseen" role="status">
        {statusOf(stage)}
      </p>
    </WetDialog>
  );
}

interface TargetProps {
  readonly stage: Exclude<Stage["kind"], "done">;
  readonly taps: number;
  readonly press: (since: number) => void;
  readonly main: Ref<HTMLButtonElement>;
}

/**
 * Nearly all of the screen, and its name is what it shows. The taps are counted beside it, and for the eye alone:
 * said aloud, they would cover the beats.
 */
function Target({ stage, taps, press, main }: TargetProps) {
  const advice = useId();
  const words = lateWords.value.tapAlong;
  return (
    <>
      <p class="wet-advice wet-beside" id={advice}>
        {words.advice}
      </p>
      <button
        type="button"
        class="wet-press"
        ref={main}
        aria-describedby={advice}
        // To start the sound, browsers want a whole press; a tap counts as the finger comes down.
        {...(stage === "tapping"
          ? pressOf((event) => press(ago(event)))
          : { onClick: () => press(0) })}
      >
        <span class="wet-turn wet-next">{nextOf(stage)}</span>
        <span class="wet-spread">{stage === "tapping" && ` ${words.tapHint}`}</span>
      </button>
      <p class="wet-spread wet-beside" aria-hidden="true">
        {words.taps(taps)}
      </p>
    </>
  );
}

function nextOf(stage: TargetProps["stage"]): string {
  const words = lateWords.value.tapAlong;
  switch (stage) {
    case "ready":
      return words.start;
    case "fetching":
      return words.fetching;
    case "tapping":
      return words.tap;
    case "failed":
      return words.failed;
  }
}

interface ResultProps {
  readonly found: MeasuredDelay;
  readonly main: Ref<HTMLButtonElement>;
  readonly keep: (delay: number) => void;
  readonly again: () => void;
}

function Result({ found, main, keep, again }: ResultProps) {
  const words = lateWords.value.tapAlong;
  const delay = found.kind === "measured" ? found.delay : null;
  return (
    <div class="wet-result">
      <p class={found.kind === "measured" ? "wet-next" : "wet-spread"}>{resultOf(found)}</p>
      {found.kind === "measured" && (
        <p class="wet-spread">{words.sure(hundredths(found.spread))}</p>
      )}
      <div class="wet-keys">
        {delay !== null && (
          <button type="button" class="wet-first" ref={main} onClick={() => keep(delay)}>
            {delay > 0 ? words.keep(hundredths(delay)) : words.keepNone}
          </button>
        )}
        {delay === null ? (
          <button type="button" class="wet-first" ref={main} onClick={again}>
            {words.again}
          </button>
        ) : (
          <button type="button" onClick={again}>
            {words.again}
          </button>
        )}
        {delay !== 0 && (
          <button type="button" onClick={() => keep(0)}>
            {words.none}
          </button>
        )}
      </div>
    </div>
  );
}

function resultOf(found: MeasuredDelay): string {
  const words = lateWords.value.tapAlong;
  if (found.kind === "refused") return words.refused[found.why];
  return found.delay > 0 ? words.late(hundredths(found.delay)) : words.notLate;
}

/** Told to those who listen to the page; nothing while they are to hear the beats. */
function statusOf(stage: Stage): string {
  const words = lateWords.value.tapAlong;
  switch (stage.kind) {
    case "ready":
    case "tapping":
      return "";
    case "fetching":
      return words.fetching;
    case "failed":
      return words.failed;
    case "done":
      return resultOf(stage.found);
  }
}

/** Always two decimals, and the unit on the line of its number. */
export const hundredths = (seconds: number): string => `${fixed(seconds, 2)}\u00a0s`;

/** ms since an event happened, which a busy page hears of late. */
const ago = (event: Event): number => Math.max(0, performance.now() - event.timeStamp);
