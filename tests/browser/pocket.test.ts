import { describe, expect, test } from "vitest";
import type { CueKind, Section } from "../../src/timeline/score.ts";
import type { ToneName } from "../../src/tones/designs.ts";
import { builtKit as kit } from "./built-kit.ts";
import { type Captured, heardBy } from "./capture.ts";
import {
  audioAt,
  captureElements,
  type Elements,
  elementsOf,
  pressMediaKey,
  slippedBy,
} from "./element.ts";
import { developedFor, openPage, openWorksheet, pressUpTo, timelineOf } from "./guided-run.ts";
import { onsetOf } from "./onsets.ts";
import { setStage } from "./stage.ts";

/** A bath a little shorter still, since all of it is heard. */
const shorter = JSON.stringify({
  ...JSON.parse(developedFor("0:35")),
  baths: { stop: { time: "0:10" } },
});

/** Seconds into the bath at which the way is changed, in the middle of its first bout. */
const CHANGED = 14;
/** By then it has been. */
const HEARD = 30;

describe("A run that goes into the pocket in the middle of a bath", () => {
  const stage = setStage();

  test("keeps every moment within 60 ms, sounds none twice, by one element and one source, and goes on by a headset's button", {
    timeout: 300_000,
  }, async () => {
    const { sections } = timelineOf(shorter);
    const index = sections.findIndex(({ id }) => id === "developer");
    const [bath, next] = [sections[index], sections[index + 1]];
    const page = await openPage(stage.browser, stage.served.url, {
      prepare: captureElements,
    });
    await openWorksheet(page, shorter);
    await pressUpTo(page, { sections }, "developer");
    await page.waitForTimeout(CHANGED * 1000);
    const before = await elementsOf(page);
    await page.locator(".guided-more > summary").click();
    await page.getByRole("button", { name: "Into the pocket" }).click();
    await page.getByRole("button", { name: "To the loudspeaker" }).waitFor();
    const over = bath?.moments.at(-1)?.at ?? 0;
    await page.waitForTimeout((over - CHANGED + 4) * 1000);
    const during = await elementsOf(page);
    expect(during.keys).toEqual(expect.arrayContaining(["play", "pause", "nexttrack", "stop"]));
    const nextAt = await pressMediaKey(page, "pause");
    await page.waitForTimeout(8_000);
    const captured = await heardBy(page);

    const after = await elementsOf(page);
    expectMoments(captured, after, bath, after.keyAt, HEARD, "now", 4);
    expectMoments(captured, after, next, nextAt, 0, "count-in", 3);
    expect(after.sources.length).toBe(1);
    expect((after.sources[0]?.length ?? 0) - (before.sources[0]?.length ?? 0)).toBe(1);
    expect(after.seeks.length).toBeGreaterThan(during.seeks.length);
  });
});

/** Every moment's tone from a time on was captured where it should be, by itself: a second one near it would tell. */
function expectMoments(
  captured: Captured,
  elements: Elements,
  section: Section | undefined,
  pressedAt: number,
  from: number,
  kind: CueKind,
  /** So many of them were played by now. */
  played: number,
): void {
  const cues = section?.cues.filter((cue) => cue.kind === kind && cue.at > from) ?? [];
  expect(cues.length).toBeGreaterThanOrEqual(played);
  for (const cue of cues.slice(0, played)) {
    const tone = kit.samples(cue.sounds[0] as ToneName);
    const due = audioAt(elements, pressedAt + cue.at);
    const slipped = slippedBy(elements, pressedAt + cue.at);
    const onset = onsetOf(captured, tone, due, 0.12 + slipped);
    expect(onset?.likeness, `${cue.sounds[0]} at ${cue.at}`).toBeGreaterThan(0.95);
    expect(Math.abs((onset?.at ?? 0) - due), `${cue.sounds[0]} at ${cue.at}`).toBeLessThan(
      0.06 + slipped,
    );
  }
}
