// How soon a session of 40 minutes is a file on the page, how long the page keeps anyone waiting meanwhile, and what
// its processes hold of memory; beside the same cues given to a plain OfflineAudioContext, all at once.
import { readFileSync } from "node:fs";
import type { CDPSession, Page } from "playwright-core";
import { lengthsOf } from "../../src/timeline/lengths.ts";
import { trackOf } from "../../src/track/track.ts";
import { demos } from "../../src/ui/demo.ts";
import { launchChromium } from "../browser/chromium.ts";
import { serveDist } from "../browser/serve.ts";
import { withoutWorker } from "../browser/stage.ts";
import { english } from "../timeline/scene.ts";
import { compiler, packIndex } from "./sessions.ts";
import type { Table } from "./table.ts";

/** Seconds of waiting with which the practice worksheet makes 40 minutes. */
const GAP = 15;
/** For a person to choose, and for what is held ready meanwhile, ms. */
const CHOOSING = 3000;
/** Minutes of it that the plain context renders: the whole would take minutes. */
const PLAIN = 5;

export async function takeAlongBench(): Promise<Table> {
  const [served, browser] = await Promise.all([serveDist(), launchChromium()]);
  const context = await browser.newContext({ ...withoutWorker, acceptDownloads: true });
  const page = await context.newPage();
  await page.goto(`${served.url}#walk-through`);
  const fold = page.locator(".take-fold summary");
  const system = await browser.newBrowserCDPSession();
  // The page fetches what it does behind its first screen.
  await page.waitForTimeout(CHOOSING);
  const rows: Row[] = [await idle(page)];
  await fold.click();
  await page.getByLabel("Seconds of waiting").fill(String(GAP));
  // Nothing is held ready yet.
  rows.push(await made(page, system, "Make a WAV file", ", in the moment in which it is opened"));
  for (const name of ["Make an MP3 file", "Make a WAV file"]) {
    await page.waitForTimeout(CHOOSING);
    rows.push(await made(page, system, name));
  }
  const track = trackOf(
    {
      timeline: compiler(demos.gullrock)(),
      script: english,
      lengths: lengthsOf(packIndex, 1),
      speaks: true,
    },
    { gap: GAP, waits: "pass" },
  );
  rows.push(await plain(page, track.cues));
  await browser.close();
  await served.close();
  const minutes = (track.seconds / 60).toFixed(0);
  return { title: `A session of ${minutes} min as a file, in Chromium`, rows };
}

type Row = Table["rows"][number];

/** What the machine itself keeps a page waiting, with nothing being made. */
async function idle(page: Page): Promise<Row> {
  await page.evaluate(watchGaps);
  await page.waitForTimeout(5000);
  const gap = await page.evaluate(() => (window as unknown as { gap: () => number }).gap());
  return {
    what: "nothing",
    s: "5.0",
    "longest wait for the page ms": Math.round(gap),
    "memory above before MB": "",
    "with the browser's own MB": "",
  };
}

async function made(page: Page, system: CDPSession, name: string, how = ""): Promise<Row> {
  await page.evaluate(watchGaps);
  const before = await memory(system);
  const most = { ...before };
  const watch = setInterval(async () => {
    const now = await memory(system);
    most.pages = Math.max(most.pages, now.pages);
    most.all = Math.max(most.all, now.all);
  }, 100);
  const from = performance.now();
  const saved = page.waitForEvent("download", { timeout: 120_000 });
  await page.getByRole("button", { name }).click();
  await saved;
  const seconds = (performance.now() - from) / 1000;
  clearInterval(watch);
  const gap = await page.evaluate(() => (window as unknown as { gap: () => number }).gap());
  return {
    what: `${name}${how}`,
    s: seconds.toFixed(1),
    "longest wait for the page ms": Math.round(gap),
    "memory above before MB": Math.round(most.pages - before.pages),
    "with the browser's own MB": Math.round(most.all - before.all),
  };
}

/** How long the page's thread was not free, at most. */
function watchGaps(): void {
  let last = performance.now();
  let most = 0;
  const timer = setInterval(() => {
    const now = performance.now();
    most = Math.max(most, now - last - 5);
    last = now;
  }, 5);
  (window as unknown as { gap: () => number }).gap = () => {
    clearInterval(timer);
    return most;
  };
}

/** MB that pages and what works for them hold; and all processes, the one that takes the file itself among them. */
async function memory(system: CDPSession) {
  const { processInfo } = await system.send("SystemInfo.getProcessInfo");
  const held = { pages: 0, all: 0 };
  for (const { type, id } of processInfo) {
    held.all += resident(id);
    if (type === "renderer") held.pages += resident(id);
  }
  return held;
}

function resident(id: number): number {
  try {
    const [, pages] = readFileSync(`/proc/${id}/statm`, "utf8").split(" ");
    return (Number(pages) * 4096) / 1e6;
  } catch {
    return 0;
  }
}

async function plain(page: Page, cues: readonly { readonly at: number; readonly until: number }[]) {
  const played = cues.filter(({ at }) => at < PLAIN * 60).map(({ at, until }) => [at, until]);
  const ms = await page.evaluate(
    async ([cues, minutes]) => {
      const from = performance.now();
      const context = new OfflineAudioContext(1, minutes * 60 * 24_000, 24_000);
      for (const [at = 0, until = 0] of cues) {
        const buffer = context.createBuffer(1, Math.max(1, (until - at) * 24_000), 24_000);
        const source = new AudioBufferSourceNode(context, { buffer });
        source.connect(context.destination);
        source.start(at);
      }
      await context.startRendering();
      return performance.now() - from;
    },
    [played, PLAIN] as const,
  );
  return {
    what: `plain OfflineAudioContext, ${PLAIN} min of it, samples alone`,
    s: (ms / 1000).toFixed(1),
    "longest wait for the page ms": "",
    "memory above before MB": "",
    "with the browser's own MB": "",
  };
}
