import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { BrowserContext, Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { planOf } from "../../src/plan/plan.ts";
import { linkOf } from "../../src/plan/worksheet-link.ts";
import { demos } from "../../src/ui/demo.ts";
import { fields } from "../../src/ui/words/en/fields.ts";
import { news } from "../../src/ui/words/en/keep.ts";
import { brought, classStart } from "../../src/ui/words/en/take.ts";
import { writeClockTime } from "../../src/units/clock-time.ts";
import { captureSound } from "./capture.ts";
import { leaveRun, openWorksheet, pressUpTo, shortWorksheet, timelineOf } from "./guided-run.ts";
import { dist, type Served, serveDist } from "./serve.ts";
import { setStage } from "./stage.ts";

/** A page whose service worker has everything in store, and that hears what it plays. */
async function visit(context: BrowserContext, url: string): Promise<Page> {
  const page = await context.newPage();
  await captureSound(page);
  await page.goto(url);
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    while (navigator.serviceWorker.controller === null)
      await new Promise((r) => setTimeout(r, 100));
    while (
      !(await caches.match(new URL("sound/en.pack", document.baseURI), { ignoreSearch: true }))
    )
      await new Promise((r) => setTimeout(r, 100));
  });
  return page;
}

/** Puts up another version: a page that says of itself which it is, and a worker that keeps it. */
function putUp(served: Served, version: string): void {
  const page = readFileSync(join(dist, "index.html"), "utf8");
  served.replace("index.html", page.replace("<html", `<html data-version="${version}"`));
  const worker = readFileSync(join(dist, "sw.js"), "utf8");
  const changed = worker.replace(/(url:"index\.html",revision:")\w+/, `$1${version}`);
  if (changed === worker) throw new Error("the worker does not name the page");
  served.replace("sw.js", changed);
}

/** Marks a page's life: what is set here is gone once it is loaded anew. */
const mark = (page: Page) => page.evaluate(() => Object.assign(window, { sameLife: true }));
const isSameLife = (page: Page) => page.evaluate(() => "sameLife" in window);
const versionOf = (page: Page) => page.evaluate(() => document.documentElement.dataset.version);

/** As the browser itself does now and then: resolves once the newer version waits. */
const findNewer = (page: Page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
    while (registration.waiting === null) await new Promise((r) => setTimeout(r, 50));
  });
const stillWaits = (page: Page) =>
  page.evaluate(async () => (await navigator.serviceWorker.ready).waiting !== null);

/** As a person would: a busy machine's worker may take longer than the page waits for it, which then says so. */
async function takeNewer(page: Page): Promise<void> {
  const newer = page.locator("html[data-version=newer]");
  for (let presses = 1; presses < 4; presses += 1) {
    await page.getByRole("button", { name: news.takeIt }).click();
    const came = await newer.waitFor({ timeout: 12_000 }).then(
      () => true,
      () => false,
    );
    if (came) return;
  }
  await newer.waitFor();
}

/** Resolves once something is heard from here on. */
async function sounds(page: Page): Promise<void> {
  const from = await page.evaluate(() => (window as unknown as Heard).heard.length);
  await page.waitForFunction(
    (blocks) =>
      (window as unknown as Heard).heard
        .slice(blocks)
        .some(({ samples }) => samples.some((sample) => Math.abs(sample) > 0.05)),
    from,
    // No stretch between two signals or words of this worksheet is as long.
    { timeout: 20_000 },
  );
}

interface Heard {
  readonly heard: readonly { readonly samples: Float32Array }[];
}

/** How long it is to be developed, as it is written. */
const planned = writeClockTime(planOf(demos.foghorn).developmentSeconds);

describe("A newer version, in a real browser,", () => {
  const stage = setStage();
  const timeline = timelineOf(shortWorksheet);

  test.concurrent("that comes in the midst of a run neither ends it nor loads a page anew, is told of after it, and taken by a press", {
    timeout: 120_000,
  }, async () => {
    const served = await serveDist("/tank/");
    const context = await stage.browser.newContext();
    const leading = await visit(context, served.url);
    const other = await context.newPage();
    await other.goto(served.url);
    await openWorksheet(leading, shortWorksheet);
    for (const page of [leading, other]) await mark(page);
    await pressUpTo(leading, timeline, "developer");

    putUp(served, "newer");
    await findNewer(other);
    const line = other.getByText(news.ready);
    await line.waitFor();
    await other.getByRole("button", { name: news.takeIt }).click();
    await other.getByText(news.waits["run-is-on"]).waitFor();

    const left = leading.locator(".guided-left");
    const before = await left.textContent();
    await leading.waitForTimeout(2000);
    await sounds(leading);
    expect(await left.textContent()).not.toBe(before);
    expect(await leading.getByText(news.ready).count()).toBe(0);
    expect(await stillWaits(leading)).toBe(true);
    expect([await isSameLife(leading), await isSameLife(other)]).toEqual([true, true]);

    await leaveRun(leading);
    await leading.getByText(news.ready).waitFor();
    await leading.getByRole("button", { name: news.takeIt }).click();
    await leading.getByText(news.waits["other-pages"]).waitFor();
    expect(await stillWaits(leading)).toBe(true);
    await other.close();
    // The browser counts a page that closes for a moment longer.
    await leading.waitForFunction(async () => {
      const { held = [] } = await navigator.locks.query();
      return held.filter(({ name }) => name === "tankside-page").length === 1;
    });

    expect(await versionOf(leading)).toBeUndefined();
    await takeNewer(leading);
    expect(await isSameLife(leading)).toBe(false);
    // Once is enough.
    await mark(leading);
    await leading.waitForTimeout(1500);
    expect(await isSameLife(leading)).toBe(true);
    expect(await leading.getByText(news.ready).count()).toBe(0);
    await context.close();
    await served.close();
  });

  test.concurrent("that another page took is told of in a page that was there before, which then loads when asked to", {
    timeout: 120_000,
  }, async () => {
    const served = await serveDist("/tank/");
    const context = await stage.browser.newContext();
    const page = await visit(context, served.url);
    await mark(page);
    putUp(served, "newer");
    await findNewer(page);
    await page.getByText(news.ready).waitFor();
    // As a page would that knows of no other.
    await page.evaluate(async () => {
      const { waiting } = await navigator.serviceWorker.ready;
      waiting?.postMessage({ type: "SKIP_WAITING" });
    });
    await page.getByText(news.takenElsewhere).waitFor();
    expect(await isSameLife(page)).toBe(true);
    await page.getByRole("button", { name: news.loadAnew }).click();
    await page.locator("html[data-version=newer]").waitFor();
    await context.close();
    await served.close();
  });

  test.concurrent("is not needed: without a network, after one visit, a run begins, sounds, and is kept in Write up", {
    timeout: 120_000,
  }, async () => {
    const served = await serveDist("/tank/");
    const context = await stage.browser.newContext();
    const page = await visit(context, served.url);
    await served.close();
    await page.reload();
    await openWorksheet(page, shortWorksheet);
    await pressUpTo(page, timeline, "temper");
    await sounds(page);
    await leaveRun(page);
    await page.getByRole("link", { name: /^Write up/ }).click();
    await page.getByRole("heading", { name: "Short strip" }).waitFor();

    // Still without a network, a link is opened from elsewhere: asked about, taken, planned, its class waited for.
    const starts = Math.ceil(Date.now() / 60_000) * 60_000 + 7_200_000;
    const opened = await context.newPage();
    await opened.goto(`${served.url}${linkOf(demos.foghorn, starts)}`);
    await opened.getByRole("heading", { name: brought.title }).waitFor();
    expect(await opened.getByLabel(fields.title.label).inputValue()).toBe("Short strip");
    await opened.getByRole("button", { name: brought.use }).click();
    expect(new URL(opened.url()).hash).toBe("#work-out");
    await opened.getByText(planned).first().waitFor();
    await opened.waitForTimeout(600);
    await opened.reload();
    await opened.getByRole("link", { name: /^Lights out/ }).click();
    await opened.getByRole("button", { name: classStart.ready }).waitFor();
    expect(await opened.getByText(planned).count()).toBeGreaterThan(0);
    await context.close();
  });
});
