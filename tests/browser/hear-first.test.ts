import { median } from "d3-array";
import { describe, expect, test } from "vitest";
import { checkCues } from "../../src/live/sound-check.ts";
import { lengthsOf } from "../../src/timeline/lengths.ts";
import type { ToneName } from "../../src/tones/designs.ts";
import { english } from "../timeline/scene.ts";
import { builtPack } from "../voice/built-pack.ts";
import { axeFinds } from "./axe.ts";
import { builtKit as kit } from "./built-kit.ts";
import { type Captured, heardBy } from "./capture.ts";
import { openPage } from "./guided-run.ts";
import { onsetOf } from "./onsets.ts";
import { setStage, withoutWorker } from "./stage.ts";

/** Seconds on either side of a tone in which nothing may be missing of what was captured. */
const ABOUT = 0.02;

describe("What is heard before a run, in a real browser", () => {
  const stage = setStage();

  test("is each of its tones at its time and in full, and the answers come when it is over", {
    timeout: 60_000,
  }, async () => {
    const page = await openPage(stage.browser, `${stage.served.url}#lights-out`);
    await page.getByRole("button", { name: /^Play the test/ }).click();
    await page.getByRole("button", { name: "I heard it" }).click({ timeout: 40_000 });
    const captured = await heardBy(page);
    const cues = checkCues(english, lengthsOf(builtPack("en").index, 1));
    const loud = captured.samples.findIndex((sample) => Math.abs(sample) > 0.02);
    const first = (captured.firstFrame + loud) / captured.sampleRate;
    const roughly = onsetOf(captured, kit.samples("agitate"), first, 0.02)?.at ?? 0;
    const tones = cues
      .filter(({ channel }) => channel === "tone")
      .map(({ at, sounds: [name] }) => {
        const tone = kit.samples(name as ToneName);
        const onset = onsetOf(captured, tone, roughly + at, 0.02);
        const seconds = tone.length / 24_000;
        const heard = heardFrom(captured, onset?.at ?? roughly + at, seconds);
        const about = heardFrom(captured, roughly + at - ABOUT, seconds + 2 * ABOUT);
        return { name, at, tone, onset, heard, isWhole: !about.some(Number.isNaN) };
      });
    // What the capture missed a part of cannot be told from itself a period later.
    const whole = tones.filter(({ isWhole }) => isWhole);
    expect(whole.length).toBeGreaterThanOrEqual(tones.length - 1);
    const began = median(whole, ({ at, onset }) => (onset?.at ?? Number.NaN) - at) ?? Number.NaN;
    for (const { name, onset } of tones) expect(onset?.likeness, name).toBeGreaterThan(0.95);
    for (const { name, at, tone, onset, heard } of whole) {
      expect(Math.abs((onset?.at ?? Number.NaN) - began - at), name).toBeLessThan(0.0005);
      // As in a run: what was built, no louder and no softer.
      expect(loudest(heard) / loudest(tone), name).toBeCloseTo(1, 1);
    }
    await page.context().close();
  });

  test("gives axe nothing to find once it is answered, nor on the sheet to tap on, on either paper", {
    timeout: 90_000,
  }, async () => {
    const context = await stage.browser.newContext({
      ...withoutWorker,
      viewport: { width: 320, height: 700 },
    });
    const page = await context.newPage();
    const onBothPapers = async (what: string) => {
      for (const colorScheme of ["light", "dark"] as const) {
        await page.emulateMedia({ colorScheme });
        expect(await axeFinds(page), `${what}, ${colorScheme}`).toEqual([]);
      }
    };
    await page.goto(`${stage.served.url}#lights-out`);
    await page.getByRole("button", { name: /^Play the test/ }).click();
    await page.getByRole("button", { name: "I did not" }).click({ timeout: 40_000 });
    await page.getByText("Wireless headphones?").click();
    await onBothPapers("the place");
    const heights = await page
      .locator(".before-run :is(button, summary)")
      .evaluateAll((all) =>
        all
          .filter((each) => each.checkVisibility())
          .map((each) => each.getBoundingClientRect().height),
      );
    expect(heights.length).toBeGreaterThan(5);
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(88);
    await page.getByRole("button", { name: "Measure by tapping along" }).click();
    await onBothPapers("the sheet");
    expect(
      await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth),
    ).toBe(0);
    await context.close();
  });
});

const loudest = (samples: Float32Array) =>
  samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);

/** What was captured from a time on the audio clock, for so many seconds. */
function heardFrom({ samples, sampleRate, firstFrame }: Captured, at: number, seconds: number) {
  const from = Math.round(at * sampleRate) - firstFrame;
  return samples.subarray(from, from + Math.round(seconds * sampleRate));
}
