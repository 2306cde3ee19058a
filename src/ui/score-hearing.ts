// A section being heard outside a run, as signals for the screen. Sound keeps its own time; what
// ticks here only shows it.
import { type ReadonlySignal, signal } from "@preact/signals";
import type { Hearing, Runs } from "../live/runs.ts";
import type { Section, Timeline } from "../timeline/score.ts";

export interface Heard {
  /** Seconds into the section while it is heard, else null. */
  readonly elapsed: ReadonlySignal<number | null>;
  /** Whether it sounds, or is about to. */
  readonly on: ReadonlySignal<boolean>;
  readonly refused: ReadonlySignal<boolean>;
  /** To be called from a press. */
  hear(timeline: Timeline, section: Section, from?: number): void;
  stop(): void;
}

/** @param show calls back again and again for the display, until the returned function is called. */
export function openHearing(
  runs: Pick<Runs, "hear">,
  show: (act: () => void) => () => void,
): Heard {
  const elapsed = signal<number | null>(null);
  const on = signal(false);
  const refused = signal(false);
  let silence = () => {};
  /** Counts what was asked for, so that what comes too late is known for it. */
  let asked = 0;

  function end(): void {
    asked += 1;
    silence();
    silence = () => {};
    elapsed.value = null;
    on.value = false;
  }

  function follow(hearing: Hearing, mine: number): void {
    const stopShowing = show(() => {
      elapsed.value = hearing.elapsed();
    });
    elapsed.value = hearing.elapsed();
    silence = () => {
      stopShowing();
      hearing.stop();
    };
    const over = () => {
      if (asked === mine) end();
    };
    hearing.over.then(over, over);
  }

  return {
    elapsed,
    on,
    refused,
    hear(timeline, section, from = 0) {
      end();
      const mine = asked;
      on.value = true;
      refused.value = false;
      runs.hear(timeline, section, from).then(
        (hearing) => {
          if (asked === mine) follow(hearing, mine);
          else hearing.stop();
        },
        () => {
          if (asked !== mine) return;
          end();
          refused.value = true;
        },
      );
    },
    stop: end,
  };
}

/** With every frame; once a second for those who want nothing to move. */
export function showing(act: () => void): () => void {
  if (window.matchMedia("(prefers-reduced-motion: reduce)").matches) {
    const timer = setInterval(act, 1000);
    return () => clearInterval(timer);
  }
  let frame = requestAnimationFrame(function again() {
    act();
    frame = requestAnimationFrame(again);
  });
  return () => cancelAnimationFrame(frame);
}
