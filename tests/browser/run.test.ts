import { describe, expect, test } from "vitest";
import { breathSamples } from "../../src/timeline/lengths.ts";
import type { Section } from "../../src/timeline/score.ts";
import { sampleRate } from "../../src/tones/designs.ts";
import { openPack, type Pack } from "../../src/voice/pack.ts";
import { builtPack } from "../voice/built-pack.ts";
import { builtKit as kit } from "./built-kit.ts";
import { type Captured, heardBy } from "./capture.ts";
import {
  beganAt,
  blockMainThread,
  openPage,
  openWorksheet,
  pressUpTo,
  shortWorksheet,
  timelineOf,
} from "./guided-run.ts";
import { setStage } from "./stage.ts";
import { allowed, audioOf, searched, steadyOnset } from "./steady.ts";

describe("A run in a real browser", () => {
  const stage = setStage();

  // Both at once: what is captured is timed on the page's own audio clock, however busy the machine.
  test.concurrent("sounds every moment and says every sentence within a millisecond, in German, with the main thread blocked 200 ms in every 700", {
    timeout: 300_000,
  }, async () => {
    const inGerman = JSON.stringify({ ...JSON.parse(shortWorksheet), language: "de" });
    const timeline = timelineOf(inGerman);
    const section = timeline.sections.find(({ id }) => id === "developer");
    const page = await openPage(stage.browser, stage.served.url);
    await openWorksheet(page, inGerman);
    await blockMainThread(page);
    await pressUpTo(page, timeline, "developer");
    await page.waitForTimeout(((section?.seconds ?? 0) + 2) * 1000);
    const captured = await heardBy(page);
    const pressedAt = await beganAt(page, "begun");
    expectMoments(captured, section, pressedAt);
    const { index, bytes } = builtPack("de");
    expectWords(captured, section, pressedAt, await openPack(index, bytes));
  });

  test.concurrent("keeps every moment and falls silent between them when told to say less in the middle of a bath", {
    timeout: 300_000,
  }, async () => {
    const timeline = timelineOf(shortWorksheet);
    const section = timeline.sections.find(({ id }) => id === "developer");
    const page = await openPage(stage.browser, stage.served.url);
    await openWorksheet(page, shortWorksheet);
    await pressUpTo(page, timeline, "developer");
    await page.waitForTimeout(20_000);
    await page.getByRole("button", { name: "Say less" }).click();
    // Two touches that follow each other more closely are one.
    await page.waitForTimeout(600);
    await page.getByRole("button", { name: "Tones only", exact: true }).click();
    await page.getByRole("button", { name: "Say all" }).waitFor();
    const changed = 24;
    await page.waitForTimeout(((section?.seconds ?? 0) - 16) * 1000);
    const captured = await heardBy(page);
    const pressedAt = await beganAt(page, "begun");
    expectMoments(captured, section, pressedAt);
    const words = section?.cues.filter((cue) => cue.channel === "voice" && cue.at > changed) ?? [];
    const clear = words.filter(({ at, until }) =>
      section?.cues.every((cue) => cue.channel !== "tone" || cue.at >= until || cue.until <= at),
    );
    expect(clear.length).toBeGreaterThan(0);
    for (const { at, until, says } of clear) {
      expect(
        level(captured, audioOf(captured, pressedAt + at), audioOf(captured, pressedAt + until)),
        says,
      ).toBeLessThan(-45);
    }
  });
});

/** Every moment's tone was captured, within a millisecond of its time on the steady clock. */
function expectMoments(captured: Captured, section: Section | undefined, pressedAt: number): void {
  const nows = section?.cues.filter(({ kind }) => kind === "now") ?? [];
  expect(nows.length).toBeGreaterThan(8);
  for (const cue of nows) {
    const tone = kit.samples(cue.sounds[0] as Parameters<typeof kit.samples>[0]);
    const at = pressedAt + cue.at;
    const onset = steadyOnset(captured, tone, at);
    expect(onset?.likeness, `${cue.sounds[0]} at ${cue.at}`).toBeGreaterThan(0.8);
    expect(Math.abs((onset?.at ?? 0) - at)).toBeLessThan(allowed(captured, at));
  }
}

/** Every sentence was captured, each phrase of it within a millisecond of its time. */
function expectWords(
  captured: Captured,
  section: Section | undefined,
  pressedAt: number,
  pack: Pack,
): void {
  const said = section?.cues.filter(({ channel }) => channel === "voice") ?? [];
  expect(said.length).toBeGreaterThan(5);
  for (const cue of said) {
    let at = cue.at;
    for (const phrase of cue.sounds) {
      const clip = pack.decode(phrase);
      // A sentence is not mended once it is begun.
      const since = 2 + at - cue.at;
      const within = searched(captured, pressedAt + at, since);
      const onset = steadyOnset(captured, clip, pressedAt + at, within);
      // A beat of the hands may sound beneath it.
      expect(onset?.likeness, phrase).toBeGreaterThan(0.7);
      // Sound that stands still twice in a row is mended a look later.
      expect(Math.abs((onset?.at ?? 0) - pressedAt - at), phrase).toBeLessThan(
        2 * allowed(captured, pressedAt + at, since) - 0.001,
      );
      at += (clip.length + breathSamples) / sampleRate;
    }
  }
}

/** dBFS, root of the mean square of what was captured between two times. */
function level(captured: Captured, begin: number, end: number): number {
  const { samples, sampleRate, firstFrame } = captured;
  const frame = (at: number) => Math.round(at * sampleRate) - firstFrame;
  const part = samples.slice(frame(begin), frame(end)).filter((sample) => !Number.isNaN(sample));
  const square = part.reduce((sum, sample) => sum + sample * sample, 0) / part.length;
  return 10 * Math.log10(square + 1e-12);
}
