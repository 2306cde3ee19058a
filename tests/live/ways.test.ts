import { setImmediate } from "node:timers/promises";
import { describe, expect, test } from "vitest";
import type { BrowserElement } from "../../src/live/browser-pocket.ts";
import type { Way } from "../../src/live/journal.ts";
import { openWays } from "../../src/live/ways.ts";
import { headerBytes, lay, pieceBytes } from "../../src/track/pocket-track.ts";
import { gullrock } from "../plan/worksheets.ts";
import { compiled } from "../timeline/scene.ts";

/** Both ways on an element that is let sound, or not, as a test says; the room itself always sounds. */
function waysByHand({ lets = true } = {}) {
  let letOn = lets;
  let paused = true;
  let now = 100;
  const gone: Way[] = [];
  const timers: (() => void)[] = [];
  const play = async () => {
    if (letOn) paused = false;
    return letOn;
  };
  const element: BrowserElement = {
    now: () => now,
    load: async () => ((await play()) ? "plays" : "not-let"),
    seek() {},
    position: () => 0,
    paused: () => paused,
    play,
    onPauseUnasked() {},
    after(_, act) {
      timers.push(act);
      return () => {};
    },
    bed: () => void play(),
    stop() {},
  };
  const ways = openWays({
    audio: {
      awake: async () => ({}) as AudioContext,
      context: () => ({}) as AudioContext,
      clocks: () => ({ life: "a", steady: now, wall: 0, audio: now }),
      audioAt: (at) => at,
      check: () => ({ sounding: true, off: 0, unsure: false }),
      onAnother() {},
    },
    player: {
      now: () => now,
      play: () => ({ begun: () => false, stop() {} }),
      playFrom: () => ({ begun: () => false, stop() {} }),
      answerPress() {},
      sounding: () => [],
      close() {},
    },
    element,
    pocketTrack: async () => ({ lay, headerBytes, pieceBytes }),
    soundOf: () => new Float32Array(8),
    delay: 0,
    through(outlet, way) {
      gone.push(way);
      outlet.update({ sections: compiled(gullrock).sections.slice(-1), index: 0, pressedAt: now });
    },
    silent() {},
  });
  return {
    ways,
    gone,
    paused: () => paused,
    pause() {
      paused = true;
    },
    lets(on: boolean) {
      letOn = on;
    },
    async settle() {
      for (let turn = 0; turn < 200; turn += 1) {
        now += 0.01;
        await setImmediate();
      }
    },
  };
}

describe("A run in the room", () => {
  test("has its bed again after a pause that nobody asked for, though it was refused at first", () => {
    const here = waysByHand();
    here.lets(false);
    here.pause();
    here.ways.check();
    expect(here.paused()).toBe(true);
    here.lets(true);
    here.ways.check();
    expect(here.paused()).toBe(false);
  });
});

describe("A run in the pocket that was not let sound", () => {
  test("stays in the pocket, and is heard there from the press that lets it", async () => {
    const here = waysByHand({ lets: false });
    here.ways.go("pocket");
    await here.settle();
    expect([here.gone, here.ways.way(), here.paused()]).toEqual([["pocket"], "pocket", true]);
    // A look alone begins no track out of its place.
    here.lets(true);
    here.ways.check();
    await here.settle();
    expect(here.paused()).toBe(true);
    here.ways.wake();
    await here.settle();
    expect([here.gone, here.ways.way(), here.paused()]).toEqual([["pocket"], "pocket", false]);
  });
});
