import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { linkOf } from "../../src/plan/worksheet-link.ts";
import { fileMaker } from "../../src/take-along.ts";
import { readIndex } from "../../src/voice/pack.ts";
import { shortWorksheet } from "./guided-run.ts";
import { setStage, withoutWorker } from "./stage.ts";

const short = JSON.parse(shortWorksheet) as Worksheet;
/** Shorter still: what is made of it is the same function's, however long. */
const worksheet: Worksheet = {
  ...short,
  developer: { ...short.developer, leaflet: [{ temperature: { c: 20 }, time: "0:40" }] },
  baths: {
    stop: { time: "0:20" },
    fixer: { time: "0:30" },
    wash: { time: "0:30" },
    "wetting-agent": { skip: true },
  },
};
const soundFile = (name: string) => new Uint8Array(readFileSync(`public/sound/${name}`));
const soundJson = (name: string) => JSON.parse(readFileSync(`public/sound/${name}`, "utf8"));

/** As the command line makes it, which tests/cli holds to the same function. */
async function madeInNode(kind: "mp3" | "wav"): Promise<Buffer> {
  const make = await fileMaker({
    worksheet,
    own: new Map(),
    bytes: {
      index: readIndex(soundJson("en.json")),
      pack: soundFile("en.pack"),
      kitIndex: soundJson("tones.json"),
      kit: soundFile("tones.pcm"),
      stretcher: new Uint8Array(readFileSync("node_modules/@echogarden/sonic-wasm/sonic.wasm")),
      encoder: soundFile("lame.wasm"),
    },
  });
  const file = await make({ kind, gap: 1, waits: "pass" });
  return Buffer.concat([...(file?.pieces ?? [])]);
}

describe("A session taken along, in a real browser", () => {
  const stage = setStage();

  test("comes by a link that asks first, and leaves as the very file that the command line makes", {
    timeout: 120_000,
  }, async () => {
    const context = await stage.browser.newContext({ ...withoutWorker, acceptDownloads: true });
    const page = await context.newPage();
    const asked: string[] = [];
    page.on("request", (request) => asked.push(request.url()));
    await page.goto(`${stage.served.url}${linkOf(worksheet)}`);
    await page.getByRole("button", { name: "Use this worksheet" }).click();
    expect(new URL(page.url()).hash).toBe("#work-out");
    // What stands behind the # is nobody's but the browser's.
    expect(asked.filter((url) => url.includes("w1."))).toEqual([]);

    await page.getByRole("link", { name: /^Walk through/ }).click();
    await page.locator(".take-fold > summary").click();
    await page.getByLabel("Seconds of waiting").fill("1");
    const saved = page.waitForEvent("download");
    await page.getByRole("button", { name: "Make an MP3 file" }).click();
    const file = readFileSync(await (await saved).path());
    expect(file.equals(await madeInNode("mp3"))).toBe(true);

    // The browser itself decodes it; what the encoder put before the track is taken off, as the file says.
    const heard = await page.evaluate(async (bytes) => {
      const samples = Uint8Array.from(atob(bytes), (letter) => letter.charCodeAt(0));
      const heard = await new OfflineAudioContext(1, 1, 24_000).decodeAudioData(samples.buffer);
      const first = heard.getChannelData(0).findIndex((sample) => Math.abs(sample) > 0.05);
      return { seconds: heard.duration, begins: first / 24_000 };
    }, file.toString("base64"));
    const wav = await madeInNode("wav");
    const savedToo = page.waitForEvent("download");
    await page.getByRole("button", { name: "Make a WAV file" }).click();
    expect(readFileSync(await (await savedToo).path()).equals(wav)).toBe(true);
    let first = 0;
    while (Math.abs(wav.readInt16LE(44 + 2 * first)) < 0.05 * 32_768) first += 1;
    expect(heard.begins).toBeCloseTo(first / 24_000, 2);
    expect(heard.seconds).toBeCloseTo(wav.readUInt32LE(40) / 48_000, 2);
    await context.close();
  });
});
