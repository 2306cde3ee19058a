import { median } from "d3-array";
import { describe, expect, test } from "vitest";
import { checkCues } from "../../src/live/sound-check.ts";
import { lengthsOf } from "../../src/timeline/lengths.ts";
import type { ToneName } from "../../src/tones/designs.ts";
import { english } from "../timeline/scene.ts";
import { builtPack } from "../voice/built-pack.ts";
import { axeFinds } from "./axe.ts";
import { builtKit as kit } from "./built-kit.ts";
import { heardBy } from "./capture.ts";
import { openPage } from "./guided-run.ts";
import { onsetOf } from "./onsets.ts";
import { setStage, withoutWorker } from "./stage.ts";

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
    const tones = cues.filter(({ channel }) => channel === "tone");
    // By the middle one of all: a machine that was busy when the first was due begins that one late.
    const began =
      median(
        tones.map(({ at, sounds }) => {
          const tone = kit.samples(sounds[0] as ToneName);
          return (onsetOf(captured, tone, roughly + at, 0.02)?.at ?? Number.NaN) - at;
        }),
      ) ?? Number.NaN;
    for (const { at, sounds } of tones) {
      const tone = kit.samples(sounds[0] as ToneName);
      const onset = onsetOf(captured, tone, began + at, 0.02);
      expect(onset?.likeness, sounds[0]).toBeGreaterThan(0.95);
      // Sound that has only begun may lose the first one's beginning, and a tone is much like itself a period later.
      const off = Math.abs((onset?.at ?? Number.NaN) - began - at);
      expect(off, sounds[0]).toBeLessThan(at === 0 ? 0.005 : 0.0005);
      const from = Math.round((began + at) * captured.sampleRate) - captured.firstFrame;
      const lasts = (tone.length / 24_000) * captured.sampleRate;
      // As in a run: what was built, no louder and no softer.
      const heard = captured.samples
        .subarray(from, from + lasts)
        .filter((each) => !Number.isNaN(each));
      expect(loudest(heard) / loudest(tone), sounds[0]).toBeCloseTo(1, 1);
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
