import { describe, expect, test } from "vitest";
import { builtKit as kit } from "./built-kit.ts";
import { heardBy } from "./capture.ts";
import {
  beganAt,
  blockMainThread,
  openPage,
  openWorksheet,
  pressUpTo,
  shortWorksheet,
  timelineOf,
} from "./guided-run.ts";
import { onsetOf } from "./onsets.ts";
import { setStage } from "./stage.ts";

describe("A run in a real browser", () => {
  const stage = setStage();

  test("sounds every moment within a millisecond, with the main thread blocked 200 ms in every 700", {
    timeout: 180_000,
  }, async () => {
    const timeline = timelineOf(shortWorksheet);
    const section = timeline.sections.find(({ id }) => id === "developer");
    const page = await openPage(stage.browser, stage.served.url);
    await openWorksheet(page, shortWorksheet);
    await blockMainThread(page);
    await pressUpTo(page, timeline, "developer");
    await page.waitForTimeout(((section?.seconds ?? 0) + 2) * 1000);
    const captured = await heardBy(page);
    const pressedAt = await beganAt(page, "begun");
    const nows = section?.cues.filter(({ kind }) => kind === "now") ?? [];
    expect(nows.length).toBeGreaterThan(8);
    for (const cue of nows) {
      const tone = kit.samples(cue.sounds[0] as Parameters<typeof kit.samples>[0]);
      const onset = onsetOf(captured, tone, pressedAt + cue.at, 0.04);
      expect(onset?.likeness, `${cue.sounds[0]} at ${cue.at}`).toBeGreaterThan(0.8);
      expect(Math.abs((onset?.at ?? 0) - pressedAt - cue.at)).toBeLessThan(0.001);
    }
  });
});
