// What only a real browser can show of Write up: photos made small by it, a page killed in the midst of taking a file
// in, and all of it measured as every other screen is.
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { again, beside, everything, find, overTime, pictures } from "../../src/ui/words/en/log.ts";
import { madeRuns } from "../ui/made-runs.ts";
import { axeFinds } from "./axe.ts";
import { cutOff, paleTexts } from "./measure.ts";
import { setStage, withoutWorker } from "./stage.ts";

const fileOf = (count: number) => ({
  name: "mine.json",
  mimeType: "application/json",
  buffer: Buffer.from(JSON.stringify({ tankside: 1, runs: madeRuns(count) })),
});

const button = (page: Page, name: string | RegExp) => page.getByRole("button", { name });

/** Up to the question whether to take it in. */
async function choose(page: Page, count: number): Promise<void> {
  const chooser = page.waitForEvent("filechooser");
  await button(page, everything.choose).click();
  await (await chooser).setFiles(fileOf(count));
  await button(page, everything.take).waitFor({ timeout: 30_000 });
}

/** How many runs and how many lines of runs the page's own base holds. */
const held = (page: Page) =>
  page.evaluate(async () => {
    const base = await new Promise<IDBDatabase>((resolve) => {
      const opening = indexedDB.open("tankside");
      opening.onsuccess = () => resolve(opening.result);
    });
    const [runs, blocks] = await Promise.all(
      ["runs", "lines"].map(
        (shelf) =>
          new Promise<readonly unknown[]>((resolve) => {
            const reading = base.transaction(shelf).objectStore(shelf).getAll();
            reading.onsuccess = () => resolve(reading.result);
          }),
      ),
    );
    base.close();
    const lines = (blocks ?? []).flatMap((block) => JSON.parse(String(block)) as unknown[]);
    return [runs?.length, lines.length];
  });

describe("Write up in a real browser", () => {
  const stage = setStage();

  async function writeUp(): Promise<Page> {
    const context = await stage.browser.newContext({
      ...withoutWorker,
      viewport: { width: 320, height: 640 },
    });
    const page = await context.newPage();
    await page.goto(`${stage.served.url}#write-up`);
    await button(page, everything.choose).waitFor();
    return page;
  }

  test("shows, finds, compares and pictures runs in a way that everybody can read", {
    timeout: 90_000,
  }, async () => {
    const page = await writeUp();
    await choose(page, 25);
    const found = [...(await axeFinds(page, false)), ...(await cutOff(page))];
    await button(page, everything.take).click();
    await page.getByText(find.count(25, 25)).waitFor();

    // A photo of twelve megapixels, as a camera makes them.
    const photo = await page.evaluate(async () => {
      const canvas = new OffscreenCanvas(4000, 3000);
      canvas.getContext("2d")?.fillRect(1000, 1000, 2000, 100);
      const blob = await canvas.convertToBlob({ type: "image/jpeg" });
      return [...new Uint8Array(await blob.arrayBuffer())];
    });
    const files = { name: "a.jpg", mimeType: "image/jpeg", buffer: Buffer.from(photo) };
    await page.getByText(pictures.name(0)).first().click();
    await page.getByLabel(pictures.add).first().setInputFiles(files);
    await page.getByLabel(pictures.alt).fill("A bar");
    await page.keyboard.press("Tab");
    // Shown by its name once that is kept.
    const image = page.getByRole("img", { name: "A bar" });
    await image.waitFor();
    await page.reload();
    await page.getByText(pictures.name(1)).click();
    await image.waitFor();
    const size = await image.evaluate((it) => {
      const { naturalWidth, naturalHeight } = it as HTMLImageElement;
      return [naturalWidth, naturalHeight];
    });
    expect(size).toEqual([1600, 1200]);

    await page.getByText(overTime.name).click();
    await button(page, new RegExp(`^${beside.choose}`))
      .nth(0)
      .click();
    await button(page, new RegExp(`^${beside.choose}`))
      .nth(1)
      .click();
    // It goes with the page as it is scrolled, and covers no run.
    const narrow = page.viewportSize();
    await page.setViewportSize({ width: 1280, height: 900 });
    const runs = page.locator("article.run");
    await runs.nth(2).scrollIntoViewIfNeeded();
    const [table, first] = [
      await page.locator(".two-runs").boundingBox(),
      await runs.first().boundingBox(),
    ];
    expect((table?.y ?? Number.NaN) + (table?.height ?? Number.NaN)).toBeLessThan(first?.y ?? 0);
    if (narrow !== null) await page.setViewportSize(narrow);
    await button(page, /^Do this again/)
      .first()
      .click();
    await page.getByLabel(again.asks).fill("much");
    await button(page, again.make).click();
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll("details")) fold.open = true;
    });
    found.push(...(await axeFinds(page, false)), ...(await paleTexts(page)));
    await page.emulateMedia({ colorScheme: "dark" });
    found.push(...(await paleTexts(page)), ...(await cutOff(page)));
    expect(found).toEqual([]);
    await page.context().close();
  });

  test("killed while it takes a file in, has none of it or all when it is opened again", {
    timeout: 90_000,
  }, async () => {
    const COUNT = 1000;
    for (const wait of [20, 250]) {
      const page = await writeUp();
      const context = page.context();
      await choose(page, COUNT);
      const devtools = await context.newCDPSession(page);
      await button(page, everything.take).click();
      await page.waitForTimeout(wait);
      void devtools.send("Page.crash").catch(() => {});
      await page.waitForEvent("crash");
      const next = await context.newPage();
      await next.goto(`${stage.served.url}#write-up`);
      await button(next, everything.choose).waitFor();
      const [runs, lines] = await held(next);
      expect([0, COUNT]).toContain(runs);
      expect(lines).toBe(runs);
      await context.close();
    }
  });
});
