import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { pcmOf, wavHeader } from "../../src/tones/wav.ts";
import { knocks as words } from "../../src/ui/words/en/hands.ts";
import { openPage, openWorksheet, shortWorksheet, timelineOf } from "./guided-run.ts";
import { setStage } from "./stage.ts";

const rate = 48_000;
/** Seconds into the file, which begins with the microphone and is then played over and over. */
const KNOCKS = [12, 26];
const LASTS = 60;

/** A quiet room in which somebody knocks on a bench: a short burst, low and dying away. */
function microphoneFile(): string {
  let seed = 1;
  const noise = () => {
    seed = (seed * 48271) % 2147483647;
    return (2 * seed) / 2147483647 - 1;
  };
  const room = Float32Array.from({ length: LASTS * rate }, () => 0.0005 * noise());
  for (const knock of KNOCKS) {
    for (let i = 0; i < 0.2 * rate; i += 1) {
      const at = i / rate;
      const thump = Math.sin(2 * Math.PI * 220 * at) * Math.exp(-at / 0.02);
      const click = noise() * Math.exp(-at / 0.003);
      room[knock * rate + i] = (room[knock * rate + i] ?? 0) + 0.3 * thump + 0.3 * click;
    }
  }
  const path = join(mkdtempSync(join(tmpdir(), "knocks-")), "room.wav");
  writeFileSync(path, Buffer.concat([wavHeader(room.length, rate), pcmOf(room)]));
  return path;
}

describe("Knocks on the bench, in a real browser", () => {
  const stage = setStage([
    "--use-fake-device-for-media-stream",
    "--use-fake-ui-for-media-stream",
    `--use-file-for-fake-audio-capture=${microphoneFile()}`,
  ]);

  test("go on with a run once they are listened for, one step a knock, and nothing else does", {
    timeout: 90_000,
  }, async () => {
    const { sections } = timelineOf(shortWorksheet);
    const page = await openPage(stage.browser, `${stage.served.url}#work-out`);
    await openWorksheet(page, shortWorksheet);
    await page.getByRole("link", { name: /^Lights out/ }).click();
    await page.getByLabel(words.hear).click();
    const listening = Date.now();
    await page.getByRole("button", { name: /^Begin/ }).click();
    await page.locator(".guided").waitFor();
    const shows = (place: number) => {
      const section = sections[place];
      const it = section?.dark
        ? page.locator(".guided.dark")
        : page.locator(".guided:not(.dark) .guided-now", { hasText: section?.title ?? "" });
      return it.waitFor({ timeout: 30_000 });
    };
    // What the run itself sounds in the room of the test reaches no microphone: only the two knocks do.
    await shows(0);
    await shows(1);
    expect(Date.now() - listening).toBeGreaterThan((KNOCKS[0] ?? 0) * 1000 - 3000);
    await shows(2);
    expect(Date.now() - listening).toBeGreaterThan((KNOCKS[1] ?? 0) * 1000 - 3000);
    await page.waitForTimeout(5000);
    await shows(2);
    await page.context().close();
  });
});
