// A run whose browser is killed again and again, without warning, and started again by whoever is at the sink.
import { describe, expect, test } from "vitest";
import { sampleRate } from "../../src/tones/designs.ts";
import { openPack } from "../../src/voice/pack.ts";
import { builtPack } from "../voice/built-pack.ts";
import { developedFor } from "./guided-run.ts";
import {
  beginAndPress,
  developerOf,
  expectInPlace,
  journalIn,
  pause,
  wallOf,
} from "./lived-run.ts";
import { type HeardInLife, heardIn, kill, live, newProfile } from "./lives.ts";
import { serveDist } from "./serve.ts";
import { steadyOf, steadyOnset } from "./steady.ts";

/** Long enough to be killed in for more than two minutes. */
const worksheet = developedFor("2:20");
/** Of each of two runs; `DEATHS=10 npm test` kills twenty browsers, for those who have the time. */
const deaths = Number(process.env.DEATHS ?? 3);

describe("A run whose browser is killed without warning", () => {
  // Two at once, each of another run; a seed each, so that one that fails can be run again.
  test.concurrent.each([20_261, 51_128])(
    `comes back ${deaths} times at random seconds, by itself and in its place, and loses nothing (seed %d)`,
    {
      timeout: 300_000,
    },
    async (seed) => {
      const { section, presses } = developerOf(worksheet);
      const served = await serveDist();
      const profile = newProfile();
      let life = await live(profile, served.url, { worker: false });
      const pressed = await beginAndPress(life, profile, worksheet, presses);
      const random = randomFrom(seed);
      const lives: { readonly heard: HeardInLife; readonly wall: number }[] = [];
      for (let death = 0; death < deaths; death += 1) {
        await kill(life);
        // Less than two seconds are not told of, and a quick machine is back sooner.
        if (death === deaths - 1) await pause(2000);
        life = await live(profile, served.url, { worker: false });
        // Nobody presses anything: this browser lets a page sound.
        await life.page.waitForFunction(
          () => performance.getEntriesByName("tankside-begun").length > 0,
          { timeout: 20_000 },
        );
        // The last one lives for as long as what is told may have to wait for room between moments.
        await pause(death === deaths - 1 ? 28_000 : 2000 + 3500 * random());
        const heard = await heardIn(life);
        const wall = await wallOf(life, heard.pressedAt);
        lives.push({ heard, wall });
      }
      const kept = await journalIn(life);
      await kill(life);
      await served.close();

      for (const { heard, wall } of lives) {
        expect(Math.abs(wall - pressed)).toBeLessThan(20);
        expectInPlace(heard, section.cues);
      }
      expect(kept.filter(({ kind }) => kind === "pressed")).toHaveLength(presses);
      // A busy machine's sound may stand still besides.
      expect(kept.filter(({ kind, from }) => kind === "woke" && from === "closed")).toHaveLength(
        deaths,
      );
      await expectTold(lives.slice(-1).map(({ heard }) => heard));
    },
  );
});

/** Park and Miller's, from 0 to 1. */
function randomFrom(start: number): () => number {
  let state = start % 2147483647;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

/** In one sentence: for how long it was gone. */
async function expectTold(lives: readonly HeardInLife[]): Promise<void> {
  const { index, bytes } = builtPack("en");
  const pack = await openPack(index, bytes);
  const gone = ["I was gone for", "Gone for"].map((text) => pack.decode(text));
  const told = lives.filter(({ captured, begun }) => {
    return begun.some(({ at, seconds }) => {
      const steady = steadyOf(captured, at);
      return gone.some(
        (clip) =>
          seconds > clip.length / sampleRate &&
          (steadyOnset(captured, clip, steady, 0.05)?.likeness ?? 0) > 0.7,
      );
    });
  });
  expect(told.length).toBeGreaterThan(0);
}
