// A clock that is moved by hand, and a synthesiser on it that behaves as it is told: late, slow, stuck,
// or without its events. What it really makes heard is noted.
import type { Clock, Synthesiser, Utterance } from "../../src/live/synthesiser.ts";

export interface Behaviour {
  /** Seconds before it begins, and for each letter. */
  readonly delay: number;
  readonly perLetter: number;
  /** Events that never come, and cancelling that changes nothing before it has begun. */
  readonly never?: "start" | "end" | "anything";
  readonly deaf?: boolean;
  readonly fails?: boolean;
}

interface HeardSpeech {
  readonly text: string;
  readonly from: number;
  to: number;
}

export function handClock() {
  let now = 0;
  let waiting: { readonly at: number; readonly act: () => void }[] = [];
  const clock: Clock = {
    now: () => now,
    after(seconds, act) {
      const entry = { at: now + Math.max(0, seconds), act };
      waiting.push(entry);
      return () => {
        waiting = waiting.filter((it) => it !== entry);
      };
    },
  };
  return {
    clock,
    /** Goes on, each timer at its own time; with `asleep`, timers come only at the end, as in a frozen page. */
    pass(seconds: number, asleep = false) {
      const end = now + seconds;
      if (asleep) now = end;
      for (;;) {
        const next = waiting
          .filter(({ at }) => at <= end)
          .reduce<(typeof waiting)[number] | null>((a, b) => (a && a.at <= b.at ? a : b), null);
        if (next === null) break;
        waiting = waiting.filter((it) => it !== next);
        now = Math.max(now, next.at);
        next.act();
      }
      now = end;
    },
  };
}

/** @param behave asked for each utterance anew. */
export function synthesiserByHand(clock: Clock, behave: (text: string) => Behaviour) {
  const heard: HeardSpeech[] = [];
  let cancelled = 0;
  let current: (() => void) | null = null;
  const synthesiser: Synthesiser = {
    voices: () => [{ name: "Ada", language: "en-GB" }],
    whenChanged: () => () => {},
    speak(text, _, utterance: Utterance) {
      const { delay, perLetter, never, deaf, fails } = behave(text);
      let sounding: HeardSpeech | null = null;
      let callOff = () => {};
      if (fails) {
        utterance.failed();
        return;
      }
      if (never === "anything") return;
      callOff = clock.after(delay, () => {
        sounding = { text, from: clock.now(), to: Number.POSITIVE_INFINITY };
        heard.push(sounding);
        callOff = clock.after(text.length * perLetter, () => {
          if (sounding !== null) sounding.to = clock.now();
          current = null;
          if (never !== "end") utterance.ended();
        });
        if (never !== "start") utterance.started();
      });
      current = () => {
        if (deaf && sounding === null) return;
        callOff();
        if (sounding !== null) sounding.to = clock.now();
        current = null;
        // Browsers tell of what was cancelled as of something that failed.
        utterance.failed();
      };
    },
    cancel() {
      cancelled += 1;
      current?.();
    },
  };
  return { synthesiser, heard, cancels: () => cancelled };
}
