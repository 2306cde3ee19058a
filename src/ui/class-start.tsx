// A class that starts together: when, how long it is to then, the press that says one is ready, and the beginning by
// itself at that minute. The press also lets the page sound, which browsers allow nobody else. The minute stands, through
// a reload too, until it has passed or is put aside.
import type { Signal } from "@preact/signals";
import { useLayoutEffect, useRef, useState } from "preact/hooks";
import type { VoiceSounds } from "../live/voice-sounds.ts";
import { sayable } from "../script/script.ts";
import { writeClockTime } from "../units/clock-time.ts";
import type { Language } from "../units/language.ts";
import { lateWords } from "./language.ts";
import { dayAndTime } from "./write-up-model.ts";

export interface ClassStartPorts {
  /** ms since 1970 of the minute at which it starts; null where no link said. */
  readonly classAt: Signal<number | null>;
  readonly sounds: Pick<VoiceSounds, "say" | "script" | "hush">;
  /** ms since 1970, by the device's clock. */
  readonly now: () => number;
  /** Calls back again and again, until the returned function is called. */
  readonly often: (show: () => void) => () => void;
  readonly keepAwake: (on: boolean) => void;
}

interface ClassStartProps extends ClassStartPorts {
  readonly at: number;
  readonly language: Language;
  /** A stop stands above that nobody has accepted. */
  readonly held: boolean;
  readonly begin: () => void;
}

/** Seconds before it at which a class is told, besides the press itself. */
const TOLD = [600, 300, 120, 60, 30, 10];
/** Not again so soon after it was told, ms. */
const AGAIN = 15_000;
/** A page that slept over its minute by more than this does not begin: the class is elsewhere, ms. */
const TOO_LATE = 20_000;
/** Further off, the date says enough, ms. */
const DAY = 86_400_000;

export function ClassStart(props: ClassStartProps) {
  const { classAt, at, language, held, begin, sounds, now, often, keepAwake } = props;
  const [ready, setReady] = useState(false);
  const [left, setLeft] = useState(at - now());
  const latest = useRef({ begin, held });
  latest.current = { begin, held };
  const words = lateWords.value.classStart;
  const passed = left < -TOO_LATE;

  // With the leaving itself: what is left must not begin, nor go on counting.
  useLayoutEffect(() => often(() => setLeft(at - now())), [at]);
  useLayoutEffect(() => {
    if (!ready) return;
    keepAwake(true);
    let before = at - now();
    let told = before;
    const stop = often(() => {
      const still = at - now();
      if (still <= 0) {
        stop();
        setReady(false);
        if (still < -TOO_LATE || latest.current.held) return;
        classAt.value = null;
        sounds.hush();
        latest.current.begin();
      } else {
        const due = TOLD.find((seconds) => still <= seconds * 1000 && before > seconds * 1000);
        before = still;
        if (due === undefined || told - still < AGAIN) return;
        told = still;
        void tell(due);
      }
    });
    return () => {
      stop();
      keepAwake(false);
    };
  }, [ready, at]);

  /** What cannot be said stands on the screen. */
  async function tell(seconds: number): Promise<void> {
    const script = await sounds.script(language);
    const [minute, second] = [sayable("mark", seconds / 60), sayable("seconds", seconds)];
    const phrases =
      minute !== null
        ? script.say("soon.minutes", "brief", { mark: minute })
        : second !== null
          ? script.say("soon.seconds", "brief", { seconds: second })
          : [];
    for (const phrase of phrases) await sounds.say(phrase, language).catch(() => {});
  }

  function turn(): void {
    if (ready) {
      sounds.hush();
      setReady(false);
    } else if (!held) {
      setReady(true);
      void tell((at - now()) / 1000);
    }
  }

  function putAside(): void {
    sounds.hush();
    setReady(false);
    classAt.value = null;
  }

  return (
    <section class="class-start" aria-labelledby="class-start-title">
      <h2 id="class-start-title">{words.title}</h2>
      <p>
        {words.at(dayAndTime(at))} {passed ? words.passed : words.clocks}
      </p>
      {!passed && (
        <>
          {left < DAY && (
            <p role="timer" aria-live="off">
              {words.left(writeClockTime(Math.max(0, Math.ceil(left / 1000))))}
            </p>
          )}
          <button
            type="button"
            class={ready ? "first second" : "first"}
            aria-disabled={held}
            onClick={turn}
          >
            {ready ? words.notReady : words.ready}
          </button>
          <p role="status">{held ? words.stopFirst : ready && words.waits}</p>
          <button type="button" class="plain" onClick={putAside}>
            {words.putAside}
          </button>
        </>
      )}
    </section>
  );
}
