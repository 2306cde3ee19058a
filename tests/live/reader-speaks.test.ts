import { describe, expect, test } from "vitest";
import type { BrowserPlayer } from "../../src/live/browser-player.ts";
import { silenceFor, withoutItsWords } from "../../src/live/browser-speaker.ts";
import { demos } from "../../src/ui/demo.ts";
import { compiled } from "../timeline/scene.ts";

const cues = compiled(demos.gullrock).sections.flatMap((section) => section.cues);

describe("A run whose words a screen reader says", () => {
  test("plays every tone and no word, and a word's time goes by all the same", () => {
    let now = 10;
    const played: string[] = [];
    const player: BrowserPlayer = {
      now: () => now,
      play(cue) {
        played.push(cue.channel);
        return { begun: () => true, stop() {} };
      },
      playFrom: () => ({ begun: () => true, stop() {} }),
      answerPress() {},
      sounding: () => [],
      close() {},
    };
    const silent = withoutItsWords(player);
    const tones = cues.filter(({ channel }) => channel === "tone");
    const word = cues.find(({ channel }) => channel === "voice");
    for (const cue of cues) silent.play(cue, 11);
    expect(played).toEqual(tones.map(() => "tone"));
    expect(tones.length).toBeLessThan(cues.length);
    const placed = word && silent.play(word, 11);
    expect(placed?.begun()).toBe(false);
    now = 11;
    expect(placed?.begun()).toBe(true);
  });

  test("has as much silence in its one track as each word would last", () => {
    for (const cue of cues.filter(({ channel }) => channel === "voice")) {
      const silence = silenceFor(cue);
      expect(silence.length / 24_000).toBeCloseTo(cue.until - cue.at, 3);
      expect(silence.some((sample) => sample !== 0)).toBe(false);
    }
  });
});
