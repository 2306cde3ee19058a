import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { planOf } from "../../src/plan/plan.ts";
import { readWorksheetText } from "../../src/plan/read-worksheet.ts";
import { everyPhrase } from "../../src/script/script.ts";
import { lengthsOf } from "../../src/timeline/lengths.ts";
import { compile } from "../../src/timeline/timeline.ts";
import { pcmOf, wavHeader } from "../../src/tones/wav.ts";
import { recording as sheet, speaker as words } from "../../src/ui/words/en/own-voice.ts";
import { readOwnPack } from "../../src/voice/own-pack.ts";
import { openPack } from "../../src/voice/pack.ts";
import { type OwnClips, toSound } from "../../src/voice/speaker.ts";
import { english } from "../timeline/scene.ts";
import { packBytes, packIndex } from "../voice/built-pack.ts";
import { heardBy } from "./capture.ts";
import { press } from "./finger.ts";
import {
  beganAt,
  fromTheCassette,
  openPage,
  openWorksheet,
  pressUpTo,
  timelineOf,
} from "./guided-run.ts";
import { setStage } from "./stage.ts";
import { allowed, steadyOnset } from "./steady.ts";

const rate = 24_000;
const pack = await openPack(packIndex, packBytes);

/** What is said into the microphone in place of the first phrases, and the silence before it, seconds. */
const spoken = pack.decode("This device stays on the dry side, on its battery.");
const SILENCE = 6;

/** A room with a little noise, and somebody who speaks in it once. */
function microphoneFile(): string {
  let seed = 1;
  const room = Float32Array.from({ length: 60 * rate }, (_, i) => {
    seed = (seed * 48271) % 2147483647;
    return 0.5 * (spoken[i - SILENCE * rate] ?? 0) + 0.001 * ((2 * seed) / 2147483647 - 1);
  });
  const path = join(mkdtempSync(join(tmpdir(), "own-voice-")), "room.wav");
  writeFileSync(path, Buffer.concat([wavHeader(room.length, rate), pcmOf(room)]));
  return path;
}

const button = (page: Page, name: string) => page.getByRole("button", { name });
const recorded = (page: Page, count: number) =>
  page.getByLabel(words.own(count, everyPhrase(english, "run").length)).waitFor();

describe("A voice of one's own in a real browser", () => {
  const stage = setStage([
    "--use-fake-device-for-media-stream",
    "--use-fake-ui-for-media-stream",
    `--use-file-for-fake-audio-capture=${microphoneFile()}`,
  ]);

  test("is recorded, kept over a reload, saved, deleted, opened again, and spoken in the run for as long as it lasts", {
    timeout: 240_000,
  }, async () => {
    const page = await openPage(stage.browser, stage.served.url);
    await openWorksheet(page, fromTheCassette);
    // Left off after the first phrase, and gone on with: the file begins anew with the microphone.
    for (const name of [words.record, words.goOn]) {
      await button(page, name).click();
      await page.getByRole("dialog", { name: sheet.name }).waitFor();
      await press(page, "Space");
      await page.getByText(sheet.recording).waitFor();
      await page.waitForTimeout((SILENCE + spoken.length / rate + 2) * 1000);
      await press(page, "Space");
      await page.getByText("Recorded:").waitFor();
      await press(page, "Enter");
      await page.getByText(sheet.told.kept).waitFor();
      await page.keyboard.press("Escape");
    }
    await recorded(page, 2);

    await page.reload();
    await recorded(page, 2);
    const saved = page.waitForEvent("download");
    await button(page, words.export).click();
    const path = await (await saved).path();
    const clips = await clipsIn(path);
    const texts = timelineOf(fromTheCassette).sections[0]?.cues.map(({ says }) => says ?? "") ?? [];
    expect([...clips.keys()].sort()).toEqual(texts.slice(0, 2).sort());
    // As long as what was said, with at most 100 ms of the room.
    for (const text of texts.slice(0, 2)) {
      const lasts = (clips.get(text)?.length ?? 0) / rate;
      expect(Math.abs(lasts - 0.05 - spoken.length / rate), text).toBeLessThan(0.1);
    }

    await button(page, words.removeAll).click();
    await recorded(page, 0);
    const chooser = page.waitForEvent("filechooser");
    await button(page, words.import).click();
    await (await chooser).setFiles({
      name: "mine.zip",
      mimeType: "application/zip",
      buffer: readFileSync(path),
    });
    await recorded(page, 2);
    await page.getByLabel(words.own(2, everyPhrase(english, "run").length)).check();

    const timeline = compiledWith(clips);
    await pressUpTo(page, timeline, timeline.sections[0]?.id ?? "");
    await page.waitForTimeout(17_000);
    const captured = await heardBy(page);
    const begun = await beganAt(page, "begun");
    // The second in the own voice, where the length of the first has put it; the third in the bundled.
    const [, own, bundled] = timeline.sections[0]?.cues ?? [];
    const clip = toSound(clips.get(own?.says ?? "") ?? new Int16Array());
    expect(((own?.until ?? 0) - (own?.at ?? 0)) * rate).toBeCloseTo(clip.length, 3);
    for (const [cue, sound] of [
      [own, clip],
      [bundled, pack.decode(bundled?.says ?? "")],
    ] as const) {
      const at = begun + (cue?.at ?? 0);
      const onset = steadyOnset(captured, sound, at);
      expect(onset?.likeness, cue?.says).toBeGreaterThan(0.8);
      expect(Math.abs((onset?.at ?? 0) - at), cue?.says).toBeLessThan(allowed(captured, at));
    }
  });
});

async function clipsIn(path: string): Promise<OwnClips> {
  const read = await readOwnPack(readFileSync(path), "en", everyPhrase(english));
  if (read.kind === "refused") throw new Error(read.why.kind);
  return read.pack.clips;
}

function compiledWith(clips: OwnClips) {
  const read = readWorksheetText(fromTheCassette);
  if (read.kind === "faults") throw new Error("The worksheet is faulty.");
  const { worksheet } = read;
  return compile(worksheet, planOf(worksheet), english, lengthsOf(packIndex, 1, clips));
}
