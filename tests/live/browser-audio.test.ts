// The page's audio context and the one that takes its place, their clocks and the page's moved by hand.
import { afterEach, describe, expect, test, vi } from "vitest";
import { browserAudio } from "../../src/live/browser-audio.ts";

afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

function audioByHand() {
  const contexts: { currentTime: number; state: string }[] = [];
  let now = 100;
  let goesOn = true;
  vi.spyOn(performance, "now").mockImplementation(() => now * 1000);
  class ByHand {
    currentTime = 0;
    state = "running";
    constructor() {
      contexts.push(this);
    }
    async resume(): Promise<void> {}
    async close(): Promise<void> {}
    getOutputTimestamp() {
      return { contextTime: this.currentTime, performanceTime: now * 1000 };
    }
  }
  vi.stubGlobal("AudioContext", ByHand);
  const audio = browserAudio();
  audio.context();
  return {
    audio,
    contexts,
    still(on: boolean) {
      goesOn = !on;
    },
    /** So many looks, a second apart. */
    looks(times: number) {
      for (let look = 0; look < times; look += 1) {
        now += 1;
        const last = contexts.at(-1);
        if (goesOn && last !== undefined) last.currentTime += 1;
        audio.check();
      }
    },
  };
}

describe("A context that is dead", () => {
  test("is told of as replaced only when another sounds in its place, and once", () => {
    const { audio, contexts, looks, still } = audioByHand();
    let told = 0;
    audio.onAnother(() => {
      told += 1;
    });
    looks(5);
    still(true);
    looks(8);
    expect([contexts.length, told]).toEqual([3, 0]);
    still(false);
    looks(5);
    expect([contexts.length, told]).toEqual([3, 1]);
  });
});
