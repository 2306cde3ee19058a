import { describe, expect, test } from "vitest";
import { onPageClock } from "../../src/live/page-clock.ts";
import { checkCues } from "../../src/live/sound-check.ts";
import { everyPhrase, openScript } from "../../src/script/script.ts";
import { toneSeconds } from "../../src/tones/designs.ts";
import { english, estimatedLengths } from "../timeline/scene.ts";

describe("What is heard before a run", () => {
  const cues = checkCues(english, estimatedLengths(1));

  test("is the hands' beat, a sentence, three beats and the call to pour out, in ten seconds or so", () => {
    expect(cues.map(({ channel, sounds }) => (channel === "voice" ? "words" : sounds[0]))).toEqual([
      "agitate",
      "back",
      "over",
      "words",
      "count",
      "count",
      "count",
      "pour-out",
    ]);
    expect(cues.at(-1)?.until).toBeGreaterThan(6);
    expect(cues.at(-1)?.until).toBeLessThan(12);
  });

  test("never sounds two things at once, and each tone whole", () => {
    for (const [i, cue] of cues.entries()) {
      expect(cue.at).toBeGreaterThanOrEqual(cues[i - 1]?.until ?? 0);
      if (cue.channel !== "tone") continue;
      const name = cue.sounds[0] as keyof typeof toneSeconds;
      expect(cue.until - cue.at).toBeCloseTo(toneSeconds[name], 9);
    }
  });

  test("says what a run says, in phrases that every voice has, and leaves it as long as that voice takes", () => {
    const words = cues.find(({ channel }) => channel === "voice");
    expect(words?.says).toBe("Get ready to pour out the developer.");
    for (const phrase of words?.sounds ?? []) expect(everyPhrase(english)).toContain(phrase);
    const slow = checkCues(english, { spoken: () => 7 }).find(({ channel }) => channel === "voice");
    expect((slow?.until ?? 0) - (slow?.at ?? 0)).toBeCloseTo(7, 9);
  });

  test("is nothing that a voice could lack", () => {
    expect(() => checkCues(english, { spoken: () => null })).toThrow(/cannot say/);
    const dumb = openScript({ ...english.source, sentences: {} }, String);
    expect(() => checkCues(dumb, estimatedLengths(1))).toThrow(/No sentence/);
  });
});

describe("A time of the audio clock on the page's clock", () => {
  const audio = (contextTime?: number, performanceTime?: number, currentTime = 40) => ({
    currentTime,
    getOutputTimestamp: () => ({ contextTime, performanceTime }) as AudioTimestamp,
  });

  test("is when it leaves the device, where the browser says so", () => {
    // At 100 s what was mixed at 39.8 s is heard: the system lags 0.2 s behind.
    expect(onPageClock(audio(39.8, 100_000), 45, 100)).toBeCloseTo(105.2, 9);
    expect(onPageClock(audio(39.8, 100_000), 30, 100)).toBeCloseTo(90.2, 9);
    // The pair may be some time old.
    expect(onPageClock(audio(38.8, 99_000), 45, 100)).toBeCloseTo(105.2, 9);
  });

  test("is when it is mixed, where the browser says nothing, or nothing yet", () => {
    expect(onPageClock(audio(0, 0), 45, 100)).toBeCloseTo(105, 9);
    expect(onPageClock(audio(), 45, 100)).toBeCloseTo(105, 9);
    const older = { currentTime: 40 } as Parameters<typeof onPageClock>[0];
    expect(onPageClock(older, 45, 100)).toBeCloseTo(105, 9);
  });

  test("is when it is mixed, where what the browser says cannot be", () => {
    // Heard before it was mixed; seconds in place of milliseconds; a pair from before a pause of 8 s.
    for (const stamp of [audio(41, 100_000), audio(39.8, 100), audio(31, 91_000 - 8000)]) {
      expect(onPageClock(stamp, 45, 100)).toBeCloseTo(105, 9);
    }
  });
});
