// A sound check that begins, ends and fails when the test says so, and notes what was asked of it.
import { act } from "@testing-library/preact";
import type { Beats, SoundCheck } from "../../src/live/sound-check.ts";
import type { Language } from "../../src/units/language.ts";

interface Asked {
  readonly what: "say" | "beats";
  readonly language: Language;
}

export function checkByHand() {
  const asked: Asked[] = [];
  let stops = 0;
  let begun = (_: Beats) => {};
  let ended = (_: readonly number[] | null) => {};
  let refused = (_: Error) => {};
  const port: SoundCheck = {
    say(language) {
      asked.push({ what: "say", language });
      return new Promise((resolve, reject) => {
        ended = () => resolve();
        refused = reject;
      });
    },
    beats(language) {
      asked.push({ what: "beats", language });
      return new Promise((resolve, reject) => {
        begun = resolve;
        refused = reject;
      });
    },
    stop() {
      stops += 1;
      ended(null);
    },
  };
  return {
    port,
    asked,
    stops: () => stops,
    /** The beats that were asked for sound from now on. */
    begin: () =>
      heard(() => {
        begun({
          over: new Promise((resolve) => {
            ended = resolve;
          }),
        });
      }),
    /** What was heard has ended. */
    end: (beats: readonly number[] = []) => heard(() => ended(beats)),
    /** What was asked for cannot be had. */
    refuse: () => heard(() => refused(new Error("no voice to be had"))),
  };
}

/** Lets whoever waits for it hear of it. */
const heard = (happens: () => void) =>
  act(async () => {
    happens();
    await new Promise((resolve) => setTimeout(resolve));
  });
